/** A piece of SQL: what is known beforehand is a number, the rest is text over columns that stand one level below. */
export interface Term {
  text: string;
  /** The number, when nothing of a row enters. */
  value: number | undefined;
  /** Number of selections that have to come before. */
  level: number;
}

/** A piece of SQL that is true or false. */
export interface Condition {
  text: string;
  value: boolean | undefined;
  level: number;
}

/** A number in exponent form with all its digits: a double, or in PostgreSQL what becomes one beside a double. */
export function literal(value: number): Term {
  const text = value.toExponential().replace('e', 'E');
  return { text: value < 0 ? `(${text})` : text, value, level: 0 };
}

const termOf = (value: Term | number): Term => (typeof value === 'number' ? literal(value) : value);

type Operand = Term | number;

function combine(sign: string, work: (a: number, b: number) => number): (a: Operand, b: Operand) => Term {
  return (first, second) => {
    const [a, b] = [termOf(first), termOf(second)];
    if (a.value !== undefined && b.value !== undefined) return literal(work(a.value, b.value));
    return { text: `(${a.text} ${sign} ${b.text})`, value: undefined, level: Math.max(a.level, b.level) };
  };
}

export const plus = /* @__PURE__ */ combine('+', (a, b) => a + b);
export const minus = /* @__PURE__ */ combine('-', (a, b) => a - b);
export const times = /* @__PURE__ */ combine('*', (a, b) => a * b);
export const over = /* @__PURE__ */ combine('/', (a, b) => a / b);

function compare(sign: string, work: (a: number, b: number) => boolean): (a: Operand, b: Operand) => Condition {
  return (first, second) => {
    const [a, b] = [termOf(first), termOf(second)];
    const value = a.value === undefined || b.value === undefined ? undefined : work(a.value, b.value);
    return { text: `${a.text} ${sign} ${b.text}`, value, level: Math.max(a.level, b.level) };
  };
}

export const less = /* @__PURE__ */ compare('<', (a, b) => a < b);
export const atMost = /* @__PURE__ */ compare('<=', (a, b) => a <= b);
export const more = /* @__PURE__ */ compare('>', (a, b) => a > b);
export const atLeast = /* @__PURE__ */ compare('>=', (a, b) => a >= b);

const known = (value: boolean): Condition => ({ text: value ? '1E+0 > 0E+0' : '1E+0 < 0E+0', value, level: 0 });

/** True when all are; what is known beforehand is left out. */
export function all(...conditions: readonly Condition[]): Condition {
  if (conditions.some(({ value }) => value === false)) return known(false);
  return joined(conditions, ' AND ', true);
}

/** True when any is. */
export function any(...conditions: readonly Condition[]): Condition {
  if (conditions.some(({ value }) => value === true)) return known(true);
  return joined(conditions, ' OR ', false);
}

function joined(conditions: readonly Condition[], by: string, otherwise: boolean): Condition {
  const open = conditions.filter(({ value }) => value === undefined);
  const [only] = open;
  if (only === undefined) return known(otherwise);
  if (open.length === 1) return only;
  return {
    text: `(${open.map(({ text }) => text).join(by)})`,
    value: undefined,
    level: Math.max(...open.map(({ level }) => level)),
  };
}

export const not = ({ text, value, level }: Condition): Condition =>
  value === undefined ? { text: `NOT (${text})`, value, level } : known(!value);

/** The one or the other number. */
export function choose(condition: Condition, yes: Operand, no: Operand): Term {
  const [a, b] = [termOf(yes), termOf(no)];
  if (condition.value !== undefined) return condition.value ? a : b;
  return {
    text: `CASE WHEN ${condition.text} THEN ${a.text} ELSE ${b.text} END`,
    value: undefined,
    level: Math.max(condition.level, a.level, b.level),
  };
}

// Written out, since engines disagree on LEAST and GREATEST where something is NULL.
export const least = (a: Operand, b: Operand): Term => choose(less(a, b), a, b);
export const greatest = (a: Operand, b: Operand): Term => choose(more(a, b), a, b);

function applied(name: string, work: (value: number) => number): (a: Operand) => Term {
  return (operand) => {
    const a = termOf(operand);
    if (a.value !== undefined) return literal(work(a.value));
    return { text: `${name}(${a.text})`, value: undefined, level: a.level };
  };
}

export const squareRoot = /* @__PURE__ */ applied('SQRT', Math.sqrt);
export const wholeBelow = /* @__PURE__ */ applied('FLOOR', Math.floor);

/** A power; whole ones up to the sixth are the caller's to multiply out. */
export function power(base: Operand, exponent: number): Term {
  const a = termOf(base);
  if (a.value !== undefined) return literal(a.value ** exponent);
  return { text: `POWER(${a.text}, ${literal(exponent).text})`, value: undefined, level: a.level };
}

export const square = (a: Operand): Term => times(a, a);

/** Names for pieces that are used more than once, each a column of the selection above those that it is made of. */
export interface Names {
  /** Gives a piece a name; a number stays a number. */
  define(name: string, term: Term): Term;
  /** Gives a condition a name: as 1 or 0, since not each engine has columns that are true or false. */
  decide(name: string, condition: Condition): Condition;
  /** The selections, lowest first: their columns as `text AS name`. */
  levels(): string[][];
}

/** Starts a list of names that begin alike. */
export function createNames(prefix: string): Names {
  const taken = new Set<string>();
  const columns: { level: number; text: string }[] = [];
  const define = (name: string, term: Term): Term => {
    if (term.value !== undefined) return term;
    const column = `${prefix}${name}`;
    if (taken.has(column)) throw new Error(`two columns called ${column}`);
    taken.add(column);
    columns.push({ level: term.level, text: `${term.text} AS ${column}` });
    return { text: column, value: undefined, level: term.level + 1 };
  };
  return {
    define,
    decide: (name, condition) =>
      condition.value === undefined ? more(define(name, choose(condition, 1, 0)), 0) : condition,
    levels() {
      const highest = Math.max(-1, ...columns.map(({ level }) => level));
      return Array.from({ length: highest + 1 }, (_, wanted) =>
        columns.filter(({ level }) => level === wanted).map(({ text }) => text),
      );
    },
  };
}
