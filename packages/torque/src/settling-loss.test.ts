import { describe, expect, it } from 'vitest';
import { refusal } from '../test/refusal.ts';
import { settlingLoss } from './settling-loss.ts';

const joint = { preloadN: 37_900, settlementUm: 8, boltStiffnessNPerMm: 466_800, memberStiffnessNPerMm: 1_379_000 };

describe('settlingLoss', () => {
  it('is settlement times the two stiffnesses in series', () => {
    const { lossN, preloadAfterN, lossPerMicrometreN } = settlingLoss(joint);
    expect(lossN).toBeCloseTo((0.008 * 466_800 * 1_379_000) / (466_800 + 1_379_000), 8);
    expect(preloadAfterN).toBeCloseTo(37_900 - lossN, 8);
    expect(lossPerMicrometreN * 8).toBeCloseTo(lossN, 10);
    expect(settlingLoss(joint).findings).toEqual([]);
  });

  it('ends when the joint is slack', () => {
    const slack = settlingLoss({ ...joint, preloadN: 1000 });
    expect(slack).toMatchObject({ lossN: 1000, preloadAfterN: 0 });
    expect(slack.findings.map((finding) => finding.code)).toEqual(['settled-slack']);
    expect(settlingLoss({ ...joint, preloadN: 0 }).findings).toEqual([]);
    expect(settlingLoss({ ...joint, settlementUm: 0 }).lossN).toBe(0);
  });

  it('refuses what is outside', () => {
    expect(refusal(() => settlingLoss({ ...joint, settlementUm: -1 })).path).toBe('settlementUm');
    expect(refusal(() => settlingLoss({ ...joint, boltStiffnessNPerMm: 0 })).path).toBe('boltStiffnessNPerMm');
  });
});
