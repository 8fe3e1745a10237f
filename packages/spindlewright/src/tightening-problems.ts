import type { Problem } from './problem.ts';
import { pathWords } from './seat-words.ts';
import type { TighteningPart } from './tightening-part.ts';

/** What is known of the fixing, at whatever joint. */
export type FixingFacts = Pick<TighteningPart, 'findings'> &
  Partial<Pick<TighteningPart, 'fixing' | 'strength'>> & {
    /** True where no arm is pressed on a taper, so that a stop is one of the joint and not of the bolt alone. */
    withoutTaper?: boolean;
  };

/** The strongest class of ISO 898-1; no bolt of the trade is stronger. */
const STRONGEST_CLASS = '12.9';

/** True when the part maker's torque is so far from the trade that its unit is doubted. @internal */
export const torqueIsDoubted = ({ findings }: FixingFacts): boolean =>
  findings.some(({ code }) => code === 'torque-far-from-trade');

/** What keeps the bolt from doing its work: each stop of the tightening reaches the answer. @internal */
export function tighteningProblems({ fixing, strength, findings, withoutTaper }: FixingFacts): Problem[] {
  const problems: Problem[] = [];
  if (torqueIsDoubted({ findings })) {
    problems.push({
      headline:
        'The torque that was named is far from what the trade uses for this joint: look it up again before tightening.',
      owner: 'The torque that was named for this joint cannot be right.',
      remedy: 'What is done: the torque is looked up',
    });
  }
  if (strength?.state === 'exceeded' && strength.propertyClass === STRONGEST_CLASS) {
    problems.push({
      headline: `Not even a bolt of class ${STRONGEST_CLASS} stands this torque: look the torque and the thread up again.`,
      owner: 'No bolt of this size stands the torque that was named.',
      remedy: 'What is done: the torque is looked up',
    });
  } else if (strength?.state === 'exceeded') {
    problems.push({
      headline: `The bolt is of class ${strength.propertyClass}, too weak for the torque: fit a stronger one before tightening.`,
      owner: 'The bolt that is there is too weak for the torque that the joint needs.',
      remedy: 'What is replaced: the bolt',
    });
  }
  const stops = findings.filter(({ severity, code }) => severity === 'stop' && code !== 'bolt-class-too-weak');
  const [stop] = stops;
  if (stop !== undefined && withoutTaper === true) {
    problems.push({
      headline: `The joint as it stands does not hold the arm. ${stop.message}`,
      owner: 'The joint as it stands does not hold the arm.',
      remedy: 'What is done: the joint is put right',
      sameAs: 'bolt-not-clamping',
    });
  } else if (stop !== undefined) {
    problems.push({
      headline: `The bolt as it is cannot press this arm. ${stop.message}`,
      owner: 'The bolt that is there cannot hold this arm.',
      remedy: 'What is replaced: the bolt and its washer',
      sameAs: 'bolt-not-clamping',
    });
  } else if (fixing?.state === 'cannot-tell' && fixing.missing !== null) {
    problems.push({
      headline: `Whether the bolt can press this arm is not certain: measure ${pathWords(`fixing.${fixing.missing}`)}.`,
      owner: 'Whether the bolt that is there can hold this arm is not certain yet.',
      remedy: 'What is done: the bolt is measured',
    });
  }
  return problems;
}
