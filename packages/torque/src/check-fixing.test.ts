import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { checkFixing } from './check-fixing.ts';
import type { FixingBolt, FixingNut } from './fixing-input.ts';
import { threadFor } from './thread-for.ts';

const thread = threadFor('M8x1');
// Worked by hand: tip at hand fit 22 - 1.5 - 2.5 = 18, pressed 22 - 1.5 - (2.5 - 1) = 19 below the spindle's end.
const bolt: FixingBolt = {
  fixing: 'bolt',
  thread,
  spindleThread: thread,
  lengthUnderHeadMm: 22,
  threadDepthMm: 21,
  washerThicknessMm: 1.5,
  endGapMm: 2.5,
  travelMm: 1,
  bearing: { outerDiameterMm: 20, squareHoleMm: 12.6 },
};
const stud = threadFor('M10x1.25');
// The nut's face stands 2 + 1.6 = 3.6 from the spindle's end at hand fit, 2.6 pressed.
const nut: FixingNut = {
  fixing: 'nut',
  thread: stud,
  spindleThread: stud,
  nutHeightMm: 8,
  studLengthMm: 14,
  threadRunoutMm: 2,
  washerThicknessMm: 1.6,
  endGapMm: 2,
  travelMm: 1,
};

const outcome = (input: FixingBolt | FixingNut) => {
  const { state, missing, findings } = checkFixing(input);
  return { state, missing, codes: findings.map((finding) => finding.code) };
};

