/** Every table of the library: plain literals, no key twice, a known source, and the laws that physics puts on its columns. */
import { describe, expect, test } from 'vitest';
import { tabulatedDiameter } from '../../src/conductor/gauge.ts';
import { type MaterialName, material } from '../../src/conductor/material.ts';
import { BELOW_IEC_60228 } from '../../src/conductor/tables/below-iec-60228.ts';
import { IEC_60228 } from '../../src/conductor/tables/iec-60228.ts';
import { MATERIALS } from '../../src/conductor/tables/materials.ts';
import { NEC_TABLE_8 } from '../../src/conductor/tables/nec-table-8.ts';
import { RESISTIVITY_BANDS } from '../../src/conductor/tables/resistivity-bands.ts';
import { sourceKeys } from '../../src/sources/source.ts';
import { bundle } from '../support/bundle.ts';
import { sourceTexts } from '../support/files.ts';
import { sourcesCited, tableFaults, tablesIn } from '../support/table-lint.ts';

// The core; what stands above it may build its lists from others.
const texts = Object.fromEntries(Object.entries(sourceTexts()).filter(([file]) => !/^(?:schedule|working)\/|^cli\.ts/.test(file)));
const keys = sourceKeys();
/** Published tables stand in files of their own: `tables/` below a room, or a name that ends in `table`. */
const isTableFile = (file: string): boolean => /\/tables\/|-table\.ts$/.test(file);

const rising = (values: readonly number[]): void => {
  for (const [index, value] of values.entries()) if (index > 0) expect(value).toBeGreaterThan(values[index - 1] as number);
};
const falling = (values: readonly number[]): void => rising(values.map((value) => -value));

describe('all tables', () => {
  test.each(Object.keys(texts).filter((file) => tablesIn(file, texts[file] as string).length > 0))('%s', (file) => {
    expect(tableFaults(file, texts[file] as string, keys)).toEqual([]);
  });

  test.each(Object.keys(texts).filter(isTableFile))('%s says where its figures are from, or who reads it does', (file) => {
    const room = Object.entries(texts).filter(([other]) => other.split('/')[0] === file.split('/')[0]);
    // The table, those of its room that read it, and those that read them.
    const readers = new Set([file]);
    for (const _step of [1, 2]) {
      for (const [other, text] of room) {
        if ([...readers].some((read) => text.includes(`/${read.split('/').at(-1)}'`))) readers.add(other);
      }
    }
    expect([...readers].flatMap((at) => sourcesCited(at, texts[at] as string, keys))).not.toEqual([]);
  });

  test('the files of the conductor room are among them', () => {
    expect(Object.keys(texts).filter((file) => file.startsWith('conductor/tables/')).length).toBeGreaterThanOrEqual(5);
  });
});

describe('the rule', () => {
  const faults = (text: string): string[] => tableFaults('a.ts', text, ['iec-60228']);

  test('accepts plain tables', () => {
    expect(faults("export const A = { b: [1, -2, null, true, 'c'], source: 'iec-60228' } as const;")).toEqual([]);
    expect(faults('const NAMES = /* @__PURE__ */ (() => Object.keys(A))();')).toEqual([]);
    expect(faults('const SMALL = [0.5] as const; const f = () => 1; const lower = { a: f() };')).toEqual([]);
  });

  test.each([
    ['arithmetic', 'const A = [1 / 58];', 'BinaryExpression 1 / 58'],
    ['a call', 'const A = Object.freeze({ a: 1 });', 'CallExpression'],
    ['a spread', 'const A = { ...B };', 'no plain property'],
    ['a spread of rows', 'const A = [...B];', 'SpreadElement'],
    ['a name', 'const A = [Math.PI];', 'PropertyAccessExpression'],
    ['a computed key', "const A = { ['a']: 1 };", 'no plain property'],
    ['a key twice', 'const A = { a: 1, a: 2 };', 'has a twice'],
    ['a key twice further in', 'const A = [{ b: { a: 1, a: 2 } }];', 'has a twice'],
    ['a source that nobody knows', "const A = { a: { source: 'hearsay' } };", 'cites hearsay'],
  ])('refuses %s', (_name, text, fault) => {
    expect(faults(text).join()).toContain(fault);
  });
});

