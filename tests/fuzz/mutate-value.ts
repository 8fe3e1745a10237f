// Broken values from good ones, as JSON could bring them: so that what lies behind the reader of JSON is reached.

/** Values that checks have to refuse or to bear. */
const STRANGE: readonly unknown[] = [
  ...[null, true, false, 0, -0, -1, 0.1, 1e-320, 1e308, -1e308, 2 ** 53, 12.65, 2, 400],
  ...['', ' ', '0', 'NaN', '12,65', 'square-taper-jis', '__proto__', '\u0000', '\ud800', '=1+1', 'x'.repeat(5000)],
  ...[[], {}, [[]], [null], [1, 2, 3], { lower: 2, nominal: 1, upper: 0 }, { lower: 1, nominal: 2, upper: 3 }],
  ...[
    { value: 12.6, standardUncertainty: 0.01 },
    { value: 1, standardUncertainty: -1 },
    { value: 1e308, standardUncertainty: 1e308 },
  ],
  ...[JSON.parse('{"__proto__":{"polluted":1}}'), JSON.parse('{"constructor":{"prototype":{"polluted":1}}}')],
];

const FACTORS = [0, -1, 1e-9, 1e9, 0.99, 1.01, 10];

type Box = Record<string, unknown> | unknown[];

const isBox = (value: unknown): value is Box => typeof value === 'object' && value !== null;

/** Every object and list inside a value, the value itself included. */
function boxesOf(value: unknown, found: Box[] = []): Box[] {
  if (!isBox(value) || found.length > 2000) return found;
  found.push(value);
  for (const inner of Object.values(value)) boxesOf(inner, found);
  return found;
}

/** One value made from others by one to four replaced, removed, added, renamed or nested members; its parts are new. */
export function mutateValue(corpus: readonly unknown[], random: () => number): unknown {
  const below = (count: number): number => Math.floor(random() * count);
  const pick = (list: readonly unknown[]): unknown => structuredClone(list[below(list.length)]);
  let value = pick(corpus);
  for (let left = 1 + below(4); left > 0; left--) {
    const boxes = boxesOf(value);
    const box = boxes[below(boxes.length)];
    if (box === undefined || random() < 0.02) {
      value = pick(STRANGE);
      continue;
    }
    const keys = Object.keys(box);
    const key = keys[below(keys.length)] ?? 'added';
    const others = boxesOf(corpus[below(corpus.length)]);
    switch (below(6)) {
      case 0:
        put(box, key, pick(STRANGE));
        break;
      case 1:
        if (Array.isArray(box)) box.splice(below(box.length), 1);
        else delete box[key];
        break;
      case 2:
        // A member of the wrong place: the commonest fault of a file that was edited by hand.
        put(box, random() < 0.5 ? key : 'added', structuredClone(others[below(others.length)] ?? null));
        break;
      case 3:
        put(box, random() < 0.5 ? `${key}x` : key.slice(1), read(box, key));
        break;
      case 4: {
        const number = read(box, key);
        if (typeof number === 'number') put(box, key, number * (FACTORS[below(FACTORS.length)] ?? 1));
        else put(box, key, [structuredClone(number)]);
        break;
      }
      default: {
        let nested: unknown = pick(STRANGE);
        for (let depth = [1, 3, 50, 500][below(4)] ?? 1; depth > 0; depth--)
          nested = random() < 0.5 ? [nested] : { [key]: nested };
        put(box, key, nested);
      }
    }
  }
  return value;
}

const read = (box: Box, key: string): unknown => (box as Record<string, unknown>)[key];

/** Sets a member of its own, also under a name such as `__proto__`. */
function put(box: Box, key: string, value: unknown): void {
  Object.defineProperty(box, key, { value, enumerable: true, configurable: true, writable: true });
}
