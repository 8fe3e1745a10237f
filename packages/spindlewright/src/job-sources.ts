import { type Finding, formatFinding } from '@spindlewright/quantity';
import { messages as taperMessages } from '@spindlewright/taper/messages/en';
import type { JudgedCandidate } from './candidates.ts';
import { jobDefaults } from './defaults.ts';
import type { SeatPart } from './seat-part.ts';
import { pathWords } from './seat-words.ts';
import type { TighteningPart } from './tightening-part.ts';

/** Ids of every source that took part in a sheet, sorted, without repeats. @internal */
export function sourcesOf(
  seat: SeatPart | undefined,
  tightening: TighteningPart,
  candidates: readonly JudgedCandidate[],
  findings: readonly Finding[],
): string[] {
  const seats = [...(seat === undefined ? [] : [seat]), ...candidates.map((candidate) => candidate.seat)];
  const ids = [
    ...seats.flatMap(({ lead, others, mate }) => [
      ...[lead, ...others].flatMap((way) => [
        ...way.sources,
        ...way.prediction.findings.flatMap((finding) => finding.sources),
      ]),
      ...mate.sources,
    ]),
    ...tightening.press.tradeTorques.flatMap((row) => row.sources),
    ...findings.flatMap((finding) => finding.sources),
    ...Object.values(jobDefaults).flatMap((datum) => datum.sources),
  ];
  return [...new Set(ids)].sort();
}

/** Codes that the sheet's standing cautions already say. */
const SAID_BY_CAUTIONS = ['instructions-first', 'follow-maker'];

/** Drops what the sheet says elsewhere and words field paths for a reader; codes and values stay as they are. @internal */
export function forReader(findings: readonly Finding[]): Finding[] {
  return findings
    .filter(({ code }) => !SAID_BY_CAUTIONS.includes(code))
    .map((finding) => {
      const path = finding.values.path;
      if (typeof path !== 'string') return finding;
      const worded = { ...finding, values: { ...finding.values, path: pathWords(path) } };
      return { ...finding, message: formatFinding(worded, taperMessages) };
    });
}

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
