import type { Datum } from '@spindlewright/quantity';
import { getSource } from '@spindlewright/quantity/sources';
import { flatFriction } from '@spindlewright/taper';
import { jobDefaults } from './defaults.ts';
import type { Job } from './job.ts';
import type { Provenance } from './provenance.ts';
import type { PressPlan, SeatPart } from './seat-part.ts';
import type { Section } from './sheet.ts';

/** The last section: what was assumed, which versions and which sources stand behind the sheet. @internal */
export function groundsSection(
  job: Job,
  press: PressPlan,
  seat: SeatPart | undefined,
  provenance: Provenance,
): Section {
  const versions = Object.entries(provenance.versions).map(([name, version]) => `${name} ${version}`);
  return {
    id: 'grounds',
    title: 'What this rests on',
    blocks: [
      { kind: 'list', ordered: false, items: assumptions(job, press) },
      ...(seat === undefined
        ? []
        : [
            {
              kind: 'paragraph' as const,
              text:
                seat.lead.assumed.length === 0
                  ? 'All sizes of both parts were read.'
                  : `Not read, so taken from the published set ${seat.lead.set}: ${seat.lead.assumed.join(', ')}.`,
            },
          ]),
      { kind: 'paragraph', text: `Made by ${versions.join(', ')}; standards data edition ${provenance.dataEdition}.` },
      {
        kind: 'paragraph',
        text: `Sources: ${provenance.sources
          .map((id) => {
            const { title, edition } = getSource(id);
            return `${title}${edition === '' ? '' : `, ${edition}`} [${id}]`;
          })
          .join('; ')}.`,
      },
    ],
  };
}

function assumptions(job: Job, press: PressPlan): string[] {
  const flats = { ...flatFriction, unknown: jobDefaults.unknownFlats };
  const thread = {
    lubricated: jobDefaults.lubricatedThread,
    dry: jobDefaults.dryThread,
    unknown: jobDefaults.unknownThread,
  };
  const flatsWords = press.flats === 'unknown' ? 'of unknown state' : press.flats;
  return [
    datumWords(`friction of the flats, ${flatsWords}`, flats[press.flats]),
    datumWords(`friction of thread and head, ${press.lubrication}`, thread[press.lubrication]),
    datumWords('outer diameter of the face under the bolt head', jobDefaults.bearingOuter),
    ...(job.arm?.yieldStrengthMPa === undefined ? [datumWords('yield strength of the arm', jobDefaults.armYield)] : []),
    ...(job.arm?.bossDiameterMm === undefined ? [datumWords('diameter of the boss', jobDefaults.bossDiameter)] : []),
    ...(job.trialFit === undefined ? [] : [datumWords('half-width of a gap reading', jobDefaults.depthReading)]),
    ...(job.spindle?.flats === undefined && job.arm?.flats === undefined
      ? []
      : [datumWords('half-width of a reading across flats', jobDefaults.caliperReading)]),
  ];
}

const datumWords = (what: string, datum: Datum): string => {
  const bounds = datum.lower === undefined ? '' : ` (${datum.lower} to ${datum.upper})`;
  const unit = datum.unit === '1' ? '' : ` ${datum.unit}`;
  const source = datum.sources.length === 0 ? '' : `, ${datum.sources.join(', ')}`;
  return `Taken: ${what}: ${datum.value}${bounds}${unit} [${datum.standing}${source}].`;
};
