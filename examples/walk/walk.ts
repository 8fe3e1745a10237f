// A walk from "it moves, the bolt is tight" to the right end: ask the check that diagnosis proposes, answer it with
// what the joint shows, and go on until no further check would change what to do.
import { type CheckId, type Diagnosis, diagnose, type Observations } from '@spindlewright/diagnosis';

/** What the joint would show if it were looked at: an invented left arm whose hole has gone. */
const shows: Observations = {
  'arm-alignment': 'in-line',
  'arm-straightness': 'straight',
  'play-at-arm': 'arm-moves-on-spindle',
  'bolt-on-arrival': 'tight',
  'tightening-feel': 'rises-steadily',
  'play-after-tightening': 'remains',
  'end-gap': 'flush',
  'shoulder-gap': 'clear',
  'arm-release': 'comes-off-by-hand',
  'bore-flats': 'rounded',
  'witness-mark': 'whole-flat',
  'spindle-flats': 'sound',
  'spindle-runout': 'true',
  'creak-under-load': 'each-pedal-stroke',
  'fretting-debris': 'dark-powder-or-rust',
  'bolt-fit': 'right',
  'bearing-turning': 'smooth',
  'other-sources': 'ruled-out',
  history: ['ridden-loose'],
};

/** One step of the walk. */
export interface Step {
  /** What was asked. */
  check: CheckId;
  /** What is to be done after the answer. */
  action: Diagnosis['action'];
}

/** Walks from what the owner says to the end. */
export function walk(known: Observations): { steps: Step[]; end: Diagnosis } {
  const steps: Step[] = [];
  let observations = known;
  for (;;) {
    const result = diagnose({ joint: 'square-taper-jis', side: 'non-drive', observations });
    const [next] = result.nextChecks;
    if (next === undefined) return { steps, end: result };
    observations = { ...observations, [next.check]: shows[next.check] };
    const { action } = diagnose({ joint: 'square-taper-jis', side: 'non-drive', observations });
    steps.push({ check: next.check, action });
  }
}
