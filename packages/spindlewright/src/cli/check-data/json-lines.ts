/** Where things stand in a JSON text. @internal */
export interface JsonLines {
  /** Line of a path such as `arm.flats[0].atMm`; of the nearest thing round it where there is no such field. */
  lineOf(path: string): number;
  /** Fields that an object has twice: only the last would count, and nobody would say so. */
  repeated: readonly { path: string; line: number }[];
  /** Line of the first thing that is no JSON. */
  brokenAt?: number;
}

const TOKEN = /"(?:[^"\\]|\\.)*"|-?\d+(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null|[{}[\],:]/y;
const BLANK = /[\s\uFEFF]*/y;

/** Deeper than any file of ours; beyond it lines are no longer told apart. */
const DEEPEST = 60;

/** Finds the line of every field of a JSON text; stops at the first thing that is no JSON. @internal */
export function jsonLines(text: string): JsonLines {
  const lines = new Map<string, number>();
  const repeated: { path: string; line: number }[] = [];
  let at = 0;
  let line = 1;
  let counted = 0;
  const next = (): string => {
    BLANK.lastIndex = at;
    at += BLANK.exec(text)?.[0].length ?? 0;
    for (; counted < at; counted++) if (text.charCodeAt(counted) === 10) line++;
    TOKEN.lastIndex = at;
    const token = TOKEN.exec(text)?.[0];
    if (token === undefined) throw new Broken();
    at += token.length;
    return token;
  };
  const expect = (given: string, ...wanted: string[]): void => {
    if (!wanted.includes(given)) throw new Broken();
  };
  const value = (path: string, token: string, depth: number): void => {
    if (depth > DEEPEST) throw new Broken();
    if (token === '{') object(path, depth);
    else if (token === '[') list(path, depth);
    else if (/^[}\],:]/.test(token)) throw new Broken();
  };
  const object = (path: string, depth: number): void => {
    const own = new Set<string>();
    let token = next();
    while (token !== '}') {
      if (!token.startsWith('"')) throw new Broken();
      const key = textOf(token);
      const inner = path === '' ? key : `${path}.${key}`;
      if (own.has(key)) repeated.push({ path: inner, line });
      own.add(key);
      lines.set(inner, line);
      expect(next(), ':');
      value(inner, next(), depth + 1);
      token = next();
      expect(token, ',', '}');
      if (token === ',') token = next();
    }
  };
  const list = (path: string, depth: number): void => {
    let token = next();
    for (let index = 0; token !== ']'; index++) {
      const inner = `${path}[${index}]`;
      lines.set(inner, line);
      value(inner, token, depth + 1);
      token = next();
      expect(token, ',', ']');
      if (token === ',') token = next();
    }
  };
  let brokenAt: number | undefined;
  try {
    value('', next(), 0);
  } catch (error) {
    if (!(error instanceof Broken)) throw error;
    brokenAt = line;
  }
  const lineOf = (path: string): number => {
    for (let rest = path; rest !== ''; rest = parentOf(rest)) {
      const found = lines.get(rest);
      if (found !== undefined) return found;
    }
    return 1;
  };
  return { lineOf, repeated, ...(brokenAt === undefined ? {} : { brokenAt }) };
}

class Broken extends Error {}

function textOf(token: string): string {
  try {
    return JSON.parse(token) as string;
  } catch {
    throw new Broken();
  }
}

const parentOf = (path: string): string => path.slice(0, Math.max(path.lastIndexOf('.'), path.lastIndexOf('['), 0));
