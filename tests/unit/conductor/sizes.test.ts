/** Conductors from metric sizes, strands, NEC Table 8, and gauges from sizes: what they take and refuse. */
import { describe, expect, test } from 'vitest';
import { awg } from '../../../src/conductor/awg.ts';
import { awgFromArea, awgFromDiameter } from '../../../src/conductor/awg-from-size.ts';
import type { AwgSize } from '../../../src/conductor/gauge.ts';
import { METRIC_FIELDS, type MetricOptions, metric } from '../../../src/conductor/metric.ts';
import { type NecTable8Input, necTable8 } from '../../../src/conductor/nec-table-8.ts';
import { resistancePerMetre } from '../../../src/conductor/resistance-per-metre.ts';
import { type StrandConstructionInput, strandConstruction } from '../../../src/conductor/strand-construction.ts';
import { type UniformWireInput, uniformWire } from '../../../src/conductor/uniform-wire.ts';
import { as, expectInputError, expectPlain, expectWithin, frozen, NOT_NUMBERS } from '../../helpers/expectations.ts';
import { expectHeld } from '../../helpers/held-to-fields.ts';

describe('metric', () => {
  test('is plain data, a maximum, and a label for an area', () => {
    const wire = metric(0.5, frozen<MetricOptions>({ class: 5 }));
    expectPlain(wire);
    expect(wire).toMatchObject({ name: '0.5 mm² class 5', area: 0.5, geometry: 'nominal', basis: 'maximum', stranding: 'stranded' });
    expect(wire).toMatchObject({ material: 'annealed-copper', temperatureCoefficient: 0.00393, source: 'iec-60228' });
    expect(metric(1, { class: 1 }).stranding).toBe('solid');
    expect(metric(0.22)).toMatchObject({ name: '0.22 mm²', source: 'below-iec-60228', stranding: 'stranded' });
    expect(metric(0.22, { class: 5 })).toStrictEqual(metric(0.22));
    expect(metric(16, { class: 2, material: 'aluminium' })).toMatchObject({ material: 'aluminium', temperatureCoefficient: 0.00403 });
    expect(metric(16, { class: 2, coating: 'tinned' })).toMatchObject({ name: '16 mm² class 2 tinned', material: 'tinned-copper' });
  });

  test.each(NOT_NUMBERS)('refuses %s for a size', (_label, value, code) => {
    expectInputError(() => metric(as<number>(value), { class: 5 }), 'size', code);
  });

  test('refuses sizes, classes and metals that the tables do not have', () => {
    for (const size of [0, -1, 0.3, 0.7, 120, 1e9]) expectInputError(() => metric(size, { class: 5 }), 'size', 'range');
    expectInputError(() => metric(as<number>(undefined)), 'size', 'missing');
    expectInputError(() => metric(0.5), 'options.class', 'missing');
    expectInputError(() => metric(0.5, as<MetricOptions>({ class: 3 })), 'options.class', 'unknown');
    expectInputError(() => metric(0.5, as<MetricOptions>({ class: '5' })), 'options.class', 'unknown');
    expectInputError(() => metric(0.22, { class: 2 }), 'options.class', 'conflict');
    expectInputError(() => metric(0.5, as<MetricOptions>({ class: 5, coating: 'gold' })), 'options.coating', 'unknown');
    expectInputError(() => metric(0.5, as<MetricOptions>({ class: 5, material: 'silver' })), 'options.material', 'unknown');
    for (const options of [
      { class: 5, material: 'aluminium' },
      { class: 2, material: 'aluminium', coating: 'tinned' },
    ] as const) {
      expectInputError(() => metric(16, options), 'options', 'conflict');
    }
    expectInputError(() => metric(6, { class: 2, material: 'aluminium' }), 'options', 'conflict');
    expectInputError(() => metric(25, { class: 1, coating: 'tinned' }), 'options', 'conflict');
    expectInputError(() => metric(0.22, { material: 'aluminium' }), 'options', 'conflict');
    for (const options of [null, 5, 'flexible', []]) expectInputError(() => metric(1, as<MetricOptions>(options)), 'options', 'type');
  });
});

test('the guards of metric accept and refuse what its fields do', () => {
  expectHeld(METRIC_FIELDS, {}, (options) => metric(0.22, options), { path: 'options' });
});

