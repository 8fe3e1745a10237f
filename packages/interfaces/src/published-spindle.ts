import { type Datum, type LimitsInput, limitsOf, type Standing } from '@spindlewright/quantity';
import { dataEdition } from './data-edition.ts';
import type { PublishedGeometry, SquareTaperSpindle } from './published-geometry.ts';
import type { SquareTaperGeometry, TaperSet } from './record.ts';

// Best first; a geometry is as good as the weakest number in it.
const STANDINGS: readonly Standing[] = [
  'standard',
  'handbook',
  'measured',
  'secondary',
  'derived',
  'common-practice',
  'judgement',
  'from-memory',
  'invented',
];

/** The spindle of one set, with the fallbacks of its record where the set is silent. @internal */
export function publishedSpindle(
  set: TaperSet,
  fallback: SquareTaperGeometry['fallback'],
): PublishedGeometry<SquareTaperSpindle> {
  const faceAngle = set.faceAngleDeg ?? fallback.faceAngleDeg;
  const flatLength = set.flatLengthMm ?? fallback.flatLengthMm;
  const used = [set.acrossFlatsAtEndMm, faceAngle, flatLength];
  const silent = [
    ...(set.faceAngleDeg === undefined ? ['faceAngleDeg'] : []),
    ...(set.flatLengthMm === undefined ? ['flatLengthMm'] : []),
  ];
  const notes = [
    ...(silent.length === 0 ? [] : [`Not in this set, taken from the record: ${silent.join(', ')}.`]),
    ...set.interpreted.map(({ why }) => why),
  ];
  return {
    geometry: {
      acrossFlatsAtEndMm: boundsOf(set.acrossFlatsAtEndMm),
      faceAngleDeg: boundsOf(faceAngle),
      flatLengthMm: boundsOf(flatLength),
    },
    set: set.id,
    sources: [...new Set(used.flatMap((datum) => datum.sources))].sort(),
    standing: STANDINGS[Math.max(...used.map((datum) => STANDINGS.indexOf(datum.standing)))] ?? 'invented',
    assumed: [...silent, ...set.interpreted.map(({ field }) => field)],
    ...(notes.length === 0 ? {} : { note: notes.join(' ') }),
    dataEdition,
  };
}

/** A plain number where the source gives no bound, so that an exact value stays exact. */
const boundsOf = (datum: Datum): LimitsInput =>
  datum.lower === undefined && datum.upper === undefined ? datum.value : limitsOf(datum);
