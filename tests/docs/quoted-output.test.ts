import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { checkSchedule, parseSchedule, type Report, reportText } from '../../src/schedule/index.ts';
import { ROOT } from '../support/files.ts';

const read = (file: string): string => readFileSync(join(ROOT, file), 'utf8');

function judged(runs: string, switches: string): Report {
  const { schedule, findings } = parseSchedule({ runs, switches });
  return checkSchedule(schedule, { findings });
}

function blocks(page: string, language: string): string[] {
  return [...page.matchAll(new RegExp(`^\`\`\`${language}\\n([^]*?)^\`\`\``, 'gm'))].map((match) => match[1] as string);
}

describe('what the README shows of a report', () => {
  const [runs = '', switches = ''] = blocks(read('README.md'), 'csv');
  const [shown = ''] = blocks(read('README.md'), 'text');
  const real = reportText(judged(runs, switches));

  test('is abridged, not invented', () => {
    expect(shown.split('…\n').length).toBeGreaterThan(1);
    let from = 0;
    for (const piece of shown.split('…\n')) {
      const at = real.indexOf(piece, from);
      expect(at, `not in the report, or not in this order:\n${piece}\nThe report:\n${real}`).toBeGreaterThanOrEqual(0);
      from = at + piece.length;
    }
  });
});

describe('what the page on the Tidemill Playhouse says', () => {
  const page = read('examples/tidemill-playhouse.md');
  const report = judged(read('examples/tidemill-playhouse.csv'), read('examples/tidemill-playhouse-switches.csv'));
  const rows = page
    .split('\n')
    .filter((line) => line.startsWith('| '))
    .map((line) => line.split('|').map((cell) => cell.trim()));

  test('every cell of the schedule can be read', () => {
    expect(report.findings.filter(({ severity }) => severity !== 'note')).toEqual([]);
    expect(page).toContain(`: ${report.runs.length} runs`);
    expect(page).toContain(`: ${report.switches.length} switches`);
  });

  const told = rows
    .filter(([, run = '']) => /^[A-Z]{2}-\d\d/.test(run))
    .flatMap(([, run = '', , power = '', cabling = '']) => run.split(', ').map((name) => ({ name, power, cabling })));

  test.each(told)('$name: power $power, cabling $cabling', ({ name, power, cabling }) => {
    const run = report.runs.find((candidate) => candidate.run === name);
    expect(run?.outcome === 'denied' ? 'denied' : run?.verdict.power).toBe(power.split(':')[0]);
    expect(run?.verdict.cabling ?? '').toBe(cabling.split(':')[0]);
    const failing = (run?.checks ?? []).filter(({ verdict }) => verdict === 'fail');
    const named = [power, cabling].flatMap((cell) => cell.split(': ')[1]?.split(', ') ?? []);
    const words = failing.map((check) => check.name.replaceAll('-', ' ').replace('link length', 'link'));
    expect(words).toEqual(expect.arrayContaining(named));
    expect(named.length > 0, `fails on ${words.join(', ')}`).toBe(failing.length > 0);
  });

  test('every run that does not plainly pass is told of', () => {
    const names = told.map(({ name }) => name);
    expect(report.runs.filter(({ run, outcome }) => outcome !== 'pass' && outcome !== 'marginal' && !names.includes(run))).toEqual([]);
  });

  test.each(report.switches.map((entry) => [entry.switch, entry] as const))(
    '%s: capacity, demand and who is denied',
    (name, { budget }) => {
      const [, , , said = ''] = rows.find(([, first]) => first === name) ?? [];
      const row = rows.find(([, first]) => first === name)?.join(' ') ?? '';
      expect(row).toContain(`${budget?.capacity} W`);
      expect(row).toContain(`${budget?.denied.length === 0 ? budget.allocated : budget?.demand} W`);
      const ports = [...said.matchAll(/port (\d+)/gi)].map((match) => Number(match[1]));
      expect(ports).toEqual(budget?.denied.map(({ port }) => port));
    },
  );
});
