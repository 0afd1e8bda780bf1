import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { widthOf } from '../../../src/pages/plain-text.ts';
import { checkSchedule } from '../../../src/schedule/check-schedule.ts';
import { reportSummary } from '../../../src/schedule/report-summary.ts';
import { reportText } from '../../../src/schedule/report-text.ts';
import { cueLight, piece, powered, stageRack } from './check-samples.ts';
import { everything } from './report-samples.ts';

const text = reportText(everything());
const ESCAPE = String.fromCharCode(27);

/** The lines of one section. */
function section(title: string, from: string = text): string {
  const lines = from.split('\n');
  const start = lines.indexOf(title.toUpperCase());
  const end = lines.findIndex((line, index) => index > start && /^[A-Z][A-Z ,]+$/.test(line));
  return start < 0 ? '' : lines.slice(start + 1, end < 0 ? undefined : end).join('\n');
}

describe('the summary', () => {
  test('comes first and counts every outcome', () => {
    expect(text.split('\n').slice(0, 3)).toEqual([
      'SCHEDULE CHECKED: runs',
      '',
      '9 runs: 4 FAIL, 1 DENIED, 2 uncertain, 1 marginal, 1 pass; 1 error in the files',
    ]);
    expect(text).toContain('In the files: 1 error and 1 warning, listed below.');
    expect(text).toContain('less than 5 % from a limit');
  });

  test('is the one line of reportSummary', () => {
    expect(text.split('\n')[2]).toBe(reportSummary(everything()));
  });

  test('says by what rules', () => {
    expect(text.replace(/\s+/g, ' ')).toContain('cabling rules of TIA-568; switches set aside the power of each class');
    const bare = reportText(
      checkSchedule({ runs: [powered()], switches: [] }, { cabling: 'none', budget: { basis: 'requested', policy: 'fill' } }),
    );
    expect(bare.replace(/\s+/g, ' ')).toContain('no cabling rules; switches set aside the power each device asks for');
  });
});

describe('what fails', () => {
  const failing = section('What fails, and what puts it right');

  test('says which limit, by how much, and what a person can do', () => {
    expect(failing).toContain(
      'LONG, Help point\n  Cabling FAILS: the installed cable is 94 m long; TIA-568 allows 90 m.\n  Any one of these puts it right:\n',
    );
    expect(failing.replace(/\s+/g, ' ')).toContain('- Shorten the installed cable from 94 m to at most 90 m (then close to a limit)');
  });

  test('says in plain words that a port is too weak', () => {
    expect(failing.replace(/\s+/g, ' ')).toContain('the Type 3 port grants class 6: 51 W; the device, class 8, wants 71.3 W');
    expect(failing).toContain('- Move it to a Type 4 port, in place of Type 3');
  });

  const sentencesOf = (change: Parameters<typeof powered>[1]): string => {
    const report = checkSchedule({ runs: [powered({}, change)], switches: [stageRack()] });
    return section('What fails, and what puts it right', reportText(report)).replace(/\s+/g, ' ');
  };

  test('says which changes it takes together where no single one is enough', () => {
    expect(sentencesOf({ connections: 8, minimumVoltage: 49, installed: [piece('cat6', 80)] })).toContain(
      '- Make do with 4 connections in place of 8; and shorten the installed cable from 80 m to at most 31.8 m',
    );
  });

  test('says what kind of change it takes where none of these is enough', () => {
    expect(sentencesOf({ connections: 8, minimumVoltage: 49.999, installed: [piece('cat6', 80)] })).toContain(
      'No single change that was tried puts it right; it takes a shorter, thicker or cooler line, and fewer connections, together.',
    );
  });

  test('does not list what passes', () => {
    expect(failing).not.toMatch(/^(?:OK|NEAR|SHED|BARE)/m);
  });
});

describe('what gets no power', () => {
  test('lists the ports in the order in which they are shed', () => {
    const shed = section('What gets no power');
    // 15.4 W for three of class 3 and 30 W for one of class 4.
    expect(shed).toContain(
      'Stage rack: its ports want 91.6 W, it has 65 W. DENIED, in this order:\n  - port 3, Help point (SHED): class 4, 30 W, priority low',
    );
  });
});

