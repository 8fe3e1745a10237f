import type { Datum } from '@spindlewright/quantity';
import { getSource } from '@spindlewright/quantity/sources';
import { assumedMaterials, flatFriction } from '@spindlewright/taper';
import { jobDefaults } from './defaults.ts';
import type { ArmReadings, Job } from './job.ts';
import type { Provenance } from './provenance.ts';
import type { SeatPart } from './seat-part.ts';
import { pathWords } from './seat-words.ts';
import type { Section } from './sheet.ts';
import type { TighteningPart } from './tightening-part.ts';

/** What the sheet took because the job did not say, in words. @internal */
export function assumptions(
  job: Job,
  tightening: TighteningPart,
  predicted: boolean,
): { words: string; datum: Datum }[] {
  const { press, settling, fixing, strength } = tightening;
  const flats = { ...flatFriction, unknown: jobDefaults.unknownFlats };
  const thread = {
    lubricated: jobDefaults.lubricatedThread,
    dry: jobDefaults.dryThread,
    unknown: jobDefaults.unknownThread,
  };
  const arms: (ArmReadings | undefined)[] = [job.arm, ...(job.candidates ?? []).map(({ arm }) => arm)];
  const unread = (key: keyof ArmReadings): boolean => predicted && arms.some((arm) => arm?.[key] === undefined);
  const fits = [job.trialFit, ...(job.candidates ?? []).map(({ trialFit }) => trialFit)];
  const plainNumber = (value: unknown): boolean => typeof value === 'number';
  const plainFits = fits.some((fit) => Object.values(fit ?? {}).some(plainNumber));
  const lengths = [job.spindle, ...arms, job.fixing].some((part) =>
    Object.entries(part ?? {}).some(([key, value]) => key.endsWith('Mm') && plainNumber(value)),
  );
  const calipers = [job.spindle?.flats, ...arms.map((arm) => arm?.flats)].some((list) => list !== undefined);
  const used: [boolean, string, Datum][] = [
    [
      predicted,
      `friction of the flats, ${press.flats === 'unknown' ? 'of unknown state' : press.flats}`,
      flats[press.flats],
    ],
    [true, `friction of thread and head, ${press.lubrication}`, thread[press.lubrication]],
    [job.fixing?.bearingOuterDiameterMm === undefined, 'ring under the bolt head', jobDefaults.bearingRing],
    [true, 'hole under the bolt head, over the thread', jobDefaults.bearingHoleClearance],
    [predicted, "Young's modulus of the arm", assumedMaterials.arm.youngsModulusGPa],
    [unread('yieldStrengthMPa'), 'yield strength of an arm', jobDefaults.armYield],
    [unread('bossDiameterMm'), 'diameter of a boss', jobDefaults.bossDiameter],
    [plainFits, 'half-width of a gap reading', jobDefaults.depthReading],
    [calipers, 'half-width of a reading across flats', jobDefaults.caliperReading],
    [calipers, 'half-width of the place where the jaw bears', jobDefaults.caliperPlane],
    [lengths, 'half-width of any other length read', jobDefaults.lengthReading],
    [settling !== undefined, 'stiffness of the bolt with all it clamps', jobDefaults.boltStiffness],
    [fixing !== undefined, 'square hole under the washer', jobDefaults.squareUnderHead],
    [!strength.read, 'class of a bolt whose mark was not read', jobDefaults.unreadPropertyClass],
  ];
  return used.flatMap(([applies, words, datum]) => (applies ? [{ words, datum }] : []));
}

/** The last section: what was assumed, which versions and which sources stand behind the sheet. @internal */
export function groundsSection(
  taken: readonly { words: string; datum: Datum }[],
  seat: SeatPart | undefined,
  provenance: Provenance,
): Section {
  const versions = Object.entries(provenance.versions).map(([name, version]) => `${name} ${version}`);
  return {
    id: 'grounds',
    detail: true,
    title: 'What this rests on',
    blocks: [
      ...(taken.length === 0
        ? []
        : [
            {
              kind: 'list' as const,
              ordered: false,
              items: taken.map(({ words, datum }) => datumWords(words, datum)),
            },
          ]),
      ...(seat === undefined ? [] : [{ kind: 'paragraph' as const, text: assumedWords(seat) }]),
      { kind: 'paragraph', text: `Made by ${versions.join(', ')}; standards data edition ${provenance.dataEdition}.` },
      {
        kind: 'paragraph',
        text: sourceWords(provenance.sources),
      },
    ],
  };
}

function sourceWords(ids: readonly string[]): string {
  if (ids.length === 0) return 'Sources: none is cited; what stands here is judgement or common practice.';
  const listed = ids.map((id) => {
    const { title, edition } = getSource(id);
    return `${title}${edition === '' ? '' : `, ${edition}`} [${id}]`;
  });
  return `Sources: ${listed.join('; ')}.`;
}

function assumedWords({ lead }: SeatPart): string {
  if (lead.assumed.length === 0) return 'All sizes of both parts were read.';
  return `Not read, so taken from the published set ${lead.set}: ${lead.assumed.map(pathWords).join('; ')}.`;
}

function datumWords(what: string, datum: Datum): string {
  const bounds = datum.lower === undefined ? '' : ` (${datum.lower} to ${datum.upper})`;
  const unit = datum.unit === '1' || datum.unit === 'class' ? '' : ` ${datum.unit}`;
  const source = datum.sources.length === 0 ? '' : `, ${datum.sources.join(', ')}`;
  return `Taken: ${what}: ${datum.value}${bounds}${unit} [${datum.standing}${source}].`;
}
