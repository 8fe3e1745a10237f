// Writes docs/data from the records: every record with its numbers by standing, and every disagreement of sources.
// Generated, never committed, so that a page cannot be older than the data.
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { conflictsPage, recordsPage } from './data-page.ts';

const out = 'docs/data';
rmSync(out, { recursive: true, force: true });
mkdirSync(out, { recursive: true });
writeFileSync(`${out}/index.md`, recordsPage());
writeFileSync(`${out}/conflicts.md`, conflictsPage());
console.log(`wrote ${out}`);
