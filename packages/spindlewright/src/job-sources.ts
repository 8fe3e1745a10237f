import { messages as diagnosisMessages } from '@spindlewright/diagnosis/messages/en';
import { messages as interfacesMessages } from '@spindlewright/interfaces/messages/en';
import { type Datum, type Finding, formatFinding, type Messages } from '@spindlewright/quantity';
import { listSources } from '@spindlewright/quantity/sources';
import { messages as taperMessages } from '@spindlewright/taper/messages/en';
import { checkName } from './joint-words.ts';
import { messages as ownMessages } from './messages/en.ts';
import type { SeatFacts } from './seat-part.ts';
import { pathWords, recordWords, verdictWords } from './seat-words.ts';
import type { Section } from './sheet.ts';

/** Ids of every source that a sheet cites or rests on, sorted, without repeats. @internal */
export function sourcesOf(
  sections: readonly Section[],
  findings: readonly Finding[],
  taken: readonly Datum[],
  seats: readonly SeatFacts[],
): string[] {
  const known = new Set(listSources().map(({ id }) => id));
  // A drawing cites nothing and is most of what a sheet holds.
  const worded = sections.map(({ blocks }) => blocks.filter(({ kind }) => kind !== 'drawing'));
  const cited = (JSON.stringify(worded).match(/[a-z0-9]+(?:-[a-z0-9]+)+/g) ?? []).filter((word) => known.has(word));
  const ids = [
    ...cited,
    ...findings.flatMap(({ sources }) => sources),
    ...taken.flatMap(({ sources }) => sources),
    ...seats.flatMap(({ lead, others, mate }) => [
      ...[lead, ...others].flatMap((way) => way.sources),
      ...lead.prediction.findings.flatMap((finding) => finding.sources),
      ...mate.sources,
    ]),
  ];
  return [...new Set(ids)].sort();
}

/** Codes that the sheet says elsewhere: in its standing cautions, in its plan, or in its table of ways. */
const SAID_ELSEWHERE = ['instructions-first', 'follow-maker', 'caution-maker-first', 'friction-is-a-range'];

// Made when it is asked for: a spread at the top would keep every sentence in every bundle.
const templates = (): Messages => ({ ...taperMessages, ...interfacesMessages, ...diagnosisMessages, ...ownMessages });

/** Drops what the sheet says elsewhere and words ids for a reader; codes and values stay as they are. @internal */
export function forReader(findings: readonly Finding[], words: Messages = diagnosisMessages): Finding[] {
  const sentences = { ...templates(), ...words };
  return findings
    .filter(({ code }) => !SAID_ELSEWHERE.includes(code))
    .map((finding) => {
      const worded = Object.entries(finding.values).map(
        ([key, value]) => [key, key === 'probability' ? chance(value) : inWords(value, words)] as const,
      );
      // A caution may read otherwise at this joint: a cotter is no bolt.
      const asEver = words[finding.code] === diagnosisMessages[finding.code];
      if (asEver && worded.every(([key, value]) => value === finding.values[key])) return finding;
      const values: Finding['values'] = Object.fromEntries(worded);
      const message = formatFinding({ ...finding, values }, sentences);
      return { ...finding, message: message.charAt(0).toUpperCase() + message.slice(1) };
    });
}

/** A probability as a mechanic says it; never none and never certain. */
function chance(value: number | string): number | string {
  if (typeof value === 'string') return value;
  const rounded = Math.round(value * 100);
  return rounded < 1 ? 'less than 1 in 100' : `${Math.min(99, rounded)} in 100`;
}

function inWords(value: number | string, words: Messages): number | string {
  if (typeof value === 'number') return value;
  const tables: Readonly<Record<string, string>>[] = [verdictWords, recordWords];
  const found = tables.find((table) => Object.hasOwn(table, value))?.[value];
  if (found !== undefined) return found;
  for (const kind of ['action', 'condition', 'cause', 'beside']) {
    const text = words[`${kind}-${value}`];
    if (text !== undefined) return text;
  }
  // Names of checks and of their outcomes read well once their hyphens are gone.
  if (value !== 'non-drive' && (diagnosisMessages[`check-${value}`] !== undefined || OUTCOMES.test(value)))
    return checkName(words, value);
  return pathWords(value);
}

/** Words joined by hyphens, as outcomes of checks are named. */
const OUTCOMES = /^[a-z]+(-[a-z]+)+$/;

const RANK = { stop: 0, caution: 1, note: 2 } as const;

/** Orders findings gravest first and drops repeats, keeping the given order otherwise. @internal */
export function gravestFirst(findings: readonly Finding[]): Finding[] {
  const seen = new Set<string>();
  return findings
    .filter(({ code, message }) => {
      const key = `${code} ${message}`;
      if (seen.has(key)) return false;
      seen.add(key);
      return true;
    })
    .map((finding, index) => ({ finding, index }))
    .sort((a, b) => RANK[a.finding.severity] - RANK[b.finding.severity] || a.index - b.index)
    .map(({ finding }) => finding);
}