describe('nobody pays for a table that is not used', () => {
  const words = ['annealed-copper', 'copper-clad', 'astm-b33', 'iec-60228', 'nec-table-8'];
  const carried = async (entry: string, name: string): Promise<string[]> => {
    const text = await bundle(`import { ${name} } from '${entry}'; globalThis.kept = ${name};`);
    return words.filter((word) => text.includes(word));
  };

  test.each([
    ['farend', 'operatingPoint', []],
    ['farend', 'resistancePerMetre', []],
    ['farend', 'formatQuantity', []],
    ['farend', 'awg', ['annealed-copper', 'copper-clad']],
    ['farend', 'metric', ['annealed-copper', 'iec-60228']],
    ['farend/conductor', 'uniformWire', []],
    ['farend/conductor', 'temperatureCoefficientAt', []],
    ['farend/conductor', 'resistanceAtTemperature', []],
    ['farend/conductor', 'awgFromArea', []],
    ['farend/conductor', 'material', ['annealed-copper', 'copper-clad', 'astm-b33']],
    ['farend/conductor', 'strandConstruction', ['annealed-copper', 'copper-clad']],
    ['farend/conductor', 'necTable8', ['annealed-copper', 'nec-table-8']],
  ])('of %s, %s carries %j', async (entry, name, expected) => {
    expect(await carried(entry, name)).toEqual(expected);
  });
});

describe('metals', () => {
  test.each(Object.entries(MATERIALS))('%s is stated once, and is a metal', (name, row) => {
    expect(row[0] === null).toBe(Object.hasOwn(RESISTIVITY_BANDS, name));
    const metal = material({ name: name as MaterialName });
    expect(metal.iacs).toBeGreaterThan(10);
    expect(metal.iacs).toBeLessThan(110);
    expect(metal.resistivity * metal.conductivity).toBeCloseTo(1, 14);
    if (metal.bestResistivity !== undefined) expect(metal.bestResistivity).toBeLessThan(metal.resistivity);
    if (metal.temperatureCoefficient !== undefined) {
      expect(metal.temperatureCoefficient).toBeGreaterThan(0.0035);
      expect(metal.temperatureCoefficient).toBeLessThan(0.0042);
    }
    if (metal.density !== undefined) {
      expect(metal.density).toBeGreaterThan(2.6);
      expect(metal.density).toBeLessThan(9);
    }
  });

  test.each(Object.entries(RESISTIVITY_BANDS))('%s: the thinner, the worse', (_name, bands) => {
    falling(bands.map(([from]) => from));
    rising(bands.map(([, mass]) => mass));
    for (const [, mass] of bands) expect(mass).toBeGreaterThan(8.89 / 58);
  });

  test('clad aluminium of unknown make spans 1.40 to 1.60 times copper, and every known make lies inside', () => {
    const { bestResistivity = 0, resistivity } = material({ name: 'copper-clad-aluminium' });
    for (const name of ['copper-clad-aluminium-10', 'copper-clad-aluminium-15'] as const) {
      expect(material({ name }).resistivity).toBeGreaterThan(bestResistivity);
      expect(material({ name }).resistivity).toBeLessThan(resistivity);
    }
  });
});

