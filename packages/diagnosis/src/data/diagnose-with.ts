import { checkInput } from '@spindlewright/quantity';
import { checkJoint } from '../check-case.ts';
import { diagnoseBy } from '../diagnose.ts';
import { familyOf } from '../family-of.ts';
import { CAUSES, CHECK_OUTCOMES, KINDS } from '../ids.ts';
import { compileModel, type Patch } from '../model.ts';
import type { DiagnoseInput, Diagnosis, FrequencyWord } from '../types.ts';
import { listLikelihoods } from './list-likelihoods.ts';
import { SCALE } from './rows.ts';

const WORDS = Object.keys(SCALE) as FrequencyWord[];

/**
 * Diagnoses with some likelihoods changed, so that a reader who judges otherwise sees what that moves.
 *
 * @remarks
 * Formula: as `diagnose`, with the words of the named records put in the place of those of the data; each row is divided by
 * its new sum.
 *
 * Validity: as `diagnose`. A record with the cause `any` counts for every cause without a record of its own.
 *
 * Accuracy: as `diagnose`. The model is put together anew with each call, which takes longer than a diagnosis.
 *
 * @param input - `input`, a case as `diagnose` takes it; `likelihoods`, a word of the scale by id of a record that
 * `listLikelihoods` gives for the joint.
 * @returns The diagnosis that these likelihoods lead to.
 * @throws {@link DomainError} as `diagnose`; also for an id that is no record of the joint and a word that is not of the
 * scale.
 * @example
 * ```ts
 * import { diagnose } from '@spindlewright/diagnosis';
 * import { diagnoseWith } from '@spindlewright/diagnosis/data';
 * const input = { joint: 'square-taper', observations: { 'fretting-debris': 'dark-powder-or-rust' } } as const;
 * const likelihoods = { 'fretting-debris/dark-powder-or-rust/sound/any': 'often' } as const;
 * const sound = (result: ReturnType<typeof diagnose>) => result.conditions.find(({ id }) => id === 'sound')?.probability ?? 0;
 * sound(diagnoseWith({ input, likelihoods })) > 2 * sound(diagnose(input)); // => true
 * ```
 * @see `listLikelihoods` for the ids and `listFrequencyWords` for the words.
 */
export function diagnoseWith(input: {
  input: DiagnoseInput;
  likelihoods: Readonly<Record<string, FrequencyWord>>;
}): Diagnosis {
  const where = 'diagnoseWith';
  const joint = input?.input?.joint;
  checkJoint(where, joint);
  const records = listLikelihoods(joint);
  const word = { type: 'choice', values: WORDS, optional: true } as const;
  const byId = Object.fromEntries(records.map(({ id }) => [id, word]));
  // The case itself is checked by the diagnosis.
  checkInput({
    where,
    value: { ...input, input: {} },
    fields: { input: { type: 'object', fields: {} }, likelihoods: { type: 'object', fields: byId } },
  });
  const words = new Map<string, FrequencyWord>(records.map((record) => [record.id, record.word]));
  for (const [id, changed] of Object.entries(input.likelihoods)) words.set(id, changed);
  const digit = (id: string): string => {
    const known = words.get(id);
    return known === undefined ? '' : String(WORDS.indexOf(known));
  };
  const patch: Patch = ({ check, kind: kindPlace, cause: causePlace }) => {
    const kind = KINDS[kindPlace];
    const cause = CAUSES[causePlace];
    return CHECK_OUTCOMES[check]
      .map((outcome) => {
        const id = `${check}/${outcome}`;
        if (check !== 'history') return digit(`${id}/${kind}/${cause}`) || digit(`${id}/${kind}/any`);
        return [digit(`${id}/any/${cause}`), digit(`${id}/${kind}/any`)].sort().at(-1);
      })
      .join('');
  };
  return diagnoseBy(where, input.input, (of, side) => compileModel(familyOf(of), side, patch));
}
