// One seed for everything that a test draws: a run says the same on every machine. Other cases: `SEED=7 npm test`.
import fc from 'fast-check';
import { seedOfRun } from './seed.ts';

fc.configureGlobal({ seed: seedOfRun() });
