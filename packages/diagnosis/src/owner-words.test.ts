import { describe, expect, it } from 'vitest';
import { listRepairNeeds } from './data.ts';
import { diagnose } from './diagnose.ts';
import { listJoints } from './list-joints.ts';
import { messages } from './messages/en.ts';
import { ownerWords } from './owner-words.ts';
import type { DiagnoseInput } from './types.ts';

const saidOf = (input: DiagnoseInput) => ownerWords({ result: diagnose(input) });

describe('ownerWords', () => {
  it('says three sentences for a ruined arm, what to keep, and no word of riding on', () => {
    const { sentences, keep } = saidOf({
      joint: 'square-taper-jis',
      observations: {
        'play-after-tightening': 'remains',
        'bore-flats': 'rounded',
        'spindle-flats': 'sound',
        history: ['ridden-loose'],
      },
    });
    expect(sentences.map(({ code }) => code)).toEqual(['owner-found', 'owner-do-not-ride', 'owner-cause']);
    expect(sentences[1].severity).toBe('stop');
    expect(sentences[2].message).toContain('it was ridden loose');
    expect(keep).toHaveLength(5);
  });

  it('keeps nothing and sends nobody on when the joint is sound', () => {
    const said = saidOf({
      joint: 'square-taper-jis',
      observations: {
        'arm-alignment': 'in-line',
        'arm-straightness': 'straight',
        'play-at-arm': 'none',
        'bolt-on-arrival': 'tight',
        'creak-under-load': 'none',
        'fretting-debris': 'none',
        'bearing-turning': 'smooth',
        'spindle-runout': 'true',
        'end-gap': 'clear',
        'shoulder-gap': 'clear',
      },
    });
    expect(said.sentences.map(({ code }) => code)).toEqual(['owner-sound', 'owner-ride', 'owner-keep-well']);
    expect([...said.keep, ...said.workshop]).toEqual([]);
  });

  it('sends a crack and a fall to a qualified workshop', () => {
    const { workshop } = saidOf({
      joint: 'square-taper-jis',
      observations: { 'bore-flats': 'cracked', history: ['impact'] },
    });
    expect(workshop.map(({ code }) => code)).toEqual(expect.arrayContaining(['workshop-cracked', 'workshop-impact']));
  });

  it('has words for every joint, whatever is known', () => {
    for (const { id } of listJoints().filter(({ modelled }) => modelled)) {
      const { sentences } = saidOf({ joint: id as DiagnoseInput['joint'], observations: {} });
      for (const { message } of sentences) expect(message, id).toMatch(/^[A-Z][^{}]*\.$/);
    }
  });

  it('has words for every need that a repair may have', () => {
    const needs = listRepairNeeds();
    expect(needs.length).toBeGreaterThan(8);
    for (const { id } of needs) expect(messages[`need-${id}`], id).toMatch(/^[a-z].*[a-z]$/);
  });

  it('refuses what is no diagnosis', () => {
    expect(() => ownerWords({ result: {} as never })).toThrow('a result of diagnose()');
  });
});
