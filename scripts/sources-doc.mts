/** Writes docs/sources.md from the bibliography: `npx tsx scripts/sources-doc.mts`. @module */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { source, sourceKeys } from '../src/sources/source.ts';
import type { Source, SourceKey } from '../src/sources/sources.ts';
import { DISAGREEMENTS } from './disagreements.ts';

const PAGE = fileURLToPath(new URL('../docs/sources.md', import.meta.url));

/** The whole page. */
export function sourcesPage(): string {
  const entries = sourceKeys().map((key) => [key, source(key)] as const);
  const of = (status: Source['status']): readonly (readonly [SourceKey, Source])[] =>
    entries.filter(([, cited]) => cited.status === status);
  const subjects = [...new Set(DISAGREEMENTS.map(({ about }) => about))];
  return [
    '# Sources',
    '',
    '<!-- Written by scripts/sources-doc.mts from src/sources and scripts/disagreements.ts: change those, not this page. -->',
    '',
    'Every figure of the library carries the key of a source; `source(key)` gives what stands here.',
    '',
    '- **published**: a source that a reader can open, and that was read. Where a secondary copy was read, the note says so.',
    '- **memory**: well known, not re-read. Check it in the document before you rely on it.',
    '- **common practice**: a fact of the trade for which no document was found.',
    '- **derived**: arithmetic on figures of the other kinds, or a rule of this library.',
    '',
    '## Only remembered',
    '',
    `${of('memory').length} of ${entries.length} sources were not re-read.`,
    '',
    ...of('memory').map(
      ([key, cited]) => `- \`${key}\`: ${cited.locus}. ${cited.title}.${cited.note === undefined ? '' : ` ${cited.note}`}`,
    ),
    '',
    'Of these the figures were read, but not every one:',
    '',
    ...entries
      .filter(([, { status, note = '' }]) => status !== 'memory' && /remember|memory/i.test(note))
      .map(([key, { title, note }]) => `- \`${key}\`, ${title}: ${note}`),
    '',
    '## Where sources disagree',
    '',
    'What is printed, and what is taken here. Most of it was found by holding every printed row against the arithmetic (`tests/reference`).',
    '',
    ...subjects.flatMap((subject) => [
      `### ${subject[0]?.toUpperCase()}${subject.slice(1)}`,
      '',
      ...DISAGREEMENTS.filter(({ about }) => about === subject).flatMap(({ printed, taken }) => [`- ${printed}`, `  *Taken:* ${taken}`]),
      '',
    ]),
    '## Every source',
    '',
    '| key | document | where, and what | status |',
    '|---|---|---|---|',
    ...entries.map(
      ([key, { title, locus, status, note }]) => `| \`${key}\` | ${title} | ${locus}${note === undefined ? '' : `. ${note}`} | ${status} |`,
    ),
    '',
  ].join('\n');
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeFileSync(PAGE, sourcesPage());