describe('what is uncertain', () => {
  const doubts = section('What is uncertain, and what would settle it').replace(/\s+/g, ' ');

  test('prints both readings of a bare resistance, and the question to ask', () => {
    // 85 m at 9.38 Ω/100 m and 2 · 0.2 Ω: 8.373 Ω for one conductor.
    expect(doubts).toContain(
      'the line has 16.75 Ω as a shorted pair and 8.37 Ω as one pairset; the device bears 13 Ω and does not say of which',
    );
    expect(doubts).toContain('Ask the maker whether the resistance limit means a shorted pair or one pairset.');
  });

  test('asks for the range of a supply', () => {
    expect(doubts).toContain('State the lowest and the highest voltage of the supply');
  });
});

describe('every run', () => {
  const rows = section('Every run')
    .split('\n')
    .filter((line) => /^[A-Z]{2,4} /.test(line));

  test('has one line', () => {
    expect(rows.map((row) => row.split(' ')[0])).toEqual(['OK', 'LONG', 'SHED', 'NEAR', 'BARE', 'DARK', 'WEAK', 'CUE', 'ONE']);
  });

  test('with its two verdicts as words', () => {
    expect(rows.map((row) => row.trimEnd().split(/\s+/).slice(-2).join(' '))).toEqual([
      'pass pass',
      'pass FAIL',
      'DENIED pass',
      'pass marginal',
      'uncertain pass',
      'FAIL FAIL',
      'FAIL pass',
      'FAIL -',
      'uncertain -',
    ]);
  });

  test('with length, meter reading, voltage and power', () => {
    // 94 m: one conductor 9.2172 Ω at the most, 13.4 Ω as a pair of usual copper; class 3 at 50 V.
    const current = (2 * 12.95) / (50 + Math.sqrt(2500 - 4 * 12.95 * 9.2172));
    expect(rows[1]).toMatch(new RegExp(`94\\.0 +13\\.4-18\\.4 +${(50 - current * 9.2172).toFixed(1)} +12\\.95 `));
    expect(rows[5]).toMatch(/ - +- +FAIL/);
  });

  test('names the closest limit where the terminal is wide', () => {
    const wide = section('Every run', reportText(everything(), { width: 130 }));
    expect(wide).toMatch(/^LONG .*FAIL +Installed length, -4 %$/m);
  });
});

describe('figures', () => {
  const figures = section('Figures of the runs that do not plainly pass');

  test('are given for the runs that do not plainly pass, and for no other', () => {
    expect(figures.match(/^[A-Z]+(?=, Help point)/gm)).toEqual(['LONG', 'NEAR', 'BARE', 'DARK', 'WEAK', 'CUE', 'ONE']);
  });

  test('hold loops, meter, currents and every check', () => {
    expect(figures).toContain('Loops   shorted pair 18.43 Ω, one pairset 9.22 Ω, two pairsets 4.61 Ω');
    expect(figures).toContain('(usual copper) to 18.43 Ω (the most allowed)');
    expect(figures).toMatch(/ {2}Installed length +94 m +≤ 90 m +-4 m {2}FAIL/);
    expect(figures).toMatch(/ {2}Voltage the class needs +\d+\.\d+ V +≥ 37 V/);
    expect(figures.replace(/\s+/g, ' ')).toMatch(/A in all, [\d.]+ A a pairset, [\d.]+ A a conductor/);
  });

  test('say what a line that carries nothing could deliver', () => {
    expect(figures.replace(/\s+/g, ' ')).toContain('the line can deliver at most 16.48 W, and 1.319 A into a short');
  });

  test('show a failing figure apart from its limit, however near it is', () => {
    const length = 90 + 1e-9;
    const near = reportText(checkSchedule({ runs: [powered({}, { installed: [piece('cat6', length)] })], switches: [] }));
    expect(near.replace(/\s+/g, ' ')).toContain('the installed cable is 90.000000001 m long; TIA-568 allows 90 m.');
    expect(near).toMatch(/Installed length +90 m +≤ 90 m +-1e-9 m {2}FAIL/);
  });
});

