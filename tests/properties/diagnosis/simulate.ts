// Draws true states and answers from the published data of the package, independently of how its core reads them.
import type { CheckId, DiagnoseInput, JointId, Observations, OutcomeId } from '@spindlewright/diagnosis';
import {
  type LikelihoodRecord,
  listBesideSigns,
  listCauses,
  listLikelihoods,
  listReadingRules,
} from '@spindlewright/diagnosis/data';
import { outcomesByCheck } from './generators.ts';

/** A simulated joint: what it is and what was told of it. */
export interface Simulated {
  condition: string;
  cause: string;
  bearingWorn: boolean;
  noiseElsewhere: boolean;
  input: DiagnoseInput;
}

/** Number of a word told of the past, or of an outcome: what the sampler may have changed for a mutated model. */
export type Change = (record: LikelihoodRecord) => number;

const draw = <T>(items: readonly T[], weight: (item: T) => number, random: () => number): T => {
  let left = random() * items.reduce((sum, item) => sum + weight(item), 0);
  for (const item of items) {
    left -= weight(item);
    if (left < 0) return item;
  }
  const last = items.at(-1);
  if (last === undefined) throw new Error('nothing to draw from');
  return last;
};

/** What a sampler draws from: the data of a joint, every check with a chance; `change` gives the number of a record. */
export interface Source {
  joint?: JointId;
  change?: Change;
  /** Share of the checks that are answered. */
  asked?: number;
  /** Share of the answers that are readings, where there is one. */
  read?: number;
}

/** A sampler over the data. */
export function createSampler(random: () => number, source: Source = {}): () => Simulated {
  const { joint = 'square-taper-jis', change = (record) => record.probability, asked = 0.3, read = 0.3 } = source;
  const pairs = listCauses({ joint });
  const signs = listBesideSigns(joint);
  const rows = new Map<string, LikelihoodRecord[]>();
  for (const record of listLikelihoods(joint)) {
    const key = `${record.check}/${record.condition}/${record.spindleToo}/${record.cause}`;
    rows.set(key, [...(rows.get(key) ?? []), record]);
  }
  const rules = new Map(listReadingRules(joint).map((rule) => [`${rule.check}/${rule.outcome}`, rule]));
  const signed: string[] = ['endGapMm', 'shoulderGapMm'];
  const prior = (beside: string): number => signs.find((sign) => sign.beside === beside)?.priorProbability ?? 0;

  return () => {
    const { condition, cause, spindleToo } = draw(pairs, ({ probability }) => probability, random);
    const present = {
      'bearing-worn': random() < prior('bearing-worn'),
      'noise-elsewhere': random() < prior('noise-elsewhere'),
    };
    const kind = `${condition}/${spindleToo}`;
    const outcomeOf = (check: CheckId): OutcomeId => {
      const row = rows.get(`${check}/${kind}/${cause}`) ?? rows.get(`${check}/${kind}/any`) ?? [];
      let outcome = draw(row, change, random).outcome;
      for (const sign of signs) {
        if (sign.check === check && present[sign.beside] && sign.from === outcome && random() < sign.probability) {
          outcome = sign.to as OutcomeId;
        }
      }
      return outcome;
    };
    // As many words of the past as somebody happens to tell, each told by its own odds: drawn until the count fits.
    const historyOf = (): OutcomeId[] => {
      const count = random() < 0.7 ? 1 : 2;
      for (;;) {
        const told = (outcomesByCheck(joint).get('history') ?? []).filter((outcome) => {
          const byCause = rows.get(`history/any/false/${cause}`)?.find((record) => record.outcome === outcome);
          const special = rows.get(`history/${kind}/any`)?.find((record) => record.outcome === outcome);
          return random() < Math.max(...[byCause, special].flatMap((record) => (record ? [change(record)] : [])));
        });
        if (told.length === count) return told;
      }
    };
    const observations: Record<string, unknown> = {};
    const measurements: Record<string, unknown> = {};
    for (const check of outcomesByCheck(joint).keys()) {
      if (random() > asked) continue;
      if (check === 'history') {
        observations[check] = historyOf();
        continue;
      }
      const outcome = outcomeOf(check);
      const rule = rules.get(`${check}/${outcome}`);
      // A reading instead of a word where the outcome has a band: true value anywhere in it, error by the uncertainty.
      if (rule !== undefined && random() < read) {
        const standardUncertainty = rule.standardUncertainty;
        const error = truncatedNormal(random) * standardUncertainty;
        const value = rule.lower + (rule.upper - rule.lower) * random() + error;
        if (value >= 0 || signed.includes(rule.measurement))
          measurements[rule.measurement] = { value, standardUncertainty };
        else observations[check] = outcome;
      } else observations[check] = outcome;
    }
    return {
      condition,
      cause,
      bearingWorn: present['bearing-worn'],
      noiseElsewhere: present['noise-elsewhere'],
      input: {
        joint,
        observations: observations as Observations,
        ...(Object.keys(measurements).length === 0 ? {} : { measurements }),
      } as DiagnoseInput,
    };
  };
}

function truncatedNormal(random: () => number): number {
  for (;;) {
    const z = Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random());
    if (Math.abs(z) <= 3) return z;
  }
}
