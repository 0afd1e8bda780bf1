/**
 * What version 0.1 answered is what the library answers: number by number, to the last bit, but for what `moves.ts` lists.
 *
 * A part of the records in an ordinary run, all of them with `FAREND_FROZEN=all`.
 * @module
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import * as cable from '../../src/cable/index.ts';
import * as circuit from '../../src/circuit/index.ts';
import * as conductor from '../../src/conductor/index.ts';
import * as ethernet from '../../src/ethernet/index.ts';
import * as plan from '../../src/plan/index.ts';
import * as quantity from '../../src/quantity/index.ts';
import * as schedule from '../../src/schedule/index.ts';
import * as sources from '../../src/sources/index.ts';
import * as working from '../../src/working/index.ts';
import { compared, MOVED_BY_NOW } from './compare.ts';
import { type FrozenRecord, frozenFiles, frozenRecords, type Library } from './corpus.ts';
import { LANDED, MOVED, MOVES, type Moved } from './moves.ts';

const library: Library = { ...sources, ...quantity, ...conductor, ...cable, ...circuit, ...ethernet, ...plan, ...schedule, ...working };

const all = process.env['FAREND_FROZEN'] === 'all';
/** Without `all`, of each function the first and then every so many. */
const EVERY = 9;
const corpus = frozenFiles().map((file) => ({ file, records: frozenRecords(file) }));
/** So many differences are told. */
const SHOWN = 12;

const needed = new Set<Moved>();

describe.each(corpus)('$file', ({ records }) => {
  test('answers as version 0.1 did', { timeout: 300_000 }, () => {
    const different: string[] = [];
    for (const record of sampled(records)) {
      const found = compared(library, record);
      for (const entry of found.needed) needed.add(entry);
      const [first, ...others] = found.differences;
      if (first === undefined) continue;
      different.push(`${record.name} #${records.indexOf(record)} ${first}${others.length === 0 ? '' : `, and ${others.length} more`}`);
    }
    const told = different.slice(0, SHOWN).join('\n');
    expect(different.length, `${different.length} records differ; the first:\n${told}\n`).toBe(0);
  });
});

test('the corpus holds at least 5,000 questions', () => {
  expect(corpus.reduce((sum, { records }) => sum + records.length, 0)).toBeGreaterThan(5000);
});

test('every shape that has landed is in the table', () => {
  const shapes = new Set([...MOVES, ...MOVED].map(({ shape }) => shape));
  expect(LANDED.filter((shape) => !shapes.has(shape))).toEqual([]);
});

test('every number that moved stands in the changelog', () => {
  const [recent = ''] = readFileSync(new URL('../../CHANGELOG.md', import.meta.url), 'utf8').split('\n## [0.1.0]');
  const numbers = recent.split(/\n(?=###? )/).filter((section) => section.startsWith('### Numbers that moved'));
  const words = (text: string): string => text.replaceAll(/\s+/g, ' ');
  const unlisted = MOVED_BY_NOW.filter(
    ({ path, changelog }) => !words(path === 'outcome' ? recent : numbers.join('\n')).includes(changelog),
  );
  expect(unlisted.map(({ changelog }) => changelog)).toEqual([]);
});

if (all) {
  test('every number that moved is met among the records', () => {
    expect(MOVED_BY_NOW.filter((entry) => !needed.has(entry)).map(({ reason }) => reason)).toEqual([]);
  });
}

function sampled(records: readonly FrozenRecord[]): readonly FrozenRecord[] {
  if (all) return records;
  const seen = new Map<string, number>();
  return records.filter(({ name }) => {
    const count = seen.get(name) ?? 0;
    seen.set(name, count + 1);
    return count % EVERY === 0;
  });
}
