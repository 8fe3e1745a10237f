// What leaves the package can be stored and sent: it equals its JSON round trip and its structured clone.
import * as core from '@spindlewright/quantity';
import { messages } from '@spindlewright/quantity/messages/en';
import * as schemas from '@spindlewright/quantity/schema';
import { getSource, listSources, toBibtex, toCslJson } from '@spindlewright/quantity/sources';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bounded, limitsValue, measurandValue, unitTriple } from './arbitraries.ts';

function expectPlain(result: unknown): void {
  expect(JSON.parse(JSON.stringify(result))).toStrictEqual(result);
  expect(structuredClone(result)).toStrictEqual(result);
}

const sourceId = fc.constantFrom(...listSources().map(({ id }) => id));
const datum = limitsValue.map(
  ({ lower, nominal, upper }): core.Datum => ({
    value: nominal,
    lower,
    upper,
    unit: 'mm',
    standing: 'invented',
    sources: [],
  }),
);
const finding = fc.record({
  code: fc.constant('end-gap'),
  severity: fc.constantFrom('stop', 'caution', 'note'),
  template: fc.string({ minLength: 1 }),
  values: fc.dictionary(fc.string(), fc.oneof(bounded, fc.string()), { noNullPrototype: true }),
  sources: fc.array(sourceId),
});

/** The refusal of a call that is certain to be refused. */
function refusal(call: () => unknown): core.DomainError {
  try {
    call();
  } catch (error) {
    if (core.isDomainError(error)) return error;
    throw error;
  }
  throw new Error('nothing was refused');
}

/** A call of each export by name, on random input; `checkInput` and `DomainError` are seen by what they throw. */
const calls: Record<string, fc.Arbitrary<() => unknown>> = {
  DomainError: fc
    .string()
    .map((path) => () => new core.DomainError('x', [{ path, received: '1', allowed: '2' }]).issues),
  checkInput: fc.anything().map((value) => () => {
    const fields = { a: { type: 'flag' } } as const;
    return refusal(() => core.checkInput({ where: 'x', value: { b: value }, fields })).issues;
  }),
  convert: fc.tuple(bounded, unitTriple).map(
    ([value, [a, b]]) =>
      () =>
        core.convert(value, a, b),
  ),
  createFinding: finding.map((input) => () => core.createFinding(input)),
  formatFinding: finding.map((input) => () => core.formatFinding(core.createFinding(input), messages)),
  hardLimits: measurandValue.map((measurand) => () => core.hardLimits(measurand)),
  isDomainError: fc.anything().map((value) => () => core.isDomainError(value)),
  limits: limitsValue.map((value) => () => core.limits(value)),
  limitsOf: datum.map((value) => () => core.limitsOf(value)),
  nearestName: fc
    .tuple(fc.string(), fc.array(fc.string()))
    // JSON knows no undefined on its own; inside a list it is null.
    .map(
      ([name, known]) =>
        () =>
          core.nearestName({ name, known }) ?? null,
    ),
  parseQuantity: fc.tuple(bounded, unitTriple).map(
    ([value, [unit]]) =>
      () =>
        core.parseQuantity(`${value} ${unit}`),
  ),
  version: fc.constant(() => core.version),
  getSource: sourceId.map((id) => () => getSource(id)),
  listSources: fc.constant(() => listSources()),
  toBibtex: fc.array(sourceId).map((ids) => () => toBibtex(ids)),
  toCslJson: fc.array(sourceId).map((ids) => () => toCslJson(ids)),
  jsonSchemaOf: fc
    .constantFrom(schemas.limitsSchema, schemas.datumSchema, schemas.findingSchema)
    .map((schema) => () => schemas.jsonSchemaOf(schema, 'x')),
};

describe('results', () => {
  it('of every export are looked at here', () => {
    const functions = Object.entries(schemas).filter(([, value]) => typeof value === 'function');
    const named = [...Object.keys(core), ...functions.map(([key]) => key)];
    expect(named.filter((name) => !Object.hasOwn(calls, name))).toEqual([]);
  });

  it.each(Object.entries(calls))('of %s are plain data', (_name, call) => {
    fc.assert(
      fc.property(call, (run) => expectPlain(run())),
      { numRuns: 50 },
    );
  });

  it('in the form of templates are plain data', () => {
    expectPlain(messages);
  });
});
