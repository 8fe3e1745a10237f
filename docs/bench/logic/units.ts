import { convert, parseQuantity, type Unit } from '@spindlewright/quantity';

/** Which units a page shows; numbers are kept in the first of each pair whatever is shown. */
export type UnitSystem = 'metric' | 'inch';
/** What a number on a bench is. */
export type QuantityKind = 'length' | 'gap' | 'torque' | 'force' | 'pressure' | 'angle' | 'plain';

interface Shown {
  unit: Unit;
  text: string;
  decimals: number;
}

// Kept: mm, Nm, N, MPa, deg. A shop thinks in kilonewtons or pounds, in newton metres or pound-inches.
const SHOWN: Record<Exclude<QuantityKind, 'plain'>, Record<UnitSystem, Shown>> = {
  length: { metric: { unit: 'mm', text: 'mm', decimals: 2 }, inch: { unit: 'in', text: 'in', decimals: 4 } },
  // Gaps are read with a depth rod, to a tenth of a millimetre, and the sheet says no more either.
  gap: { metric: { unit: 'mm', text: 'mm', decimals: 1 }, inch: { unit: 'in', text: 'in', decimals: 3 } },
  torque: { metric: { unit: 'Nm', text: 'N·m', decimals: 1 }, inch: { unit: 'lbf.in', text: 'lbf·in', decimals: 0 } },
  force: { metric: { unit: 'kN', text: 'kN', decimals: 1 }, inch: { unit: 'lbf', text: 'lbf', decimals: 0 } },
  pressure: { metric: { unit: 'MPa', text: 'MPa', decimals: 0 }, inch: { unit: 'psi', text: 'psi', decimals: 0 } },
  angle: { metric: { unit: 'deg', text: '°', decimals: 2 }, inch: { unit: 'deg', text: '°', decimals: 2 } },
};

const KEPT = { length: 'mm', gap: 'mm', torque: 'Nm', force: 'N', pressure: 'MPa', angle: 'deg' } as const;

const change = (value: number, from: Unit, to: Unit): number => convert(value, from, to as never);

/** Unit behind a field or a value. */
export const unitText = (kind: QuantityKind, system: UnitSystem): string =>
  kind === 'plain' ? '' : SHOWN[kind][system].text;

/** A kept number as text in the unit shown, without trailing zeros: what a field holds. */
export function toField(kept: string, kind: QuantityKind, system: UnitSystem): string {
  // An address may hold what is no number; it is shown as it came, for the answer to name.
  if (kept === '' || kind === 'plain' || !Number.isFinite(Number(kept))) return kept;
  const value = change(Number(kept), KEPT[kind], SHOWN[kind][system].unit);
  return Number.isFinite(value) ? String(Number(value.toPrecision(7))) : kept;
}

/** What somebody typed, as a kept number; text with a unit of its own may be in any unit. Undefined = no such number. */
export function fromField(typed: string, kind: QuantityKind, system: UnitSystem): string | undefined {
  const text = typed.trim().replace(/^([+-]?\d*),(\d+)/, '$1.$2');
  if (text === '') return '';
  if (/^[+-]?(\d+\.?\d*|\.\d+)$/.test(text)) {
    const plain = Number(text);
    if (kind === 'plain') return String(plain);
    return String(Number(change(plain, SHOWN[kind][system].unit, KEPT[kind]).toPrecision(10)));
  }
  if (kind === 'plain') return undefined;
  try {
    const { value, unit } = parseQuantity(typed);
    return String(Number(change(value, unit, KEPT[kind]).toPrecision(10)));
  } catch {
    return undefined;
  }
}

type Rounding = (value: number) => number;

/** A kept number with its unit, rounded for reading. */
export function show(
  kept: number | null | undefined,
  kind: QuantityKind,
  system: UnitSystem,
  round: Rounding = Math.round,
): string {
  if (kept === null || kept === undefined) return 'not known';
  if (kind === 'plain') return String(Number(kept.toPrecision(3)));
  const { unit, text, decimals } = SHOWN[kind][system];
  const scale = 10 ** decimals;
  const scaled = change(kept, KEPT[kind], unit) * scale;
  // What already meets the last decimal, but for the last bit of its double, is not pushed past it.
  const whole = Math.abs(scaled - Math.round(scaled)) < 1e-6 ? Math.round(scaled) : round(scaled);
  const value = (whole / scale).toFixed(decimals);
  return `${Number(value) === 0 ? value.replace('-', '') : value.replace('-', '−')}${text === '°' ? '' : ' '}${text}`;
}

/** Limits as "nominal (lower to upper)"; bounds are rounded outward, so that they still hold. */
export function showLimits(
  limits: { lower: number; nominal: number; upper: number } | null | undefined,
  kind: QuantityKind,
  system: UnitSystem,
): string {
  if (!limits) return 'not known';
  const nominal = show(limits.nominal, kind, system);
  if (limits.lower === limits.upper) return nominal;
  const unit = ` ${unitText(kind, system)}`;
  const bare = (value: number, round: Rounding): string => show(value, kind, system, round).replace(unit, '');
  return `${nominal} (${bare(limits.lower, Math.floor)} to ${bare(limits.upper, Math.ceil)})`;
}
