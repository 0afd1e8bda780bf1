import { describe, expect, test } from 'vitest';
import { cable } from '../../../src/cable/cable.ts';
import { awg } from '../../../src/conductor/awg.ts';
import { conductorFromResistance } from '../../../src/conductor/conductor-from-resistance.ts';
import { reviewAnswer, showWorking, type Working } from '../../../src/working/index.ts';
import { expectInputError } from '../../helpers/expectations.ts';

const line = { supplyVoltage: { low: 21, high: 28 }, conductor: awg(18), length: 60, load: { power: 6 } } as const;
const { supplyVoltage: _supply, ...unsupplied } = line;
const { load: _load, ...unloaded } = line;
const { conductor: _conductor, ...undecided } = line;
const run = { installed: [{ cable: cable('cat5e'), length: 90 }], poeClass: 4, cabling: 'none' } as const;
/** The line at its most: 2 × 60 m of 18 AWG and 2 % more. */
const R = 120 * awg(18).resistancePerMetre * 1.02;
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

describe('volts of drop and an ampacity', () => {
  const volts = { permittedDrop: { volts: 2 } };
  const governing = (working: Working): string | undefined => working.steps.at(-1)?.meaning;

  test('govern a load of each kind, a resistance at the highest voltage', () => {
    // 19 V at 2 V over R; 26 of 28 V to the resistance, 2 to the line. 0.4 A leave 21 V less 0.4 A over R, and are 28 V over 70 Ω.
    const byDrop = { power: (19 * 2) / R, current: 2 / R, resistance: (26 / 2) * R };
    const byCurrent = { power: 0.4 * (21 - 0.4 * R), current: 0.4, resistance: 70 };
    for (const kind of ['power', 'current', 'resistance'] as const) {
      const drop = showWorking('highestLoad', { ...unloaded, ...volts, kind });
      expect(governing(drop)).toMatch(/set by the permitted drop$/);
      expect(drop.result.value).toBeCloseTo(byDrop[kind], 9);
      const current = showWorking('highestLoad', { ...unloaded, ampacity: 0.4, kind });
      expect(governing(current)).toMatch(/set by the ampacity$/);
      expect(current.result.value).toBeCloseTo(byCurrent[kind], 9);
    }
  });

  test('an ampacity governs a load where no line loses anything', () => {
    expect(showWorking('highestLoad', { ...unloaded, length: 0, ampacity: 2 }).result.value).toBe(42);
  });

  test('govern a supply voltage, a temperature and a conductor', () => {
    expect(governing(showWorking('lowestSupplyVoltage', { ...unsupplied, ...volts }))).toMatch(/set by the permitted drop$/);
    expect(governing(showWorking('lowestSupplyVoltage', { ...unsupplied, ampacity: 0.3 }))).toMatch(/set by the ampacity$/);
    expect(meaning(showWorking('highestTemperature', { ...line, length: 120, ...volts }), 'T')).toMatch(/set by the permitted drop$/);
    expect(meaning(showWorking('highestTemperature', { ...line, length: 120, ampacity: 0.31 }), 'T')).toMatch(/set by the ampacity$/);
    for (const load of [{ power: 6 }, { current: 0.3 }, { resistance: 80 }]) {
      const chosen = showWorking('smallestConductor', { ...undecided, load, ...volts, ampacity: 1, candidates: [awg(18), awg(12)] });
      expect(meaning(chosen, 'Y')).toMatch(/set by the permitted drop$/);
    }
  });

  test('an ampacity that is stated is for the local code, and none is spoken of where none is', () => {
    const { length: _found, ...circuit } = line;
    for (const ampacity of [3, undefined]) {
      const cautions = [
        showWorking('maximumRun', { ...circuit, ampacity }),
        showWorking('highestLoad', { ...unloaded, ampacity }),
        showWorking('lowestSupplyVoltage', { ...unsupplied, ampacity }),
        showWorking('highestTemperature', { ...line, ampacity }),
        showWorking('smallestConductor', { ...undecided, ampacity, candidates: [awg(18)] }),
      ].map((working) => working.cautions.some((words) => words.startsWith('An ampacity is that of the table')));
      expect(new Set(cautions)).toEqual(new Set([ampacity !== undefined]));
    }
  });

  test('are missed by a load that no line calms', () => {
    const current = { load: { current: 5 }, ampacity: 4 };
    const missed = { feasible: false, result: { value: 1, unit: 'A', core: 'shortfall' } };
    expect(showWorking('lowestSupplyVoltage', { ...unsupplied, ...current })).toMatchObject(missed);
    expect(showWorking('highestTemperature', { ...line, length: 5, ...current })).toMatchObject(missed);
    const resistance = { load: { resistance: 7 }, ampacity: 3 };
    expect(showWorking('highestTemperature', { ...line, length: 5, ...resistance })).toMatchObject(missed);
    expect(showWorking('smallestConductor', { ...undecided, ...resistance, candidates: [awg(4)] })).toMatchObject(missed);
    expect(showWorking('lowestSupplyVoltage', { ...unsupplied, load: { current: 5 }, ...volts })).toMatchObject({
      no: 'no supply voltage meets the limit on the permitted drop: the supply voltage plays no part in it',
      result: { unit: 'V', core: 'shortfall' },
    });
  });

  test('two limits that are missed: the one that the core names is explained', () => {
    const both = { ...undecided, load: { current: 5 }, ampacity: 4, maximumVoltage: 10, candidates: [awg(4)] };
    const working = showWorking('smallestConductor', both);
    expect(working).toMatchObject({ feasible: false, result: { value: 18, unit: 'V' } });
  });

  test('a resistance has no lowest supply voltage by them: it takes and drops the more the higher that is', () => {
    const resistance = { load: { resistance: 50 } };
    expectInputError(() => showWorking('lowestSupplyVoltage', { ...unsupplied, ...resistance, ...volts }), 'permittedDrop', 'conflict');
    expectInputError(() => showWorking('lowestSupplyVoltage', { ...unsupplied, ...resistance, ampacity: 3 }), 'ampacity', 'conflict');
  });
});