describe('strandConstruction', () => {
  test('is plain data, nominal, with its lay', () => {
    const strands = strandConstruction(frozen({ construction: '16/0.20', layAllowance: 0.05 }));
    expectPlain(strands);
    expect(strands).toMatchObject({ name: '16/0.20', strands: 16, basis: 'nominal', geometry: 'nominal', stranding: 'stranded' });
    expectWithin(strands.area, 16 * Math.PI * 0.01, 1e-14);
    expectWithin(strands.diameter, 0.8, 1e-14);
    expectWithin(strands.resistancePerMetre * strands.area * 58, 1.05, 1e-14);
  });

  test('reads the spellings of strands, and their units', () => {
    const plain = strandConstruction({ construction: '7/0.20' });
    for (const text of ['7x0.20', '7×0.20', ' 7 / 0.20 ', '7/0.20 mm', '7/0.20mm']) {
      expect(strandConstruction({ construction: text })).toStrictEqual({ ...plain, name: text.trim() });
    }
    expectWithin(strandConstruction({ construction: '7/0.0080 in' }).area, 7 * Math.PI * 0.1016 ** 2, 1e-14);
    expectWithin(strandConstruction({ construction: '7/32 AWG' }).area, 7 * awg(32).area, 1e-14);
  });

  test('one wire has no lay, and is the gauge of its diameter', () => {
    const wire = strandConstruction({ construction: '1/0.127' });
    expect(wire.stranding).toBe('solid');
    expectWithin(wire.resistancePerMetre, awg(36).resistancePerMetre, 1e-14);
  });

  test('tinned strands are graded by the strand', () => {
    const ratio = (text: string): number =>
      strandConstruction({ construction: text, material: 'tinned-copper' }).resistancePerMetre /
      strandConstruction({ construction: text }).resistancePerMetre;
    expect(ratio('7/0.20')).toBeGreaterThan(ratio('7/0.40'));
  });

  test.each(['7/32', '7', '/0.2', '7/', '7/0.2 cm', 'seven/0.2', '7/0,20', '7.5/0.2', '-7/0.2', '7/-0.2', '', '7/0.2/3', '1e3/0.2'])(
    'cannot read %j',
    (text) => {
      expectInputError(() => strandConstruction({ construction: text }), 'construction', 'unreadable');
    },
  );

  test('refuses what is no text, no strand, no allowance and no metal', () => {
    expectInputError(() => strandConstruction({ construction: as<string>(undefined) }), 'construction', 'missing');
    for (const value of [7, null, ['7/0.2'], {}])
      expectInputError(() => strandConstruction({ construction: as<string>(value) }), 'construction', 'type');
    for (const text of ['0/0.20', '99999/0.20', '7/0.0'])
      expectInputError(() => strandConstruction({ construction: text }), 'construction', 'range');
    expectInputError(() => strandConstruction({ construction: '7/50 AWG' }), 'size', 'range');
    for (const layAllowance of [-0.01, 0.51, Number.NaN]) {
      expectInputError(() => strandConstruction({ construction: '7/0.2', layAllowance }), 'layAllowance', 'range');
    }
    expectInputError(() => strandConstruction({ construction: '7/0.2', layAllowance: as<number>('0.02') }), 'layAllowance', 'type');
    expectInputError(() => strandConstruction({ construction: '7/0.2', ...as<object>({ material: 'gold' }) }), 'material', 'unknown');
    expectInputError(() => strandConstruction({ construction: '7/0.05', material: 'tinned-copper' }), 'material', 'conflict');
    for (const input of [null, 0.02, '7/0.20', []])
      expectInputError(() => strandConstruction(as<StrandConstructionInput>(input)), 'input', 'type');
    expectInputError(() => strandConstruction({ construction: '7/0.2', ...as<object>({ lay: 0.03 }) }), 'lay', 'unknown');
  });
});

