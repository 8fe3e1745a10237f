// The built site in a real browser, under a sub-path when it was built so. Needs `npm run docs`.
import { existsSync, readFileSync } from 'node:fs';
import type { Server } from 'node:http';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { diagnose, listActions } from '@spindlewright/diagnosis';
import { getInterface, identifyThread, spindleGeometries } from '@spindlewright/interfaces';
import { limitsOf } from '@spindlewright/quantity';
import { assumedMaterials, predictSeat } from '@spindlewright/taper';
import { frictionRange, preloadRange, threadFor, wrenchSetting } from '@spindlewright/torque';
import type { Browser, BrowserContextOptions, Locator, Page } from 'playwright-core';
import { readJob, workJob } from 'spindlewright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { figures } from '../../docs/theory/figures.ts';
import { pictures, startBrowser } from './browser.ts';
import { dist, serveSite, sitePages, sitePath } from './site-server.ts';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

let browser: Browser;
let server: Server;
let origin: string;
let url: string;

beforeAll(async () => {
  ({ server, origin, url } = await serveSite());
  browser = await startBrowser();
});
afterAll(async () => {
  await browser?.close();
  server?.close();
});

/** Waits until a bench has answered: its form is there before its state is read from the address. */
async function settled(page: Page, path: string): Promise<void> {
  if (path.startsWith('bench/')) await page.locator('.bench-answer > :not(.bench-hidden)').first().waitFor();
}

interface Visit {
  page: Page;
  faults: string[];
  bytes: () => number;
  close: () => Promise<void>;
}

/** Opens a page and notes what no page may do: errors, and requests to anywhere else. */
async function visit(path: string, options: BrowserContextOptions = {}): Promise<Visit> {
  const context = await browser.newContext(options);
  const page = await context.newPage();
  const faults: string[] = [];
  let bytes = 0;
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') faults.push(message.text());
  });
  page.on('pageerror', (error) => faults.push(String(error)));
  page.on('request', (request) => {
    const to = request.url();
    if (!to.startsWith(origin) && !/^(blob|data|about):/.test(to)) faults.push(`asks ${to}`);
  });
  page.on('response', (response) => {
    if (response.status() >= 400) faults.push(`${response.status()} ${response.url()}`);
    bytes += Number(response.headers()['content-length'] ?? 0);
  });
  await page.goto(`${url}${path}`, { waitUntil: 'networkidle' });
  await settled(page, path);
  return { page, faults, bytes: () => bytes, close: () => context.close() };
}

const BENCHES = ['seat', 'torque', 'diagnosis', 'identify', 'job'] as const;
const bench = (name: (typeof BENCHES)[number]): string => `bench/${name}.html`;
const PAGES = [
  'index.html',
  ...BENCHES.map(bench),
  'atlas/index.html',
  'atlas/square-taper-jis.html',
  'codes/index.html',
  'guides/index.html',
  'guides/mechanic.html',
  'guides/app.html',
  'theory/taper.html',
  'theory/other-joints.html',
  'validation/index.html',
  'data/conflicts.html',
  'api/index.html',
  'api/@spindlewright/taper/index/functions/predictSeat.html',
];

/** Width, height and colours under which every page is looked at. */
const LOOKS = [
  { name: 'desktop-light', viewport: { width: 1280, height: 900 }, colorScheme: 'light' },
  { name: 'desktop-dark', viewport: { width: 1280, height: 900 }, colorScheme: 'dark' },
  { name: 'phone-light', viewport: { width: 360, height: 740 }, colorScheme: 'light', hasTouch: true },
  { name: 'phone-dark', viewport: { width: 360, height: 740 }, colorScheme: 'dark', hasTouch: true },
] as const;

const PHONE = { viewport: { width: 360, height: 740 }, hasTouch: true } as const;

async function boxOf(part: Locator): Promise<{ x: number; y: number; width: number; height: number }> {
  const box = await part.boundingBox();
  if (box === null) throw new Error('it is not to be seen');
  return box;
}

/** Elastic constants that are taken for an arm whose alloy is not known, beside its yield strength. */
const assumedArm = () => ({
  youngsModulusGPa: limitsOf(assumedMaterials.arm.youngsModulusGPa),
  poissonsRatio: limitsOf(assumedMaterials.arm.poissonsRatio),
});

