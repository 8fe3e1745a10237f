// The docstring form of DEVELOPERS.md as a function over a program, so that it can be tried on bad samples.
import ts from 'typescript';
import { type DocBlock, parseDocBlock } from './doc-block.ts';
import { fencesOf } from './fences.ts';
import { saysItsUnit } from './unit-names.ts';

const ORDER = ['remarks', 'param', 'returns', 'throws', 'example', 'see'];
const REMARKS = ['Formula:', 'Validity:', 'Accuracy:'];
const NUMERIC_TYPES = new Set(['Limits', 'LimitsInput', 'Measurand', 'LimitsSpelling', 'UncertainValue']);
const NUMERIC_ARRAYS = /^(Float(32|64)|Uint(8|16|32)|Int(8|16|32))Array$/;

/** One entry to check: its source and the names under which its package is imported. */
interface CheckedEntry {
  source: string;
  packageName: string;
}

/** Every departure from the form, as `file:line name: what is wrong`; each declaration is looked at once. */
export function checkDocstrings(program: ts.Program, entries: readonly CheckedEntry[]): string[] {
  const checker = program.getTypeChecker();
  const seen = new Set<ts.Node>();
  const faults: string[] = [];
  for (const entry of entries) {
    const file = program.getSourceFile(entry.source);
    const module = file && checker.getSymbolAtLocation(file);
    if (!module) throw new Error(`${entry.source} is no module of the program`);
    for (const exported of checker.getExportsOfModule(module)) {
      const symbol = exported.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(exported) : exported;
      const [declaration] = symbol.getDeclarations() ?? [];
      if (declaration === undefined || seen.has(declaration)) continue;
      seen.add(declaration);
      const at = declaration.getSourceFile();
      const line = at.getLineAndCharacterOfPosition(declaration.getStart()).line + 1;
      const report = (name: string, text: string): void => {
        faults.push(`${at.fileName}:${line} ${name}: ${text}`);
      };
      checkDeclaration(checker, symbol, declaration, entry.packageName, report);
    }
  }
  return faults;
}

/**
 * Public types that speak of a type nobody can name: every type that an exported declaration mentions, and that the
 * project declares, has to be exported by some entry, or stand on the list of names that may stay hidden.
 */
export function checkReachable(
  program: ts.Program,
  entries: readonly CheckedEntry[],
  hidden: ReadonlySet<string> = new Set(),
): string[] {
  const checker = program.getTypeChecker();
  const follow = (symbol: ts.Symbol): ts.Symbol =>
    symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
  const exported = new Set<ts.Symbol>();
  for (const { source } of entries) {
    const file = program.getSourceFile(source);
    const module = file && checker.getSymbolAtLocation(file);
    for (const symbol of module ? checker.getExportsOfModule(module) : []) exported.add(follow(symbol));
  }
  const faults = new Set<string>();
  const visit = (node: ts.Node, owner: string): void => {
    // What a function does inside is its own affair, and so is the value of a constant.
    if (ts.isBlock(node) || (ts.isExpression(node) && !ts.isExpressionWithTypeArguments(node))) return;
    if (ts.isTypeReferenceNode(node) || ts.isExpressionWithTypeArguments(node)) {
      const name = ts.isTypeReferenceNode(node) ? node.typeName : node.expression;
      const symbol = checker.getSymbolAtLocation(name);
      const target = symbol && follow(symbol);
      const [declaration] = target?.getDeclarations() ?? [];
      const ours = declaration && !declaration.getSourceFile().fileName.includes('/node_modules/');
      if (target && ours && !ts.isTypeParameterDeclaration(declaration) && !exported.has(target)) {
        if (!hidden.has(target.name)) faults.add(`${owner} speaks of ${target.name}, which no entry exports`);
      }
    }
    ts.forEachChild(node, (child) => visit(child, owner));
  };
  for (const symbol of exported) {
    for (const declaration of symbol.getDeclarations() ?? [])
      ts.forEachChild(declaration, (child) => visit(child, symbol.name));
  }
  return [...faults].sort();
}

type Report = (name: string, text: string) => void;

function checkDeclaration(
  checker: ts.TypeChecker,
  symbol: ts.Symbol,
  declaration: ts.Declaration,
  packageName: string,
  report: Report,
): void {
  const { name } = symbol;
  const callable = functionOf(declaration);
  if (callable) {
    checkFunction(checker, callable, blockOf(declaration), name, packageName, report);
    return;
  }
  describe(blockOf(declaration), name, report);
  if (ts.isInterfaceDeclaration(declaration)) checkMembers(checker, declaration.members, name, report);
  else if (ts.isTypeAliasDeclaration(declaration)) checkTypeNode(checker, declaration.type, name, report);
  else if (ts.isClassDeclaration(declaration)) checkClass(checker, declaration, name, report);
}