describe('a bolt', () => {
  it('dives deeper while the arm is pressed', () => {
    const { handFit, pressed } = checkFixing(bolt);
    expect(handFit.tipDepthMm?.nominal).toBe(18);
    expect(pressed.tipDepthMm?.nominal).toBe(19);
    expect(handFit.clearanceMm?.nominal).toBe(3);
    expect(pressed.clearanceMm?.nominal).toBe(2);
    expect(pressed.engagementMm.nominal).toBe(19);
    expect(pressed.engagedTurns.nominal).toBe(19);
    expect(outcome(bolt)).toEqual({ state: 'fits', missing: null, codes: [] });
  });

  it('is fine at hand fit and solid when tight: named for what it is', () => {
    expect(outcome({ ...bolt, threadDepthMm: 18.5 })).toEqual({
      state: 'does-not-fit',
      missing: null,
      codes: ['bottoms-when-pressed'],
    });
    expect(outcome({ ...bolt, threadDepthMm: 17.5 }).codes).toEqual(['bottoms-in-hole']);
  });

  it('that just touches the end of the thread at hand fit is free there still', () => {
    expect(outcome({ ...bolt, threadDepthMm: 18 }).codes).toEqual(['bottoms-when-pressed']);
    expect(outcome({ ...bolt, threadDepthMm: 17.99 }).codes).toEqual(['bottoms-in-hole']);
  });

  it('carries by no more thread than there is: of the hole, and of its own', () => {
    // Pressed tip at 19: the thread of the hole ends at 18.5, that of the bolt begins at 19 - 10.
    expect(checkFixing({ ...bolt, threadDepthMm: 18.5 }).pressed.engagementMm.nominal).toBe(18.5);
    expect(checkFixing({ ...bolt, threadLengthMm: 10 }).pressed.engagementMm.nominal).toBe(10);
    expect(checkFixing({ ...bolt, threadLengthMm: 10, threadStartMm: 12 }).pressed.engagementMm.nominal).toBe(7);
    const { threadDepthMm: _, ...open } = bolt;
    expect(checkFixing(open).pressed).toMatchObject({ clearanceMm: null, engagementMm: { nominal: 19 } });
  });

  it('just fits where its tip meets the end of the thread, with a word of caution up to one pitch', () => {
    expect(outcome({ ...bolt, threadDepthMm: 19 })).toMatchObject({ state: 'fits', codes: ['nearly-bottoms'] });
    expect(outcome({ ...bolt, threadDepthMm: 19.99 }).codes).toEqual(['nearly-bottoms']);
    expect(outcome({ ...bolt, threadDepthMm: 20 }).codes).toEqual([]);
  });

  it('takes the hole for the thread when only that is known, and the shallower of both', () => {
    const { threadDepthMm: _, ...open } = bolt;
    expect(outcome({ ...open, holeDepthMm: 18.5 }).codes).toEqual(['hole-depth-for-thread', 'bottoms-when-pressed']);
    const hole = checkFixing({ ...open, holeDepthMm: 30 });
    expect(hole.state).toBe('fits');
    expect(hole.findings).toMatchObject([
      { code: 'hole-depth-for-thread', severity: 'caution', path: 'threadDepthMm' },
    ]);
    expect(outcome({ ...bolt, holeDepthMm: 30 }).codes).toEqual([]);
    expect(outcome({ ...bolt, holeDepthMm: 18.5 }).codes).toEqual(['bottoms-when-pressed']);
    expect(outcome({ ...bolt, threadDepthMm: 18.5, holeDepthMm: 30 }).codes).toEqual(['bottoms-when-pressed']);
    expect(outcome(open)).toEqual({ state: 'cannot-tell', missing: 'threadDepthMm', codes: ['stop-unknown'] });
  });

  it('cannot be told when it meets the end in a part of the limits, and names the worst known length', () => {
    const doubtful = outcome({
      ...bolt,
      threadDepthMm: { lower: 18.9, nominal: 19, upper: 19.1 },
      travelMm: { lower: 0.5, nominal: 1, upper: 1.5 },
    });
    expect(doubtful).toEqual({ state: 'cannot-tell', missing: 'travelMm', codes: ['may-bottom'] });
  });

  it('asks first for what is named first when two lengths are known equally badly', () => {
    const about = (middle: number) => ({ lower: middle - 0.5, nominal: middle, upper: middle + 0.5 });
    const both = { ...bolt, threadDepthMm: 19, endGapMm: about(2.5), travelMm: about(1) };
    expect(outcome(both)).toMatchObject({ state: 'cannot-tell', missing: 'endGapMm' });
  });

  it('needs one diameter of thread in steel, counted from where the thread begins', () => {
    // Pressed tip at 19: thread from 11 to 19 is 8 mm.
    expect(outcome({ ...bolt, threadStartMm: 11 }).codes).toEqual([]);
    expect(outcome({ ...bolt, threadStartMm: 11.01 })).toMatchObject({
      state: 'does-not-fit',
      codes: ['bolt-too-short'],
    });
    expect(outcome({ ...bolt, threadStartMm: { lower: 10.9, nominal: 11, upper: 11.1 } })).toMatchObject({
      state: 'cannot-tell',
      missing: 'threadStartMm',
      codes: ['may-be-short'],
    });
    expect(outcome({ ...bolt, threadStartMm: 11, neededEngagementRatio: 1.25 }).codes).toEqual(['bolt-too-short']);
  });

  it('counts only its own thread: a shank that comes first jams', () => {
    // Shank ends at 19 - 20 = -1 pressed: outside. At 19 - 15 = 4 it is inside and meets the first thread.
    expect(outcome({ ...bolt, threadLengthMm: 20 }).codes).toEqual([]);
    expect(outcome({ ...bolt, threadLengthMm: 15 })).toMatchObject({ state: 'does-not-fit', codes: ['shank-jams'] });
    expect(outcome({ ...bolt, threadLengthMm: 15, threadStartMm: 4 }).codes).toEqual([]);
    expect(outcome({ ...bolt, threadLengthMm: { lower: 18.5, nominal: 19, upper: 19.5 } })).toMatchObject({
      state: 'cannot-tell',
      missing: 'threadLengthMm',
    });
    expect(
      outcome({ ...bolt, threadLengthMm: 15, threadStartMm: { lower: 3.9, nominal: 4, upper: 4.1 } }),
    ).toMatchObject({ state: 'cannot-tell', missing: 'threadStartMm' });
  });

  it('is warned of few turns at the start', () => {
    // Hand fit: gap 16 leaves 22 - 1.5 - 16 = 4.5 turns; gap 17 leaves 3.5.
    const long = { ...bolt, travelMm: 15 };
    expect(outcome({ ...long, endGapMm: 16 }).codes).toEqual([]);
    expect(outcome({ ...long, endGapMm: 17 }).codes).toEqual(['few-turns-at-start']);
    // Four turns are enough; where even all the thread is too short, that alone is said.
    expect(outcome({ ...long, endGapMm: 16.5 }).codes).toEqual([]);
    expect(outcome({ ...long, endGapMm: 17, threadStartMm: 15 }).codes).toEqual(['bolt-too-short']);
  });

  it('cannot dive deeper than the seat that meets the spindle end', () => {
    expect(checkFixing({ ...bolt, endGapMm: 0.5, travelMm: 1 }).pressed.tipDepthMm?.nominal).toBe(20.5);
    expect(checkFixing({ ...bolt, endGapMm: -1, travelMm: 1 }).handFit.tipDepthMm?.nominal).toBe(20.5);
  });

  const deep = { ...bolt, threadDepthMm: 30 };

  it('clamps the spindle instead of the arm when the travel uses up the end gap', () => {
    // At 0 the face under the head meets the spindle's end; 1.1 - 1 leaves 0.1 mm.
    for (const change of [
      { endGapMm: 0.5, travelMm: 1 },
      { endGapMm: 1, travelMm: 1 },
      { endGapMm: 0, travelMm: 0 },
      { endGapMm: -0.3, travelMm: 0 },
      { endGapMm: { lower: 0.2, nominal: 0.5, upper: 0.8 }, travelMm: { lower: 0.8, nominal: 1, upper: 1.2 } },
    ]) {
      expect(outcome({ ...deep, ...change })).toEqual({
        state: 'does-not-fit',
        missing: null,
        codes: ['clamps-the-spindle'],
      });
    }
    expect(outcome({ ...deep, endGapMm: 1.1 })).toEqual({ state: 'fits', missing: null, codes: [] });
    const [clamps] = checkFixing({ ...deep, endGapMm: -0.3, travelMm: 0.5 }).findings;
    expect(clamps).toMatchObject({ severity: 'stop', path: 'endGapMm', values: { endGapMm: -0.3, travelMm: 0.5 } });
    expect(clamps?.message).toContain('do not ride');
  });

  it('may clamp the spindle when only some of the limits use up the gap, and asks for the worst known of both', () => {
    const gap = { lower: 0.9, nominal: 1.5, upper: 1.8 };
    const travel = { lower: 0.8, nominal: 1, upper: 1.3 };
    expect(outcome({ ...deep, endGapMm: gap, travelMm: travel })).toEqual({
      state: 'cannot-tell',
      missing: 'endGapMm',
      codes: ['may-clamp-the-spindle'],
    });
    expect(outcome({ ...deep, endGapMm: 1.2, travelMm: travel })).toMatchObject({
      state: 'cannot-tell',
      missing: 'travelMm',
    });
    // Even the largest travel, 1.3, may touch at its very end only: 0 left counts as touching.
    expect(outcome({ ...deep, endGapMm: 1.3, travelMm: travel }).state).toBe('cannot-tell');
    expect(outcome({ ...deep, endGapMm: 1.31, travelMm: travel }).state).toBe('fits');
    expect(checkFixing({ ...deep, endGapMm: gap, travelMm: travel }).findings[0]?.severity).toBe('caution');
  });

  it('of another thread does not belong there', () => {
    for (const other of ['M8', 'M10x1', 'M8x1-LH']) {
      expect(outcome({ ...bolt, spindleThread: threadFor(other) }).codes).toEqual(['wrong-thread']);
    }
    const { spindleThread: _, ...open } = bolt;
    expect(outcome(open)).toMatchObject({ state: 'fits', codes: ['spindle-thread-assumed'] });
  });

  it('with a plain head straight on the square lacks its washer', () => {
    const { washerThicknessMm: _, ...bare } = { ...bolt, lengthUnderHeadMm: 20.5 };
    expect(outcome(bare)).toMatchObject({ state: 'does-not-fit', codes: ['washer-missing'] });
    expect(outcome({ ...bare, washerThicknessMm: 0 }).codes).toEqual(['washer-missing']);
    expect(outcome({ ...bare, head: 'flanged' }).codes).toEqual([]);
    expect(outcome({ ...bare, bearing: { outerDiameterMm: 20, holeDiameterMm: 9 } }).codes).toEqual([]);
    const small = { outerDiameterMm: 17, squareHoleMm: 12.6 };
    expect(outcome({ ...bolt, bearing: small })).toMatchObject({ state: 'fits', codes: ['head-misses-corners'] });
    // 12.6 x sqrt 2 = 17.82; reliefs of 1.2 mm reach to 20.22, beyond the washer of 20.
    const relieved = { outerDiameterMm: 20, squareHoleMm: 12.6, cornerReliefMm: 1.2 };
    expect(outcome({ ...bolt, bearing: relieved }).codes).toEqual(['head-misses-corners']);
    expect(outcome({ ...bolt, bearing: { ...relieved, cornerReliefMm: 1 } }).codes).toEqual([]);
  });

  it('equals its JSON round trip', () => {
    const check = checkFixing({ ...bolt, threadDepthMm: 18.5 });
    expect(JSON.parse(JSON.stringify(check))).toEqual(check);
  });
});

