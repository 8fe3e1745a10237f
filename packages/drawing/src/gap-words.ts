import { decimalsFor, type LabelKey, type Wording } from './labels.ts';
import type { Gap, GapKind, Place, SeatScene } from './seat-scene.ts';

/** Key of the words that say between what a gap lies. @internal */
export function meaningKey(scene: SeatScene, kind: GapKind): LabelKey {
  if (kind === 'end') return 'end-gap-meaning';
  return scene.stopIsWall ? 'shoulder-gap-meaning' : 'run-out-gap-meaning';
}

/** The two lines beside a dimension: the value, and how far it may be off. @internal */
export function gapWords(input: { gap: Gap | null; place: Place; name: 'hand' | 'pressed'; wording: Wording }): {
  first: string;
  second: string;
  tone: string;
} {
  const { gap, place, name, wording } = input;
  const label = wording.say(name === 'hand' ? 'hand-fit' : 'pressed');
  if (gap === null) return { first: `${label}: ${wording.say('gap-unknown')}`, second: '', tone: name };
  const decimals = decimalsFor(gap.limits);
  // A value never stands on another line than its unit.
  const millimetres = (value: number): string =>
    wording.say('unit-mm', { value: wording.number(value, decimals) }).replaceAll(' ', '\u00a0');
  const range =
    gap.limits.lower === gap.limits.upper
      ? wording.say('no-limits')
      : wording.say('limits-range', wording.bounds(gap.limits, decimals));
  if (place.shortMm > 0) {
    return gap.drawnMm === 0
      ? {
          first: `${label}: ${wording.say('touches-short', { short: millimetres(place.shortMm) })}`,
          second: range,
          tone: 'contact',
        }
      : {
          first: `${label}: ${wording.say('stopped-at', { value: millimetres(gap.drawnMm) })}`,
          second: wording.say('would-be', { value: millimetres(gap.limits.nominal) }),
          tone: name,
        };
  }
  if (gap.drawnMm === 0) return { first: `${label}: ${wording.say('touches')}`, second: range, tone: 'contact' };
  const touch = gap.limits.lower <= 0 ? `; ${wording.say('may-touch')}` : '';
  return { first: `${label} ${millimetres(gap.limits.nominal)}`, second: range + touch, tone: name };
}