describe('switches, totals, findings', () => {
  test('a switch has capacity, allocated and headroom', () => {
    const switches = section('Switches').replace(/\s+/g, ' ');
    expect(switches).toContain('Capacity 65 W (published budget); allocated 61.6 W to 4 ports, 95 %; headroom 3.4 W.');
    expect(switches).toContain('Grid: Type 3, 8 ports Capacity 200 W (an ESTIMATE from supply ratings)');
    expect(switches).toContain('Spare: Type 1, 4 ports Note: neither a budget nor supplies are given');
  });

  test('totals have metres by cable, the worst run and the heat', () => {
    const totals = section('Totals');
    // 40 + 94 + 40 + 88 + 400 + 40
    expect(totals).toMatch(/702\.0 m {2}Category 6 +installed/);
    expect(totals).toMatch(/Worst: \w+: .* beyond the limit/);
    expect(totals).toMatch(/Heat in all cables, every device at its full load: [\d.]+ W/);
  });

  test('a default is listed once, with its runs', () => {
    expect(section('What was taken for granted')).toContain('- Ambient is empty: 20 °C is used (2 rows: OK, LONG)');
  });

  test('errors come before warnings, each with its place', () => {
    const wrong = section('What is wrong in the files').replace(/\s+/g, ' ');
    expect(wrong).toContain(
      '- ERROR runs, line 11, Length: run GONE: Length "far" cannot be read - warning switches, Colour: the column Colour is not known',
    );
  });

  test('sources say how sure they are, cautions come last', () => {
    expect(section('Where the limits come from')).toMatch(/- \[published\] .*\n/);
    expect(section('Where the limits come from')).toMatch(/- \[memory\] /);
    expect(text.slice(text.indexOf('\nCAUTIONS\n'))).toContain('This is arithmetic, not a licence');
  });
});

describe('the layout', () => {
  test.each([72, 80, 130])('keeps to %i columns', (width) => {
    for (const line of reportText(everything('Help point with a name that is far longer than any column, 窓口案内所, 🎭'), { width }).split(
      '\n',
    )) {
      expect(widthOf(line), line).toBeLessThanOrEqual(width);
    }
  });

  test('keeps to 80 columns whatever the names and figures are', () => {
    const figure = fc.double({ min: 1e-9, max: 1e12, noNaN: true });
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), fc.string({ unit: 'grapheme' }), figure, figure, (run, device, length, watts) => {
        const report = checkSchedule({
          runs: [
            powered({ run, device }, { installed: [piece('cat6', length)], pdPower: watts }),
            cueLight({ run, device }, { length, load: { power: watts } }),
          ],
          switches: [],
        });
        for (const line of reportText(report).split('\n')) expect(widthOf(line), line).toBeLessThanOrEqual(80);
      }),
      { numRuns: 300 },
    );
  });

  test('has no character that a terminal would obey, whatever is in the files', () => {
    const hostile = `${ESCAPE}[31mred\u0007\r\n\u202e\u0085\u2028`;
    const report = everything(hostile);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: their absence is what is tested
    expect(reportText(report).replaceAll('\n', '')).not.toMatch(/[\u0000-\u001f\u007f-\u009f\u2028\u2029\u202a-\u202e]/);
  });

  test('is the same without its colours, which only add to the words', () => {
    const coloured = reportText(everything(), { colour: true });
    expect(coloured).toContain(`${ESCAPE}[1;31mFAIL${ESCAPE}[0m`);
    expect(coloured.replaceAll(new RegExp(`${ESCAPE}\\[[\\d;]*m`, 'g'), '')).toBe(text);
    expect(text).not.toContain(ESCAPE);
  });

  test('leaves out a section with nothing in it', () => {
    const fine = reportText(checkSchedule({ runs: [powered()], switches: [stageRack()] }));
    for (const title of ['WHAT FAILS', 'WHAT GETS NO POWER', 'WHAT IS UNCERTAIN', 'FIGURES OF', 'WHAT IS WRONG'])
      expect(fine).not.toContain(title);
    expect(fine).toContain('1 run: 1 pass');
  });

  test('says of an empty schedule that it is empty', () => {
    expect(reportText(checkSchedule({ runs: [], switches: [] })).split('\n')[2]).toBe('0 runs');
  });

  test('survives a schedule of many runs', () => {
    const runs = Array.from({ length: 20_000 }, (_, index) =>
      powered({ run: `R-${index}`, line: index + 2 }, { installed: [piece('cat6', 88)] }),
    );
    const many = reportText(checkSchedule({ runs, switches: [] }));
    expect(many.match(/^R-\d+ .*marginal$/gm)).toHaveLength(20_000);
  });
});

test.each([
  ['no report', [undefined], 'report'],
  ['a narrow terminal', [everything(), { width: 40 }], 'options.width'],
  ['options that are none', [everything(), null], 'options'],
])('reportText refuses %s', (_what, given, parameter) => {
  expect(() => reportText(...(given as Parameters<typeof reportText>))).toThrow(expect.objectContaining({ name: 'InputError', parameter }));
});
