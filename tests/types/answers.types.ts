// What the types of results promise: checked by `npm run typecheck`, never run. An expectation of an error that does not
// come is an error itself.
import type * as diagnosis from '@spindlewright/diagnosis';
import type * as drawing from '@spindlewright/drawing';
import type * as interfaces from '@spindlewright/interfaces';
import type * as quantity from '@spindlewright/quantity';
import type { Datum, Finding, Limits } from '@spindlewright/quantity';
import type * as taper from '@spindlewright/taper';
import {
  type ArmShape,
  predictSeat,
  type SeatPrediction,
  type SeatVerdict,
  type SpindleShape,
} from '@spindlewright/taper';
import type * as torque from '@spindlewright/torque';
import type * as whole from 'spindlewright';
import { expectTypeOf } from 'vitest';

const spindle: SpindleShape = { acrossFlatsAtEndMm: 12.65, faceAngleDeg: 2, flatLengthMm: 16 };
const arm: ArmShape = { acrossFlatsAtMouthMm: 13.2, faceAngleDeg: 2, boreLengthMm: 20 };
const trialFit = { endGapMm: 3, shoulderGapMm: 4 };

// Both shapes leave no length open; a trial fit alone may.
expectTypeOf(predictSeat({ spindle, arm })).toEqualTypeOf<SeatPrediction<Limits>>();
expectTypeOf(predictSeat({ spindle, arm, trialFit }).pressed.endGapMm).toEqualTypeOf<Limits>();
expectTypeOf(predictSeat({ trialFit }).pressed.endGapMm).toEqualTypeOf<Limits | null>();
expectTypeOf(predictSeat({ trialFit, spindle }).handFit.engagedLengthMm).toEqualTypeOf<Limits | null>();
// @ts-expect-error A gap that may be open is asked for before it is read.
predictSeat({ trialFit }).pressed.endGapMm.nominal;

// A program decides on words out of a closed list, and finds in its own switch what it forgot.
expectTypeOf<SeatVerdict>().toEqualTypeOf<
  'seats' | 'marginal' | 'bottoms-on-end' | 'hits-shoulder' | 'too-little-engagement' | 'does-not-start'
>();
expectTypeOf<interfaces.MateVerdict>().toEqualTypeOf<
  'mates' | 'mates-with-shift' | 'starts-then-fails' | 'does-not-mate' | 'unknown'
>();
expectTypeOf<whole.FitState>().toEqualTypeOf<'fits' | 'does-not-fit' | 'cannot-tell'>();
expectTypeOf<taper.SeatLeft['state']>().toEqualTypeOf<'has-seat' | 'beyond-use' | 'cannot-tell'>();
expectTypeOf<diagnosis.SpindleVerdict['state']>().toEqualTypeOf<'good' | 'not-good' | 'cannot-tell'>();
expectTypeOf<Finding['severity']>().toEqualTypeOf<'stop' | 'caution' | 'note'>();
expectTypeOf<'replace-arm'>().toExtend<diagnosis.ActionId>();
expectTypeOf<'bore-deformed'>().toExtend<diagnosis.ConditionId>();
expectTypeOf<'beyond-yield'>().toExtend<torque.TorqueFindingCode>();
// @ts-expect-error There is no such verdict.
predictSeat({ trialFit }).verdict === 'fine';
// @ts-expect-error There is no such action.
const action: diagnosis.ActionId = 'hit-it';

/**
 * What of a type is lost or changed by JSON: never when nothing is. An absent field is none, `unknown` is one. A datum
 * holds data, so it is looked at apart.
 */
type Lost<T> = unknown extends T
  ? 'unknown'
  : T extends Datum
    ? never
    : T extends string | number | boolean | null
      ? never
      : T extends (...args: never[]) => unknown
        ? 'a function'
        : T extends readonly unknown[]
          ? Lost<T[number]>
          : T extends object
            ? { [K in keyof T]-?: Lost<Exclude<T[K], undefined>> }[keyof T]
            : 'no value of JSON';
expectTypeOf<Lost<{ a?: number; b: readonly (string | null)[] }>>().toEqualTypeOf<never>();
expectTypeOf<Lost<{ a: { b: Date } }>>().toEqualTypeOf<'a function'>();
expectTypeOf<Lost<Omit<Datum, 'alternatives'>>>().toEqualTypeOf<never>();
expectTypeOf<Lost<[bigint]>>().toEqualTypeOf<'no value of JSON'>();
expectTypeOf<Lost<{ a: unknown }>>().toEqualTypeOf<'unknown'>();

/** Names of functions whose result is not the same when written as JSON and read back. */
type NotJson<Module> = {
  [Name in keyof Module]: Module[Name] extends (...args: never[]) => infer Result
    ? [Lost<Result>] extends [never]
      ? never
      : Name
    : never;
}[keyof Module];
expectTypeOf<NotJson<typeof quantity>>().toEqualTypeOf<'checkInput' | 'nearestName'>();
expectTypeOf<NotJson<typeof interfaces>>().toEqualTypeOf<never>();
expectTypeOf<NotJson<typeof diagnosis>>().toEqualTypeOf<never>();
expectTypeOf<NotJson<typeof drawing>>().toEqualTypeOf<never>();
// Columns come as typed arrays, which is what they are for.
expectTypeOf<NotJson<typeof taper>>().toEqualTypeOf<'screenSeats'>();
expectTypeOf<NotJson<typeof torque>>().toEqualTypeOf<'torqueFromPreloadColumns' | 'preloadFromTorqueColumns'>();
// A checker is to be asked, and answers to a screening come one by one.
expectTypeOf<NotJson<typeof whole>>().toEqualTypeOf<'createFitChecker' | 'screenParts'>();

export { action };
