import { mkdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium } from 'playwright-core';

/** Folder for screenshots and prints, for people to look at. */
export const pictures = fileURLToPath(new URL('../.out/pictures/', import.meta.url));

/** Starts headless Chromium without any background traffic. */
export async function startBrowser(): Promise<Browser> {
  mkdirSync(pictures, { recursive: true });
  return chromium.launch({
    executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium',
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
}