describe('necTable8', () => {
  test('is plain data, nominal, and prints its own figure at 75 °C', () => {
    const wire = necTable8({ size: 12 });
    expectPlain(wire);
    expect(wire).toMatchObject({
      name: '12 AWG',
      material: 'annealed-copper',
      stranding: 'solid',
      basis: 'nominal',
      source: 'nec-table-8',
    });
    expectWithin(resistancePerMetre(wire, 75) * 304.8, 1.93, 1e-14);
    expect(necTable8({ size: '4/0', stranding: 'stranded', material: 'aluminium' })).toMatchObject({
      name: '4/0 AWG stranded aluminium',
      strands: 19,
    });
    expect(necTable8({ size: -3, stranding: 'stranded' })).toStrictEqual(necTable8({ size: '4/0', stranding: 'stranded' }));
  });

  test('refuses what the table does not print', () => {
    for (const size of [6, '1/0'] as const) expectInputError(() => necTable8({ size }), 'size', 'conflict');
    for (const size of [5, 7, 20, 40]) expectInputError(() => necTable8({ size, stranding: 'stranded' }), 'size', 'conflict');
    expectInputError(() => necTable8({ size: 12, material: 'aluminium', coating: 'coated' }), 'coating', 'conflict');
    expectInputError(() => necTable8({ size: 41 }), 'size', 'range');
    expectInputError(() => necTable8({ size: as<AwgSize>('12') }), 'size', 'unknown');
    expectInputError(() => necTable8({ size: 12, ...as<object>({ stranding: 'braided' }) }), 'stranding', 'unknown');
    expectInputError(() => necTable8({ size: 12, ...as<object>({ coating: 'tinned' }) }), 'coating', 'unknown');
    expectInputError(() => necTable8({ size: 12, ...as<object>({ material: 'silver' }) }), 'material', 'unknown');
    for (const input of [null, 7, 'solid', []]) expectInputError(() => necTable8(as<NecTable8Input>(input)), 'input', 'type');
    expectInputError(() => necTable8({ size: 12, ...as<object>({ coated: true }) }), 'coated', 'unknown');
  });
});

describe('awgFromDiameter and awgFromArea', () => {
  test('find every gauge, in both families', () => {
    for (let gauge = -3; gauge <= 40; gauge++) {
      for (const family of ['formula', 'astm-b258'] as const) {
        const { diameter, area, name } = awg(gauge, { family });
        expect(awgFromDiameter(diameter)).toMatchObject({ nearest: gauge, name });
        expect(awgFromArea(area)).toMatchObject({ nearest: gauge, name });
      }
      expect(Math.abs(awgFromDiameter(awg(gauge).diameter).fractional - gauge)).toBeLessThan(1e-12);
    }
    expect(Object.is(awgFromDiameter(8.3).nearest, 0)).toBe(true);
    expectPlain(awgFromDiameter(8.3));
  });

  test('refuse what lies half a gauge beyond the table', () => {
    for (const diameter of [12.4, 0.0753, 100]) expectInputError(() => awgFromDiameter(diameter), 'diameter', 'range');
    for (const diameter of [12.37, 0.0754]) expect(awgFromDiameter(diameter).name).toMatch(/^(?:4\/0|40) AWG$/);
    for (const area of [120.5, 0.00446, 1000]) expectInputError(() => awgFromArea(area), 'area', 'range');
    for (const area of [120.2, 0.00447]) expect(awgFromArea(area).name).toMatch(/^(?:4\/0|40) AWG$/);
  });

  test.each(NOT_NUMBERS)('refuse %s', (_label, value, code) => {
    expectInputError(() => awgFromDiameter(as<number>(value)), 'diameter', code);
    expectInputError(() => awgFromArea(as<number>(value)), 'area', code);
  });
});

describe('uniformWire', () => {
  const whole = { resistance: 0.104, resistivity: 0.0172, length: 20, area: (0.0172 * 20) / 0.104 };

  test.each(['resistance', 'resistivity', 'length', 'area'] as const)('finds the %s from the other three', (name) => {
    const { [name]: expected, ...three } = whole;
    const solved = uniformWire(frozen(three as UniformWireInput));
    expectPlain(solved);
    expectWithin(solved[name], expected, 1e-14);
    expect(solved).toMatchObject(three);
    expect(uniformWire({ ...three, [name]: undefined })).toStrictEqual(solved);
  });

  test('refuses four, two, none, and an answer beyond the domain', () => {
    expectInputError(() => uniformWire(whole), 'input', 'conflict');
    expectInputError(() => uniformWire({ length: 1, area: 1 }), 'resistance', 'missing');
    expectInputError(() => uniformWire({}), 'resistance', 'missing');
    expectInputError(() => uniformWire({ resistivity: 1e12, length: 1e12, area: 1 }), 'resistance', 'range');
    for (const input of [null, 7, 'x', []]) expectInputError(() => uniformWire(as<UniformWireInput>(input)), 'input', 'type');
    expectInputError(() => uniformWire(as<UniformWireInput>(undefined)), 'input', 'missing');
  });

  test.each(NOT_NUMBERS)('refuses %s', (_label, value, code) => {
    expectInputError(() => uniformWire({ resistivity: as<number>(value), length: 1, area: 1 }), 'resistivity', code);
  });
});
