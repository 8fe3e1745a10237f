import { makeFinding } from './make-finding.ts';
import { type Decision, decisionOfRule, sourcesIn } from './mate-decision.ts';
import { matingData } from './mating.generated.ts';
import type { InterfaceRecord, MatingRule, SplineRecord, ThroughSpindleRecord } from './record.ts';

/** Whether the arm of one record goes on the spindle of another. @internal */
export function mateJoint(spindle: InterfaceRecord, arm: InterfaceRecord): Decision {
  if (spindle.id === arm.id) return mateOwn(spindle);
  const rule = ruleFor(spindle, arm);
  if (rule !== undefined) return decisionOfRule(rule);
  if (spindle.family === 'through-spindle' && arm.family === 'through-spindle') return mateThrough(spindle, arm);
  if (spindle.family === 'spline' && arm.family === 'spline') {
    const differ = mateSplines(spindle, arm);
    if (differ !== undefined) return differ;
  }
  if (spindle.family === arm.family) {
    const values = { spindle: spindle.id, arm: arm.id };
    return { verdict: 'unknown', findings: [makeFinding('no-rule', 'caution', values)] };
  }
  const claims = [spindle, arm].flatMap((record) => record.axialStop.claims);
  const values = { spindleFamily: spindle.family, armFamily: arm.family };
  return { verdict: 'does-not-mate', findings: [makeFinding('families-differ', 'stop', values, sourcesIn(claims))] };
}

function mateOwn({ interchange }: InterfaceRecord): Decision {
  const { kind, statement, sources } = interchange;
  if (kind === 'inseparable') {
    return { verdict: 'does-not-mate', findings: [makeFinding('no-separate-arm', 'stop', { statement }, sources)] };
  }
  return kind === 'maker-specific'
    ? { verdict: 'unknown', findings: [makeFinding('maker-specific', 'caution', { statement }, sources)] }
    : { verdict: 'mates', findings: [makeFinding('meant-to-interchange', 'note', { statement }, sources)] };
}

/** Either part may hold the rule. */
const ruleFor = (spindle: InterfaceRecord, arm: InterfaceRecord): MatingRule | undefined =>
  [...spindle.mating, ...arm.mating].find((rule) => rule.spindle === spindle.id && rule.arm === arm.id);

/** By the diameter at the non-drive side: the other arm is fixed to its spindle. */
function mateThrough(spindle: ThroughSpindleRecord, arm: ThroughSpindleRecord): Decision {
  const [onSpindle, ofArm] = [spindle.geometry.nonDriveSideDiameterMm, arm.geometry.nonDriveSideDiameterMm];
  const sources = sourcesIn([onSpindle, ofArm]);
  const values = { spindleMm: onSpindle.value, armMm: ofArm.value };
  const excessMm = ofArm.value - onSpindle.value;
  if (Math.abs(excessMm) <= matingData.sameBoreMm.value) {
    const { statement, sources: own } = arm.interchange;
    return { verdict: 'unknown', findings: [makeFinding('maker-specific', 'caution', { statement }, own)] };
  }
  if (excessMm < 0) {
    return { verdict: 'does-not-mate', findings: [makeFinding('arm-bore-too-small', 'stop', values, sources)] };
  }
  return arm.drawnTight.by === 'pinch-bolts' && excessMm <= matingData.clampClosesMm.value
    ? { verdict: 'starts-then-fails', findings: [makeFinding('clamp-closes-first', 'stop', values, sources)] }
    : { verdict: 'does-not-mate', findings: [makeFinding('arm-bore-too-large', 'stop', values, sources)] };
}

function mateSplines(spindle: SplineRecord, arm: SplineRecord): Decision | undefined {
  const [onSpindle, ofArm] = [spindle.geometry.splineCount, arm.geometry.splineCount];
  if (onSpindle.value === ofArm.value) return undefined;
  const values = { spindleSplines: onSpindle.value, armSplines: ofArm.value };
  const sources = sourcesIn([onSpindle, ofArm]);
  return { verdict: 'does-not-mate', findings: [makeFinding('spline-counts-differ', 'stop', values, sources)] };
}
