// Loading and using the package leaves the world as it was. Run in a process of its own, since the test runner itself
// changes globals.
import { execFileSync } from 'node:child_process';
import { expect, it } from 'vitest';
import { root } from '../../workspace.ts';

const SCRIPT = `
  const builtIns = Object.getOwnPropertyNames(globalThis).filter((name) => /^[A-Z]/.test(name));
  const objects = builtIns.map((name) => globalThis[name]).filter((value) => value && /object|function/.test(typeof value));
  const targets = [globalThis, ...objects, ...objects.map((object) => object.prototype).filter(Boolean)];
  const picture = () => targets.map((target) => Reflect.ownKeys(target).map((key) => [key, Object.getOwnPropertyDescriptor(target, key)]));
  const before = picture();
  const core = await import('@spindlewright/quantity');
  const { datumSchema, jsonSchemaOf } = await import('@spindlewright/quantity/schema');
  const { messages } = await import('@spindlewright/quantity/messages/en');
  const { listSources } = await import('@spindlewright/quantity/sources');
  core.convert(1, 'in', 'mm');
  core.parseQuantity('1 3/8 in');
  core.createFinding({ code: 'x', severity: 'note', template: '{x}', values: JSON.parse('{"__proto__": 1, "constructor": 2}') });
  for (const value of [JSON.parse('{"__proto__": {"polluted": true}}'), 5, { constructor: { prototype: { polluted: true } } }]) {
    try {
      core.checkInput({ where: 'x', value, fields: {} });
    } catch (error) {
      if (!core.isDomainError(error)) throw error;
    }
  }
  jsonSchemaOf(datumSchema, 'datum');
  const after = picture();
  const changed = [];
  before.forEach((entries, index) => {
    const old = new Map(entries);
    const now = new Map(after[index]);
    for (const key of new Set([...old.keys(), ...now.keys()])) {
      const [a, b] = [old.get(key), now.get(key)];
      const same = a && b && Object.is(a.value, b.value) && a.get === b.get && a.set === b.set;
      if (!same) changed.push(String(key));
    }
  });
  console.log(JSON.stringify({ looked: targets.length, changed, polluted: ({}).polluted ?? null, sources: listSources().length, templates: Object.keys(messages).length }));
`;

function run(before: string): {
  looked: number;
  changed: string[];
  polluted: unknown;
  sources: number;
  templates: number;
} {
  const out = execFileSync(
    process.execPath,
    [
      '--conditions=@spindlewright/source',
      '--input-type=module',
      '--eval',
      SCRIPT.replace('jsonSchemaOf(', `${before}jsonSchemaOf(`),
    ],
    { cwd: root, encoding: 'utf8' },
  );
  return JSON.parse(out);
}

it('changes no global and no prototype', () => {
  const { looked, changed, polluted, sources, templates } = run('');
  expect(looked).toBeGreaterThan(100);
  // zod keeps its registry and its settings there, so that copies of it share them; only ./schema loads it.
  expect(changed.filter((key) => !key.startsWith('__zod_'))).toEqual([]);
  expect(polluted).toBeNull();
  expect(sources).toBeGreaterThan(100);
  expect(templates).toBeGreaterThan(0);
});

it('would notice a change', () => {
  expect(run('Array.prototype.at = () => 1; String.prototype.seat = 1;\n  ').changed).toEqual(
    expect.arrayContaining(['at', 'seat']),
  );
});
