import { type ActionId, type Diagnosis, listActions } from '@spindlewright/diagnosis';
import type { Messages } from '@spindlewright/quantity';
import type { DiagnosisPart } from './diagnosis-part.ts';
import { NEXT_CHECKS } from './diagnosis-sections.ts';
import type { Amount, Job, PartPrice } from './job.ts';
import { jointWords } from './joint-words.ts';
import type { Section } from './sheet.ts';

/** A part that has to be bought. */
export interface PartCost {
  /** The part. */
  part: PartPrice['part'];
  /** Its price, in `unit` of the whole; absent where the shop states none. */
  price?: Amount;
}

/** What the work on one side comes to, or what is done once for both. */
export interface SideCost {
  /** The side; `both` for what is done once for both. */
  side: Job['side'] | 'both';
  /** Action that is costed. */
  action: ActionId;
  /** Minutes of work, as the shop states them for it; absent where it states none. */
  minutes?: number;
  /** Work, in `unit` of the whole; absent without the minutes. */
  work?: Amount;
  /** Parts that it needs. */
  parts: readonly PartCost[];
  /** Everything that is known of this side, in `unit` of the whole. */
  total: Amount;
}

/** What the work comes to by the shop's own figures. */
export interface CostPart {
  /** Currency, as the shop names it. */
  unit: string;
  /** Each side that is worked on, this side of the job first. */
  sides: readonly SideCost[];
  /** Minutes of the checks that the sheet names. */
  checkMinutes: number;
  /** Those checks, in `unit`. */
  checks: Amount;
  /** Minutes that are known, checks and work. */
  totalMinutes: number;
  /** Everything that is known, in `unit`. */
  total: Amount;
  /** What is left out because the shop states no figure for it, or the sheet does not name it. */
  missing: readonly string[];
}

/** Actions that are no work on the joint, unless the shop states minutes for them. */
const NO_WORK: readonly ActionId[] = ['ride', 'look-elsewhere'];

/** Actions on what both ends have in common: done once. */
const DONE_ONCE: readonly ActionId[] = ['service-bearing', 'replace-spindle'];

/** Costs both sides, as far as they are worked on, by the shop's rates. @internal */
export function costOf(job: Job, diagnosis: DiagnosisPart | undefined): CostPart | undefined {
  const { rates } = job;
  if (rates === undefined || diagnosis === undefined) return undefined;
  const { unit, chargePerMinute } = rates;
  const amount = (value: number): Amount => ({ value: Math.round(value * 100) / 100, unit });
  const bought = new Set<string>();
  const whole = diagnosis.result.joint === 'one-piece';
  const sides = workedOn(job, diagnosis).map(({ side, action }): SideCost => {
    const minutes = rates.work?.find((entry) => entry.action === action)?.minutes;
    const work = minutes === undefined ? undefined : minutes * chargePerMinute;
    // One spindle and one set of bearings serve both sides, and a crank of one piece is both arms.
    const parts = partsOf(action, rates.parts ?? [], whole).filter((part) => {
      const shared = whole || part === 'spindle' || part === 'bearing';
      const again = bought.has(part);
      bought.add(part);
      return !(shared && again);
    });
    const priced = parts.map((part) => ({ part, value: rates.parts?.find((entry) => entry.part === part)?.value }));
    return {
      side,
      action,
      ...(minutes === undefined ? {} : { minutes }),
      ...(work === undefined ? {} : { work: amount(work) }),
      parts: priced.map(({ part, value }) => ({ part, ...(value === undefined ? {} : { price: amount(value) }) })),
      total: amount((work ?? 0) + priced.reduce((sum, { value }) => sum + (value ?? 0), 0)),
    };
  });
  const checkMinutes = minutesOf(diagnosis.result);
  if (sides.length === 0 && checkMinutes === 0) return undefined;
  const checks = amount(checkMinutes * chargePerMinute);
  return {
    unit,
    sides,
    checkMinutes,
    checks,
    totalMinutes: checkMinutes + sides.reduce((sum, { minutes }) => sum + (minutes ?? 0), 0),
    total: amount(checks.value + sides.reduce((sum, side) => sum + side.total.value, 0)),
    missing: [
      ...sides.flatMap(({ side, minutes, parts }) => [
        ...(minutes === undefined ? [`minutes of the work${at(side)}`] : []),
        ...parts.flatMap(({ part, price }) => (price === undefined ? [`price of the ${part}${at(side)}`] : [])),
      ]),
      ...uncountedChecks(job, diagnosis, sides),
    ],
  };
}

