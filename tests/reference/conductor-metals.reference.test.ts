/**
 * Metals: every resistivity, coefficient and density that could be read, against `material`; what other books print, and how far off.
 *
 * Sources beside each table; disagreements are told in docs/sources.md.
 */
import { describe, expect, test } from 'vitest';
import { awg } from '../../src/conductor/awg.ts';
import { type MaterialName, material } from '../../src/conductor/material.ts';
import {
  resistanceAtTemperature,
  temperatureCoefficientAt,
  zeroResistanceTemperature,
} from '../../src/conductor/temperature-coefficient.ts';
import { toOhmsPerKilofoot } from '../../src/quantity/convert-electrical.ts';
import { expectPrinted, expectWithin, rows } from '../helpers/expectations.ts';
import { publishedColumn } from '../helpers/published-column.ts';

/** Ω·mm²/m of one circular mil over one foot. */
const CIRCULAR_MIL_FOOT = 0.0005067074790974977 / 0.3048;

describe('the international annealed copper standard (IEC 60028, ASTM B233, ASTM B496)', () => {
  const copper = material({ name: 'annealed-copper' });
  test.each([
    ['conductivity 58 MS/m', copper.conductivity, '58'],
    ['0.017241 Ω·mm²/m', copper.resistivity, '0.017241'],
    ['10.371 Ω·cmil/ft', copper.resistivity / CIRCULAR_MIL_FOOT, '10.371'],
    ['0.67879 µΩ·in', copper.resistivity / 0.0254, '0.67879'],
    ['0.15328 Ω·g/m²', copper.resistivity * 8.89, '0.15328'],
    ['density 8.89 g/cm³', copper.density as number, '8.89'],
    ['0.00393/K at 20 °C', copper.temperatureCoefficient as number, '0.00393'],
    ['1.724e-8 Ω·m (IEC 60287-1-1 Table 1)', copper.resistivity * 1e-6, '1.724e-8'],
    ['0.00323/K at 75 °C (NEC Chapter 9 Table 8, note 2)', temperatureCoefficientAt({ coefficient: 0.00393, at: 75 }), '0.00323'],
    ['-234.5 °C (inferred absolute temperature, realnfo.com)', zeroResistanceTemperature({ coefficient: 0.00393 }), '-234.5'],
  ])('%s', (_name, computed, printed) => expectPrinted(computed, printed));

  test('the US mass resistivity before 1913, 0.15292 Ω·g/m², is 0.23 % lower and superseded', () => {
    expectWithin(0.15292 / (copper.resistivity * 8.89), 0.9977, 1e-4);
  });
});

describe('aluminium', () => {
  test.each<readonly [MaterialName, string, string]>([
    ['aluminium-1350-o', '0.027899', '61.8'],
    ['aluminium-1350-h12', '0.028035', '61.5'],
    ['aluminium-1350-h14', '0.028080', '61.4'],
    ['aluminium-1350-h16', '0.028126', '61.3'],
    ['aluminium', '0.028264', '61.0'],
  ])('%s: %s Ω·mm²/m, %s %% IACS (ASTM B233; 61 %% from memory)', (name, resistivity, iacs) => {
    expectPrinted(material({ name }).resistivity, resistivity);
    expectPrinted(material({ name }).iacs, iacs);
  });

  test('2.826e-8 Ω·m and 0.00403/K (IEC 60287-1-1 Table 1); 0.00330/K at 75 °C (NEC Chapter 9 Table 8, note 2)', () => {
    expectPrinted(material({ name: 'aluminium' }).resistivity * 1e-6, '2.826e-8');
    expectPrinted(material({ name: 'aluminium' }).temperatureCoefficient as number, '0.00403');
    expectPrinted(temperatureCoefficientAt({ coefficient: 0.00403, at: 75 }), '0.00330');
  });

  test('0.00396/K at 60 % IACS (Industrial Power Engineering and Applications Handbook, Table 30.1): the coefficient goes with conductivity', () => {
    expectPrinted((0.00403 * 60) / 61, '0.00396');
    for (const name of ['aluminium-1350-o', 'aluminium-1350-h12', 'aluminium-1350-h14', 'aluminium-1350-h16'] as const) {
      const { iacs, temperatureCoefficient } = material({ name });
      expectPrinted((0.00403 * iacs) / 61, (temperatureCoefficient as number).toFixed(5)); // ours are remembered from ASTM B193
    }
  });
});

