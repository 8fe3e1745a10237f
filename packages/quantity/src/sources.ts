import { describeValue } from './describe-value.ts';
import { DomainError } from './domain-error.ts';
import { escapeTex } from './escape-tex.ts';
import { nearestName } from './nearest-name.ts';
import register from './sources.json' with { type: 'json' };

/** How a source was seen: its text, its front matter or contents only, quoted by somebody else, or from memory. */
export type SourceAccess = 'text' | 'front-matter' | 'quoted' | 'memory' | 'own';

/** A document that numbers of the project rest on. */
export interface Source {
  /** Stable id, never reused. */
  id: string;
  /** Title or description of the document. */
  title: string;
  /** Edition, revision or date, as printed; empty when none is given. */
  edition: string;
  /** Who published it; empty when unknown. */
  publisher: string;
  /** Where it can be found: standard number, DOI or address. */
  locator: string;
  /** How it was seen. */
  access: SourceAccess;
}

const SOURCES = register as readonly Source[];

/**
 * Lists every source in the register, in the order of the ids.
 *
 * @remarks
 * Formula: none.
 *
 * Validity: the whole register of this edition.
 *
 * Accuracy: exact.
 *
 * @returns A new list of new records; changing them changes nothing else.
 * @throws Nothing.
 * @example
 * ```ts
 * import { listSources } from '@spindlewright/quantity/sources';
 * listSources().some((source) => source.id === 'shigley-9'); // => true
 * ```
 * @see The register itself, `src/sources.json`.
 */
export function listSources(): readonly Source[] {
  return SOURCES.map((source) => ({ ...source }));
}

/**
 * Looks a source up by its id.
 *
 * @remarks
 * Formula: none.
 *
 * Validity: ids of the register; ids are never reused.
 *
 * Accuracy: exact.
 *
 * @param id - Id of the source, such as `shigley-9`.
 * @returns A new record.
 * @throws {@link DomainError} for an unknown id, with the nearest one.
 * @example
 * ```ts
 * import { getSource } from '@spindlewright/quantity/sources';
 * getSource('shigley-9').edition; // => '9th edition'
 * ```
 * @see The register itself, `src/sources.json`.
 */
export function getSource(id: string): Source {
  return { ...find(id, 'getSource', 'id') };
}

function find(id: string, where: string, path: string): Source {
  const found = SOURCES.find((source) => source.id === id);
  if (found !== undefined) return found;
  const known = SOURCES.map((source) => source.id);
  const nearest = typeof id === 'string' ? nearestName({ name: id, known }) : undefined;
  const allowed = 'an id that listSources() gives';
  throw new DomainError(where, [
    { path, received: describeValue(id), allowed, ...(nearest === undefined ? {} : { nearest }) },
  ]);
}

function findAll(ids: readonly string[], where: string): readonly Source[] {
  if (Array.isArray(ids)) return Array.from(ids, (id: string, index) => find(id, where, `ids[${index}]`));
  throw new DomainError(where, [{ path: 'ids', received: describeValue(ids), allowed: 'a list of ids' }]);
}

/** The fields of a CSL-JSON item that the register fills. */
export interface CslItem {
  /** Id of the source. */
  id: string;
  /** CSL type. */
  type: 'document';
  /** Title. */
  title: string;
  /** Edition, when known. */
  edition?: string;
  /** Publisher, when known. */
  publisher?: string;
  /** Standard number, DOI or address. */
  note: string;
}

/**
 * Gives sources as CSL-JSON items, for reference managers.
 *
 * @remarks
 * Formula: none; the locator goes to `note`, since it may be a standard number, a DOI or an address.
 *
 * Validity: ids of the register.
 *
 * Accuracy: exact.
 *
 * @param ids - Ids wanted, in the order wanted.
 * @returns One item an id.
 * @throws {@link DomainError} for an unknown id, with its place in the list.
 * @example
 * ```ts
 * import { toCslJson } from '@spindlewright/quantity/sources';
 * toCslJson(['shigley-9'])[0]?.type; // => 'document'
 * ```
 * @see Citation Style Language, CSL-JSON schema 1.0.2.
 */
export function toCslJson(ids: readonly string[]): CslItem[] {
  return findAll(ids, 'toCslJson').map(({ id, title, edition, publisher, locator }) => ({
    id,
    type: 'document',
    title,
    ...(edition === '' ? {} : { edition }),
    ...(publisher === '' ? {} : { publisher }),
    note: locator,
  }));
}

/**
 * Gives sources as BibTeX entries.
 *
 * @remarks
 * Formula: none; each source becomes one `@misc` entry, characters special to TeX escaped;
 * letters beyond ASCII stay as they are, so the file is UTF-8.
 *
 * Validity: ids of the register.
 *
 * Accuracy: exact.
 *
 * @param ids - Ids wanted, in the order wanted.
 * @returns Text of the entries, each ended by a line break.
 * @throws {@link DomainError} for an unknown id, with its place in the list.
 * @example
 * ```ts
 * import { toBibtex } from '@spindlewright/quantity/sources';
 * toBibtex(['shigley-9']).startsWith('@misc{shigley-9,'); // => true
 * ```
 * @see Patashnik, BibTeXing (1988): entry type `misc`.
 */
export function toBibtex(ids: readonly string[]): string {
  return findAll(ids, 'toBibtex')
    .map(({ id, title, edition, publisher, locator }) => {
      const fields = Object.entries({ title, edition, publisher, note: locator })
        .filter(([, text]) => text !== '')
        .map(([key, text]) => `  ${key} = {${escapeTex(text)}}`);
      return `@misc{${id},\n${fields.join(',\n')}\n}\n`;
    })
    .join('');
}
