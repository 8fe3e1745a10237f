// Finds out, from the types, which finding codes a set of sources may raise.
import ts from 'typescript';
import { nodesOf } from './source-rules.ts';

/** Codes raised, and the places whose code cannot be told from the source text. */
export interface RaisedCodes {
  codes: Set<string>;
  unclear: string[];
}

/** Looks at each call of `createFinding`; a code that a helper passes on is followed to the calls of that helper. */
export function raisedCodes(program: ts.Program, paths: readonly string[]): RaisedCodes {
  const checker = program.getTypeChecker();
  const files = paths.flatMap((path) => program.getSourceFile(path) ?? []);
  const calls = files.flatMap((file) => [...nodesOf(file)].filter(ts.isCallExpression));
  const result: RaisedCodes = { codes: new Set(), unclear: [] };
  const followed = new Set<string>();

  const targetOf = (call: ts.CallExpression): ts.Declaration | undefined =>
    checker.getResolvedSignature(call)?.getDeclaration();

  /** Takes the codes of an expression, or of the field `field` of it. */
  const take = (expression: ts.Expression, field: string | undefined): void => {
    const type = checker.getTypeAtLocation(expression);
    const property = field === undefined ? undefined : type.getProperty(field);
    const wanted = property ? checker.getTypeOfSymbolAtLocation(property, expression) : type;
    const parts = wanted.isUnion() ? wanted.types : [wanted];
    const literals = parts.flatMap((part) => (part.isStringLiteral() ? [part.value] : []));
    if (literals.length === parts.length) {
      for (const code of literals) result.codes.add(code);
      return;
    }
    const inner = field === undefined ? expression : fieldOf(expression, field);
    if (inner && ts.isStringLiteral(inner)) {
      result.codes.add(inner.text);
      return;
    }
    if (inner && ts.isConditionalExpression(inner)) {
      take(inner.whenTrue, undefined);
      take(inner.whenFalse, undefined);
      return;
    }
    const parameter = inner && parameterBehind(checker, inner);
    if (parameter === undefined) {
      const { line } = expression.getSourceFile().getLineAndCharacterOfPosition(expression.getStart());
      result.unclear.push(`${expression.getSourceFile().fileName}:${line + 1}`);
      return;
    }
    follow(parameter.node, parameter.field);
  };

  const follow = (parameter: ts.ParameterDeclaration, field: string | undefined): void => {
    const key = `${parameter.getSourceFile().fileName}:${parameter.pos}:${field}`;
    if (followed.has(key)) return;
    followed.add(key);
    const helper = parameter.parent;
    const index = helper.parameters.indexOf(parameter);
    for (const call of calls) {
      const argument = targetOf(call) === helper ? call.arguments[index] : undefined;
      if (argument) take(argument, field);
    }
  };

  for (const call of calls) {
    const target = targetOf(call);
    const [argument] = call.arguments;
    if (argument && target && ts.isFunctionDeclaration(target) && target.name?.text === 'createFinding') {
      take(argument, 'code');
    }
  }
  return result;
}

/** The value given to a field of an object literal, written out or in short. */
function fieldOf(expression: ts.Expression, field: string): ts.Expression | undefined {
  if (!ts.isObjectLiteralExpression(expression)) return undefined;
  for (const property of expression.properties) {
    if (property.name?.getText() !== field) continue;
    if (ts.isPropertyAssignment(property)) return property.initializer;
    if (ts.isShorthandPropertyAssignment(property)) return property.name;
  }
  return undefined;
}

/** The parameter, or the field of one, that an expression merely hands on. */
function parameterBehind(
  checker: ts.TypeChecker,
  expression: ts.Expression,
): { node: ts.ParameterDeclaration; field: string | undefined } | undefined {
  const field = ts.isPropertyAccessExpression(expression) ? expression.name.text : undefined;
  const base = ts.isPropertyAccessExpression(expression) ? expression.expression : expression;
  if (!ts.isIdentifier(base)) return undefined;
  const symbol = ts.isShorthandPropertyAssignment(base.parent)
    ? checker.getShorthandAssignmentValueSymbol(base.parent)
    : checker.getSymbolAtLocation(base);
  const declaration = symbol?.valueDeclaration;
  if (declaration && ts.isParameter(declaration)) return { node: declaration, field };
  if (declaration && ts.isBindingElement(declaration)) {
    const source = declaration.parent.parent;
    const name = (declaration.propertyName ?? declaration.name).getText();
    if (ts.isParameter(source)) return { node: source, field: name };
    if (ts.isVariableDeclaration(source) && source.initializer && field === undefined) {
      const behind = parameterBehind(checker, source.initializer);
      return behind && behind.field === undefined ? { node: behind.node, field: name } : undefined;
    }
  }
  return undefined;
}
