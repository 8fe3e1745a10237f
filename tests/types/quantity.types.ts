// What has to compile, and what must not: checked by `npm run typecheck`, never run. An expectation of an error that
// does not come is an error itself.
import { convert, createFinding, type Datum, type LimitsInput, limits, type Measurand } from '@spindlewright/quantity';

convert(1, 'mm', 'in');
convert(1, 'Nm', 'lbf.ft');
// @ts-expect-error A length is no torque.
convert(1, 'mm', 'Nm');
// @ts-expect-error There is no such unit.
convert(1, 'furlong', 'mm');

limits(2);
limits({ nominal: 2, plusMinus: 0.1 });
// @ts-expect-error One bound alone is no limits.
limits({ lower: 2 });

const exact: LimitsInput = 2;
const reading: Measurand = { value: 2, standardUncertainty: 0.1 };
// @ts-expect-error A reading with uncertainty is no hard limits.
const hard: LimitsInput = reading;

// @ts-expect-error A number without its standing is no datum.
const bare: Datum = { value: 2, unit: 'mm', sources: [] };
// @ts-expect-error An optional field is absent, never undefined.
const blank: Datum = { value: 2, unit: 'mm', standing: 'invented', sources: [], lower: undefined };

// @ts-expect-error There are three weights of a finding.
createFinding({ code: 'a', severity: 'error', template: 'A.' });

export { bare, blank, exact, hard, reading };
