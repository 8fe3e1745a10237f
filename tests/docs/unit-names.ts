// The naming rule for numbers: the name ends in its unit, or it is one of the dimensionless names below.

const UNITS = [
  ...['Mm', 'Mm2', 'Mm3', 'Mm4', 'Um', 'Cm', 'M', 'In', 'Micrometre'],
  ...['N', 'KN', 'Lbf', 'Nm', 'NMm', 'LbfIn', 'LbfFt', 'MPa', 'GPa', 'Psi', 'Joule', 'Kg', 'KgPerM3'],
  ...['Deg', 'Rad', 'Percent', 'Minutes', 'Seconds', 'Hours', 'Km', 'Celsius', 'Kelvin', 'Px', 'Bytes', 'Years'],
].join('|');
const PER = `${UNITS}|Inch|Turn|Cycle|Kelvin|Minute`;
const WITH_UNIT = new RegExp(`[a-z0-9](${UNITS})(Per(${PER}))?$|Per(${PER})$`);

/** Names that carry no unit because the quantity has none, or because its unit stands in a field beside it. */
const DIMENSIONLESS: Readonly<Record<string, string>> = {
  value: 'its unit stands in the field `unit` beside it',
  lower: 'in the unit of the field that holds the limits',
  nominal: 'in the unit of the field that holds the limits',
  upper: 'in the unit of the field that holds the limits',
  plusMinus: 'in the unit of the field that holds the limits',
  standardUncertainty: 'in the unit of the reading',
  difference: 'in the unit of the reading named beside it',
  min: 'its unit stands in the field `unit` beside it',
  max: 'its unit stands in the field `unit` beside it',
  above: 'its unit stands in the field `unit` beside it',
  r: 'correlation coefficient',
  probability: '0 to 1',
  friction: 'coefficient',
  utilisation: 'share of the yield strength, 0 to 1',
  samples: 'count',
  verdict: 'code',
  worstLower: 'code',
  worstUpper: 'code',
  counts: 'rows',
  seed: 'whole number',
  minLength: 'count of items',
  line: 'number of a line, from 1',
  top: 'count of items',
  minutes: 'is its own unit',
  refused: 'row numbers',
  frictions: 'coefficients',
  firstEdgeUnloading: 'times the load',
  rockingLimit: 'times the load',
  pressReached: 'share of the travel, 0 to 1',
  mmPerUnit: 'mm per unit of the field whose path stands beside it',
  gain: 'in minutes, as the field minutes beside it',
  turnsToTorque: 'count of turns',
  lowestSetting: 'in the unit of the wrench, in the field `unit` beside it',
  highestSetting: 'in the unit of the wrench, in the field `unit` beside it',
  setting: 'in the unit of the wrench, in the field `unit` beside it',
  target: 'in the unit of the wrench, in the field `unit` beside it',
};

/** Endings of such names. */
const DIMENSIONLESS_ENDINGS = /(Friction|Probability|Ratio|Factor|Count|Turns|Fraction|Share|Index)$/;

/** True when a numeric name says its unit or is known to need none. */
export const saysItsUnit = (name: string): boolean =>
  WITH_UNIT.test(name) || Object.hasOwn(DIMENSIONLESS, name) || DIMENSIONLESS_ENDINGS.test(name);
