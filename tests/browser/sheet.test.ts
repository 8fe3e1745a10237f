import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import type { Browser, Page } from 'playwright-core';
import { readJob, renderHtml, workJob } from 'spindlewright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { pictures, startBrowser } from './browser.ts';

const folder = new URL('../../examples/jobs/', import.meta.url);
const jobs = readdirSync(folder).filter((name) => name.endsWith('.json'));

let browser: Browser;
beforeAll(async () => {
  browser = await startBrowser();
});
afterAll(async () => {
  await browser.close();
});

const html = (job: string): string =>
  renderHtml(workJob(readJob(JSON.parse(readFileSync(new URL(job, folder), 'utf8')))));

async function open(job: string, width: number, scheme: 'light' | 'dark', visit: (page: Page) => Promise<void>) {
  const page = await browser.newPage({ viewport: { width, height: 800 }, colorScheme: scheme });
  const troubles: string[] = [];
  page.on('console', (message) => troubles.push(message.text()));
  page.on('pageerror', (error) => troubles.push(error.message));
  page.on('request', (request) => {
    if (!request.url().startsWith('about:')) troubles.push(`request to ${request.url()}`);
  });
  await page.setContent(html(job), { waitUntil: 'load' });
  await visit(page);
  await page.close();
  expect(troubles).toEqual([]);
}

describe.each(jobs)('the sheet of %s', (job) => {
  const name = job.replace('.json', '');

  it.each([
    [360, 'light'],
    [360, 'dark'],
    [1280, 'light'],
    [1280, 'dark'],
  ] as const)('fits the screen at %i px, %s', async (width, scheme) => {
    await open(job, width, scheme, async (page) => {
      await page.screenshot({ path: `${pictures}${name}-${width}-${scheme}.png`, fullPage: true });
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect(wide).toBeLessThanOrEqual(0);
      // Each drawing is shown once, in the width that suits the screen.
      const drawings = await page.locator('figure').count();
      const boxes = await page.locator('figure svg:visible').evaluateAll((shown) =>
        shown.map((svg) => ({
          width: svg.getBoundingClientRect().width,
          height: svg.getBoundingClientRect().height,
        })),
      );
      expect(boxes.length).toBe(drawings);
      for (const box of boxes) {
        expect(box.width).toBeGreaterThan(width * 0.5);
        expect(box.height).toBeGreaterThan(80);
      }
    });
  });

  it.each(['light', 'dark'] as const)('has readable contrast (WCAG 2.2, 1.4.3: 4.5 to 1) in %s', async (scheme) => {
    await open(job, 1280, scheme, async (page) => {
      const worst = await page.evaluate(() => {
        const channel = (v: number): number => (v <= 0.03928 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4);
        const luminance = (css: string): number => {
          const [r = 0, g = 0, b = 0] = (css.match(/[\d.]+/g) ?? []).map((n) => channel(Number(n) / 255));
          return 0.2126 * r + 0.7152 * g + 0.0722 * b;
        };
        const background = (element: Element | null): string => {
          for (let at = element; at !== null; at = at.parentElement) {
            const colour = getComputedStyle(at).backgroundColor;
            if (colour !== 'rgba(0, 0, 0, 0)' && colour !== 'transparent') return colour;
          }
          return 'rgb(255, 255, 255)';
        };
        let lowest = 21;
        for (const element of document.querySelectorAll('p, li, td, th, h1, h2, strong, caption')) {
          const a = luminance(getComputedStyle(element).color);
          const b = luminance(background(element));
          lowest = Math.min(lowest, (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05));
        }
        return lowest;
      });
      expect(worst).toBeGreaterThanOrEqual(4.5);
    });
  });

  it.each(['A4', 'Letter'] as const)('prints on one or two %s pages', async (format) => {
    await open(job, 1280, 'dark', async (page) => {
      const pdf = await page.pdf({ format, printBackground: false });
      writeFileSync(`${pictures}${name}-${format}.pdf`, pdf);
      const pages = pdf.toString('latin1').match(/\/Type\s*\/Page[^s]/g)?.length ?? 0;
      expect(pages).toBeGreaterThan(0);
      expect(pages).toBeLessThanOrEqual(2);
    });
  });

  it('prints its sources by id, and no folded section', async () => {
    await open(job, 1280, 'light', async (page) => {
      await page.emulateMedia({ media: 'print' });
      expect(await page.locator('footer.printed').isVisible()).toBe(true);
      for (const details of await page.locator('details').all()) expect(await details.isVisible()).toBe(false);
    });
  });

  it('unfolds what stands behind it on the screen', async () => {
    await open(job, 360, 'light', async (page) => {
      const details = page.locator('#grounds details');
      expect(await details.locator('p').first().isVisible()).toBe(false);
      await details.locator('summary').click();
      expect(await details.locator('p').first().isVisible()).toBe(true);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect(wide).toBeLessThanOrEqual(0);
    });
  });
});
