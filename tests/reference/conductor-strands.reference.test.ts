/**
 * Strand constructions, metric and in mils, against `strandConstruction` and `metric`.
 *
 * Metric constructions: Structure of stranding to VDE 0295 (kabeltronik.de) and a cable supplier's stranding table of November 2012; limits:
 * the extract of DIN VDE 0295 / IEC 60228 / HD 383 (etechnik-synergie.com). In mils: Stranded wire chart (rusefi wiki), no lay allowance.
 */
import { describe, expect, test } from 'vitest';
import { awg } from '../../src/conductor/awg.ts';
import { metric } from '../../src/conductor/metric.ts';
import { strandConstruction } from '../../src/conductor/strand-construction.ts';
import { toOhmsPerKilofoot, toOhmsPerKilometre } from '../../src/quantity/convert-electrical.ts';
import { expectPrinted, expectWithin, rows } from '../helpers/expectations.ts';
import { publishedColumn } from '../helpers/published-column.ts';

// construction | area of the strands, reckoned [mm²] | nominal size | limit plain, tinned [Ω/km] | class
const METRIC = `
  18/0.10  0.1414  0.14   134  138  -
  7/0.20   0.2199  0.22   96  99  -
  14/0.14  0.2155  0.22   96  99  -
  14/0.15  0.2474  0.25   76  79  -
  32/0.10  0.2513  0.25   76  79  -
  7/0.25   0.3436  0.34   53  56  -
  19/0.15  0.3358  0.34   53  56  -
  42/0.10  0.3299  0.34   53  56  -
  16/0.20  0.5027  0.5    39.0  40.1  5
  28/0.15  0.4948  0.5    39.0  40.1  5
  24/0.20  0.7540  0.75   26.0  26.7  5
  42/0.15  0.7422  0.75   26.0  26.7  5
  32/0.20  1.0053  1      19.5  20.0  5
  30/0.25  1.4726  1.5    13.3  13.7  5
  84/0.15  1.4844  1.5    13.3  13.7  5
  50/0.25  2.4544  2.5    7.98  8.21  5
  140/0.15  2.4740  2.5    7.98  8.21  5
  56/0.30  3.9584  4      4.95  5.09  5
  84/0.30  5.9376  6      3.30  3.39  5
  80/0.40  10.0531  10     1.91  1.95  5
  128/0.40  16.0850  16     1.21  1.24  5
`;

describe('metric constructions', () => {
  test.each(rows(METRIC))('%s is %s mm² of metal, sold as %s mm²', (construction, area, size, plain, tinned, conductorClass) => {
    const strands = strandConstruction({ construction: construction as string });
    expectPrinted(strands.area, area as string);
    expectWithin(strands.area, Number(size), 0.04);
    const made = conductorClass === '5' ? { class: 5 as const } : {};
    expectPrinted(toOhmsPerKilometre(metric(Number(size), made).resistancePerMetre), plain as string, 1e-6);
    expectPrinted(toOhmsPerKilometre(metric(Number(size), { ...made, coating: 'tinned' }).resistancePerMetre), tinned as string, 1e-6);
    // With 2 % for the lay every construction keeps the limit of its size, but for 42/0.10, which is 0.6 % over.
    const share = strands.resistancePerMetre / metric(Number(size), made).resistancePerMetre;
    expect(share).toBeLessThan(construction === '42/0.10' ? 1.006 : 1);
  });

  test('50/0.25 is 2.454 mm²; the supplier table that prints 2.48 is wrong', () => {
    expectPrinted(strandConstruction({ construction: '50/0.25' }).area, '2.454');
  });
});

const SOLID = 'the chart repeats the figure of solid wire';

// sold as [AWG] | construction [in] | Ω/1000 ft
const CHART = `
  30  7/0.0040  103.20
  28  7/0.0050  64.90
  26  7/0.0063  37.30
  26  19/0.0040  34.43
  24  7/0.0080  23.30
  24  10/0.0063  26.09
  24  19/0.0050  21.08
  24  41/0.0031  25.59
  22  7/0.0100  14.74
  22  19/0.0063  13.73
  22  26/0.0050  15.94
  20  10/0.0100  10.32
  20  19/0.0080  8.63
  20  26/0.0063  10.05
  20  41/0.0050  10.02
  18  7/0.0159  5.86
  18  16/0.0100  6.48
  18  19/0.0100  5.46
  18  41/0.0063  6.37
  18  65/0.0050  6.39
  16  7/0.0201  3.67
  16  19/0.0113  4.27
  16  26/0.0100  4.00
  16  65/0.0063  4.02
`;
publishedColumn(
  'Stranded wire chart, no lay allowance [Ω/1000 ft]',
  rows(CHART).map(([gauge, construction, printed]) => ({
    row: `${gauge} AWG ${construction}`,
    printed: printed as string,
    computed: toOhmsPerKilofoot(strandConstruction({ construction: `${construction} in`, layAllowance: 0 }).resistancePerMetre),
  })),
  {
    within: { fraction: 0.037, reason: 'strands of unrounded gauges, and some rows off by up to 3.5 %' },
    exceptions: { '30 AWG 7/0.0040': SOLID, '28 AWG 7/0.0050': SOLID },
  },
);

test('the chart repeats solid wire for 7 strands of 28 and 30 AWG', () => {
  expectPrinted(toOhmsPerKilofoot(awg(28).resistancePerMetre), '64.90');
  expectPrinted(toOhmsPerKilofoot(awg(30).resistancePerMetre), '103.20', 1);
});