const at = (side: SideCost['side']): string => (side === 'both' ? '' : `, ${side} side`);

const minutesOf = ({ nextChecks }: Diagnosis): number =>
  nextChecks.slice(0, NEXT_CHECKS).reduce((sum, { minutes }) => sum + minutes, 0);

const otherSideOf = (side: Job['side']): Job['side'] => (side === 'drive' ? 'non-drive' : 'drive');

/** The sides that are worked on. */
function workedOn(job: Job, { result, comparison }: DiagnosisPart): Pick<SideCost, 'side' | 'action'>[] {
  const own = { side: job.side, action: result.action };
  const isWork = ({ action }: { action: ActionId }): boolean =>
    !NO_WORK.includes(action) || (job.rates?.work ?? []).some((entry) => entry.action === action);
  if (comparison === undefined) return [own].filter(isWork);
  const side = otherSideOf(job.side);
  const { action } = side === 'drive' ? comparison.drive : comparison.nonDrive;
  const once = action === own.action && (DONE_ONCE.includes(action) || NO_WORK.includes(action));
  return (once ? [{ side: 'both' as const, action }] : [own, { side, action }]).filter(isWork);
}

/** A part with two names is priced as the arm, the cheaper change, unless the shop only has the other. */
function partsOf(action: ActionId, prices: readonly PartPrice[], whole: boolean): PartPrice['part'][] {
  const needed = listActions().find(({ id }) => id === action)?.part ?? 'none';
  const known = (part: PartPrice['part']): boolean => prices.some((entry) => entry.part === part);
  switch (needed) {
    case 'arm-and-spindle':
      return whole ? ['arm'] : ['arm', 'spindle'];
    case 'arm-or-spindle':
      return [known('arm') || !known('spindle') ? 'arm' : 'spindle'];
    case 'arm':
    case 'fixing':
    case 'bearing':
      return [needed];
    case 'spindle':
      return [whole ? 'arm' : 'spindle'];
    default:
      return [];
  }
}

/** The sheet names the checks of its own side; those of the other one are not in the sum. */
function uncountedChecks(job: Job, { comparison }: DiagnosisPart, sides: readonly SideCost[]): string[] {
  const side = otherSideOf(job.side);
  if (comparison === undefined || !sides.some((cost) => cost.side === side)) return [];
  const { nextChecks } = side === 'drive' ? comparison.drive : comparison.nonDrive;
  return nextChecks.length === 0 ? [] : [`checks on the ${side} side`];
}

/** The section with minutes and costs. @internal */
export function costSection(cost: CostPart | undefined, diagnosis: DiagnosisPart | undefined): Section[] {
  if (cost === undefined || diagnosis === undefined) return [];
  const words = jointWords(diagnosis.result.joint);
  const { sides, checkMinutes, checks, total, totalMinutes, missing } = cost;
  const left = missing.length === 0 ? '' : ` Not in it, since no figure was given: ${missing.join('; ')}.`;
  const several = sides.length > 1;
  const once = several ? ' What serves both sides is counted once.' : '';
  return [
    {
      id: 'cost',
      title: 'Minutes and costs, by the rates of the shop',
      blocks: [
        {
          kind: 'table',
          caption: 'By the figures of the job, each side apart',
          head: ['side', 'what', 'minutes', 'amount'],
          rows: [
            ...sides.flatMap((side) => sideRows(side, words, several)),
            ...(checkMinutes === 0 ? [] : [['', 'the checks named above', checkMinutes.toFixed(0), money(checks)]]),
          ],
        },
        {
          kind: 'paragraph',
          text: `Together: ${money(total)}, ${totalMinutes.toFixed(0)} minutes.${once}${left}`,
        },
      ],
    },
  ];
}

const money = (amount: Amount | undefined): string =>
  amount === undefined ? 'not given' : `${amount.value.toFixed(2)} ${amount.unit}`;

function sideRows({ side, action, minutes, work, parts, total }: SideCost, words: Messages, several: boolean) {
  const name = side === 'both' ? 'both at once' : side;
  const rows = [
    [name, words[`action-${action}`] ?? action, minutes === undefined ? 'not given' : minutes.toFixed(0), money(work)],
    ...parts.map(({ part, price }) => [name, words[`part-${part}`] ?? part, '', money(price)]),
  ];
  if (several && parts.length > 0) rows.push([name, 'this side together', '', money(total)]);
  return rows;
}
