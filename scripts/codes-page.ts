// Writes docs/codes: every code of findings and words with its English sentence, package by package. Generated, never
// committed, so that the page cannot miss a code.
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { messages as diagnosis } from '@spindlewright/diagnosis/messages/en';
import { messages as drawing } from '@spindlewright/drawing/messages/en';
import { messages as interfaces } from '@spindlewright/interfaces/messages/en';
import { messages as quantity } from '@spindlewright/quantity/messages/en';
import { messages as taper } from '@spindlewright/taper/messages/en';
import { messages as torque } from '@spindlewright/torque/messages/en';
import { messages as job } from 'spindlewright/messages/en';
import { cellText } from './page-text.ts';

const tables = { quantity, interfaces, taper, torque, diagnosis, drawing, spindlewright: job };
const out = 'docs/codes';

const sections = Object.entries(tables).flatMap(([name, messages]) => {
  const rows = Object.entries(messages)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([code, template]) => `| <span id="${name}-${code}"></span>\`${code}\` | ${cellText(template)} |`);
  return rows.length === 0 ? [] : [`## ${name}\n\n| code | sentence |\n| --- | --- |\n${rows.join('\n')}`];
});
const total = Object.values(tables).reduce((sum, messages) => sum + Object.keys(messages).length, 0);

rmSync(out, { recursive: true, force: true });
mkdirSync(out, { recursive: true });
writeFileSync(
  `${out}/index.md`,
  `---
title: Codes
description: Every code of findings and words, with its sentence
---

# Codes

${total} codes. A finding carries its code, its weight (stop, caution or note), the sentence already filled in and the
values behind it, so that a program can act on the code and a page can say it in other words: put a table of your own
under the same codes into \`formatFinding\`. A name in braces is a value; \`:1\` after it asks for one decimal.

${sections.join('\n\n')}
`,
);
console.log(`wrote ${out}: ${total} codes`);
