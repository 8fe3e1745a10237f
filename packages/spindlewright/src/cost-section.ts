import { type ActionId, listActions } from '@spindlewright/diagnosis';
import type { Amount, Job, Rates } from './job.ts';
import type { Section } from './sheet.ts';

/** What the work on this side comes to by the shop's own figures. */
export interface CostPart {
  /** Currency, as the shop names it. */
  unit: string;
  /** Action that is costed. */
  action: ActionId;
  /** Minutes of work, as the shop states them for it; absent where it states none. */
  minutes?: number;
  /** Minutes of the checks that come before it. */
  checkMinutes: number;
  /** Work, in `unit`; absent without the minutes. */
  work?: Amount;
  /** Part, in `unit`; absent where the action needs none or the shop states no price for it. */
  part?: Amount;
  /** Everything that is known, in `unit`. */
  total: Amount;
  /** What is left out because the shop states no figure for it. */
  missing: readonly string[];
}

/** Costs an action by the shop's rates. @internal */
export function costOf(job: Job, action: ActionId | undefined, checkMinutes: number): CostPart | undefined {
  const { rates } = job;
  if (rates === undefined || action === undefined) return undefined;
  const { unit } = rates;
  const amount = (value: number) => ({ value: Math.round(value * 100) / 100, unit });
  const minutes = rates.work?.find((entry) => entry.action === action)?.minutes;
  const needed = listActions().find(({ id }) => id === action)?.part ?? 'none';
  const buys = needed !== 'none' && needed !== 'seat';
  const price = priceOf(rates, needed);
  const checks = checkMinutes * rates.chargePerMinute;
  const work = minutes === undefined ? undefined : minutes * rates.chargePerMinute;
  return {
    unit,
    action,
    ...(minutes === undefined ? {} : { minutes }),
    checkMinutes,
    ...(work === undefined ? {} : { work: amount(work) }),
    ...(price === undefined ? {} : { part: amount(price) }),
    total: amount(checks + (work ?? 0) + (price ?? 0)),
    missing: [
      ...(minutes === undefined ? ['minutes of the work'] : []),
      ...(buys && price === undefined ? ['price of the part'] : []),
    ],
  };
}

/** A pair that is replaced costs both; of a pair that does not match the arm is reckoned, as the cheaper change. */
function priceOf({ parts = [] }: Rates, needed: string): number | undefined {
  const one = (part: string): number | undefined => parts.find((entry) => entry.part === part)?.value;
  if (needed === 'arm-and-spindle') {
    const [arm, spindle] = [one('arm'), one('spindle')];
    return arm === undefined || spindle === undefined ? undefined : arm + spindle;
  }
  return needed === 'arm-or-spindle' ? (one('arm') ?? one('spindle')) : one(needed);
}

/** The section with minutes and costs. @internal */
export function costSection(cost: CostPart | undefined, actionWords: string): Section[] {
  if (cost === undefined) return [];
  const money = (amount: Amount | undefined): string =>
    amount === undefined ? 'not given' : `${amount.value.toFixed(2)} ${amount.unit}`;
  const left = cost.missing.length === 0 ? '' : ` Not in it, since no figure was given: ${cost.missing.join(', ')}.`;
  return [
    {
      id: 'cost',
      title: 'Minutes and costs, by the rates of the shop',
      blocks: [
        {
          kind: 'table',
          caption: 'This side only; the rates are those of the job',
          head: ['what', 'minutes', 'amount'],
          rows: [
            [actionWords, cost.minutes === undefined ? 'not given' : cost.minutes.toFixed(0), money(cost.work)],
            ...(cost.checkMinutes === 0
              ? []
              : [
                  [
                    'the checks named above',
                    cost.checkMinutes.toFixed(0),
                    money({
                      value: cost.total.value - (cost.work?.value ?? 0) - (cost.part?.value ?? 0),
                      unit: cost.unit,
                    }),
                  ],
                ]),
            ...(cost.part === undefined ? [] : [['part', '', money(cost.part)]]),
          ],
        },
        { kind: 'paragraph', text: `Together: ${money(cost.total)}.${left}` },
      ],
    },
  ];
}