/** Limits as a page says them: to a tenth, bounds outward. */
function inTenths(limits: { lower: number; nominal: number; upper: number } | null): string {
  if (limits === null) throw new Error('it is known');
  const tenths = (value: number, round: (x: number) => number): string =>
    (round(Number((value * 10).toFixed(6))) / 10).toFixed(1).replace('-', '−');
  const { lower, nominal, upper } = limits;
  return `${tenths(nominal, Math.round)} mm (${tenths(lower, Math.floor)} to ${tenths(upper, Math.ceil)})`;
}

const answerText = async (page: Page): Promise<string> => (await page.locator('.bench-answer').textContent()) ?? '';

describe.each(PAGES)('%s', (path) => {
  it.each(LOOKS)('stands by itself, $name', async ({ name, ...look }) => {
    const { page, faults, close } = await visit(path, look);
    const spill = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    await page.screenshot({ path: `${pictures}site-${path.replace(/\W+/g, '-')}-${name}.png`, fullPage: true });
    expect(faults).toEqual([]);
    expect(spill).toBeLessThanOrEqual(0);
    await close();
  });

  it.each(['light', 'dark'] as const)('has no fault that axe finds, %s', async (colorScheme) => {
    const { page, close } = await visit(path, { viewport: { width: 1280, height: 900 }, colorScheme });
    await page.evaluate(axeSource);
    const faults = await page.evaluate(async () => {
      const { axe } = window as unknown as {
        axe: {
          run: (where: object, how: object) => Promise<{ violations: { id: string; nodes: { html: string }[] }[] }>;
        };
      };
      const { violations } = await axe.run(
        { exclude: [['.VPNav'], ['.VPSidebar'], ['iframe']] },
        { runOnly: ['wcag2a', 'wcag2aa', 'wcag21aa'] },
      );
      return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 160)}`);
    });
    expect(faults).toEqual([]);
    await close();
  });
});

describe('what is carried over the wire', () => {
  it('keeps the first page within 150 kB', async () => {
    const { bytes, close } = await visit('index.html');
    expect(bytes()).toBeGreaterThan(20_000);
    expect(bytes()).toBeLessThanOrEqual(150_000);
    await close();
  });

  it.each(BENCHES)('keeps the %s bench within 300 kB', async (name) => {
    const { bytes, close } = await visit(bench(name));
    expect(bytes()).toBeGreaterThan(50_000);
    expect(bytes()).toBeLessThanOrEqual(300_000);
    await close();
  });
});

describe('benches say what the library says', () => {
  it('seat', async () => {
    const { page, close } = await visit(
      `${bench('seat')}?sEnd=12.6&sAngle=2&sFlats=15&sShoulder=16&aMouth=13.4&aAngle=2&aBore=15&size=0&boss=36&yield=400&press=force&force=18000&flats=dry`,
    );
    // A bare length is read to 0.2 mm either way; sizes across flats were said to be exact.
    const about = (nominal: number) => ({ lower: nominal - 0.2, nominal, upper: nominal + 0.2 });
    const { pressed, travelMm } = predictSeat({
      spindle: { acrossFlatsAtEndMm: 12.6, faceAngleDeg: 2, flatLengthMm: about(15), shoulderFromEndMm: about(16) },
      arm: {
        acrossFlatsAtMouthMm: 13.4,
        faceAngleDeg: 2,
        boreLengthMm: about(15),
        boltSeatFromMouthMm: about(15),
        bossDiameterMm: about(36),
      },
      pressing: {
        axialForceN: 18000,
        friction: { lower: 0.15, nominal: 0.2, upper: 0.3 },
        materials: { arm: { ...assumedArm(), yieldStrengthMPa: 400 } },
      },
    });
    const text = await answerText(page);
    for (const limits of [pressed.endGapMm, pressed.shoulderGapMm, travelMm]) expect(text).toContain(inTenths(limits));
    await close();
  });

  it('seat: a measured arm on every published spindle, and what forbids right under the answer', async () => {
    const { page, close } = await visit(
      `${bench('seat')}?sEnd=12.6&sFlats=20&aMouth=13.2&aBore=16&size=0&boss=36&yield=400&press=force&force=20000&flats=greased`,
    );
    const about = (nominal: number) => ({ lower: nominal - 0.2, nominal, upper: nominal + 0.2 });
    const arm = {
      acrossFlatsAtMouthMm: 13.2,
      faceAngleDeg: 2,
      boreLengthMm: about(16),
      boltSeatFromMouthMm: about(16),
      bossDiameterMm: about(36),
    };
    const pressing = {
      axialForceN: 20000,
      friction: { lower: 0.1, nominal: 0.13, upper: 0.16 },
      materials: { arm: { ...assumedArm(), yieldStrengthMPa: 400 } },
    };
    const expected = (['square-taper-jis', 'square-taper-iso'] as const).flatMap((id) =>
      spindleGeometries(getInterface(id)).map(({ geometry: spindle }) => {
        const { pressed, verdict } = predictSeat({ spindle, arm, pressing });
        return `${pressed.endGapMm?.nominal.toFixed(1)} ${verdict}`;
      }),
    );
    expect(new Set(expected.map((line) => line.split(' ')[1]))).toEqual(new Set(['too-little-engagement']));
    const lines = await page.locator('.block-ranges').first().locator('.range-text').allTextContents();
    expect(lines.map((line) => line.split(' ')[0])).toEqual(expected.map((line) => line.split(' ')[0]));
    expect(lines.every((line) => line.endsWith('Too little of the flats in use'))).toBe(true);
    expect(await page.locator('.block-headline + .block-findings').textContent()).toContain('Do not ride this pair');
    // Hand fit is (A - S)/(2 tan 2°); an end of 12.3 mm leaves 16 - 12.9 - 1.3 mm of end gap, one of 12.6 too little flat.
    expect(await page.locator('.block-values').first().textContent()).toMatch(
      /Spindle ends that may seat this arm12\.1\d to 12\.4\d mm/,
    );
    await close();
  });

  it('torque, in pounds as well', async () => {
    const asked =
      'bolt=M8x1&strength=8.8&torque=35&friction=friction-class-b&hole=round&head=16&holeSize=9&wrench=250&extension=50';
    const { page, close } = await visit(`${bench('torque')}?${asked}`);
    const { friction } = frictionRange({ of: 'B' });
    if (friction === null) throw new Error('class B has both ends');
    const { preloadN } = preloadRange({
      torqueNm: 35,
      tool: 'click-wrench-iso-6789',
      thread: threadFor('M8x1'),
      threadFriction: friction,
      bearingFriction: friction,
      bearing: { outerDiameterMm: 16, holeDiameterMm: 9 },
      propertyClass: '8.8',
    });
    const kilo = (force: number, round: (x: number) => number): string => (round(force / 100) / 10).toFixed(1);
    const { lower, nominal, upper } = preloadN;
    expect(await answerText(page)).toContain(
      `${kilo(nominal, Math.round)} kN (${kilo(lower, Math.floor)} to ${kilo(upper, Math.ceil)})`,
    );
    const { settingNm } = wrenchSetting({ targetTorqueNm: 35, wrenchLengthMm: 250, extensionLengthMm: 50 });
    await page.getByLabel('in, lbf').check();
    // 1 lbf.in = 0.112984829... Nm (NIST SP 811, appendix B.8).
    await expect.poll(() => answerText(page)).toContain(`${Math.round(settingNm / 0.1129848290276167)} lbf·in`);
    await close();
  });

  it('diagnosis', async () => {
    const { page, close } = await visit(
      `${bench('diagnosis')}?bore-flats=rounded&bolt-on-arrival=tight&play-after-tightening=remains`,
    );
    const { action, conditions, doNotRide } = diagnose({
      joint: 'square-taper-jis',
      side: 'non-drive',
      observations: { 'bore-flats': 'rounded', 'bolt-on-arrival': 'tight', 'play-after-tightening': 'remains' },
    });
    const text = await answerText(page);
    expect(doNotRide).toBe(true);
    expect(text).toContain('Do not ride. ');
    expect(text.toLowerCase()).toContain(
      listActions()
        .find(({ id }) => id === action)
        ?.text.toLowerCase(),
    );
    expect(text).toContain(`${Math.round(100 * (conditions[0]?.probability ?? 0))} %`);
    await close();
  });

  it('identify', async () => {
    const { page, close } = await visit(
      `${bench('identify')}?what=thread&threadDiameter=14.2&pitch=1.27&hand=left&kind=external`,
    );
    const [best] = identifyThread({ diameterMm: 14.2, pitchMm: 1.27, hand: 'left', kind: 'external' }).candidates;
    const text = await answerText(page);
    expect(text).toContain(best?.designation);
    expect(text).toContain(`${Math.round(100 * (best?.probability ?? 0))} %`);
    await close();
  });

  it('identify: an example only where somebody asks for it, and the address holds that it is one', async () => {
    const { page, close } = await visit(bench('identify'));
    const answer = () => page.locator('.block-answer').first().textContent();
    expect(await answer()).toBe('Fill in one reading to begin');
    await page.getByRole('button', { name: 'try it with an invented example' }).click();
    await expect.poll(answer).toContain('Invented example: ');
    await page.reload({ waitUntil: 'networkidle' });
    await expect.poll(answer).toContain('Invented example: ');
    await page.getByRole('button', { name: 'clear the example' }).click();
    await expect.poll(answer).toBe('Fill in one reading to begin');
    await close();
  });

  it('job: the sheet is the library’s own', async () => {
    const job: unknown = JSON.parse(readFileSync('examples/jobs/mixed-standard.json', 'utf8'));
    const { page, close } = await visit(`${bench('job')}?from=mixed-standard`);
    const title = page.frameLocator('iframe').locator('h1');
    await expect.poll(() => title.textContent()).toBe(workJob(readJob(job)).title);
    await close();
  });
});

describe('benches can be worked', () => {
  it('by keyboard alone, and the address holds the state', async () => {
    const { page, close } = await visit(bench('torque'));
    const before = await page.locator('.block-answer').first().textContent();
    await page.getByLabel('Torque wanted at the bolt').focus();
    await page.keyboard.press('ControlOrMeta+a');
    await page.keyboard.type('300 lbf.in');
    await page.keyboard.press('Tab');
    const answer = () => page.locator('.block-answer').first().textContent();
    await expect.poll(answer).not.toBe(before);
    const after = await answer();
    // 300 lbf.in is 33.895 Nm (NIST SP 811).
    expect(new URL(page.url()).searchParams.get('torque')).toMatch(/^33\.895/);
    await page.reload({ waitUntil: 'networkidle' });
    await expect.poll(answer).toBe(after);
    await close();
  });

  it('the arm is pressed with the arrow keys', async () => {
    const { page, close } = await visit(bench('seat'));
    const slider = page.getByLabel('How far it is pressed');
    await slider.focus();
    const pressed = await page.locator('.block-drawing').innerHTML();
    for (let k = 0; k < 20; k++) await page.keyboard.press('ArrowLeft');
    expect(await slider.inputValue()).toBe('0');
    await expect.poll(() => page.locator('.block-drawing').innerHTML()).not.toBe(pressed);
    await close();
  });

  it('the arm is dragged by mouse, and what does not depend on it stays', async () => {
    const { page, close } = await visit(bench('seat'), { viewport: { width: 1280, height: 900 } });
    const told = await page.locator('.block-answer').first().textContent();
    const drawing = page.locator('.block-drawing');
    const pressed = await drawing.innerHTML();
    const { x, y, width, height } = await boxOf(drawing);
    await page.mouse.move(x + width / 2, y + height / 3);
    await page.mouse.down();
    await page.mouse.move(x + width / 2 - 0.2 * width, y + height / 3, { steps: 4 });
    // Two fifths of the drawing are the whole press.
    await expect.poll(() => page.getByLabel('How far it is pressed').inputValue()).toBe('50');
    await page.mouse.move(x, y + height / 3, { steps: 4 });
    await expect.poll(() => new URL(page.url()).searchParams.get('pressed')).toBe('0');
    await page.mouse.up();
    expect(await drawing.innerHTML()).not.toBe(pressed);
    expect(await page.locator('.block-answer').first().textContent()).toBe(told);
    // Let go, the arm no longer follows.
    await page.mouse.move(x + width - 4, y + height / 3, { steps: 4 });
    expect(await page.getByLabel('How far it is pressed').inputValue()).toBe('0');
    await close();
  });

  it('the arm is dragged by a finger on a phone, while a finger that goes down scrolls', async () => {
    const { page, close } = await visit(bench('seat'), PHONE);
    const drawing = page.locator('.block-drawing');
    await drawing.scrollIntoViewIfNeeded();
    const finger = await page.context().newCDPSession(page);
    const drag = async (way: readonly { x: number; y: number }[]): Promise<void> => {
      const [from, ...rest] = way;
      await finger.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: from ? [from] : [] });
      for (const point of rest)
        await finger.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints: [point] });
      await finger.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
    };
    const slider = page.getByLabel('How far it is pressed');
    const { x, width } = await boxOf(drawing);
    const middle = x + width / 2;
    await drag([0, 10, 30, 60, 90, 140].map((step) => ({ x: middle - step, y: 300 })));
    await expect.poll(() => slider.inputValue()).toBe('0');
    const before = await page.evaluate(() => window.scrollY);
    await drag([0, 20, 60, 120, 200].map((step) => ({ x: middle, y: 400 - step })));
    await expect.poll(() => page.evaluate(() => window.scrollY)).toBeGreaterThan(before);
    expect(await slider.inputValue()).toBe('0');
    await close();
  });

  it.each([
    { name: 'by touch', ...PHONE },
    { name: 'with a mouse', viewport: { width: 1280, height: 900 } },
  ])('squares are swapped in one press, and every source answers, $name', async ({ name, ...look }) => {
    const { page, close } = await visit(`${bench('seat')}?spindle=square-taper-jis&arm=square-taper-jis`, look);
    const button = page.getByRole('button', { name: 'arm: ISO square' });
    await (name === 'by touch' ? button.tap() : button.click());
    await expect.poll(() => new URL(page.url()).searchParams.get('arm')).toBe('square-taper-iso');
    // As many lines as sets hold both squares, each told as the sheet of such a job tells it.
    const job = { format: 'spindlewright-job-1', title: 'x', date: '2026-01-01', bike: 'x', side: 'drive' };
    const mix = { spindle: 'square-taper-jis', arm: 'square-taper-iso' };
    const { seat } = workJob(readJob({ ...job, interface: mix }));
    const ways = seat === undefined ? [] : [seat.lead, ...seat.others];
    expect(ways.length).toBeGreaterThan(2);
    const told = ways.map(({ prediction }) => inTenths(prediction.pressed.endGapMm));
    const lines = page.locator('.block-ranges .range-text');
    await expect.poll(async () => (await lines.allTextContents()).map((text) => text.split('. ')[0])).toEqual(told);
    await page.getByRole('button', { name: 'arm: JIS square' }).waitFor();
    await close();
  });

  it.each(['seat', 'torque', 'diagnosis', 'identify'] as const)('%s by touch on a phone', async (name) => {
    const { page, close } = await visit(bench(name), { viewport: { width: 360, height: 740 }, hasTouch: true });
    const text = await answerText(page);
    const taps = {
      seat: 'ISO square',
      torque: 'on the square of the arm itself',
      diagnosis: 'right, with chainrings',
      identify: 'a thread',
    } as const;
    await page.getByLabel(taps[name], { exact: true }).last().tap();
    await expect.poll(() => answerText(page)).not.toBe(text);
    await close();
  });

  it('says what is wrong instead of breaking', async () => {
    const { page, faults, close } = await visit(`${bench('torque')}?bolt=M8x9`);
    expect(await answerText(page)).toContain('This does not go together yet');
    await page.getByLabel('Torque wanted at the bolt').fill('plenty');
    await expect.poll(() => page.getByLabel('Torque wanted at the bolt').getAttribute('aria-invalid')).toBe('true');
    expect(faults).toEqual([]);
    await close();
  });

  it('opens and saves a job as a file', async () => {
    const { page, close } = await visit(bench('job'));
    await page.getByLabel('or open a job file').setInputFiles('examples/jobs/good-arm.json');
    const { title } = JSON.parse(readFileSync('examples/jobs/good-arm.json', 'utf8')) as { title: string };
    await expect.poll(() => page.frameLocator('iframe').locator('h1').textContent()).toBe(title);
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'save the job as a file' }).click(),
    ]);
    const saved = JSON.parse(readFileSync(await download.path(), 'utf8')) as { title: string };
    expect(saved.title).toBe(title);
    await close();
  });

  it('compares two records of the atlas', async () => {
    const { page, close } = await visit('atlas/index.html?a=square-taper-jis&b=square-taper-iso');
    const table = page.getByRole('region', { name: 'Two records compared' });
    await table.waitFor();
    await expect.poll(() => table.textContent()).toContain('12.65');
    await expect.poll(() => table.textContent()).toContain('12.5');
    await close();
  });
});

describe('figures that move', () => {
  it('on the cover: drawn before any package has come, moved once it is taken hold of', async () => {
    const { page, bytes, close } = await visit('index.html', { viewport: { width: 1280, height: 900 } });
    const told = page.locator('.cover-figure .figure-told');
    const before = bytes();
    expect(await told.textContent()).toContain('the bolt presses the arm');
    const slider = page.getByLabel('Press the arm on');
    const pressed = await page.locator('.cover-wide').innerHTML();
    await slider.focus();
    await page.keyboard.press('Home');
    const hand = predictSeat({ trialFit: { endGapMm: { value: 3.1, standardUncertainty: 0.1 } } }).handFit.endGapMm;
    // The first key may come before the packages have.
    await expect
      .poll(async () => {
        await page.keyboard.press('Home');
        return told.textContent();
      })
      .toContain(`stands ${hand?.nominal.toFixed(1)} mm clear`);
    expect(await page.locator('.cover-wide').innerHTML()).not.toBe(pressed);
    expect(bytes()).toBeGreaterThan(before);
    await close();
  });

  it.each([
    ['theory/taper.html', ['hand-fit', 'self-holding', 'travel', 'yield', 'preload']],
    ['theory/other-joints.html', ['spline', 'pinch', 'cotter']],
  ] as const)('%s: every figure by keyboard, its sentence the library’s', async (path, names) => {
    const { page, faults, close } = await visit(path);
    const drawn = page.locator('.theory-figure');
    expect(await drawn.count()).toBe(names.length);
    for (const [index, name] of names.entries()) {
      const figure = figures[name];
      if (figure === undefined) throw new Error(`no figure ${name}`);
      const here = drawn.nth(index);
      const told = here.locator('.figure-told');
      expect(await told.textContent()).toBe(figure.tell(figure.x.start, figure.choice.start));
      const line = await here.locator('svg').innerHTML();
      const slider = here.getByRole('slider');
      await slider.focus();
      const low = figure.tell(figure.x.min, figure.choice.start);
      await expect
        .poll(async () => {
          await page.keyboard.press('Home');
          return told.textContent();
        })
        .toBe(low);
      const last = figure.choice.options.at(-1) ?? '';
      await here.getByRole('radio').last().focus();
      await page.keyboard.press('Space');
      await expect.poll(() => told.textContent()).toBe(figure.tell(figure.x.min, last));
      expect(await here.locator('svg').innerHTML()).not.toBe(line);
    }
    expect(faults).toEqual([]);
    await close();
  });

  it('stand there without any script', async () => {
    const { page, close } = await visit('theory/taper.html', { javaScriptEnabled: false });
    const figure = figures['hand-fit'];
    expect(await page.locator('.theory-figure .figure-told').first().textContent()).toBe(
      figure?.tell(figure.x.start, figure.choice.start),
    );
    await close();
  });
});

describe('on a phone', () => {
  // The whole job answers with a sheet, and has no strip.
  it.each(BENCHES.filter((name) => name !== 'job'))(
    'no field in hand is under the strip of the %s bench',
    async (name) => {
      const { page, close } = await visit(bench(name), PHONE);
      const fields = await page.locator('.bench-form :is(input, select):visible').all();
      expect(fields.length).toBeGreaterThan(1);
      for (const field of fields) {
        await field.focus();
        const [box, strip] = [await boxOf(field), await boxOf(page.locator('.bench-strip'))];
        expect(box.y).toBeGreaterThanOrEqual(0);
        expect(box.y + box.height).toBeLessThanOrEqual(strip.y);
      }
      await close();
    },
  );

  it('a field that is tapped half under the strip comes out from under it', async () => {
    const { page, close } = await visit(bench('seat'), PHONE);
    const field = page.getByLabel('Yield strength of the arm');
    const stripY = (await boxOf(page.locator('.bench-strip'))).y;
    const { y, height } = await boxOf(field);
    await page.evaluate((by) => window.scrollBy(0, by), y + height / 2 - stripY);
    expect((await boxOf(field)).y + height).toBeGreaterThan(stripY + 10);
    const { x } = await boxOf(field);
    await page.touchscreen.tap(x + 20, stripY - 8);
    await expect.poll(() => field.evaluate((part) => part === document.activeElement)).toBe(true);
    await expect.poll(async () => (await boxOf(field)).y + height).toBeLessThanOrEqual(stripY);
    await close();
  });

  it.each(['guides/app.html', 'guides/columns.html', 'api/@spindlewright/taper/index/functions/predictSeat.html'])(
    'code wraps, %s',
    async (path) => {
      const { page, close } = await visit(path, PHONE);
      const blocks = page.locator('.vp-doc div[class*="language-"] pre');
      expect(await blocks.count()).toBeGreaterThan(0);
      const spills = await blocks.evaluateAll(
        (parts) => parts.filter((part) => part.scrollWidth > part.clientWidth).length,
      );
      expect(spills).toBe(0);
      await close();
    },
  );

  it('the mark of zero crosses no words', async () => {
    const asked =
      'sEnd=12.6&sFlats=20&aMouth=13.2&aBore=16&size=0&boss=36&yield=400&press=force&force=20000&flats=greased';
    const { page, close } = await visit(`${bench('seat')}?${asked}`, PHONE);
    const span = (parts: Locator) =>
      parts.evaluateAll((all) =>
        all.map((part) => part.getBoundingClientRect()).map(({ top, bottom }) => [top, bottom]),
      );
    const marks = await span(page.locator('.range-zero'));
    const words = await span(page.locator('.range-label, .range-text, .range-scale'));
    expect(marks.length).toBeGreaterThan(1);
    const crossed = marks.filter(([top = 0, bottom = 0]) =>
      words.some(([from = 0, to = 0]) => top < to && bottom > from),
    );
    expect(crossed).toEqual([]);
    await close();
  });
});

/** Opens the search, whose key is heard only once the page has come to life, and types. */
async function searchFor(page: Page, words: string): Promise<void> {
  const input = page.locator('#localsearch-input');
  await expect
    .poll(
      async () => {
        if (!(await input.isVisible())) await page.keyboard.press('ControlOrMeta+k');
        return input.isVisible();
      },
      { timeout: 20_000 },
    )
    .toBe(true);
  await input.fill(words);
}

describe('search', () => {
  it.each([
    ['predictSeat', 'api/'],
    ['ten-spline', 'atlas/'],
    ['shaken out friction', 'theory/'],
    ['mechanic written sheet', 'guides/'],
    ['bottoms-on-end', 'codes/'],
  ])('finds %s under %s', async (words, folder) => {
    const { page, close } = await visit('index.html', { viewport: { width: 1280, height: 900 } });
    await searchFor(page, words);
    const found = page.locator('.VPLocalSearchBox a.result');
    await expect
      .poll(async () => found.evaluateAll((links) => links.map((link) => (link as HTMLAnchorElement).pathname)))
      .toContainEqual(expect.stringContaining(`/${folder}`));
    await close();
  });
});

describe('what comes first in the search', () => {
  it.each([
    ['torque', 'bench/torque'],
    ['seat', 'bench/seat'],
    ['diagnosis', 'bench/diagnosis'],
    ['identify', 'bench/identify'],
    ['job', 'bench/job'],
    ['friction', 'bench/torque'],
    ['npm install', 'guides/'],
    ['predictSeat', 'api/@spindlewright/taper/index/functions/predictSeat'],
  ])('%s: %s', async (words, first) => {
    const { page, close } = await visit('index.html', { viewport: { width: 1280, height: 900 } });
    await searchFor(page, words);
    const found = page.locator('.VPLocalSearchBox a.result').first();
    await expect.poll(() => found.evaluate((link) => (link as HTMLAnchorElement).pathname)).toContain(`/${first}`);
    await close();
  });
});

describe('tables of the data', () => {
  const cells = (path: string): string[] =>
    [...readFileSync(join(dist, path), 'utf8').matchAll(/<td[^>]*>(.*?)<\/td>/g)].map(([, html = '']) =>
      html.replace(/<[^>]*>/g, ''),
    );

  it('list sizes as people count, under names and not ids', () => {
    const lengths = cells('atlas/arm-lengths.html').filter((cell) => /\smm$/.test(cell));
    expect(lengths.map((cell) => Number.parseFloat(cell))).toEqual([165, 167.5, 170, 172.5, 175]);
    const first = sitePages()
      .filter((name) => name.startsWith('atlas/'))
      .map((name) => /id="numbers"(.*?)(?:<h2|$)/s.exec(readFileSync(join(dist, name), 'utf8'))?.[1] ?? '')
      .flatMap((table) => [...table.matchAll(/<tr><td>([^<]*)</g)]);
    expect(first.length).toBeGreaterThan(400);
    expect(
      first.map(([, what]) => what).filter((what) => /[a-z0-9]+-[a-z0-9]+-|[a-z][A-Z]|\bquantity\b/.test(what ?? '')),
    ).toEqual([]);
  });

  it('show a minus sign, no hyphen', () => {
    const shown = sitePages()
      .filter((name) => /^(atlas|data|validation)\//.test(name))
      .flatMap(cells);
    expect(shown.filter((cell) => /^−\d/.test(cell)).length).toBeGreaterThan(50);
    expect(shown.filter((cell) => /^-\d/.test(cell))).toEqual([]);
  });

  it('are chosen from by names', async () => {
    const { page, close } = await visit('atlas/index.html');
    const options = await page.getByLabel('Kind').locator('option').allTextContents();
    expect(options).toContain('Joints: square taper');
    expect(options.filter((text) => /\w-\w+-|joint: /.test(text))).toEqual([]);
    await close();
  });
});

describe('guides', () => {
  it('lead to benches whose answers are filled in', async () => {
    const { page, close } = await visit('guides/mechanic.html', PHONE);
    await page.getByRole('link', { name: '0.9 mm to the end' }).tap();
    await expect.poll(() => answerText(page)).toContain('Bolt lands on the spindle end');
    await close();
  });
});

describe('links', () => {
  const base = sitePath();
  const pages = sitePages();
  const texts = new Map(pages.map((name) => [name, readFileSync(join(dist, name), 'utf8')]));
  const files = new Set(pages);

  /** Links of a page that lead nowhere. */
  function broken(name: string, text: string): string[] {
    const here = new URL(name, `http://site${base}`);
    return [...text.matchAll(/<a [^>]*href="([^"]*)"/g)].flatMap(([, href = '']) => {
      const to = new URL(href.replaceAll('&amp;', '&'), here);
      if (to.host !== 'site') return /^(https?|mailto):$/.test(to.protocol) ? [] : [`${name}: ${href}`];
      if (!to.pathname.startsWith(base)) return [`${name}: ${href} leaves the site`];
      const path = decodeURIComponent(to.pathname.slice(base.length));
      const target = path === '' || path.endsWith('/') ? `${path}index.html` : path;
      if (/^data\/.+\.(json|csv)$/.test(target))
        return existsSync(join(dist, target)) ? [] : [`${name}: ${href} has no file`];
      if (!files.has(target)) return [`${name}: ${href} has no page`];
      const id = decodeURIComponent(to.hash.slice(1));
      return id === '' || texts.get(target)?.includes(`id="${id}"`) ? [] : [`${name}: ${href} has no such place`];
    });
  }

  it('all lead somewhere', () => {
    expect(pages.length).toBeGreaterThan(100);
    expect([...texts].flatMap(([name, text]) => broken(name, text))).toEqual([]);
  });

  it('finds a broken one', () => {
    expect(broken('atlas/x.html', '<a class="y" href="./nowhere.html">z</a>')).toHaveLength(1);
    expect(broken('atlas/x.html', '<a href="../data/nowhere.csv">z</a>')).toHaveLength(1);
  });
});
