/**
 * The judgement behind the diagnosis as records: every likelihood, prior, reading rule and loss, each with its reason.
 *
 * @packageDocumentation
 */

export { diagnoseWith } from './data/diagnose-with.ts';
export { dataEdition } from './data/edition.ts';
export { type BesideSignRecord, listBesideSigns } from './data/list-beside-signs.ts';
export { type CauseRecord, listCauses } from './data/list-causes.ts';
export { type FamilyRecord, listFamilies } from './data/list-families.ts';
export { type FrequencyWordRecord, listFrequencyWords } from './data/list-frequency-words.ts';
export { type LikelihoodRecord, listLikelihoods } from './data/list-likelihoods.ts';
export { type LossRecord, listLosses } from './data/list-losses.ts';
export { listReadingRules, type ReadingRuleRecord } from './data/list-reading-rules.ts';
export { listRepairNeeds, type RepairNeedRecord } from './data/list-repair-needs.ts';
