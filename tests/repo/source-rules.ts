// Rules about source text that no linter setting expresses, as plain functions so that they are tested themselves.
import ts from 'typescript';

export const parse = (path: string, text: string): ts.SourceFile =>
  ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true);

/** Every node of a tree, parents first. */
export function* nodesOf(node: ts.Node): Generator<ts.Node> {
  yield node;
  const children: ts.Node[] = [];
  ts.forEachChild(node, (child) => {
    children.push(child);
  });
  for (const child of children) yield* nodesOf(child);
}

/** Specifiers of every import and re-export, type-only and dynamic ones included. */
export const importsOf = (file: ts.SourceFile): string[] =>
  ts.preProcessFile(file.text, true, true).importedFiles.map((entry) => entry.fileName);

const GLOBALS = new Set([
  ...['process', 'console', 'globalThis', 'window', 'self', 'document', 'navigator', 'location', 'localStorage'],
  ...['fetch', 'Buffer', 'require', 'module', '__dirname', '__filename', 'setTimeout', 'setInterval', 'performance'],
]);

/** Uses of the platform, the clock or unseeded chance: what would make a result depend on more than its input. */
export function hiddenInputs(file: ts.SourceFile): string[] {
  const found: string[] = [];
  // A name declared in the file shadows the platform's; the type check of each package without platform types sees to
  // the case where it does not.
  const own = new Set([...nodesOf(file)].flatMap((node) => (isDeclaration(node) ? [node.name.getText()] : [])));
  for (const node of nodesOf(file)) {
    if (ts.isIdentifier(node) && GLOBALS.has(node.text) && !own.has(node.text) && isReference(node)) {
      found.push(node.text);
    }
    if (ts.isPropertyAccessExpression(node)) {
      const text = `${node.expression.getText()}.${node.name.text}`;
      if (text === 'Math.random' || text === 'Date.now') found.push(text);
      // Output by the reader's locale would differ from machine to machine.
      if (node.name.text.startsWith('toLocale')) found.push(node.name.text);
    }
    if (ts.isNewExpression(node) && node.expression.getText() === 'Date' && !node.arguments?.length) {
      found.push('new Date()');
    }
  }
  return found;
}

const isDeclaration = (node: ts.Node): node is ts.VariableDeclaration | ts.ParameterDeclaration | ts.BindingElement =>
  ts.isVariableDeclaration(node) || ts.isParameter(node) || ts.isBindingElement(node);

function isReference(node: ts.Identifier): boolean {
  const { parent } = node;
  if (ts.isPropertyAccessExpression(parent)) return parent.expression === node;
  if (ts.isPropertyAssignment(parent)) return parent.initializer === node;
  if (ts.isVariableDeclaration(parent) || ts.isParameter(parent)) return parent.initializer === node;
  return ts.isExpression(parent) || ts.isStatement(parent) || ts.isShorthandPropertyAssignment(parent);
}

/** Statements that do something when a module is merely imported, which no bundler may drop. */
export const effectsAtTopLevel = (file: ts.SourceFile): string[] =>
  file.statements
    .filter(
      (statement) =>
        !ts.isImportDeclaration(statement) &&
        !ts.isExportDeclaration(statement) &&
        !ts.isExportAssignment(statement) &&
        !ts.isFunctionDeclaration(statement) &&
        !ts.isClassDeclaration(statement) &&
        !ts.isInterfaceDeclaration(statement) &&
        !ts.isTypeAliasDeclaration(statement) &&
        !ts.isVariableStatement(statement),
    )
    .map((statement) => statement.getText().replace(/;$/, ''));