describe('a nut', () => {
  it('moves towards the foot of its stud while the arm is pressed', () => {
    const { handFit, pressed } = checkFixing(nut);
    expect(handFit.tipDepthMm).toBeNull();
    expect(handFit.clearanceMm?.nominal).toBeCloseTo(1.6, 12);
    expect(pressed.clearanceMm?.nominal).toBeCloseTo(0.6, 12);
    expect(pressed.engagementMm.nominal).toBe(8);
    expect(outcome(nut)).toMatchObject({ state: 'fits', codes: ['nearly-bottoms'] });
  });

  it('runs out of thread when nothing fills the gap', () => {
    const { washerThicknessMm: _, ...bare } = nut;
    expect(outcome(bare)).toEqual({ state: 'does-not-fit', missing: null, codes: ['nut-runs-out-of-thread'] });
  });

  it('clamps the end of the spindle when the travel uses up the end gap', () => {
    // A thick washer keeps the nut off the foot of the stud: only the gap is at fault.
    const thick = { ...nut, washerThicknessMm: 3, studLengthMm: 20 };
    expect(outcome({ ...thick, endGapMm: 2 })).toEqual({ state: 'fits', missing: null, codes: [] });
    for (const endGapMm of [1, 0.5, -1]) {
      expect(outcome({ ...thick, endGapMm })).toMatchObject({ state: 'does-not-fit' });
      expect(outcome({ ...thick, endGapMm }).codes).toContain('clamps-the-spindle');
    }
    expect(outcome({ ...thick, endGapMm: { lower: 0.9, nominal: 1.5, upper: 2 } })).toMatchObject({
      state: 'cannot-tell',
      missing: 'endGapMm',
    });
  });

  it('wants its whole height on the stud', () => {
    // Pressed face at 2.6: a stud of 10.6 fills the nut of 8.
    expect(outcome({ ...nut, studLengthMm: 10.61 }).codes).toEqual(['nearly-bottoms']);
    expect(outcome({ ...nut, studLengthMm: 10.5 }).codes).toEqual(['nearly-bottoms', 'nut-not-filled']);
  });

  it('counts its turns by its own pitch, and is warned of few', () => {
    // 8 mm of thread on a pitch of 1.25.
    const { engagedTurns } = checkFixing(nut).pressed;
    expect(engagedTurns.lower).toBeCloseTo(6.4, 12);
    expect(engagedTurns.nominal).toBeCloseTo(6.4, 12);
    expect(engagedTurns.upper).toBeCloseTo(6.4, 12);
    // A thin nut is wanted whole: 3 mm are 2.4 turns, all it has.
    expect(outcome({ ...nut, nutHeightMm: 3 }).codes).toEqual(['nearly-bottoms', 'few-turns-at-start']);
  });

  it('cannot be told without the run-out of the stud', () => {
    const { threadRunoutMm: _, ...open } = nut;
    expect(outcome(open)).toEqual({ state: 'cannot-tell', missing: 'threadRunoutMm', codes: ['runout-unknown'] });
  });

  it('is spoken of as a nut', () => {
    const { threadRunoutMm: _, ...open } = nut;
    for (const input of [nut, open, { ...nut, studLengthMm: 10.5 }, { ...nut, threadRunoutMm: 5 }]) {
      const { findings } = checkFixing(input);
      expect(findings.length).toBeGreaterThan(0);
      for (const { message } of findings) expect(message).not.toMatch(/bolt/i);
    }
  });
});

describe('refusals', () => {
  it.each([
    [{ fixing: 'screw' }, 'fixing'],
    [{ lengthUnderHeadMm: -1 }, 'lengthUnderHeadMm'],
    [{ endGapMm: { lower: 3, nominal: 2, upper: 4 } }, 'endGapMm'],
    [{ travelMm: -0.1 }, 'travelMm'],
    [{ travelMm: undefined }, 'travelMm'],
    [{ nutHeightMm: 8 }, 'nutHeightMm'],
    [{ neededEngagementRatio: 0 }, 'neededEngagementRatio'],
    [{ bearing: { outerDiameterMm: 12, squareHoleMm: 12.6 } }, 'bearing.squareHoleMm'],
  ])('refuses %j', (change, path) => {
    expect(refusal(() => checkFixing({ ...bolt, ...change } as never)).path).toBe(path);
  });

  it('refuses what is no object', () => {
    expect(refusal(() => checkFixing(null as never)).path).toBe('');
  });
});
