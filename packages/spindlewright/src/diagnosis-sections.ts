import {
  type Diagnosis,
  explain,
  listChecks,
  type Measurements,
  type Observations,
  type SideComparison,
} from '@spindlewright/diagnosis';
import { describeDiagnosis, describeSides, drawDiagnosis, drawSides, type PictureSide } from '@spindlewright/drawing';
import { createFinding, type Finding, type Measurand, type Messages } from '@spindlewright/quantity';
import { borePlayBlocks } from './bore-play-blocks.ts';
import { jobDefaults } from './defaults.ts';
import type { DiagnosisPart } from './diagnosis-part.ts';
import type { Job } from './job.ts';
import { forReader } from './job-sources.ts';
import { checkName, jointWords } from './joint-words.ts';
import { messages } from './messages/en.ts';
import type { Block, Section } from './sheet.ts';
import { withReadingError } from './with-reading-error.ts';

// Judgement: rarer possibilities and weak evidence only lengthen a sheet that is read at the stand.
const WORTH_NAMING = 0.03;
/** Checks that a sheet names. @internal */
export const NEXT_CHECKS = 3;

/** The sections that say what is wrong, why, and what to look at next. @internal */
export function diagnosisSections(job: Job, part: DiagnosisPart): Section[] {
  return [whatIsWrong(job, part), ...nextSection(part), ...bothSides(job, part)];
}

const wordIn =
  (words: Messages) =>
  (code: string): string =>
    words[code] ?? code;
const percent = (probability: number): string => {
  const rounded = Math.round(probability * 100);
  if (rounded >= 100) return 'over 99 %';
  return rounded === 0 ? 'under 1 %' : `${rounded} %`;
};

function whatIsWrong(job: Job, { result }: DiagnosisPart): Section {
  const words = jointWords(result.joint);
  const word = wordIn(words);
  const rows = [
    ...result.conditions
      .slice(0, 4)
      .map(({ id, probability }) => ({ kind: 'joint', code: `condition-${id}`, probability })),
    ...result.besides.map(({ id, probability }) => ({ kind: 'beside it', code: `beside-${id}`, probability })),
    ...result.causes
      .filter(({ id }) => id !== 'none')
      .slice(0, 3)
      .map(({ id, probability }) => ({ kind: 'cause', code: `cause-${id}`, probability })),
  ].filter(({ probability }) => probability >= WORTH_NAMING);
  const lines = explain({ result, messages: words });
  const evidence = lines.filter(({ code }) => code.startsWith('explain-evidence-'));
  const blocks: Block[] = [
    {
      kind: 'table',
      caption: 'What it is, by what was told and found; weights are judgement',
      head: ['what', 'kind', 'probability'],
      rows: rows.map(({ kind, code, probability }) => [word(code), kind, percent(probability)]),
    },
  ];
  const bars = rows.filter(({ kind }) => kind !== 'cause');
  if (bars.length > 1) {
    const conditions = bars.map(({ code, probability }) => ({ label: word(code), probability }));
    blocks.push({
      kind: 'drawing',
      narrowSvg: drawDiagnosis({ conditions, idPrefix: 'likely-narrow' }),
      wideSvg: drawDiagnosis({ conditions, idPrefix: 'likely-wide', widthPx: 720 }),
      description: describeDiagnosis({ conditions }),
      told: true,
    });
  }
  if (evidence.length > 0) {
    blocks.push({ kind: 'list', ordered: false, items: evidence.map(({ message }) => message) });
  }
  blocks.push(...borePlayBlocks(job));
  if (result.contradictions.length > 0)
    blocks.push({ kind: 'findings', findings: forReader(result.contradictions, words) });
  return { id: 'diagnosis', title: 'What is wrong, and why', blocks };
}

function nextSection({ result }: DiagnosisPart): Section[] {
  if (result.nextChecks.length === 0) return [];
  const words = jointWords(result.joint);
  const word = wordIn(words);
  const described = new Map(listChecks(result.joint).map((check) => [check.id, check]));
  return [
    {
      id: 'next-checks',
      title: 'What to look at next',
      blocks: [
        {
          kind: 'table',
          caption: 'Best first: what each is worth against the minutes it takes',
          head: ['look at', 'how', 'minutes', 'do before it'],
          rows: result.nextChecks.slice(0, NEXT_CHECKS).map(({ check, minutes }) => {
            const description = described.get(check);
            const before = description?.before ?? [];
            return [
              word(`check-${check}`),
              description === undefined ? '' : word(`access-${description.access}`),
              minutes.toFixed(0),
              before.length === 0 ? 'nothing' : before.map((id) => checkName(words, id)).join(', '),
            ];
          }),
        },
      ],
    },
  ];
}