describe('tinned copper, greatest mass resistivity by diameter (ASTM B33-04 Table 2)', () => {
  // from [in] | under [in] | Ω·g/m² | % IACS
  const BANDS = `
    0.290   0.4601  0.15695  97.66
    0.103   0.290   0.15776  97.16
    0.0201  0.103   0.15940  96.16
    0.0111  0.0201  0.16279  94.16
    0.0030  0.0111  0.16454  93.15`;
  test.each(rows(BANDS))('from %s to under %s in: %s Ω·g/m², %s %% IACS', (from, under, mass, iacs) => {
    for (const inches of [Number(from), Number(under) - 0.0001]) {
      const tinned = material({ name: 'tinned-copper', diameter: inches * 25.4 });
      expectPrinted(tinned.resistivity * 8.89, mass as string);
      expectPrinted(tinned.iacs, iacs as string);
      expectWithin(tinned.temperatureCoefficient as number, (0.00393 * tinned.iacs) / 100, 1e-12);
    }
  });

  test('a gauge finds its band: 24 AWG is 0.0201 in and 25 AWG is thinner; strands count, not the cable', () => {
    const worse = (size: number, stranding: 'solid' | 'stranded'): number =>
      awg(size, { material: 'tinned-copper', stranding }).resistancePerMetre / awg(size, { stranding }).resistancePerMetre;
    expectPrinted(100 / worse(24, 'solid'), '96.16');
    expectPrinted(100 / worse(25, 'solid'), '94.16');
    expectPrinted(100 / worse(24, 'stranded'), '93.15'); // 7 strands of 0.0076 in
  });
});

describe('hard-drawn copper (ASTM B1, from memory)', () => {
  test.each([
    [0.325, '0.15775', '97.16'],
    [0.3249, '0.15940', '96.16'],
    [0.0403, '0.15940', '96.16'],
  ])('%s in: %s Ω·g/m², %s %% IACS', (inches, mass, iacs) => {
    const drawn = material({ name: 'hard-drawn-copper', diameter: inches * 25.4 });
    expectPrinted(drawn.resistivity * 8.89, mass);
    expectPrinted(drawn.iacs, iacs, 1);
  });
});

describe('copper-clad aluminium made to ASTM B566 (mwswire.com)', () => {
  // gauge | 10 %: Ω/1000 ft | 15 %: Ω/1000 ft
  const CHART = `
    14 3.91 3.79
    15 4.93 4.78
    16 6.23 6.05
    17 7.83 7.60
    18 9.90 9.61
    19 12.5 12.1
    20 15.7 15.2
    21 19.8 19.2`;

  test('at least 62.9 and 64.4 % IACS; 0.120 and 0.131 lb/in³', () => {
    expectPrinted(material({ name: 'copper-clad-aluminium-10' }).iacs, '62.9');
    expectPrinted(material({ name: 'copper-clad-aluminium-15' }).iacs, '64.4');
    const pounds = (density: number | undefined): number => ((density ?? 0) * 25.4 ** 3) / 453.59237 / 1000;
    expectPrinted(pounds(material({ name: 'copper-clad-aluminium-10' }).density), '0.120');
    expectPrinted(pounds(material({ name: 'copper-clad-aluminium-15' }).density), '0.131');
  });

  test('the remembered resistivities of ASTM B566, 0.02743 and 0.02676 Ω·mm²/m, lie within 0.1 %', () => {
    expectWithin(material({ name: 'copper-clad-aluminium-10' }).resistivity, 0.02743, 0.001);
    expectWithin(material({ name: 'copper-clad-aluminium-15' }).resistivity, 0.02676, 0.001);
  });

  test.each(rows(CHART))(
    '%s AWG: the printed %s and %s Ω/1000 ft are those of better wire than the minimum, by 2 to 4 %%',
    (gauge, ten, fifteen) => {
      for (const [name, printed] of [
        ['copper-clad-aluminium-10', ten],
        ['copper-clad-aluminium-15', fifteen],
      ] as const) {
        const most = toOhmsPerKilofoot(awg(Number(gauge), { material: name, family: 'astm-b258' }).resistancePerMetre);
        expect(most / Number(printed)).toBeGreaterThan(1.02);
        expect(most / Number(printed)).toBeLessThan(1.04);
      }
    },
  );

  test('of unknown make: 1.40 to 1.60 times copper (trade articles); all others lie between, 62 to 68 % IACS', () => {
    const { resistivity, bestResistivity = 0 } = material({ name: 'copper-clad-aluminium' });
    expectPrinted(resistivity * 58, '1.60');
    expectPrinted(bestResistivity * 58, '1.40');
    for (const iacs of [62.9, 64.4, 68]) expect(100 / iacs).toBeLessThan(1.6);
    expect(100 / 68).toBeGreaterThan(1.4);
  });
});

