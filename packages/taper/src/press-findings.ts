import type { Finding, Measurand, Severity } from '@spindlewright/quantity';
import { MODULUS_SOURCES, takenDimensions, takenFriction, takenMaterials } from './assumed-limits.ts';
import { firstYieldMPa } from './boss-stress.ts';
import { find } from './find.ts';
import { COLLAPSE_RATIO, fitRange } from './fitted-factors.ts';
import { nominal } from './interval.ts';
import type { Joint } from './joint.ts';
import { pressMessages } from './messages/press.ts';
import type { PressOutcome, PressState } from './press-model.ts';
import { mismatchAt } from './seat-geometry.ts';
import type { ArmShape, Pressing, SpindleShape } from './shapes.ts';

/** What was assumed for the press, and where it leaves the range in which the model was checked. @internal */
export function pressFindings(input: {
  spindle: SpindleShape<Measurand>;
  arm: ArmShape<Measurand>;
  pressing: Pressing<Measurand>;
  /** Where the fields of `pressing` stand in the input: `pressing.` or nothing. */
  at: string;
  joint: Joint;
  state: PressState;
  outcome: PressOutcome | undefined;
}): Finding[] {
  const { spindle, arm, pressing, at, joint, state, outcome } = input;
  const findings: Finding[] = [];
  const say = (
    code: keyof typeof pressMessages,
    severity: Severity,
    values: Record<string, number | string>,
    path?: string,
    sources: readonly string[] = ['fe-square-taper'],
  ): void => {
    findings.push(find(pressMessages, code, severity, values, { sources, ...(path === undefined ? {} : { path }) }));
  };

  if (outcome === undefined) {
    const reason =
      state.engagedLengthMm > 1e-3 ? 'the turned corners leave no flat' : 'no length of the flats is engaged';
    say('contact-pressure-unbounded', 'stop', { reason }, undefined, []);
    say('travel-unbounded', 'stop', { reason }, undefined, []);
    return findings;
  }
  const { pressureMPa: contactPressureMPa, collapses } = outcome;
  const firstYield = firstYieldMPa(state);
  if (collapses) {
    const plasticityRatio = Math.max(outcome.pressureRatio, outcome.plasticityRatio);
    say('bore-fully-plastic', 'stop', { plasticityRatio, collapseRatio: COLLAPSE_RATIO });
  }
  if (!outcome.bounded) say('travel-unbounded', 'stop', { reason: 'the boss gives way under this pressure' });
  if (contactPressureMPa > firstYield) {
    say('first-yield-passed', 'caution', { contactPressureMPa, firstYieldMPa: firstYield });
  }
  if (mismatchAt(joint, nominal) > 0) {
    const boreIsSteeper = joint.arm.faceAngleDeg.nominal > joint.spindle.faceAngleDeg.nominal;
    const end = boreIsSteeper ? 'end of the spindle' : 'mouth of the bore';
    say('angles-differ', 'caution', { end, closingMm: outcome.closingMm }, 'arm.faceAngleDeg');
  }
  const outOfFit = pressing.compliance?.startsWith('ring') ? [] : fitChecks(state);
  for (const [quantity, value, [lower, upper]] of outOfFit) {
    if (value < lower || value > upper) say('outside-fit-range', 'caution', { quantity, value, lower, upper });
  }
  if (spindle.cornerDiameterMm === undefined) {
    const values = { cornerDiameterMm: takenDimensions.cornerDiameterMm.nominal, flatWidthMm: state.flatWidthMm };
    say('flat-width-assumed', 'note', values, 'spindle.cornerDiameterMm');
  }
  if (arm.bossDiameterMm === undefined) {
    say('boss-assumed', 'note', { bossDiameterMm: takenDimensions.bossDiameterMm.nominal }, 'arm.bossDiameterMm');
  }
  for (const part of ['spindle', 'arm'] as const) {
    if (pressing.materials?.[part] !== undefined) continue;
    const { youngsModulusGPa, poissonsRatio } = takenMaterials[part];
    const values = { part, youngsModulusGPa: youngsModulusGPa.nominal, poissonsRatio: poissonsRatio.nominal };
    say('material-assumed', 'note', values, `${at}materials.${part}`, MODULUS_SOURCES);
  }
  if (pressing.materials?.arm?.yieldStrengthMPa === undefined) {
    say('yield-unknown', 'note', {}, `${at}materials.arm.yieldStrengthMPa`);
  }
  if (typeof pressing.friction === 'number') {
    const { greased, dry } = takenFriction;
    const values = {
      friction: pressing.friction,
      greasedLower: greased.lower,
      greasedUpper: greased.upper,
      dryLower: dry.lower,
      dryUpper: dry.upper,
    };
    say('friction-is-a-range', 'note', values, `${at}friction`, []);
  }
  return findings;
}

function fitChecks(state: PressState): [string, number, readonly [number, number]][] {
  const over = state.acrossFlatsMm;
  return [
    ['boss diameter over across flats', state.bossDiameterMm / over, fitRange.bossRatio],
    ['flat width over across flats', state.flatWidthMm / over, fitRange.flatRatio],
    ['corner radius over across flats', state.boreCornerRadiusMm / over, fitRange.filletRatio],
  ];
}
