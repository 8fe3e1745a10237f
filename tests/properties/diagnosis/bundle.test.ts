// What a page pays for a diagnosis: code, likelihoods and the checks of quantity, without the words of the questions.
import { expect, it } from 'vitest';
import { gzippedBytes, only } from '../../bundle.ts';

const together = (...names: string[]): Promise<number> =>
  gzippedBytes(names.map((name) => only(name, '@spindlewright/diagnosis')).join('\n'));

it('the words are paid for only by who asks for them', async () => {
  const words = await together('listActions');
  expect(await together('diagnose', 'listActions')).toBeGreaterThan((await together('diagnose')) + words / 2);
});