function bothSides(job: Job, { comparison }: DiagnosisPart): Section[] {
  if (comparison === undefined || job.observations === undefined || job.otherSide === undefined) return [];
  const words = jointWords(comparison.drive.joint);
  const word = wordIn(words);
  const here: Observations = job.observations;
  const there: Observations = job.otherSide.observations;
  const other = job.side === 'drive' ? 'non-drive' : 'drive';
  const says = (given: unknown): boolean => [given].flat().some((answer) => isAnswer(answer));
  const told = listChecks().filter(({ id }) => says(here[id]) && says(there[id]));
  const answer = (check: string, given: unknown): string =>
    [given]
      .flat()
      .filter(isAnswer)
      .map((outcome) => word(`outcome-${check}-${String(outcome)}`))
      .join(', ');
  return [
    {
      id: 'both-sides',
      title: 'Both sides compared',
      blocks: [
        {
          kind: 'table',
          caption: `What was found at either end${soundEnd(job, comparison)}`,
          head: ['looked at', `${job.side} side`, `${other} side`],
          rows: told.map(({ id }) => [checkName(words, id), answer(id, here[id]), answer(id, there[id])]),
        },
        {
          kind: 'paragraph',
          text:
            comparison.firstSide === 'neither'
              ? 'Nothing speaks against riding on either side.'
              : SHARED_ACTIONS.includes(comparison.action)
                ? `At both ends at once: ${word(`action-${comparison.action}`)}.`
                : `See to the ${comparison.firstSide} side first: ${word(`action-${comparison.action}`)}.`,
        },
        sidesDrawing(job, comparison, words),
        ...(comparison.findings.length === 0
          ? []
          : [
              {
                kind: 'findings' as const,
                findings: forReader(oncePerSide(comparison.findings), jointWords(comparison.drive.joint)),
              },
            ]),
      ],
    },
  ];
}

/** An arm that sits deeper shows it in both gaps; one of them is enough to say so. */
const oncePerSide = (findings: readonly Finding[]): Finding[] =>
  findings.filter(
    ({ code, values }, index) =>
      code !== 'arm-sits-deeper' ||
      findings.findIndex((other) => other.code === code && other.values.side === values.side) === index,
  );

/** Both ends beside each other, with what was measured on either. */
function sidesDrawing(job: Job, comparison: SideComparison, words: Messages): Block {
  const side = (result: Diagnosis, { endGapMm, shoulderGapMm, playAngleDeg }: Measurements): PictureSide => {
    const [condition] = result.conditions;
    const sure = (condition?.probability ?? 0) >= jobDefaults.evenChance.value;
    const said = words[`condition-${condition?.id}`] ?? '';
    return {
      words: sure ? said : 'not known yet',
      state: result.doNotRide ? 'bad' : sure && condition?.id === 'sound' ? 'good' : 'open',
      ...(endGapMm === undefined ? {} : { endGapMm: inLimits(endGapMm) }),
      ...(shoulderGapMm === undefined ? {} : { shoulderGapMm: inLimits(shoulderGapMm) }),
      ...(playAngleDeg === undefined ? {} : { playAngleDeg }),
    };
  };
  const [here, there] = [job.measurements ?? {}, job.otherSide?.measurements ?? {}];
  const picture = {
    drive: side(comparison.drive, job.side === 'drive' ? here : there),
    nonDrive: side(comparison.nonDrive, job.side === 'drive' ? there : here),
  };
  return {
    kind: 'drawing',
    narrowSvg: drawSides({ ...picture, idPrefix: 'sides-narrow' }),
    wideSvg: drawSides({ ...picture, idPrefix: 'sides-wide', widthPx: 720 }),
    description: describeSides(picture),
  };
}

const inLimits = (reading: Measurand): Measurand => withReadingError(reading, jobDefaults.depthReading, null);

/** Actions on what both ends share. */
const SHARED_ACTIONS: readonly string[] = ['service-bearing', 'look-elsewhere'];

/** Answers that say nothing are not set side by side. */
const isAnswer = (answer: unknown): boolean =>
  answer !== undefined && !['unclear', 'not-checked', 'unknown'].includes(String(answer));

/** Names the sound end, if there is one. */
function soundEnd(job: Job, comparison: SideComparison): string {
  const [there, name] = job.side === 'drive' ? [comparison.nonDrive, 'non-drive'] : [comparison.drive, 'drive'];
  return there.doNotRide ? '' : `; the ${name} side shows what right looks like on this bike`;
}

/** Findings of the diagnosis for the general list, those of the other side marked as such. @internal */
export function diagnosisFindings(job: Job, { result, comparison }: DiagnosisPart): Finding[] {
  const own = [...result.cautions, ...result.findings];
  if (comparison === undefined) return own;
  const other = job.side === 'drive' ? comparison.nonDrive : comparison.drive;
  const said = new Set(own.map(({ code }) => code));
  const side = job.side === 'drive' ? 'non-drive' : 'drive';
  const fromThere = other.cautions.filter(({ code, severity }) => severity === 'stop' || !said.has(code));
  return [
    ...own,
    ...forReader(fromThere, jointWords(result.joint)).map(({ severity, message, sources }) =>
      createFinding({
        code: 'other-side-says',
        severity,
        template: messages['other-side-says'],
        values: { side, text: message.replace(/\.$/, '') },
        sources,
      }),
    ),
  ];
}
