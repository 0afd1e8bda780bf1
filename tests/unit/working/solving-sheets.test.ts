import { describe, expect, test } from 'vitest';
import { cable } from '../../../src/cable/cable.ts';
import { awg } from '../../../src/conductor/awg.ts';
import { conductorFromResistance } from '../../../src/conductor/conductor-from-resistance.ts';
import { showWorking, type Working } from '../../../src/working/index.ts';
import { expectInputError } from '../../helpers/expectations.ts';

const line = { supplyVoltage: { low: 21, high: 28 }, conductor: awg(18), length: 60, load: { power: 6 } } as const;
const { supplyVoltage: _supply, ...unsupplied } = line;
const { load: _load, ...unloaded } = line;
const { conductor: _conductor, ...undecided } = line;
const run = { installed: [{ cable: cable('cat5e'), length: 90 }], poeClass: 4, cabling: 'none' } as const;
const copperClad = { ...cable('cat5e'), title: 'Cable of clad aluminium', material: 'copper-clad-aluminium' } as const;

const meaning = ({ steps }: Working, symbol: string): string | undefined => steps.find((step) => step.symbol === symbol)?.meaning;

describe('a short at the far end', () => {
  test('a supply that alone keeps the current under the trip current protects no line', () => {
    const working = showWorking('farEndFaultCurrent', {
      supplyVoltage: 24,
      conductor: awg(18),
      length: 10,
      sourceResistance: 6,
      tripCurrent: 5,
    });
    expect(working.feasible).toBe(true);
    expect(working.results.find(({ core }) => core === 'longestProtected')?.value).toBe(0);
    expect(working.steps.find(({ symbol }) => symbol === 'I_0')?.value).toBe(4);
    expect(working.result.value).toBeLessThan(0);
    expect(working.cautions.join()).toMatch(/fire.*licensed practitioner/);
  });
});

describe('the drop that must be permitted', () => {
  test('there is none where the line does not carry the load: the figure that explains it', () => {
    const power = showWorking('leastPermittedDrop', { ...line, length: 2000 });
    expect(power).toMatchObject({ feasible: false, result: { symbol: 'P_max' } });
    const current = showWorking('leastPermittedDrop', { ...line, length: 2000, load: { current: 5 } });
    expect(current).toMatchObject({ feasible: false, result: { symbol: 'I_max' } });
  });

  test('names the end of the supply at which it is largest', () => {
    expect(meaning(showWorking('leastPermittedDrop', line), 'V_most')).toMatch(/at the lowest$/);
    expect(meaning(showWorking('leastPermittedDrop', { ...line, load: { resistance: 50 } }), 'V_most')).toMatch(/at the highest$/);
  });
});

describe('what governs is named', () => {
  test('of a supply voltage, a load, a temperature and a conductor', () => {
    expect(meaning(showWorking('lowestSupplyVoltage', { ...unsupplied, minimumVoltage: 19 }), 'V')).toMatch(
      /set by the stated lowest voltage$/,
    );
    expect(meaning(showWorking('highestLoad', { ...unloaded, permittedDrop: 0.01, minimumVoltage: 12 }), 'P')).toMatch(
      /set by the permitted drop$/,
    );
    expect(meaning(showWorking('highestTemperature', run), 'T')).toMatch(/set by the power of the port$/);
    expect(meaning(showWorking('smallestConductor', { ...undecided, minimumVoltage: 19, candidates: [awg(18)] }), 'Y')).toMatch(
      /set by the stated lowest voltage$/,
    );
  });
});

describe('no value at all', () => {
  test('a limit in which the unknown plays no part, by how much', () => {
    expect(showWorking('lowestSupplyVoltage', { ...run, pdPower: 27 })).toMatchObject({
      feasible: false,
      no: 'no supply voltage meets the limit on the power of the device: the supply voltage plays no part in it',
      result: { value: 1.5, unit: 'W', core: 'shortfall' },
    });
    expect(showWorking('highestLoad', { ...unloaded, maximumVoltage: 26 })).toMatchObject({
      feasible: false,
      no: 'no load meets the limit on the stated highest voltage: the load plays no part in it',
      result: { value: 2, unit: 'V', core: 'shortfall' },
    });
    expect(showWorking('highestTemperature', { ...run, pseVoltage: 58 })).toMatchObject({
      feasible: false,
      no: 'no temperature meets the limit on the voltage of the port: the temperature plays no part in it',
      result: { value: 1, unit: 'V', core: 'shortfall' },
    });
    expect(showWorking('lowestSupplyVoltage', { ...run, installed: [{ cable: copperClad, length: 10 }] })).toMatchObject({
      feasible: false,
      no: 'no supply voltage meets the limit on pieces that are not copper: the supply voltage plays no part in it',
      result: { value: 1, unit: '1', core: 'shortfall' },
    });
  });

  test('the same fraction of a resistance is lost at any supply voltage', () => {
    expect(showWorking('lowestSupplyVoltage', { ...unsupplied, load: { resistance: 10 }, permittedDrop: 0.05 })).toMatchObject({
      feasible: false,
      no: 'no supply voltage meets the limit on the permitted drop: the supply voltage plays no part in it',
    });
  });

  test('more than there may be, and not even the best', () => {
    expect(showWorking('lowestSupplyVoltage', { ...run, installed: [{ cable: cable('cat5e'), length: 400 }] })).toMatchObject({
      feasible: false,
      no: 'no supply voltage is enough: the run would need more than there may be',
    });
    expect(showWorking('highestLoad', { ...unloaded, minimumVoltage: 22 })).toMatchObject({
      feasible: false,
      no: 'no load meets the limit on the stated lowest voltage: the load plays no part in it',
      result: { value: 1, unit: 'V' },
    });
    expect(showWorking('highestTemperature', { ...line, minimumVoltage: 22 }).no).toMatch(
      /the stated lowest voltage: even a run of no resistance/,
    );
    expect(showWorking('highestTemperature', { ...line, length: 600, minimumVoltage: 19 }).no).toMatch(/no temperature is cool enough/);
    expect(showWorking('smallestConductor', { ...undecided, minimumVoltage: 20.9, candidates: [awg(24), awg(22)] })).toMatchObject({
      feasible: false,
      no: 'none of these is thick enough',
    });
    const jointed = { ...undecided, minimumVoltage: 20, connections: 100, connectionResistance: 1, candidates: [awg(4)] };
    expect(showWorking('smallestConductor', jointed).no).toMatch(/the rest of the run misses it alone/);
  });

  test('and nothing that bounds it', () => {
    const idle = { ...line, load: { power: 0 } };
    expect(showWorking('highestTemperature', idle).no).toBe('nothing bounds the temperature of this run');
    expect(showWorking('highestTemperature', { ...line, length: 1, minimumVoltage: 12 }).no).toMatch(/too hot: nothing bounds it/);
    expect(showWorking('lowestSupplyVoltage', { ...unsupplied, load: { power: 0 } }).no).toMatch(/nothing bounds it/);
    expect(showWorking('highestLoad', { ...unloaded, length: 0 }).no).toMatch(/nothing bounds/);
  });
});