/** The function behind an exported name, also when it is a constant that holds one. */
function functionOf(declaration: ts.Declaration): ts.SignatureDeclaration | undefined {
  if (ts.isFunctionDeclaration(declaration)) return declaration;
  if (!ts.isVariableDeclaration(declaration) || !declaration.initializer) return undefined;
  const { initializer } = declaration;
  return ts.isArrowFunction(initializer) || ts.isFunctionExpression(initializer) ? initializer : undefined;
}

function blockOf(node: ts.Node): DocBlock | undefined {
  const comment = ts.getJSDocCommentsAndTags(node).filter(ts.isJSDoc).at(-1);
  return comment && parseDocBlock(comment.getText());
}

function describe(block: DocBlock | undefined, name: string, report: Report): void {
  if (!block?.summary) report(name, 'no description');
}

function checkFunction(
  checker: ts.TypeChecker,
  node: ts.SignatureDeclaration,
  block: DocBlock | undefined,
  name: string,
  packageName: string,
  report: Report,
): void {
  for (const parameter of node.parameters) {
    // A parameter that takes limits or readings of any quantity, such as the one of `limits`, can name no unit.
    if (checker.getTypeAtLocation(parameter).flags & ts.TypeFlags.Number) {
      checkNumericName(checker, parameter, name, report);
    }
  }
  for (const parameter of node.parameters) {
    if (parameter.type) checkNestedNames(checker, parameter.type, name, report);
  }
  if (node.type) checkNestedNames(checker, node.type, name, report);
  if (!block) {
    report(name, 'no docstring');
    return;
  }
  if (!block.summary) report(name, 'no summary line');
  else if (block.summary.includes('\n')) report(name, 'the summary is longer than one line');
  const textOf = (tag: string): string | undefined => block.tags.find((entry) => entry.name === tag)?.text;

  const remarks = textOf('remarks');
  if (!remarks) report(name, 'no @remarks');
  else {
    const paragraphs = remarks.split(/\n\s*\n/).map((text) => text.trim());
    const places = REMARKS.map((label) => paragraphs.findIndex((text) => text.startsWith(label)));
    REMARKS.forEach((label, index) => {
      const paragraph = paragraphs[places[index] ?? -1];
      if (paragraph === undefined) report(name, `@remarks has no paragraph "${label}"`);
      else if (paragraph.length < label.length + 5) report(name, `@remarks says nothing after "${label}"`);
    });
    const found = places.filter((place) => place >= 0);
    if (found.some((place, index) => index > 0 && place < (found[index - 1] ?? 0))) {
      report(name, `@remarks is not in the order ${REMARKS.join(' ')}`);
    }
  }

  const described = block.tags
    .filter((tag) => tag.name === 'param')
    .map((tag) => /^(\S+)\s*-?\s*([\s\S]*)$/.exec(tag.text) ?? ['', '', '']);
  const wanted = node.parameters.map((parameter) => parameter.name.getText());
  const have = described.map(([, parameter]) => parameter);
  if (wanted.join() !== have.join()) {
    report(name, `@param names are [${have.join(', ')}], the parameters are [${wanted.join(', ')}]`);
  }
  for (const [, parameter, text] of described) if (!text) report(name, `@param ${parameter} says nothing`);

  const signature = checker.getSignatureFromDeclaration(node);
  const returnsVoid = signature !== undefined && checker.getReturnTypeOfSignature(signature).flags & ts.TypeFlags.Void;
  if (!returnsVoid && !textOf('returns')) report(name, 'no @returns');
  const throws = textOf('throws');
  if (!throws) report(name, 'no @throws (write "Nothing." if it throws nothing)');
  else if (!/^Nothing\b|\{@link \w+\}/.test(throws))
    report(name, '@throws names no error by {@link ...} and is not "Nothing."');
  if (!textOf('see')) report(name, 'no @see');

  const fences = block.tags.filter((tag) => tag.name === 'example').flatMap((tag) => fencesOf(tag.text));
  const running = fences.filter((fence) => fence.language === 'ts');
  if (running.length === 0) report(name, 'no @example with a ts fence');
  else {
    if (!running.some((fence) => fence.code.includes('// =>'))) report(name, '@example asserts nothing (no "// =>")');
    const importsPackage = new RegExp(`from '${packageName}(/[\\w/-]+)?'`);
    if (!running.some((fence) => importsPackage.test(fence.code) && fence.code.includes(name))) {
      report(name, `@example does not import ${name} from ${packageName}`);
    }
  }

  const places = block.tags.map((tag) => ORDER.indexOf(tag.name)).filter((place) => place >= 0);
  if (places.some((place, index) => index > 0 && place < (places[index - 1] ?? 0))) {
    report(name, `tags are not in the order @${ORDER.join(', @')}`);
  }
}

