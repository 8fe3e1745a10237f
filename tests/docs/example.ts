// Turns a fence into a module that collects what its `// =>` comments assert.
import ts from 'typescript';

/** A fence made ready to run. */
export interface PreparedExample {
  /** Module text, line for line that of the fence; it exports `__found`, a list of `{ line, actual }`. */
  module: string;
  /** Expected values by the line, in the fence, at which their statement ends. */
  expected: { line: number; value: unknown }[];
  /** Assertions that could not be read; each is a fault of the example. */
  faults: string[];
}

const MARK = /\/\/\s*=>\s*(.*)$/;
const HEADER =
  'export const __found: { line: number; actual: unknown }[] = []; ' +
  'const __assert = (line: number, actual: unknown): void => { __found.push({ line, actual }); }; ';

/**
 * Prepares the code of a fence. A value stands after `// =>` behind the statement, or alone on the next line; a long one
 * goes on in the comment lines that follow. The statement is an expression, a `console.log(expression)` or the
 * declaration of one name.
 */
export function prepareExample(code: string): PreparedExample {
  const lines = code.split('\n');
  const file = ts.createSourceFile('example.ts', code, ts.ScriptTarget.ES2022, true);
  const open = new Set(lines.flatMap((line, index) => (MARK.test(line) ? [index] : [])));
  const edits: { start: number; end: number; text: string }[] = [];
  const expected: PreparedExample['expected'] = [];
  const faults: string[] = [];

  /** Line of the mark that belongs to what ends at this position. */
  const markAfter = (position: number): number | undefined => {
    const { line, character } = file.getLineAndCharacterOfPosition(position);
    if (open.has(line) && /^\s*\/\//.test(lines[line]?.slice(character) ?? '')) return line;
    return open.has(line + 1) && /^\s*\/\//.test(lines[line + 1] ?? '') ? line + 1 : undefined;
  };
  const visit = (node: ts.Node): void => {
    const line = file.getLineAndCharacterOfPosition(node.getEnd()).line + 1;
    const text = replacement(node, line);
    const mark = text === undefined ? undefined : markAfter(node.getEnd());
    if (text === undefined || mark === undefined) {
      ts.forEachChild(node, visit);
      return;
    }
    open.delete(mark);
    const value = readValue(lines, mark);
    if (value === undefined) faults.push(`line ${mark + 1}: no literal value in "${lines[mark]?.trim()}"`);
    else {
      expected.push({ line, value: value.value });
      edits.push({ start: node.getStart(), end: node.getEnd(), text });
    }
  };
  visit(file);
  for (const mark of open) faults.push(`line ${mark + 1}: no statement before "${lines[mark]?.trim()}"`);

  let module = code;
  for (const { start, end, text } of edits.sort((a, b) => b.start - a.start)) {
    module = module.slice(0, start) + text + module.slice(end);
  }
  return { module: `${HEADER}${module}\n`, expected, faults };
}

/** The statement with its value handed over; undefined for one that has no value. */
function replacement(node: ts.Node, line: number): string | undefined {
  if (ts.isExpressionStatement(node)) {
    const call = node.expression;
    const [only, ...more] = ts.isCallExpression(call) ? call.arguments : [];
    const logged =
      ts.isCallExpression(call) && call.expression.getText() === 'console.log' && only && more.length === 0;
    return `__assert(${line}, ${(logged ? only : call).getText()});`;
  }
  if (!ts.isVariableStatement(node)) return undefined;
  const [only, ...more] = node.declarationList.declarations;
  if (!only || more.length > 0 || !ts.isIdentifier(only.name)) return undefined;
  return `${node.getText()} __assert(${line}, ${only.name.text});`;
}

/** Reads the literal that begins at a mark, going on in the comment lines below until it is complete. */
function readValue(lines: readonly string[], mark: number): { value: unknown } | undefined {
  let text = MARK.exec(lines[mark] ?? '')?.[1] ?? '';
  for (let next = mark + 1; ; next++) {
    const expression = parseExpression(text);
    if (expression) return literalValue(expression);
    const more = /^\s*\/\/(?!\s*=>)(.*)$/.exec(lines[next] ?? '')?.[1];
    if (more === undefined) return undefined;
    text += `\n${more}`;
  }
}

function parseExpression(text: string): ts.Expression | undefined {
  const code = `(${text}\n)`;
  const { diagnostics } = ts.transpileModule(code, { reportDiagnostics: true });
  if (diagnostics?.length) return undefined;
  const [statement] = ts.createSourceFile('value.ts', code, ts.ScriptTarget.ES2022, true).statements;
  return statement && ts.isExpressionStatement(statement) ? statement.expression : undefined;
}

// Only literals: an expected value that calls code could agree with a fault in that code.
function literalValue(node: ts.Expression): { value: unknown } | undefined {
  if (ts.isParenthesizedExpression(node)) return literalValue(node.expression);
  if (ts.isNumericLiteral(node)) return { value: Number(node.text.replaceAll('_', '')) };
  if (ts.isStringLiteralLike(node)) return { value: node.text };
  if (node.kind === ts.SyntaxKind.TrueKeyword) return { value: true };
  if (node.kind === ts.SyntaxKind.FalseKeyword) return { value: false };
  if (node.kind === ts.SyntaxKind.NullKeyword) return { value: null };
  if (ts.isIdentifier(node)) return node.text === 'undefined' ? { value: undefined } : undefined;
  if (ts.isPrefixUnaryExpression(node) && node.operator === ts.SyntaxKind.MinusToken) {
    const operand = literalValue(node.operand);
    return typeof operand?.value === 'number' ? { value: -operand.value } : undefined;
  }
  if (ts.isArrayLiteralExpression(node)) {
    const items = node.elements.map(literalValue);
    return items.some((item) => item === undefined) ? undefined : { value: items.map((item) => item?.value) };
  }
  if (!ts.isObjectLiteralExpression(node)) return undefined;
  const fields: [string, unknown][] = [];
  for (const property of node.properties) {
    if (!ts.isPropertyAssignment(property) || ts.isComputedPropertyName(property.name)) return undefined;
    const field = literalValue(property.initializer);
    if (field === undefined) return undefined;
    fields.push([
      ts.isIdentifier(property.name) ? property.name.text : (property.name as ts.StringLiteral).text,
      field.value,
    ]);
  }
  return { value: Object.fromEntries(fields) };
}