describe('the smallest conductor', () => {
  test('one that has just the most passes, where the core has a margin of 0', () => {
    const just = { ...conductorFromResistance({ ohmsPerKilometre: 100 }), basis: 'maximum' } as const;
    const working = showWorking('smallestConductor', { ...undecided, length: 50, maximumResistance: 10, candidates: [awg(16), just] });
    expect(working).toMatchObject({ feasible: true, result: { value: 0.1, core: 'candidates[0].resistancePerMetre' } });
  });

  test('where nothing bounds it, the thinnest; what is not copper is not counted', () => {
    const free = showWorking('smallestConductor', { ...undecided, load: { power: 0 }, candidates: [awg(20), awg(24)] });
    expect(free.result.value).toBe(awg(24).resistancePerMetre * 1.02);
    const powered = showWorking('smallestConductor', { candidates: [copperClad, cable('cat6')], length: 50, poeClass: 3, cabling: 'none' });
    expect(powered.result).toMatchObject({ value: 0.0938, core: 'candidates[1].resistancePerMetre' });
    expect(powered.tables[0]?.rows.map(({ label }) => label)).toEqual(['Cable of clad aluminium', 'Category 6']);
  });
});

describe('cabling rules', () => {
  test('that are met play no part in a supply voltage or a load', () => {
    const met = { ...run, installed: [{ cable: cable('cat5e'), length: 80 }], cabling: undefined };
    for (const name of ['lowestSupplyVoltage', 'highestLoad'] as const) {
      const working = showWorking(name, met);
      expect(working.feasible).toBe(true);
      expect(working.assumptions.join()).toContain('meets every rule of TIA-568');
    }
  });

  test('that are missed, or that the unknown enters, are refused', () => {
    const missed = { ...run, installed: [{ cable: cable('cat5e'), length: 120 }], cabling: undefined };
    expectInputError(() => showWorking('lowestSupplyVoltage', missed), 'cabling', 'conflict');
    expectInputError(() => showWorking('highestLoad', missed), 'cabling', 'conflict');
    expectInputError(() => showWorking('highestTemperature', { ...run, cabling: 'TIA-568' }), 'cabling', 'conflict');
    expectInputError(
      () => showWorking('smallestConductor', { candidates: [cable('cat6')], length: 50, poeClass: 3 }),
      'cabling',
      'conflict',
    );
  });
});

describe('what has no sheet is refused, not passed over', () => {
  test('volts of drop, an ampacity, a short for a load, a run of no length', () => {
    const volts = { permittedDrop: { volts: 2 } };
    expectInputError(() => showWorking('lowestSupplyVoltage', { ...unsupplied, ...volts }), 'permittedDrop', 'conflict');
    expectInputError(() => showWorking('highestLoad', { ...unloaded, ...volts }), 'permittedDrop', 'conflict');
    expectInputError(() => showWorking('highestTemperature', { ...line, ...volts }), 'permittedDrop', 'conflict');
    expectInputError(
      () => showWorking('smallestConductor', { ...undecided, ...volts, candidates: [awg(18)] }),
      'permittedDrop',
      'conflict',
    );
    expectInputError(() => showWorking('highestLoad', { ...unloaded, ampacity: 3 }), 'ampacity', 'conflict');
    for (const kind of ['power', 'current', 'resistance'] as const) {
      const nothingToLose = { ...unloaded, kind, minimumVoltage: unloaded.supplyVoltage.low };
      expectInputError(() => showWorking('highestLoad', nothingToLose), 'minimumVoltage', 'conflict');
    }
    const short = { load: { resistance: 0 }, minimumVoltage: 12 };
    expectInputError(() => showWorking('lowestSupplyVoltage', { ...unsupplied, ...short }), 'load.resistance', 'range');
    expectInputError(() => showWorking('highestTemperature', { ...line, length: 0 }), 'length', 'conflict');
    expectInputError(() => showWorking('smallestConductor', { ...undecided, length: 0, candidates: [awg(18)] }), 'length', 'range');
  });
});