describe('copper-clad steel to ASTM B227 (mvasite.mvapower.com): the names are not the conductivities', () => {
  // gauge | "40 %": Ω/1000 ft | "30 %": Ω/1000 ft
  const CHART = `
    4  0.6337 0.8447
    5  0.799  1.065
    6  1.008  1.343
    7  1.27   1.694
    8  1.602  2.136
    9  2.02   2.693
    10 2.547  3.396
    11 3.213  4.284
    12 4.051  5.399`;
  for (const [name, index] of [
    ['copper-clad-steel-40', 1],
    ['copper-clad-steel-30', 2],
  ] as const) {
    publishedColumn(
      `${name} [Ω/1000 ft]`,
      rows(CHART).map((cells) => ({
        row: `${cells[0]} AWG`,
        printed: cells[index] as string,
        computed: toOhmsPerKilofoot(awg(Number(cells[0]), { material: name, family: 'astm-b258' }).resistancePerMetre),
      })),
      { within: { fraction: 0.001, reason: 'the resistivity is remembered, and the chart is reckoned from four figures' } },
    );
  }

  test('true conductivities: 39.2 and 29.4 % IACS', () => {
    expectPrinted(material({ name: 'copper-clad-steel-40' }).iacs, '39.2');
    expectPrinted(material({ name: 'copper-clad-steel-30' }).iacs, '29.4');
  });
});

describe('bronze and silver', () => {
  test('phosphor bronze C50700: 3.59e-8 Ω·m, 48 % IACS, 21.7 Ω·cmil/ft (lfa-wire.com)', () => {
    const bronze = material({ name: 'phosphor-bronze' });
    expectPrinted(bronze.resistivity * 1e-6, '3.59e-8');
    expectPrinted(bronze.iacs, '48');
    expectWithin(bronze.resistivity / CIRCULAR_MIL_FOOT, 21.7, 0.006); // the maker's three figures agree to 0.5 % only
    expectPrinted(bronze.density as number, '8.89');
  });

  test('bronze contact wire: 0.04 to 0.05 Ω·mm²/m (baumarktwissen.eu)', () => {
    expect(material({ name: 'bronze-contact-wire' })).toMatchObject({ resistivity: 0.05, bestResistivity: 0.04 });
  });

  test('phosphor bronze C51000: 15 % IACS (memory)', () => {
    expectPrinted(material({ name: 'phosphor-bronze-c51000' }).iacs, '15');
  });

  test('silver: 1.587e-8 Ω·m (CRC), 0.003819/K (Kuphaldt), 1.59e-8 Ω·m (OpenStax College Physics)', () => {
    expectPrinted(material({ name: 'silver' }).resistivity * 1e-6, '1.587e-8');
    expectPrinted(material({ name: 'silver' }).resistivity * 1e-6, '1.59e-8');
    expectPrinted(material({ name: 'silver' }).temperatureCoefficient as number, '0.003819');
  });
});

