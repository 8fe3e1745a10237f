// The script of a static page: the checker and its data travel with the page, and nothing is asked of any server.
/// <reference lib="dom" />
import { createFitChecker, type FitData } from 'spindlewright';

declare const FIT_DATA: FitData;

const WORDS = {
  fits: 'Fits by name. Try it on by hand before it is pressed.',
  'does-not-fit': 'Does not fit. Do not force it.',
  'cannot-tell': 'Cannot tell yet',
} as const;

/** Words for the facts that decide most often; any other is shown by its name. */
const FACTS: Readonly<Record<string, string>> = {
  'trialFit.endGapMm': 'the gap between bolt seat and spindle end, the arm pushed on by hand',
  'trialFit.shoulderGapMm': 'the gap between arm and shoulder, the arm pushed on by hand',
  interface: 'the joint of the arm',
};

/** Words for what holds whatever the answer, by its code. */
const CAUTIONS: Readonly<Record<string, string>> = {
  'screen-names-first': 'The part maker\u2019s instructions and a qualified mechanic come first.',
  'screen-not-ridden-untried': 'Never ride before the arm was tried on, measured, and its bolt set to its torque.',
};

const checker = createFitChecker(FIT_DATA);
const choose = (id: string, values: readonly string[]): HTMLSelectElement => {
  const select = document.querySelector<HTMLSelectElement>(`#${id}`) ?? document.createElement('select');
  for (const value of values) select.append(new Option(value, value));
  select.addEventListener('change', show);
  return select;
};
const joint = choose('interface', ['square-taper-jis', 'square-taper-iso', 'spline-10']);
const part = choose('part', Object.keys(FIT_DATA.parts));

function show(): void {
  const answer = checker.check({
    part: part.value,
    need: { format: 'spindlewright-need-1', for: 'arm', interface: joint.value },
  });
  const output = document.querySelector<HTMLOutputElement>('#answer');
  if (output === null) return;
  output.dataset.state = answer.state;
  const missing =
    answer.missingFact === undefined ? '' : `: find out ${FACTS[answer.missingFact] ?? answer.missingFact} first.`;
  output.textContent = WORDS[answer.state] + missing;
  const list = document.querySelector('#cautions');
  list?.replaceChildren(
    ...answer.cautions.map((code) => {
      const item = document.createElement('li');
      item.textContent = CAUTIONS[code] ?? code;
      return item;
    }),
  );
}

show();
