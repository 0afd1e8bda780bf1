/**
 * Lengths of ANSI/TIA-568 and ISO/IEC 11801 against what was published about them. None of the standards was read itself.
 *
 * Sources. C2006: Connections+, 2006-09-01, "High temps and cable". C2009: Connections+, 2009-07-01, "How to keep a hot
 * application running cool". 4PPOE: a message to the IEEE 802.3 4PPOE reflector that quotes TIA-568-C.2, 6.4.7. Kish: "Smaller
 * isn't always better", a cable maker's article of 2014. CIM17, CIM18: Cabling Installation & Maintenance, 2017-03-14 and
 * 2018-06-25, on 28 AWG cords. 13-08: a connector maker's note on horizontal distances. Tele: a maker's note, "longer patch cords
 * mean shorter horizontal cable". TSB: a public summary of TIA TSB-75.
 */
import { describe, expect, test } from 'vitest';
import { cable } from '../../src/cable/cable.ts';
import { cordLoss } from '../../src/cable/cord-loss.ts';
import { deratedLength } from '../../src/cable/derated-length.ts';
import { insertionLossFactor } from '../../src/cable/insertion-loss.ts';
import { CABLING_RULES } from '../../src/plan/cabling-rules.ts';
import { cordAllowance } from '../../src/plan/cord-allowance.ts';
import { maximumRun } from '../../src/plan/maximum-run.ts';
import { source } from '../../src/sources/source.ts';
import { expectPrinted, rows } from '../helpers/expectations.ts';

const both = ['TIA-568', 'ISO/IEC 11801'] as const;

describe('installed length against the average temperature of the cable, cords 10 m at 20 °C', () => {
  // Temperature, length [m], what 90/(1 + k) gives, and where the length was read. C2006, or memory.
  const UNSCREENED = `
    20  90.0  90.00  published
    25  89.0  88.24  memory
    30  87.0  86.54  memory
    35  85.5  84.91  memory
    40  84.0  83.33  memory
    45  81.7  81.08  memory
    50  79.5  78.95  published
    55  77.2  76.92  memory
    60  75.0  75.00  memory
  `;
  const SCREENED = `
    20  90.0  90.00  published
    25  89.5  89.11  memory
    30  88.5  88.24  memory
    35  87.7  87.38  memory
    40  87.0  86.54  memory
    45  86.5  85.71  memory
    50  85.5  84.91  memory
    55  84.7  84.11  memory
    60  83.0  83.33  memory
  `;
  const cells = [...rows(UNSCREENED).map((row) => ['unscreened', ...row]), ...rows(SCREENED).map((row) => ['screened', ...row])];

  test.each(cells)('%s, %s °C: %s m by the table, %s m by the percentage rule', (kind, celsius, table, rule, status) => {
    const derated = deratedLength({ temperature: Number(celsius), screened: kind === 'screened' });
    if (!derated.feasible) expect.fail('within 60 °C there is a length');
    expect(derated.table.length).toBe(Number(table));
    expect(source(derated.table.source).status).toBe(status);
    expectPrinted(derated.percentage.length, rule as string);
    // The rule is the shorter of the two everywhere but on screened cable at 60 °C, where the table (from memory) is 0.3 m shorter.
    const tableRules = (kind === 'screened' && celsius === '60') || Number(table) === Number(rule);
    expect(derated.governedBy).toBe(tableRules ? 'table' : 'percentage');
    expectPrinted(derated.length, tableRules ? (table as string) : (rule as string));
  });

  test('two straight lines, -0.30 m/K to 40 °C and -0.45 m/K beyond, give every unscreened row but 25 °C within 0.05 m', () => {
    for (const [celsius, table] of rows(UNSCREENED).map(([a, b]) => [Number(a), Number(b)] as const)) {
      const line = celsius <= 40 ? 90 - 0.3 * (celsius - 20) : 84 - 0.45 * (celsius - 40);
      expect(Math.abs(line - table)).toBeLessThan(celsius === 25 ? 0.51 : 0.051);
    }
  });
});

describe('insertion loss, % per kelvin over 20 °C (4PPOE and C2009, read)', () => {
  test('unscreened 0.4 to 40 °C, then 0.6 to 60 °C; screened 0.2', () => {
    const rise = (from: number, to: number, screened: boolean): number =>
      ((insertionLossFactor({ temperature: to, screened }) - insertionLossFactor({ temperature: from, screened })) * 100) / (to - from);
    expectPrinted(rise(20, 40, false), '0.4');
    expectPrinted(rise(40, 60, false), '0.6');
    expectPrinted(rise(20, 60, true), '0.2');
    // And not the pairing of 0.2 and 0.4 that is often repeated.
    expect(insertionLossFactor({ temperature: 40 })).toBeCloseTo(1.08, 12);
    expect(insertionLossFactor({ temperature: 60 })).toBeCloseTo(1.2, 12);
  });

  test('C2006: "12 % of headroom is 30 °C": at 0.4 % all the way; with 0.6 % beyond 40 °C it is used up at 46.7 °C', () => {
    expectPrinted(12 / 0.4, '30');
    expect(insertionLossFactor({ temperature: 50 })).toBeGreaterThan(1.12);
    expectPrinted(insertionLossFactor({ temperature: 46.7 }), '1.12');
    expect(insertionLossFactor({ temperature: 46.6 })).toBeLessThan(1.12);
  });
});