describe('what books print for pure metals, and why wire is not computed from it', () => {
  // metal | K | 1e-8 Ω·m | source
  const FIGURES = `
    copper    273.15 1.543 Matula 1979
    copper    293    1.678 Matula 1979
    copper    300    1.725 Matula 1979
    copper    350    2.063 Matula 1979
    copper    400    2.402 Matula 1979
    copper    500    3.09  Matula 1979
    copper    600    3.792 Matula 1979
    copper    200    1.07  Ekin 2006, RRR 100
    copper    250    1.41  Ekin 2006, RRR 100
    copper    295    1.7   Ekin 2006, RRR 100
    copper    273.15 1.543 CRC wire tables, 0 °C
    copper    293.15 1.678 CRC wire tables, 20 °C
    copper    298.15 1.712 CRC wire tables, 25 °C
    copper    373.15 2.22  CRC wire tables, 100 °C
    copper    293.15 1.678 Kuphaldt
    silver    200    1.029 CRC
    silver    273    1.467 CRC
    silver    293    1.587 CRC
    silver    298    1.617 CRC
    silver    300    1.629 CRC
    silver    293.15 1.59  OpenStax College Physics
    silver    293.15 1.587 Kuphaldt
    gold      200    1.462 CRC
    gold      273    2.051 CRC
    gold      293    2.214 CRC
    gold      298    2.255 CRC
    gold      300    2.271 CRC
    gold      293.15 2.214 Kuphaldt
    aluminium 200    1.587 CRC
    aluminium 273    2.417 CRC
    aluminium 293    2.65  CRC
    aluminium 298    2.709 CRC
    aluminium 300    2.733 CRC
    aluminium 293.15 2.65  OpenStax College Physics
    aluminium 293.15 2.650 Kuphaldt`;
  // At 20 °C and per kelvin, CRC 78th edition as printed by Kuphaldt.
  const PURE: Readonly<Record<string, readonly [number, number]>> = {
    copper: [1.678, 0.004041],
    silver: [1.587, 0.003819],
    gold: [2.214, 0.003715],
    aluminium: [2.65, 0.004308],
  };
  test.each(rows(FIGURES))('%s at %s K: %s (%s): a straight line comes within 2 %%', (metal, kelvins, printed) => {
    const [at20, coefficient] = PURE[metal as string] as readonly [number, number];
    const line = { resistance: at20, temperature: 20, coefficient };
    const residual = metal === 'copper' && ['1.07', '1.41', '1.7'].includes(printed as string) ? 0.017 : 0;
    const computed = resistanceAtTemperature({ ...line, at: Number(kelvins) - 273.15 }) + residual;
    // To 100 °C within 1 %, which holds half a unit of three figures; beyond, copper bends away from the line.
    expectWithin(computed, Number(printed), Number(kelvins) > 400 || Number(kelvins) < 250 ? 0.02 : 0.01);
  });

  test('pure copper is 2.7 % better than the standard of wire, pure aluminium 6 % better than conductor grade', () => {
    expectWithin(1 - 0.01678 / material({ name: 'annealed-copper' }).resistivity, 0.027, 0.02);
    expectWithin(1 - 0.0265 / material({ name: 'aluminium' }).resistivity, 0.0624, 0.01);
  });

  test('textbooks: 1.72e-8 and 1.68e-8 Ω·m for copper in two books of one publisher (OpenStax); gold 2.44e-8 against 2.214e-8', () => {
    expectPrinted(material({ name: 'annealed-copper' }).resistivity * 1e-6, '1.72e-8');
    expectPrinted(0.01678 * 1e-6, '1.68e-8');
    expect(2.44 / 2.214).toBeGreaterThan(1.1);
  });

  test('textbook coefficients round the same metals: 0.0039 for copper (OpenStax), 0.0038 for silver, 0.0043 at 0 °C (Bird)', () => {
    expectPrinted(material({ name: 'annealed-copper' }).temperatureCoefficient as number, '3.9e-3');
    expectPrinted(material({ name: 'silver' }).temperatureCoefficient as number, '3.8e-3');
    expectPrinted(temperatureCoefficientAt({ coefficient: 0.00393, at: 0 }), '0.0043');
    // OpenStax prints 3.9e-3 for aluminium and 3.4e-3 for gold: 9 % under the CRC figures, which no rounding explains.
    expect(0.0039 / 0.004308).toBeLessThan(0.92);
    expect(0.0034 / 0.003715).toBeLessThan(0.92);
  });

  test('brass 70/30, 6.08e-8 Ω·m (CRC wire tables), is no wire metal here: 28 % IACS', () => {
    expectPrinted(100 / (0.0608 * 58), '28');
  });
});

describe('the straight line of 0.00393/K from 20 °C against the copper of Matula (1979), as docs/conductors.md states it', () => {
  // K | 1e-8 Ω·m; 200 K is remembered, the others were read second hand
  const MATULA = rows('200 1.046\n273.15 1.543\n293 1.678\n300 1.725\n350 2.063\n400 2.402\n500 3.090').map(
    ([kelvins, figure]) => [Number(kelvins), Number(figure)] as const,
  );
  const error = (celsius: number): number => {
    const kelvins = celsius + 273.15;
    const above = MATULA.findIndex(([point]) => point >= kelvins);
    const [t1, r1] = MATULA[above - 1] as readonly [number, number];
    const [t2, r2] = MATULA[above] as readonly [number, number];
    const matula = r1 + ((r2 - r1) * (kelvins - t1)) / (t2 - t1);
    return (1.678 * (1 + 0.00393 * (celsius - 19.85))) / matula - 1;
  };

  test('within 1 % from -40 to 90 °C: high in the cold, low in the heat', () => {
    for (let celsius = -40; celsius <= 90; celsius++) expect(Math.abs(error(celsius))).toBeLessThan(0.01);
    expectPrinted(100 * error(-40), '0.9', 1);
    expectPrinted(100 * error(90), '-0.5', 0.6);
  });

  test.each([
    [0, '0.27'],
    [26.85, '-0.05'],
    [76.85, '-0.44'],
    [126.85, '-0.77'],
    [226.85, '-1.52'],
  ])('at %s °C: %s %%', (celsius, percent) => expectPrinted(100 * error(celsius), percent, 1));
});