describe('what is taken where nothing is stated', () => {
  test('connections and joints, and what one of them has', () => {
    const none = 'There are no connections: none were stated.';
    expect(showWorking('highestLoad', run).assumptions).toContain(none);
    const connected = showWorking('highestTemperature', { ...run, connections: 2 });
    expect(connected.assumptions).not.toContain(none);
    expect(connected.assumptions.join()).toContain('0.2 Ω');
    expect(connected.givens.find(({ symbol }) => symbol === 'R_c')?.source).toBe('tia-568.2-d-connection');
    const stated = showWorking('highestTemperature', { ...run, connections: 2, connectionResistance: 0.1 });
    expect(stated.givens.find(({ symbol }) => symbol === 'R_c')?.source).toBeUndefined();
    expect(showWorking('leastPermittedDrop', line).assumptions).toContain('There are no joints: none were stated.');
    expect(showWorking('leastPermittedDrop', { ...line, connections: 2 }).assumptions.join()).toContain('joints have no resistance');
  });

  test('figures of a cable and of a wire say where they come from', () => {
    const sourceOf = (working: Working, symbol: string): string | undefined =>
      working.givens.find((given) => given.symbol === symbol)?.source;
    expect(sourceOf(showWorking('maximumRun', { cable: cable('cat5e'), poeClass: 4 }), 'r20')).toBe(cable('cat5e').source);
    expect(sourceOf(showWorking('highestLoad', run), 'r20_1')).toBe(cable('cat5e').source);
    expect(sourceOf(showWorking('leastPermittedDrop', line), 'rl20_1')).toBe('astm-b3');
    expect(sourceOf(showWorking('leastPermittedDrop', line), 'alphal_1')).toBe('iec-60028');
    expect(sourceOf(showWorking('highestLoad', run), 'alpha_1')).toBe('iec-60028');
    expect(sourceOf(showWorking('smallestConductor', { ...undecided, candidates: [awg(18)] }), 'r20_1')).toBe('astm-b3');
  });
});

describe('rules of cabling', () => {
  const ruled = { cable: cable('cat5e'), poeClass: 4 } as const;

  test('a length of a rule is in metres, whoever slips: feet change the cords alone', () => {
    const cords = [{ cable: cable('cord-26'), length: 5 }];
    const working = showWorking('maximumRun', { ...ruled, cords, temperature: 50 });
    const lengths = working.givens.filter(
      ({ symbol, unit, source }) => /^[ac]_/.test(symbol) && (unit === 'm' || unit === '1') && source === undefined,
    );
    expect(lengths).toEqual([]);
    // 100 m of channel less 5 m of cord; 5 m of cord as 7.5 m of cable, and a metre at 50 °C as 1.14.
    const stepValue = (symbol: string): number | undefined => working.steps.find((step) => step.symbol === symbol)?.value;
    const labelled = working.steps.filter(({ meaning: words }) => words.startsWith('the loss of signal'));
    expect(labelled.map(({ value }) => value)).toEqual([expect.closeTo(1.14, 12), 7.5, expect.closeTo((102 - 7.5) / 1.14, 9)]);
    expect(stepValue('L_4')).toBe(95);
  });

  test('129 m, which leaves the 90 m out, is not blamed on feet', () => {
    const review = reviewAnswer('maximumRun', { ...ruled, connections: 2 }, '129 m');
    expect(review.verdict).toBe('wrong');
    expect(review.slips.map(({ slip }) => slip)).not.toContain('feet-for-metres');
    expect(review.slips.map(({ slip }) => slip)).not.toContain('metres-for-feet');
  });
});

describe('what has no sheet is refused, not passed over', () => {
  test('nothing to lose, a short for a load, a run of no length', () => {
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
