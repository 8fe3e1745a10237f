import { preloadRange, threadFor } from '@spindlewright/torque';
import { describe, expect, it } from 'vitest';
import { runCommand } from '../../../test/run-command.ts';

/** Lines are broken for a terminal; what they say is looked at here. */
const unbroken = (text: string): string => text.replace(/\s+/g, ' ');
function run(...args: string[]) {
  const { code, out, err } = runCommand(['torque', ...args]);
  return { code, out: args.includes('--json') ? out : unbroken(out), err: unbroken(err) };
}
const data = (...args: string[]) => {
  const { code, out } = run(...args, '--json');
  expect(code).toBe(0);
  return JSON.parse(out);
};
const M8 = ['--thread', 'M8x1'];

describe('torque', () => {
  it.each([
    // 1 lbf = 4.4482216152605 N, 1 in = 25.4 mm, 1 kgf = 9.80665 N, each exact.
    ['40 Nm', 'Nm', 40, 40],
    ['350 in-lb', 'lbf.in', 350, 39.54469],
    ['30 ft-lb', 'lbf.ft', 30, 40.67454],
    ['400 kgf.cm', 'kgf.cm', 400, 39.2266],
    ['38..42 Nm', 'Nm', 40, 40],
    ['340..360 lbf.in', 'lbf.in', 350, 39.54469],
  ])('takes a target of %s, and shows the setting in its unit', (text, unit, setting, torqueNm) => {
    const found = data('--target', text, ...M8);
    expect(found.wrench).toMatchObject({ unit, reach: 'direct' });
    expect(found.wrench.setting).toBeCloseTo(setting, 6);
    expect(found.torqueNm.nominal).toBeCloseTo(torqueNm, 4);
  });

  it('stops at what no bolt of the thread bears, also where its class is not told', () => {
    const { out } = run('--target', '4000 Nm', ...M8);
    expect(out).toMatch(/^STOP Even a bolt of class 12\.9/);
    // By ISO 898-1 a 12.9 bolt yields at 1100 MPa and M8x1 has 39.2 mm2, so 43 kN, far more than 40 Nm make at most frictions.
    const codes = (torque: string) =>
      data('--target', torque, ...M8).findings.map(({ code }: { code: string }) => code);
    // A class 8.8 bolt yields at 640 MPa: 25 kN in this thread. At 60 Nm and usual friction there are 30 kN and more.
    expect(codes('60 Nm')).toContain('head-mark-decides');
    for (const torque of ['20 Nm', '60 Nm']) expect(codes(torque)).not.toContain('beyond-any-bolt');
    expect(codes('20 Nm')).not.toContain('head-mark-decides');
    expect(codes('4000 Nm')).toContain('beyond-any-bolt');
    expect(run('--target', '4000 Nm', ...M8, '--class', '8.8').out).not.toContain('12.9');
  });

  it('spreads the torque by the tool and the preload by the friction', () => {
    // ISO 6789 allows 4 % above 10 Nm.
    const found = data('--target', '40 Nm', ...M8, '--friction', '0.08..0.16', '--head', '16 mm');
    expect(found.torqueNm.lower).toBeCloseTo(38.4, 9);
    expect(found.torqueNm.upper).toBeCloseTo(41.6, 9);
    const friction = { lower: 0.08, nominal: 0.12, upper: 0.16 };
    const range = preloadRange({
      torqueNm: 40,
      tool: 'click-wrench-iso-6789',
      thread: threadFor('M8x1'),
      threadFriction: friction,
      bearingFriction: friction,
      bearing: { outerDiameterMm: 16, holeDiameterMm: 8.4 },
    });
    expect(found.preloadN).toEqual(range.preloadN);
    expect(found.assumed).toEqual(['a click wrench in order, as ISO 6789 allows it to deviate']);
  });

  it('reckons an extension both ways', () => {
    const wrench = ['--wrench', '300 mm', '--extension', '75 mm'];
    // 40 * 300/375 = 32, and 32 read is 40 at the bolt; a crowfoot at right angles changes nothing.
    expect(data('--target', '40 Nm', ...M8, ...wrench).wrench.setting).toBeCloseTo(32, 9);
    expect(data('--read', '32 Nm', ...M8, ...wrench).torqueNm.nominal).toBeCloseTo(40, 9);
    expect(data('--target', '40 Nm', ...M8, ...wrench, '--angle', '90 deg').wrench.setting).toBeCloseTo(40, 9);
  });

  it('names the extension for a scale that ends too low, and says when none helps', () => {
    // 40 Nm = 354.03 lbf.in; 250 mm * (354.03/300 - 1) = 45.02 mm, so 50 mm, and 354.03 * 250/300 = 295.02.
    const scale = ['--unit', 'lbf.in', '--scale', '60..300'];
    const found = data('--target', '40 Nm', ...M8, ...scale, '--wrench', '250 mm').wrench;
    expect(found).toMatchObject({ reach: 'with-extension', extensionLengthMm: 50 });
    expect(found.setting).toBeCloseTo(295.02, 1);
    expect(run('--target', '40 Nm', ...M8, ...scale).out).toContain('does not reach 354 lbf.in: use another one');
    const short = run('--target', '40 Nm', ...M8, ...scale, '--wrench', '250 mm', '--extension', '10 mm');
    expect(short.out).toContain('does not reach 354 lbf.in with an extension of 10 mm');
  });

  it('finds the setting at whose worst a preload is there', () => {
    const found = data('--hold', '12 kN', ...M8, '--lubrication', 'lubricated');
    expect(found.preloadN.lower).toBeCloseTo(12_000, 6);
    expect(found.neededPreloadN).toBe(12_000);
  });

  it('puts the stop first, the part maker before every figure, and the trade apart by source', () => {
    const { out } = run('--read', '60 Nm', ...M8, '--class', '8.8');
    expect(out.startsWith('STOP')).toBe(true);
    expect(out).toContain("part maker's value comes first");
    expect(out).toContain('bolt still turned tighter');
    // The rows of the trade for this joint, by their ids.
    expect(out).toContain('square-taper-owners-manual [owners-manual-torques]');
    expect(out).toContain('60.0 Nm lies above all of them.');
    // 400 in-lb typed as ft-lb.
    expect(run('--target', '400 ft-lb', ...M8).out).toContain('lies above all of them: is the unit right?');
    expect(data('--target', '20 Nm', ...M8).trade.state).toBe('below');
    expect(data('--target', '40 Nm', ...M8).trade.state).toBe('within');
  });

  it.each([
    ['M12x1', 'splined-bolt-m12'],
    ['M15x1', 'splined-bolt-m15'],
    ['9/16-20 LH', 'pedal'],
    ['M5', undefined],
    ['M8x0.75', undefined],
  ])('knows what %s usually belongs to', (thread, joint) => {
    expect(data('--target', '12 Nm', '--thread', thread).trade?.joint).toBe(joint);
  });

  it('says what it took without being told', () => {
    const { out } = run('--target', '12 Nm', '--thread', '9/16-20 LH');
    expect(out).toContain('say --lubrication to narrow the range');
    expect(out).toContain('left-hand: it tightens anticlockwise');
    expect(run('--target', '12 Nm', '--thread', 'M5', '--joint', 'pinch-bolts').out).toContain('12.0 to 15.0 Nm');
  });

  it.each<[string, readonly string[], string]>([
    ['no torque', M8, 'one of --target TORQUE, --read TORQUE, --hold FORCE'],
    ['two of them', ['--target', '40 Nm', '--read', '40 Nm', ...M8], 'one of --target'],
    ['no thread', ['--target', '40 Nm'], '--thread is missing'],
    ['a torque without a unit', ['--target', '40', ...M8], '--target "40": a number with its unit, such as "40 Nm"'],
    ['a torque in a force', ['--target', '40 N', ...M8], 'a number with its unit'],
    ['an unknown thread', ['--target', '40 Nm', '--thread', 'M8y1'], '--thread came:'],
    ['a face smaller than its hole', ['--target', '40 Nm', ...M8, '--head', '8 mm'], '--head'],
    ['friction out of range', ['--target', '40 Nm', ...M8, '--friction', '0..0.2'], '--friction'],
    [
      'an extension that reaches back too far',
      ['--target', '40 Nm', ...M8, '--wrench', '100 mm', '--extension', '200 mm', '--angle', '180 deg'],
      '--extension',
    ],
    ['an extension without the wrench', ['--target', '40 Nm', ...M8, '--extension', '50 mm'], 'asks for --wrench'],
    ['an angle without an extension', ['--target', '40 Nm', ...M8, '--angle', '90 deg'], 'asks for --extension'],
    ['a scale that runs backwards', ['--target', '40 Nm', ...M8, '--scale', '300..60'], '--scale'],
    ['a scale of one number', ['--target', '40 Nm', ...M8, '--scale', '300'], 'begins and ends'],
    ['two frictions', ['--target', '40 Nm', ...M8, '--friction', '0.1', '--lubrication', 'dry'], 'one of them'],
    ['an unknown joint', ['--target', '40 Nm', ...M8, '--joint', 'pedals'], 'nearest: pedal'],
    ['an unknown class', ['--target', '40 Nm', ...M8, '--class', '8.9'], 'nearest'],
  ])('refuses %s', (_name, args, complaint) => {
    const { code, out, err } = run(...args);
    expect(err).toContain(complaint);
    expect(code).toBe(2);
    expect(out).toBe('');
  });
});
