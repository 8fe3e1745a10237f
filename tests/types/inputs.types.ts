// What callers write and must not be able to write by mistake: checked by `npm run typecheck`, never run.
import { diagnose } from '@spindlewright/diagnosis';
import { drawSeat } from '@spindlewright/drawing';
import { checkMate, identifySpindle, listInterfaces } from '@spindlewright/interfaces';
import { predictSeat, pressFit } from '@spindlewright/taper';
import { preloadRange, threadFor, torqueFromPreload } from '@spindlewright/torque';

const spindle = { acrossFlatsAtEndMm: 12.65, faceAngleDeg: 2, flatLengthMm: 16 };
const arm = { acrossFlatsAtMouthMm: 13.2, faceAngleDeg: 2, boreLengthMm: 20 };
const joint = { thread: threadFor('M8x1'), bearing: { outerDiameterMm: 13, holeDiameterMm: 8.4 } };
const friction = { threadFriction: 0.12, bearingFriction: 0.12 };

// A reading is written in any of four ways.
predictSeat({ trialFit: { endGapMm: 3 } });
predictSeat({ trialFit: { endGapMm: { lower: 2.9, nominal: 3, upper: 3.1 } } });
predictSeat({ trialFit: { endGapMm: { value: 3, standardUncertainty: 0.1 } } });
// @ts-expect-error Text is read by parseQuantity first.
predictSeat({ trialFit: { endGapMm: '3 mm' } });

// @ts-expect-error A name carries its unit; there is no other.
predictSeat({ trialFit: { endGapIn: 0.1 } });
// @ts-expect-error Nor is there one without.
predictSeat({ trialFit: { endGap: 3 } });
// @ts-expect-error An angle is told in degrees.
predictSeat({ spindle: { acrossFlatsAtEndMm: 12.65, faceAngleRad: 0.035, flatLengthMm: 16 }, arm });
// @ts-expect-error A spindle is no arm.
predictSeat({ spindle: arm, arm: spindle });
// @ts-expect-error Pressing wants its friction.
pressFit({ spindle, arm, axialForceN: 12000 });
// @ts-expect-error There is no such model of the press.
pressFit({ spindle, arm, axialForceN: 12000, friction: 0.1, compliance: 'exact' });
// @ts-expect-error An optional field is left out, never undefined.
predictSeat({ spindle, arm, pressing: undefined });

torqueFromPreload({ preloadN: 12000, ...joint, ...friction });
torqueFromPreload({ method: 'nut-factor', preloadN: 12000, thread: joint.thread, nutFactor: 0.2 });
// @ts-expect-error The force is in newton.
torqueFromPreload({ preloadKn: 12, ...joint, ...friction });
// @ts-expect-error Without a method friction is asked for.
torqueFromPreload({ preloadN: 12000, thread: joint.thread, nutFactor: 0.2 });
// @ts-expect-error A thread is looked up, not named.
preloadRange({ torqueNm: 40, ...joint, thread: 'M8x1', ...friction });

// @ts-expect-error There is no such joint.
diagnose({ joint: 'taper', observations: {} });
// @ts-expect-error There is no such check.
diagnose({ joint: 'square-taper-jis', observations: { 'play-at-bar': 'none' } });
// @ts-expect-error That answer belongs to another check.
diagnose({ joint: 'square-taper-jis', observations: { 'bolt-on-arrival': 'rounded' } });
// @ts-expect-error One check takes several answers, the others one.
diagnose({ joint: 'square-taper-jis', observations: { 'bore-flats': ['rounded'] } });
diagnose({ joint: 'square-taper-jis', observations: { history: ['newly-fitted', 'ridden-loose'] } });

// @ts-expect-error There is no such family.
listInterfaces({ family: 'taper' });
// @ts-expect-error Records are looked up, not named.
checkMate({ spindle: 'spline-10', arm: 'spline-10' });
// @ts-expect-error Where a reading was taken belongs to the reading.
identifySpindle({ readings: [{ acrossFlatsMm: 12.7 }] });

// @ts-expect-error A picture of a seat wants the seat by hand and the seat pressed.
drawSeat({ handFit: { endGapMm: 3 } });
// @ts-expect-error There is no such word in the drawings.
drawSeat({ handFit: {}, pressed: {}, labels: { gapp: 'Luft' } });
