// Finds out, from the types and the calls, which texts an expression can be, and with that which codes are raised.
import ts from 'typescript';
import { nodesOf } from './source-rules.ts';

/** Codes raised, and the places whose code cannot be told from the source text. */
interface RaisedCodes {
  codes: Set<string>;
  unclear: string[];
}

/** Follows texts through a set of sources. */
export class TextTracer {
  readonly #checker: ts.TypeChecker;
  readonly #calls: readonly ts.CallExpression[];

  constructor(program: ts.Program, paths: readonly string[]) {
    this.#checker = program.getTypeChecker();
    const files = paths.flatMap((path) => program.getSourceFile(path) ?? []);
    this.#calls = files.flatMap((file) => [...nodesOf(file)].filter(ts.isCallExpression));
  }

  /** Codes that the calls of `createFinding` hand over. */
  raisedCodes(): RaisedCodes {
    const result: RaisedCodes = { codes: new Set(), unclear: [] };
    for (const call of this.#calls) {
      const target = this.#targetOf(call);
      const [argument] = call.arguments;
      if (!argument || !target || !ts.isFunctionDeclaration(target) || target.name?.text !== 'createFinding') continue;
      const texts = this.#fieldTexts(argument, 'code', new Set());
      for (const code of texts ?? []) result.codes.add(code);
      if (texts === undefined) {
        const { line } = call.getSourceFile().getLineAndCharacterOfPosition(call.getStart());
        result.unclear.push(`${call.getSourceFile().fileName}:${line + 1}`);
      }
    }
    return result;
  }

  /** Every text that an expression can be; undefined when it can be any. */
  textsOf(expression: ts.Expression, followed: ReadonlySet<ts.Node> = new Set()): string[] | undefined {
    if (ts.isStringLiteralLike(expression)) return [expression.text];
    if (ts.isParenthesizedExpression(expression)) return this.textsOf(expression.expression, followed);
    if (ts.isTemplateExpression(expression)) {
      let texts = [expression.head.text];
      for (const span of expression.templateSpans) {
        const parts = this.textsOf(span.expression, followed);
        if (parts === undefined) return undefined;
        texts = texts.flatMap((text) => parts.map((part) => text + part + span.literal.text));
      }
      return texts;
    }
    if (ts.isConditionalExpression(expression)) {
      const [yes, no] = [expression.whenTrue, expression.whenFalse].map((part) => this.textsOf(part, followed));
      return yes && no && [...yes, ...no];
    }
    const literals = literalsOf(this.#typeOf(expression));
    if (literals) return literals;
    const parameter = this.#parameterBehind(expression);
    return parameter && this.#argumentTexts(parameter.node, parameter.field, followed);
  }

  /** A pattern of the texts of a template, where `.+` stands for what cannot be told; undefined when it begins so. */
  patternOf(template: ts.TemplateExpression): RegExp | undefined {
    const pieces = template.templateSpans.map((span) => ({
      texts: this.textsOf(span.expression),
      after: span.literal.text,
    }));
    if (template.head.text === '' && pieces[0]?.texts === undefined) return undefined;
    const rest = pieces.map(
      ({ texts, after }) => (texts ? `(${texts.map(escaped).join('|')})` : '.+') + escaped(after),
    );
    return new RegExp(`^${escaped(template.head.text)}${rest.join('')}$`);
  }

  /** Texts that the field of an object can be. */
  #fieldTexts(object: ts.Expression, field: string, followed: ReadonlySet<ts.Node>): string[] | undefined {
    const inner = fieldOf(object, field);
    if (inner) return this.textsOf(inner, followed);
    const property = this.#checker.getTypeAtLocation(object).getProperty(field);
    const literals = property && literalsOf(this.#checker.getTypeOfSymbolAtLocation(property, object));
    if (literals) return literals;
    const parameter = this.#parameterBehind(object);
    return parameter && parameter.field === undefined
      ? this.#argumentTexts(parameter.node, field, followed)
      : undefined;
  }

  /** Texts that the calls of a function give for a parameter, or for a field of it. */
  #argumentTexts(
    parameter: ts.ParameterDeclaration,
    field: string | undefined,
    followed: ReadonlySet<ts.Node>,
  ): string[] | undefined {
    // A function that hands its own parameter to itself adds nothing new.
    if (followed.has(parameter)) return [];
    const index = parameter.parent.parameters.indexOf(parameter);
    const texts: string[] = [];
    let called = false;
    for (const call of this.#calls) {
      const argument = this.#targetOf(call) === parameter.parent ? call.arguments[index] : undefined;
      if (!argument) continue;
      called = true;
      const next = new Set([...followed, parameter]);
      const found = field === undefined ? this.textsOf(argument, next) : this.#fieldTexts(argument, field, next);
      if (found === undefined) return undefined;
      texts.push(...found);
    }
    return called ? texts : undefined;
  }

  #targetOf(call: ts.CallExpression): ts.Declaration | undefined {
    return this.#checker.getResolvedSignature(call)?.getDeclaration();
  }

  #symbolOf(node: ts.Identifier): ts.Symbol | undefined {
    return ts.isShorthandPropertyAssignment(node.parent)
      ? this.#checker.getShorthandAssignmentValueSymbol(node.parent)
      : this.#checker.getSymbolAtLocation(node);
  }

  /** The type, that of the variable itself where it stands in short for a field of the same name. */
  #typeOf(expression: ts.Expression): ts.Type {
    const symbol = ts.isIdentifier(expression) ? this.#symbolOf(expression) : undefined;
    return symbol
      ? this.#checker.getTypeOfSymbolAtLocation(symbol, expression)
      : this.#checker.getTypeAtLocation(expression);
  }

  /** The parameter, or the field of one, that an expression merely hands on. */
  #parameterBehind(
    expression: ts.Expression,
  ): { node: ts.ParameterDeclaration; field: string | undefined } | undefined {
    const field = ts.isPropertyAccessExpression(expression) ? expression.name.text : undefined;
    const base = ts.isPropertyAccessExpression(expression) ? expression.expression : expression;
    if (!ts.isIdentifier(base)) return undefined;
    const declaration = this.#symbolOf(base)?.valueDeclaration;
    if (declaration && ts.isParameter(declaration)) return { node: declaration, field };
    if (!declaration || !ts.isBindingElement(declaration) || field !== undefined) return undefined;
    const source = declaration.parent.parent;
    const name = (declaration.propertyName ?? declaration.name).getText();
    if (ts.isParameter(source)) return { node: source, field: name };
    const behind = ts.isVariableDeclaration(source) && source.initializer && this.#parameterBehind(source.initializer);
    return behind && behind.field === undefined ? { node: behind.node, field: name } : undefined;
  }
}

const escaped = (text: string): string => text.replace(/[^\w-]/g, '\\$&');

/** The texts of a type that consists of nothing but literals. */
function literalsOf(type: ts.Type): string[] | undefined {
  const parts = type.isUnion() ? type.types : [type];
  const texts = parts.flatMap((part) => (part.isStringLiteral() ? [part.value] : []));
  return texts.length === parts.length && texts.length > 0 ? texts : undefined;
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