describe('length rules', () => {
  test('a channel is 100 m and a permanent link 90 m in both standards (Tele and CIM17, read)', () => {
    for (const standard of both) {
      expect(CABLING_RULES[standard].channelLength.limit).toBe(100);
      expect(CABLING_RULES[standard].permanentLinkLength.limit).toBe(90);
      const allowed = cordAllowance({ installedLength: 90, cord: cable('cord-24'), cabling: standard });
      expect(allowed).toMatchObject({ cords: 10, channelLength: 100 });
    }
  });

  test('a work-area cord is 22 m in TIA-568 and 20 m in ISO/IEC 11801, cords at the switch 5 m (13-08, read); 26 AWG 17 m (memory)', () => {
    expect(CABLING_RULES['TIA-568'].cordLength.thick.limit).toBe(22);
    expect(CABLING_RULES['ISO/IEC 11801'].cordLength.thick.limit).toBe(20);
    expect(CABLING_RULES['TIA-568'].cordLength.thin.limit).toBe(17);
    // W = C - T: the standard's own bound follows from its formula at 70 m.
    const bound = cordAllowance({ installedLength: 70, cord: cable('cord-24') });
    if (bound.feasible) expectPrinted(bound.workArea, '22');
    expect(source('tia-568-work-area-cord-26').status).toBe('memory');
  });

  test('D, the loss of a cord over that of installed cable: 0.20 and 0.50 (Kish, read as factors 1.2 and 1.5), 0.95 (CIM18, implied)', () => {
    expect([24, 26, 28].map((gauge) => cordLoss(gauge).excess)).toEqual([0.2, 0.5, 0.95]);
    expect([22, 23, 25, 27].map((gauge) => cordLoss(gauge).excess)).toEqual([0.2, 0.2, 0.5, 0.95]);
  });

  test('1.5 m of installed cable for each extra metre of cord (Tele on ISO/IEC 11801, read)', () => {
    const longest = (cords: number): number => {
      const found = maximumRun({
        cable: cable('cat6'),
        poeClass: 1,
        cords: [{ cable: cable('cord-24'), length: cords }],
        cabling: 'ISO/IEC 11801',
      });
      return found.feasible && !found.unbounded ? (found.limits.find(({ limit }) => limit === 'insertion-loss-length')?.length ?? 0) : 0;
    };
    expect(longest(11) - longest(12)).toBeCloseTo(1.5, 10);
    expect(longest(10)).toBe(90);
  });
});

describe('worked examples of C = (102 - H)/(1 + D)', () => {
  // Installed length [m], D, cords as published [m], source. The formula itself is from memory; every example that was read fits.
  const EXAMPLES = `
    90    0.2   10  Kish
    90    0.5   8   Kish
    82.5  0.95  10  CIM18
    83    0.9   10  CIM17
  `;
  test.each(rows(EXAMPLES))('H = %s m, D = %s: %s m of cords (%s)', (installed, loss, cords) => {
    const allowed = cordAllowance({ installedLength: Number(installed), cord: cable('cord-24'), cordLoss: Number(loss) });
    if (!allowed.feasible) expect.fail('there are cords');
    expectPrinted(allowed.cords, cords as string);
  });

  test('CIM18: 10 m of 28 AWG cords leave 82.5 m, a channel of 92.5 m', () => {
    const found = maximumRun({ cable: cable('cat6a'), poeClass: 1, cords: [{ cable: cable('cord-28'), length: 10 }] });
    if (!found.feasible || found.unbounded) expect.fail('some length will do');
    expectPrinted(found.length, '82.5');
    expectPrinted(found.channelLength, '92.5');
  });

  test('CIM17, before the standard, with a factor of 1.9: 90 m and 6 m of cords, a channel of 96 m (6.3 m, rounded down)', () => {
    const allowed = cordAllowance({ installedLength: 90, cord: cable('cord-28'), cordLoss: 0.9 });
    if (!allowed.feasible) expect.fail('there are cords');
    expectPrinted(allowed.cords, '6');
    expectPrinted(allowed.channelLength, '96');
  });

  // TSB-75: cords of 7 m at the closet, C = (93.6 - B)/1.2 in whole metres. B, work-area cord, channel. 75 m is rounded down, 70 m up.
  const TSB_75 = `
    90   3  100
    85   7   99
    80  11   98
    75  15   97
    70  20   97
  `;
  test.each(rows(TSB_75))(
    'TSB-75: %s m of installed cable, %s m in the work area, %s m of channel (TSB)',
    (installed, workArea, channel) => {
      const allowed = cordAllowance({ installedLength: Number(installed), cord: cable('cord-24'), telecomRoomCords: 7 });
      if (!allowed.feasible) expect.fail('there are cords');
      expectPrinted(allowed.workArea, workArea as string);
      expectPrinted(allowed.channelLength, channel as string);
    },
  );
});
