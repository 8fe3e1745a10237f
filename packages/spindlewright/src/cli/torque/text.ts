import { convert, type Limits } from '@spindlewright/quantity';
import { jobDefaults } from '../../defaults.ts';
import type { WrenchPlan } from '../../tightening-part.ts';
import { findingLines } from '../finding-lines.ts';
import { wrapped } from '../wrap.ts';
import type { TorqueAnswer } from './answer.ts';

/** The answer for people. @internal */
export function torqueText(answer: TorqueAnswer): string {
  const { torqueNm, preloadN, friction, thread, hand, tool, trade, strength, looseningTorqueNm: loosening } = answer;
  const line = (text: string): string[] => wrapped(text, undefined, '  ', '    ');
  const [first = '', ...cautions] = answer.cautions;
  const stops = answer.findings.filter(({ severity }) => severity === 'stop');
  return [
    ...(stops.length === 0 ? [] : [...findingLines(stops), '']),
    ...wrapped(first),
    '',
    answer.asked === 'read' ? 'what was read' : 'what to set',
    ...line(answer.asked === 'read' ? readWords(answer.wrench) : settingWords(answer.wrench)),
    ...line(
      `At the bolt: ${newtonMetres(torqueNm.nominal)} (${toUnits(torqueNm.nominal)}); with the wrench at its worst (${tool}) ${newtonMetres(torqueNm.lower)} to ${newtonMetres(torqueNm.upper)}.`,
    ),
    ...(hand === 'left' ? line('The thread is left-hand: it tightens anticlockwise.') : []),
    '',
    'what preload to reckon with',
    ...line(`${kilonewtons(preloadN)}: friction makes this width, not the wrench.`),
    ...line(
      `Thread ${thread}, friction ${spread(friction.thread)}${friction.head === friction.thread ? ' in thread and under the head' : ` in the thread, ${spread(friction.head)} under the head`}.`,
    ),
    ...(answer.neededPreloadN === undefined
      ? []
      : line(`At its worst the ${(answer.neededPreloadN / 1000).toFixed(1)} kN that were asked for are there.`)),
    ...line(
      `To loosen it again at once: ${newtonMetres(loosening.lower)} to ${newtonMetres(loosening.upper)}; less later.`,
    ),
    ...(strength === undefined
      ? line('How far the bolt is used is not known: give --class with the mark on its head.')
      : line(
          `A bolt of class ${strength.propertyClass} is used to ${percent(strength.utilisation.nominal)} of its yield strength (${percent(strength.utilisation.lower)} to ${percent(strength.utilisation.upper)}).`,
        )),
    '',
    'what the trade uses',
    ...tradeLines(trade, torqueNm.nominal, line),
    '',
    ...(answer.assumed.length === 0 ? [] : ['what was taken, since no flag said it']),
    ...answer.assumed.flatMap(line),
    ...(answer.assumed.length === 0 ? [] : ['']),
    ...cautions.flatMap((text) => wrapped(text, undefined, '  !   ', '      ')),
    ...findingLines(answer.findings.filter(({ severity }) => severity !== 'stop')),
    '',
    ...wrapped(`Data ${answer.dataEdition}; sources: ${answer.sources.join(', ')}`),
    '',
  ].join('\n');
}

function tradeLines(trade: TorqueAnswer['trade'], torqueNm: number, line: (text: string) => string[]): string[] {
  if (trade === undefined)
    return line('No torque of the trade goes with this thread by itself: name the joint with --joint.');
  const { joint, lowerNm, upperNm, state, rows } = trade;
  const share = jobDefaults.doubtedTorqueShare.value;
  const doubt = torqueNm < lowerNm * share || torqueNm > upperNm / share ? ': is the unit right?' : '.';
  const place = {
    below: `${newtonMetres(torqueNm)} lies below all of them${doubt}`,
    within: `${newtonMetres(torqueNm)} lies between the lowest and the highest.`,
    above: `${newtonMetres(torqueNm)} lies above all of them${doubt}`,
  };
  return [
    ...line(
      `${joint}: ${newtonMetres(lowerNm)} to ${newtonMetres(upperNm)}, by ${rows.length} ${rows.length === 1 ? 'statement' : 'statements that differ'}. ${place[state]}`,
    ),
    ...rows.map(({ id, lowerNm: from, upperNm: to, sources }) => {
      const range = from === to ? newtonMetres(from) : `${from.toFixed(1)} to ${newtonMetres(to)}`;
      return `    ${range.padEnd(16)}  ${id} [${sources.join(', ')}]`;
    }),
  ];
}

/** A value of the scale of the wrench. */
const onScale = (value: number, unit: WrenchPlan['unit']): string =>
  `${value.toFixed(unit === 'Nm' || unit === 'lbf.ft' ? 1 : 0)} ${unit}`;
const withExtension = ({ extensionLengthMm: length }: WrenchPlan): string =>
  length === undefined ? '' : ` with an extension of ${Number(length.toFixed(1))} mm`;

function settingWords(plan: WrenchPlan): string {
  const { reach, setting, unit, target } = plan;
  if (reach === 'direct' && setting !== undefined) return `Set the wrench to ${onScale(setting, unit)}.`;
  if (reach === 'with-extension' && setting !== undefined) {
    return `Set the wrench to ${onScale(setting, unit)}${withExtension(plan)}: the bolt then gets ${onScale(target, unit)}.`;
  }
  return `This wrench does not reach ${onScale(target, unit)}${withExtension(plan)}: use another one.`;
}

const readWords = (plan: WrenchPlan): string =>
  `The wrench showed ${onScale(plan.setting ?? plan.target, plan.unit)}${withExtension(plan)}.`;

const newtonMetres = (value: number): string => `${value.toFixed(1)} Nm`;
const toUnits = (torqueNm: number): string =>
  [
    `${convert(torqueNm, 'Nm', 'lbf.in').toFixed(0)} lbf.in`,
    `${convert(torqueNm, 'Nm', 'lbf.ft').toFixed(1)} lbf.ft`,
    `${convert(torqueNm, 'Nm', 'kgf.cm').toFixed(0)} kgf.cm`,
  ].join(', ');
const percent = (share: number): string => `${Math.round(100 * share)} %`;
const spread = ({ lower, upper }: Limits): string => (lower === upper ? String(lower) : `${lower} to ${upper}`);
// Rounded outward, so that no bound is narrowed.
const kilonewtons = ({ lower, nominal, upper }: Limits): string =>
  `${(nominal / 1000).toFixed(1)} kN (${(Math.floor(lower / 100) / 10).toFixed(1)} to ${(Math.ceil(upper / 100) / 10).toFixed(1)} kN)`;
