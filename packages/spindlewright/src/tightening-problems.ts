import type { Problem } from './problem.ts';
import { pathWords } from './seat-words.ts';
import type { TighteningPart } from './tightening-part.ts';

/** What keeps the bolt from doing its work: each stop of the tightening reaches the answer. @internal */
export function tighteningProblems({ fixing, strength, findings }: TighteningPart): Problem[] {
  const problems: Problem[] = [];
  if (strength.state === 'exceeded') {
    problems.push({
      headline: `The bolt is of class ${strength.propertyClass}, too weak for the torque: fit a stronger one before tightening.`,
      owner: 'The bolt that is there is too weak for the torque that the joint needs.',
      remedy: 'What is replaced: the bolt',
    });
  }
  const stops = findings.filter(({ severity, code }) => severity === 'stop' && code !== 'bolt-class-too-weak');
  const [stop] = stops;
  if (stop !== undefined) {
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
