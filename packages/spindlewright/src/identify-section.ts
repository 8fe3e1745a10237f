import type { JobRecords } from './records-of.ts';
import { recordWords } from './seat-words.ts';
import type { Section } from './sheet.ts';

/** The section that says which taper the spindle is likely to be. @internal */
export function identifySection({ identification }: JobRecords): Section[] {
  if (identification === undefined) return [];
  return [
    {
      id: 'identify',
      title: 'Which taper the spindle has',
      blocks: [
        {
          kind: 'table',
          caption: 'From the readings, against every published set of sizes',
          head: ['interface', 'probability'],
          rows: identification.candidates.map(({ id, probability }) => [
            recordWords[id] ?? id,
            `${(100 * probability).toFixed(0)} %`,
          ]),
        },
        ...(identification.next === undefined || identification.next === null
          ? []
          : [{ kind: 'paragraph' as const, text: identification.next.message }]),
      ],
    },
  ];
}
