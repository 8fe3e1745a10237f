// A property that needs more than a few draws to see a fault is a weak property; and each mutant runs them all.
import fc from 'fast-check';

fc.configureGlobal({ ...fc.readConfigureGlobal(), numRuns: 25 });
