// The static page of a shop in a real browser: bundled as a shop would, asked with pointer and keyboard.
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import type { Browser } from 'playwright-core';
import { fitData } from 'spindlewright';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { pictures, startBrowser } from './browser.ts';

const here = (path: string): string => fileURLToPath(new URL(`../../examples/fit-page/${path}`, import.meta.url));
const data = fitData({
  parts: [
    { partId: 'ARM-J', kind: 'arm', interface: 'square-taper-jis' },
    { partId: 'ARM-I', kind: 'arm', interface: 'square-taper-iso' },
    { partId: 'ARM-V', kind: 'arm', interface: 'spline-10' },
    { partId: '<img src=x onerror=alert(1)>', kind: 'arm' },
  ],
});

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(async () => {
  await browser.close();
});

it('answers in the browser, by keyboard, without any request', async () => {
  const { outputFiles } = await build({
    entryPoints: [here('page.ts')],
    bundle: true,
    minify: true,
    format: 'iife',
    conditions: ['@spindlewright/source'],
    write: false,
    define: { FIT_DATA: JSON.stringify(data) },
  });
  const script = outputFiles[0]?.text ?? '';
  const page = await browser.newPage({ viewport: { width: 360, height: 800 } });
  const troubles: string[] = [];
  page.on('console', (message) => troubles.push(message.text()));
  page.on('pageerror', (error) => troubles.push(error.message));
  page.on('dialog', (dialog) => {
    troubles.push(dialog.message());
    void dialog.dismiss();
  });
  // A made-up host whose two files are served from here; whatever else is asked for is a fault.
  const site = 'http://shop.invalid/';
  await page.route('**/*', (route) => {
    const url = route.request().url();
    if (url === site) return route.fulfill({ path: here('index.html') });
    if (url === `${site}page.js`) return route.fulfill({ contentType: 'text/javascript', body: script });
    troubles.push(`request to ${url}`);
    return route.abort();
  });
  await page.goto(site);
  const answer = page.locator('#answer');
  const told = async (joint: string, part: string): Promise<string | null> => {
    await page.locator('#interface').selectOption(joint);
    await page.locator('#part').selectOption(part);
    return answer.getAttribute('data-state');
  };
  expect(await told('square-taper-jis', 'ARM-J')).toBe('fits');
  expect(await told('square-taper-jis', 'ARM-I')).toBe('cannot-tell');
  await page.screenshot({ path: `${pictures}fit-page.png` });
  expect(await answer.textContent()).toContain('the gap between arm and shoulder');
  expect(await told('square-taper-jis', 'ARM-V')).toBe('does-not-fit');
  expect(await told('spline-10', 'ARM-V')).toBe('fits');
  expect(await told('spline-10', '<img src=x onerror=alert(1)>')).toBe('cannot-tell');
  await page.locator('#part').focus();
  await page.keyboard.press('Home');
  expect(await answer.getAttribute('data-state')).toBe('does-not-fit');
  expect(await page.locator('#cautions li').count()).toBe(2);
  expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0);
  expect(troubles).toEqual([]);
});

it('costs a page what the guide says', async () => {
  const { outputFiles } = await build({
    stdin: {
      contents: "import { createFitChecker } from 'spindlewright'; globalThis.check = createFitChecker;",
      resolveDir: here('.'),
    },
    bundle: true,
    minify: true,
    format: 'esm',
    conditions: ['@spindlewright/source'],
    write: false,
  });
  const bytes = gzipSync(outputFiles[0]?.contents ?? '').length;
  console.log(
    `checker: ${outputFiles[0]?.contents.length} bytes, ${bytes} gzipped; data: ${JSON.stringify(data).length}, ${gzipSync(JSON.stringify(data)).length} gzipped`,
  );
  // docs/guides/shop.md says 4 kB for the checker and 8 kB for its data.
  expect(bytes).toBeLessThan(4000);
  expect(gzipSync(JSON.stringify(data)).length).toBeLessThan(8000);
});
