import { listSources } from '@spindlewright/quantity/sources';
import { dataEdition } from '../../src/data-edition.ts';
import { everyObject, type Linter, type Node, trees } from './linter.ts';

const isDatum = (node: Node): boolean => 'value' in node && 'unit' in node;

export const noBareNumbers: Linter = {
  id: 'no-bare-numbers',
  rule: 'every number stands in a datum with unit, standing and sources',
  check: (data) =>
    everyObject(data).flatMap(([path, node]) =>
      isDatum(node)
        ? []
        : Object.entries(node).flatMap(([key, child]) =>
            typeof child === 'number' ? [{ place: `${path}.${key}`, message: `${child} stands alone` }] : [],
          ),
    ),
};

export const sourcesKnown: Linter = {
  id: 'sources-known',
  rule: 'sources stand in the register, each named once and in order',
  check: (data) => {
    const register = new Set(listSources().map(({ id }) => id));
    return everyObject(data).flatMap(([place, { sources }]) => {
      if (!Array.isArray(sources)) return [];
      const unknown = sources.filter((id) => !register.has(String(id)));
      if (unknown.length > 0) return [{ place, message: `not in the register: ${unknown.join(', ')}` }];
      const sorted = [...new Set(sources)].sort();
      return sorted.join() === sources.join() ? [] : [{ place, message: 'not sorted, or one named twice' }];
    });
  },
};

// Kept here beside the schema, so that data which skipped the schema are caught as well.
const WITHOUT_SOURCE = ['common-practice', 'judgement', 'from-memory'];

export const standingSourced: Linter = {
  id: 'standing-sourced',
  rule: 'a standing that claims a source names one, and nothing is invented',
  check: (data) =>
    everyObject(data).flatMap(([place, { standing, sources }]) => {
      if (standing === undefined) return [];
      if (standing === 'invented') return [{ place, message: 'is invented' }];
      const named = Array.isArray(sources) && sources.length > 0;
      return named || WITHOUT_SOURCE.includes(String(standing))
        ? []
        : [{ place, message: `${standing} without a source` }];
    }),
};

export const editionsNamed: Linter = {
  id: 'editions-named',
  rule: 'what stands as read in a standard names one whose edition is in the register',
  check: (data) => {
    const editions = new Map(listSources().map(({ id, edition }) => [id, edition]));
    return everyObject(data).flatMap(([place, { standing, sources }]) =>
      standing !== 'standard' || !Array.isArray(sources)
        ? []
        : sources.flatMap((id) =>
            (editions.get(String(id)) ?? '') === '' ? [{ place, message: `${id} has no edition` }] : [],
          ),
    );
  },
};

// A maker or a model would begin with a capital inside a sentence, or stand in capitals.
const NAMES_ALLOWED =
  /^(JIS|ISO|IS|BS|BSC|D|C|K|Q|M\d+(x[\d.]+)?|U|Nm|Table|American|British|Continental|Cycle|French|Indian|Italian|Japan|Japanese|March|October|No|P(\^[\d.]*)?|Spanish|Standard|Swiss|T)$/;

export const noProperNames: Linter = {
  id: 'no-proper-names',
  rule: 'no proper name but standards, units and countries',
  check: (data) =>
    everyObject(data).flatMap(([path, node]) =>
      Object.entries(node).flatMap(([key, text]) => {
        if (typeof text !== 'string' || key === 'designation') return [];
        const inside = text.split(/[.:;?!] /).flatMap((sentence) => sentence.split(/[\s,()/-]+/).slice(1));
        const names = inside.map((word) => word.replace(/[.;:]$/, '')).filter((word) => /^\W*\p{Lu}/u.test(word));
        const refused = names.filter((word) => !NAMES_ALLOWED.test(word));
        return refused.length === 0 ? [] : [{ place: `${path}.${key}`, message: `${refused.join(', ')} in: ${text}` }];
      }),
    ),
};

export const oneEdition: Linter = {
  id: 'one-edition',
  rule: 'every file carries the edition of the data',
  check: (data) =>
    trees(data).flatMap(({ name, data: tree }) => {
      const { dataEdition: own } = tree as { dataEdition?: unknown };
      return own === dataEdition ? [] : [{ place: name, message: `${own} is not ${dataEdition}` }];
    }),
};
