/** Writes tests/reference/data-edition.json, the digests of every published figure: `npx tsx scripts/data-edition.mts`. @module */
import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { DATA_EDITION } from '../src/sources/data-edition.ts';
import { ROOT, sourceTexts } from '../tests/support/files.ts';

/** The digests of an edition: one for each table, constant and default. */
export interface EditionRecord {
  readonly edition: string;
  readonly figures: Readonly<Record<string, string>>;
}

const RECORD = join(ROOT, 'tests/reference/data-edition.json');
/** The rooms that hold figures; what stands above them computes. */
const ROOMS = /^(?:conductor|cable|limits|circuit|ethernet|plan)\//;

/** The record as it was last written. */
export function writtenRecord(): EditionRecord {
  return JSON.parse(readFileSync(RECORD, 'utf8')) as EditionRecord;
}

/**
 * The figures of all tables, constants and defaults, each with its place in its table.
 *
 * All numbers of upper-case constants count; of the fields of an input only defaults that have a source: what range is accepted is
 * no figure of a table.
 *
 * @param texts - Source by path below `src`.
 * @returns By room and name, as in `cable/CABLES`, lines such as `cat6.maximum = 0.0938`.
 */
export function figuresOf(texts: Readonly<Record<string, string>>): Record<string, string[]> {
  const found: Record<string, string[]> = {};
  for (const [file, text] of Object.entries(texts)) {
    if (!ROOMS.test(file)) continue;
    const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
    for (const statement of source.statements) {
      if (!ts.isVariableStatement(statement)) continue;
      for (const { name, type, initializer } of statement.declarationList.declarations) {
        if (initializer === undefined || !ts.isIdentifier(name) || !/^[A-Z][A-Z0-9_]*$/.test(name.text)) continue;
        const isOfFields = /^\w*Fields?\b/.test(type?.getText(source) ?? '');
        const lines = figuresIn(bare(initializer), '', !isOfFields);
        const key = `${file.split('/')[0]}/${name.text}`;
        if (lines.length > 0) found[key] = [...(found[key] ?? []), ...lines];
      }
    }
  }
  return found;
}

function figuresIn(node: ts.Expression, path: string, counts: boolean): string[] {
  const number = numberOf(node);
  if (number !== undefined) return counts ? [`${path} = ${number}`] : [];
  if (ts.isArrayLiteralExpression(node)) return node.elements.flatMap((each, index) => figuresIn(bare(each), `${path}[${index}]`, counts));
  if (!ts.isObjectLiteralExpression(node)) return [];
  const properties = node.properties.filter(ts.isPropertyAssignment).map(({ name, initializer }) => [nameOf(name), initializer] as const);
  const hasSource = properties.some(([name]) => name === 'source');
  return properties.flatMap(([name, value]) => figuresIn(bare(value), `${path}.${name}`, counts || (hasSource && name === 'default')));
}

function nameOf(name: ts.PropertyName): string {
  return ts.isStringLiteral(name) || ts.isNumericLiteral(name) || ts.isIdentifier(name) ? name.text : name.getText();
}

/** A number as a number: `0.20` and `0.2` are the same figure. */
function numberOf(node: ts.Expression): number | undefined {
  if (ts.isPrefixUnaryExpression(node) && ts.isNumericLiteral(node.operand)) return -Number(node.operand.text);
  return ts.isNumericLiteral(node) ? Number(node.text) : undefined;
}

/** An expression without `as const`, `satisfies` and parentheses. */
function bare(node: ts.Expression): ts.Expression {
  return ts.isAsExpression(node) || ts.isSatisfiesExpression(node) || ts.isParenthesizedExpression(node) ? bare(node.expression) : node;
}

/** The record of the figures that stand in the sources. */
export function editionRecord(texts: Readonly<Record<string, string>> = sourceTexts(), edition: string = DATA_EDITION): EditionRecord {
  const figures = Object.entries(figuresOf(texts)).map(([name, lines]): [string, string] => [name, digest(lines)]);
  return { edition, figures: Object.fromEntries(figures.sort(([a], [b]) => (a < b ? -1 : 1))) };
}

function digest(lines: readonly string[]): string {
  return createHash('sha256')
    .update([...new Set(lines)].sort().join('\n'))
    .digest('hex')
    .slice(0, 16);
}

/** The tables that both records have and whose figures differ. */
export function changedFigures(before: EditionRecord, now: EditionRecord): string[] {
  return Object.keys(before.figures).filter((name) => now.figures[name] !== undefined && now.figures[name] !== before.figures[name]);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const now = editionRecord();
  const before = writtenRecord();
  const changed = changedFigures(before, now);
  // A table that was only given another shape keeps its edition: who knows that says so.
  if (changed.length > 0 && before.edition === now.edition && !process.argv.includes('--no-figure-moved')) {
    process.stderr.write(
      `${changed.join(', ')}: other figures under edition ${now.edition}. Move DATA_EDITION, or say --no-figure-moved.\n`,
    );
    process.exitCode = 1;
  } else writeFileSync(RECORD, `${JSON.stringify(now, null, 2)}\n`);
}
