import type { Finding } from '@spindlewright/quantity';
import { jobDefaults } from './defaults.ts';
import type { SeatPart } from './seat-part.ts';

/** Ids of every source that took part in a sheet, sorted, without repeats. @internal */
export function sourcesOf(seat: SeatPart, findings: readonly Finding[]): string[] {
  const ids = [
    ...[seat.lead, ...seat.others].flatMap((way) => [
      ...way.sources,
      ...way.prediction.findings.flatMap((finding) => finding.sources),
    ]),
    ...seat.mate.sources,
    ...seat.press.tradeTorques.flatMap((row) => row.sources),
    ...findings.flatMap((finding) => finding.sources),
    ...Object.values(jobDefaults).flatMap((datum) => datum.sources),
  ];
  return [...new Set(ids)].sort();
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