function checkClass(checker: ts.TypeChecker, node: ts.ClassDeclaration, name: string, report: Report): void {
  for (const member of node.members) {
    if (ts.getCombinedModifierFlags(member) & ts.ModifierFlags.Private) continue;
    const path = `${name}.${member.name?.getText() ?? 'constructor'}`;
    const block = blockOf(member);
    if (ts.isConstructorDeclaration(member)) {
      const have = (block?.tags ?? []).filter((tag) => tag.name === 'param').map((tag) => tag.text.split(/\s/)[0]);
      const wanted = member.parameters.map((parameter) => parameter.name.getText());
      if (wanted.join() !== have.join())
        report(path, `@param names are [${have.join(', ')}], not [${wanted.join(', ')}]`);
      continue;
    }
    describe(block, path, report);
    checkNumericName(checker, member, name, report);
  }
}

function checkMembers(
  checker: ts.TypeChecker,
  members: ts.NodeArray<ts.TypeElement>,
  path: string,
  report: Report,
): void {
  for (const member of members) {
    if (!member.name) continue;
    const inner = `${path}.${member.name.getText()}`;
    if (!isBoundName(member.name.getText()) || ts.isInterfaceDeclaration(member.parent)) {
      describe(blockOf(member), inner, report);
    }
    checkNumericName(checker, member, path, report);
    if (ts.isPropertySignature(member) && member.type) checkTypeNode(checker, member.type, inner, report);
  }
}

/** `{ lower, nominal, upper }` inside a field that is described needs no words of its own. */
const isBoundName = (name: string): boolean => /^(lower|nominal|upper)$/.test(name);

/** Object literals and their intersections declare fields of their own; members of a union are told apart in its text. */
function checkTypeNode(checker: ts.TypeChecker, node: ts.TypeNode, path: string, report: Report): void {
  if (ts.isTypeLiteralNode(node)) checkMembers(checker, node.members, path, report);
  else if (ts.isIntersectionTypeNode(node)) for (const part of node.types) checkTypeNode(checker, part, path, report);
  else if (ts.isArrayTypeNode(node)) checkTypeNode(checker, node.elementType, path, report);
  else if (ts.isTypeOperatorNode(node) || ts.isParenthesizedTypeNode(node))
    checkTypeNode(checker, node.type, path, report);
  else checkNestedNames(checker, node, path, report);
}

/** Looks at the names of numbers in literals that stand inside a larger type. */
function checkNestedNames(checker: ts.TypeChecker, node: ts.Node, path: string, report: Report): void {
  if (ts.isPropertySignature(node)) checkNumericName(checker, node, path, report);
  ts.forEachChild(node, (child) => checkNestedNames(checker, child, path, report));
}

function checkNumericName(checker: ts.TypeChecker, node: ts.NamedDeclaration, path: string, report: Report): void {
  const name = node.name?.getText().replace(/^'|'$/g, '');
  if (name === undefined || name.startsWith('{')) return;
  if (isNumeric(checker, checker.getTypeAtLocation(node)) && !saysItsUnit(name)) {
    report(`${path}.${name}`, 'a number whose name ends in no unit and is not on the dimensionless list');
  }
}

/** A number, limits, a reading, or a column of numbers; absent or null allowed beside it. */
function isNumeric(checker: ts.TypeChecker, type: ts.Type): boolean {
  if (NUMERIC_TYPES.has(type.aliasSymbol?.name ?? '')) return true;
  if (type.isUnion()) {
    const parts = type.types.filter((part) => !(part.flags & (ts.TypeFlags.Undefined | ts.TypeFlags.Null)));
    return parts.length > 0 && parts.every((part) => isNumeric(checker, part));
  }
  if (type.flags & ts.TypeFlags.Number) return true;
  const { name } = type.symbol ?? {};
  if (name !== undefined && (NUMERIC_TYPES.has(name) || NUMERIC_ARRAYS.test(name))) return true;
  const element = checker.isArrayType(type) ? checker.getTypeArguments(type as ts.TypeReference)[0] : undefined;
  return element !== undefined && isNumeric(checker, element);
}
