import { describe, expect, it } from 'vitest';
import { messages } from './en.ts';

describe('messages', () => {
  it('speak in whole sentences and leave no number without decimals to chance', () => {
    for (const [code, template] of Object.entries(messages)) {
      expect(template, code).toMatch(/^[A-Z{].*[.!]$/);
      expect(template.replace(/\{\w+(:\d)?\}/g, ''), code).not.toMatch(/[{}]/);
    }
  });

  it('say not to ride where the seat is no good', () => {
    for (const code of ['bottoms-on-end', 'hits-shoulder', 'too-little-engagement', 'does-not-start', 'bore-is-open']) {
      expect(messages[code]).toContain('Do not ride');
    }
    for (const code of ['rotation-unbounded', 'clearance-unbounded']) expect(messages[code]).toContain('Do not ride');
    expect(messages['never-ride-without-bolt']).toContain('Never ride without the bolt');
  });
});
