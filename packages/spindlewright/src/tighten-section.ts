import { describePreloadRange, drawPreloadRange, type PreloadRangePicture } from '@spindlewright/drawing';
import type { InterfaceRecord } from '@spindlewright/interfaces';
import { convert, hardLimits } from '@spindlewright/quantity';
import { extrasAfter, extrasBefore } from './fixing-extras.ts';
import type { Job } from './job.ts';
import type { PlanMode } from './plan-mode.ts';
import { recheckSection } from './recheck-section.ts';
import { limitsWords, plain, torqueWords } from './seat-words.ts';
import type { Block, Section } from './sheet.ts';
import type { TighteningPart } from './tightening-part.ts';
import { wrenchWords } from './wrench-plan.ts';

/** Title of the plan by its mode. @internal */
export const PLAN_TITLES: Readonly<Record<PlanMode, string>> = {
  now: 'How to tighten it',
  're-tighten': 'How to tighten it again, as it sits',
  later: 'How it is tightened, once what stands above is done',
  reckoned: 'What the figures above reckon with',
};

/** What stands over the plan. @internal */
export const PLAN_LEADS: Readonly<Partial<Record<PlanMode, string>>> = {
  later: 'Only after what stands above is done: with the right parts, and with both gaps measured at the trial fit.',
  reckoned: 'This is no instruction: do not tighten this pair.',
};

const FLATS_WORDS = {
  greased: 'Flats: thin grease, as the job says.',
  dry: 'Flats: clean and dry, as the job says.',
  unknown: 'Flats: clean them, decide greased or dry before pressing, and write it down; the trade disagrees.',
} as const;

/** How to tighten, with the wrench at hand, and when to look again. @internal */
export function tightenSections(job: Job, part: TighteningPart, record: InterfaceRecord, mode: PlanMode): Section[] {
  const lead = PLAN_LEADS[mode];
  return [
    {
      id: 'tighten',
      title: PLAN_TITLES[mode],
      blocks: [
        ...(lead === undefined ? [] : [{ kind: 'paragraph' as const, text: lead }]),
        { kind: 'list', ordered: mode !== 'reckoned', items: steps(job, part, mode) },
        preloadDrawing(pictureOf(part)),
      ],
    },
    ...(mode === 'reckoned' ? [] : [recheckSection(part, record)]),
  ];
}

function steps(job: Job, part: TighteningPart, mode: PlanMode): string[] {
  const { press, settling, findings } = part;
  const target = press.torqueNm.nominal;
  const again = mode === 're-tighten';
  const extras = job.fixing?.extras ?? [];
  return [
    ...extrasBefore(extras),
    ...(again ? ['Flats: left as they are; the arm stays on.'] : [FLATS_WORDS[press.flats]]),
    press.lubrication === 'unknown'
      ? `Thread ${press.thread} and bolt head: the job does not say; grease or oil both, washer in place.`
      : `Thread ${press.thread} and bolt head: ${press.lubrication}, as the job says; washer in place.`,
    ...(findings.some(({ code }) => code === 'head-mark-needed')
      ? ['Read the mark on the bolt head before the wrench goes on: the class was not read.']
      : []),
    `Torque: ${torqueWords(target)} Nm (${plain(convert(target, 'Nm', 'lbf.in'), 0)} lbf.in), ${targetWords(job, part)}.`,
    ...(part.wrench === undefined ? [] : wrenchWords(part.wrench)),
    `Preload to reckon with: ${plain(press.preloadN.nominal / 1000, 0)} kN (${plain(Math.floor(press.preloadN.lower / 1000), 0)} to ${plain(Math.ceil(press.preloadN.upper / 1000), 0)} kN): friction decides, not the wrench.`,
    ...(again
      ? [
          'The bolt moves a fraction of a turn; one that turns on and on means that the arm still climbs or has lost its hold.',
        ]
      : []),
    ...(settling === undefined || again ? [] : turnWords(settling)),
    ...(again
      ? []
      : ['If it goes solid before half a turn, stop and look: the bolt is on the spindle end or the arm on the wall.']),
    ...(mode === 'reckoned' ? [] : ['Measure the end gap again when tight; it has to be there still.']),
    ...(mode === 'reckoned' ? [] : extrasAfter(extras)),
  ];
}

function turnWords({ tighteningTurns, solidBoltTurns }: NonNullable<TighteningPart['settling']>): string[] {
  const few =
    tighteningTurns.lower < 0.5
      ? ' A dry or stiff pair may take under half a turn: then the end gap tells whether it moved.'
      : '';
  return [
    `From snug to torque takes ${limitsWords(tighteningTurns, 'turns')} while the arm moves; a bolt that has gone solid takes ${limitsWords(solidBoltTurns, 'turns', 2)}.${few}`,
  ];
}

function targetWords(job: Job, { press }: TighteningPart): string {
  if (job.partMakerTorqueNm === undefined) {
    return "the value that most sources of the trade allow; the part maker's value goes first if you have it";
  }
  const { lower, upper } = hardLimits(job.partMakerTorqueNm);
  if (lower === upper) return "the part maker's value";
  return `within the part maker's ${torqueWords(lower)} to ${torqueWords(upper)} Nm${
    press.torqueNm.nominal === lower + (upper - lower) / 2 ? ', its middle' : ''
  }`;
}

/** The preload that tightening may make, beside what the bolt stands and what riding leaves. */
const pictureOf = ({ press, strength, settling }: TighteningPart): PreloadRangePicture => ({
  preloadN: press.preloadN,
  title: `Bolt preload at ${torqueWords(press.torqueNm.nominal)} Nm`,
  marks: [
    {
      label: `class ${strength.propertyClass} at 90 % of yield${strength.read ? '' : ' (class not read)'}`,
      forceN: strength.limitPreloadN,
    },
    ...(settling === undefined
      ? []
      : [{ label: 'left after riding, no wear', forceN: settling.preloadAfterShakedownN.nominal }]),
  ],
});

/** A preload range as a block of the sheet, in both widths. @internal */
export const preloadDrawing = (picture: PreloadRangePicture): Block => ({
  kind: 'drawing',
  narrowSvg: drawPreloadRange({ ...picture, idPrefix: 'preload-narrow' }),
  wideSvg: drawPreloadRange({ ...picture, idPrefix: 'preload-wide', widthPx: 720 }),
  description: describePreloadRange(picture),
});