describe('IEC 60228', () => {
  const column = (index: number): [number, number][] =>
    IEC_60228.flatMap((row): [number, number][] => (typeof row[index] === 'number' ? [[row[0], row[index]]] : []));

  test('sizes rise, each once, from where the smaller table ends', () => {
    rising([...BELOW_IEC_60228.map(([size]) => size), ...IEC_60228.map(([size]) => size)]);
  });

  test.each([1, 2, 3, 4, 5, 6, 7])('column %d falls, and lies 4 to 21 % above resistivity over the nominal area', (index) => {
    const figures = column(index);
    falling(figures.map(([, ohms]) => ohms));
    const conductivity = index === 7 ? 58 * 0.61 : 58;
    for (const [size, ohms] of figures) {
      expect((ohms * conductivity * size) / 1000).toBeGreaterThan(1.04);
      expect((ohms * conductivity * size) / 1000).toBeLessThan(1.21);
    }
  });

  test('coated is worse than plain, by less than 4 %; solid and stranded plain are alike; flexible is worse, but at 50 mm²', () => {
    for (const [size, solid, solidCoated, stranded, strandedCoated, flexible, flexibleCoated] of IEC_60228) {
      expect(stranded).toBe(solid);
      if (solidCoated !== null) expect(strandedCoated).toBe(solidCoated);
      for (const [plain, coated] of [
        [stranded, strandedCoated],
        [flexible, flexibleCoated],
      ] as const) {
        if (coated === null) continue;
        expect(coated).toBeGreaterThan(plain);
        expect(coated / plain).toBeLessThan(1.04);
      }
      if (size === 50) expect(flexible).toBeLessThan(stranded);
      else expect(flexible).toBeGreaterThan(stranded);
    }
  });

  test('the sizes beside it fall, coated is worse, and all lie 4 to 27 % above resistivity over area', () => {
    falling(BELOW_IEC_60228.map(([, plain]) => plain));
    falling(BELOW_IEC_60228.map(([, , coated]) => coated));
    for (const [size, plain, coated] of BELOW_IEC_60228) {
      expect(coated).toBeGreaterThan(plain);
      expect((plain * 58 * size) / 1000).toBeGreaterThan(1.04);
      expect((coated * 58 * size) / 1000).toBeLessThan(1.27);
    }
    expect((BELOW_IEC_60228.at(-1) as readonly [number, number, number])[1]).toBeGreaterThan(IEC_60228[0][5]);
  });
});

describe('NEC Chapter 9 Table 8', () => {
  test('each gauge and number of strands once; thicker has less, in every column', () => {
    const rows = NEC_TABLE_8.map(([gauge, strands]) => `${gauge}/${strands}`);
    expect(new Set(rows).size).toBe(rows.length);
    for (const solid of [true, false]) {
      const group = NEC_TABLE_8.filter(([, strands]) => (strands === 1) === solid);
      falling(group.map(([gauge]) => gauge));
      for (const index of [2, 3, 4] as const) falling(group.map((row) => row[index]));
    }
  });

  test('stranded over solid 1.5 to 5 %, coated over uncoated 2 to 7 %, aluminium over copper 1.61 to 1.69', () => {
    for (const [gauge, strands, plain, coated, aluminium] of NEC_TABLE_8) {
      const solid = NEC_TABLE_8.find((row) => row[0] === gauge && row[1] === 1);
      if (strands > 1 && solid !== undefined) {
        expect(plain / solid[2]).toBeGreaterThan(1.015);
        expect(plain / solid[2]).toBeLessThan(1.05);
        expect(coated / solid[3]).toBeGreaterThan(1.015);
        expect(coated / solid[3]).toBeLessThan(1.05);
      }
      expect(coated / plain).toBeGreaterThan(1.02);
      expect(coated / plain).toBeLessThan(1.07);
      expect(aluminium / plain).toBeGreaterThan(1.61);
      expect(aluminium / plain).toBeLessThan(1.69);
    }
  });

  test('resistance times area is that of copper at 75 °C, within 2.7 % of lay and rounding', () => {
    for (const [gauge, , plain] of NEC_TABLE_8) {
      const area = (Math.PI / 4) * tabulatedDiameter(gauge) ** 2;
      const share = ((plain / 304.8) * area * 58) / (1 + 0.00393 * 55);
      expect(share).toBeGreaterThan(0.995);
      expect(share).toBeLessThan(1.027);
    }
  });
});
