// A schema says the same as the interface of its name: what it parses can be handed on without a cast. Checked by
// `npm run typecheck`, never run.
import type * as diagnosis from '@spindlewright/diagnosis';
import type * as diagnosisSchemas from '@spindlewright/diagnosis/schema';
import type * as drawingSchemas from '@spindlewright/drawing/schema';
import type * as interfaces from '@spindlewright/interfaces';
import type * as interfacesSchemas from '@spindlewright/interfaces/schema';
import type * as quantity from '@spindlewright/quantity';
import type { Limits } from '@spindlewright/quantity';
import type * as quantitySchemas from '@spindlewright/quantity/schema';
import * as taper from '@spindlewright/taper';
import * as taperSchemas from '@spindlewright/taper/schema';
import * as torque from '@spindlewright/torque';
import * as torqueSchemas from '@spindlewright/torque/schema';
import type * as whole from 'spindlewright';
import type * as wholeSchemas from 'spindlewright/schema';
import { expectTypeOf } from 'vitest';
import type { z } from 'zod/v4';

expectTypeOf<z.infer<typeof quantitySchemas.measurandSchema>>().toEqualTypeOf<quantity.Measurand>();
expectTypeOf<z.infer<typeof quantitySchemas.findingSchema>>().toEqualTypeOf<quantity.Finding>();
expectTypeOf<z.infer<typeof quantitySchemas.datumSchema>>().toEqualTypeOf<quantity.Datum>();
expectTypeOf<z.infer<typeof interfacesSchemas.interfaceRecordSchema>>().toEqualTypeOf<interfaces.InterfaceRecord>();
expectTypeOf<z.infer<typeof interfacesSchemas.mateResultSchema>>().toEqualTypeOf<interfaces.MateResult>();
expectTypeOf<z.infer<typeof taperSchemas.seatInputSchema>>().toEqualTypeOf<taper.PredictSeatInput>();
expectTypeOf<z.infer<typeof taperSchemas.seatPredictionSchema>>().toEqualTypeOf<taper.SeatPrediction<Limits | null>>();
expectTypeOf<z.infer<typeof taperSchemas.pressFitInputSchema>>().toEqualTypeOf<Parameters<typeof taper.pressFit>[0]>();
expectTypeOf<z.infer<typeof torqueSchemas.preloadRangeSchema>>().toEqualTypeOf<torque.PreloadRange>();
expectTypeOf<z.infer<typeof diagnosisSchemas.diagnoseInputSchema>>().toEqualTypeOf<diagnosis.DiagnoseInput>();
expectTypeOf<z.infer<typeof diagnosisSchemas.diagnosisSchema>>().toEqualTypeOf<diagnosis.Diagnosis>();
expectTypeOf<z.infer<typeof wholeSchemas.jobSchema>>().toEqualTypeOf<whole.Job>();
expectTypeOf<z.infer<typeof wholeSchemas.jobSheetSchema>>().toEqualTypeOf<whole.JobSheet>();

// Parsed input is taken as it is.
taper.predictSeat(taperSchemas.seatInputSchema.parse({}));
torque.preloadRange(torqueSchemas.preloadRangeInputSchema.parse({}));
// @ts-expect-error Input of one function is none of another.
torque.preloadRange(taperSchemas.seatInputSchema.parse({}));

/** Names of schemas that say nothing of what they parse. */
type Mute<Module> = {
  [Name in keyof Module]: Module[Name] extends z.ZodType<infer Output>
    ? unknown extends Output
      ? Name
      : never
    : never;
}[keyof Module];
expectTypeOf<Mute<{ a: z.ZodType; b: z.ZodType<string> }>>().toEqualTypeOf<'a'>();
expectTypeOf<
  | Mute<typeof quantitySchemas>
  | Mute<typeof interfacesSchemas>
  | Mute<typeof taperSchemas>
  | Mute<typeof torqueSchemas>
  | Mute<typeof diagnosisSchemas>
  | Mute<typeof drawingSchemas>
  | Mute<typeof wholeSchemas>
>().toEqualTypeOf<never>();
