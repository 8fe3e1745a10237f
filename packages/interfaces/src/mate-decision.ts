import type { Finding } from '@spindlewright/quantity';
import { makeFinding } from './make-finding.ts';
import type { Claim, MateVerdict } from './record.ts';

/** A verdict on a pair with its reasons, the deciding one first. @internal */
export interface Decision {
  verdict: MateVerdict;
  findings: readonly [Finding, ...Finding[]];
}

// Best first.
const VERDICTS: readonly MateVerdict[] = ['mates', 'mates-with-shift', 'unknown', 'starts-then-fails', 'does-not-mate'];

/** The worst of several decisions, whose reasons go first. @internal */
export function worstOf(first: Decision, ...rest: readonly Decision[]): Decision {
  const rank = ({ verdict }: Decision): number => VERDICTS.indexOf(verdict);
  const [worst = first, ...others] = [first, ...rest].sort((one, other) => rank(other) - rank(one));
  return { verdict: worst.verdict, findings: [...worst.findings, ...others.flatMap(({ findings }) => findings)] };
}

/** A decision that the data themselves state. @internal */
export function decisionOfRule(rule: Claim & { verdict: MateVerdict }): Decision {
  const { verdict, statement, note, sources } = rule;
  const severity = verdict === 'mates' ? 'note' : verdict === 'does-not-mate' ? 'stop' : RULE_SEVERITY[verdict];
  const said = note === undefined ? statement : `${statement} ${note}`;
  return { verdict, findings: [makeFinding('mating-rule', severity, { statement: said }, sources)] };
}

const RULE_SEVERITY = { 'mates-with-shift': 'caution', unknown: 'caution', 'starts-then-fails': 'stop' } as const;

/** Ids of the sources of several claims or numbers, each once. @internal */
export const sourcesIn = (items: readonly ({ sources: readonly string[] } | undefined)[]): string[] =>
  [...new Set(items.flatMap((item) => item?.sources ?? []))].sort();
