import { describe, expect, test } from 'vitest';
import { ampacity } from '../../../src/cable/index.ts';
import {
  bundleRise,
  type CheckBundleInput,
  cable,
  checkBundle,
  checkPoweredRun,
  operatingPoint,
  type PoweredRunInput,
  runResistance,
} from '../../../src/index.ts';
import { bundleRemedies, type WarmRunInput, warmRun } from '../../../src/plan/index.ts';
import { as, expectInputError, expectPlain, expectWithin, frozen } from '../../helpers/expectations.ts';

const hot: CheckBundleInput = { cable: cable('cat5e'), bundle: 100, pairCurrent: 0.96, ambient: 45, installation: 'open-air' };
const cords = [{ cable: cable('cord-24'), length: 5, temperature: 25 }];
const alone: PoweredRunInput = {
  installed: [{ cable: cable('cat6'), length: 80, temperature: 40 }],
  cords,
  connections: 2,
  poeClass: 8,
};
const run: WarmRunInput = { ...alone, bundle: 61, installation: 'open-air' };

describe('checkBundle', () => {
  test('rating, then recommended rise, then ampacity; the last only where its code is chosen', () => {
    const without = checkBundle(frozen(hot));
    expect(without.checks.map(({ name, limit, unit }) => [name, limit, unit])).toEqual([
      ['conductor-temperature', 60, '°C'],
      ['bundle-rise', 15, 'K'],
    ]);
    expect(Object.keys(without)).not.toContain('ampacity');
    const coded = checkBundle({ ...hot, bundle: 37, ambient: 30, code: 'NEC 2017', temperatureRating: 75, recommendedRise: 10 });
    expect(coded.checks.map(({ name, limit, verdict }) => [name, limit, verdict])).toEqual([
      ['conductor-temperature', 75, 'pass'],
      ['bundle-rise', 10, 'pass'],
      ['ampacity', 0.7, 'pass'],
    ]);
    expectPlain(coded);
    // Two of four pairs: half of the conductors, 1.4 times as much.
    expect(checkBundle({ ...hot, energisedPairs: 2, ambient: 30, code: 'NEC 2017' }).ampacity).toMatchObject({ loadFactor: 1.4 });
  });

  test('a limit within the error of the model is uncertain, one beyond it is not', () => {
    const at = (pairCurrent: number) => checkBundle({ ...hot, ambient: 20, pairCurrent }).checks[1];
    const verdicts = [0.6, 0.8, 0.9, 1.1].map((current) => at(current)?.verdict);
    expect(verdicts).toEqual(['pass', 'pass', 'uncertain', 'fail']);
    const exact = at(0.9);
    expect(exact?.deciding).toEqual([{ parameter: 'pairCurrent' }, { parameter: 'installation' }]);
  });

  test('above 192 cables no verdict is better than uncertain', () => {
    expect(checkBundle({ ...hot, bundle: 200, pairCurrent: 0.1 })).toMatchObject({ verdict: 'uncertain', findings: ['beyond-validity'] });
    expect(checkBundle({ ...hot, bundle: 200 }).verdict).toBe('fail');
  });

  test('a drum, a runaway and what a code has no figure for are findings', () => {
    expect(checkBundle({ ...hot, installation: 'wound-drum' })).toMatchObject({
      checks: [],
      verdict: 'uncertain',
      findings: ['wound-drum'],
    });
    expect(checkBundle({ ...hot, pairCurrent: 9 })).toMatchObject({ verdict: 'fail', findings: ['no-steady-state'] });
    const gentle = { ...hot, pairCurrent: 0.1, ambient: 30, code: 'NEC 2017' } as const;
    expect(checkBundle({ ...gentle, ambient: 56 }).findings).toEqual(['too-warm-for-code']);
    expect(checkBundle({ ...gentle, cable: { ...cable('cat5e'), gauge: 26 } })).toMatchObject({
      verdict: 'uncertain',
      findings: ['no-ampacity'],
    });
    expect(checkBundle({ ...gentle, cable: { ...cable('cat5e'), gauge: 28 } }).findings).toEqual(['engineering-supervision']);
  });

  test('the category follows from the mean of all conductors', () => {
    expect(checkBundle(hot).remotePowering).toMatchObject({ meanConductorCurrent: 0.48, category: 'RP2' });
    expect(checkBundle({ ...hot, pairCurrent: 0.6, energisedPairs: 2 }).remotePowering).toMatchObject({ category: 'RP1' });
  });

  test('refuses ratings and rises that are not in its tables', () => {
    expectInputError(() => checkBundle({ ...hot, temperatureRating: 70 as 75 }), 'temperatureRating', 'unknown');
    expectInputError(() => checkBundle({ ...hot, recommendedRise: 12 as 10 }), 'recommendedRise', 'unknown');
    expectInputError(() => ampacity({ code: 'NEC 2020' as 'NEC 2017', gauge: 24, bundle: 7 }), 'code', 'unknown');
  });
});

describe('bundleRemedies', () => {
  const isGood = (input: CheckBundleInput) => ['pass', 'marginal'].includes(checkBundle(input).verdict);

  test('nothing for a bundle that passes', () => {
    expect(bundleRemedies({ ...hot, bundle: 7, ambient: 20 })).toEqual({});
  });

  test('the largest bundle passes and one more does not; bundles apart pass too', () => {
    for (const code of [undefined, 'NEC 2017'] as const) {
      const failing: CheckBundleInput = { ...hot, ambient: 30, bundle: 190, pairCurrent: 0.9, code };
      const found = bundleRemedies(frozen(failing));
      expectPlain(found);
      const largest = found.largestBundle as number;
      expect(isGood({ ...failing, bundle: largest })).toBe(true);
      expect(isGood({ ...failing, bundle: largest + 1 })).toBe(false);
      expect(isGood({ ...failing, bundle: found.apart?.size as number })).toBe(true);
      expect((found.apart?.size as number) * (found.apart?.bundles as number)).toBeGreaterThanOrEqual(190);
      const { rise: alone } = checkBundle({ ...failing, bundle: found.apart?.size as number });
      expect(alone.feasible && alone.diameter).toBe(found.apart?.gap);
    }
  });

  test('the thinnest conductor that is enough', () => {
    const failing: CheckBundleInput = { ...hot, ambient: 40, pairCurrent: 0.86 };
    expect(isGood(failing)).toBe(false);
    expect(bundleRemedies(failing).gauge).toBe(23);
    expect(bundleRemedies({ ...failing, pairCurrent: 3 })).toEqual({});
  });
});

describe('the inputs of heat', () => {
  test('a cable goes by its name, a misspelt key is refused, what was left out is listed', () => {
    const named = { cable: 'cat5e', bundle: 100, pairCurrent: 0.96, ambient: 45, installation: 'open-air' } as const;
    expect(checkBundle(named)).toEqual(checkBundle({ ...named, cable: cable('cat5e') }));
    expect(bundleRemedies(named)).toEqual(bundleRemedies({ ...named, cable: cable('cat5e') }));
    expect(checkBundle(named).assumptions).toEqual([
      { parameter: 'temperatureRating', value: 60, unit: '°C', source: 'library-default' },
      { parameter: 'recommendedRise', value: 15, unit: 'K', source: 'bundle-rise-15' },
    ]);
    expectInputError(() => checkBundle(as({ ...named, temperaturRating: 90 })), 'temperaturRating', 'unknown');
    expectInputError(() => checkBundle(as({ ...named, temperatureRating: 80 })), 'temperatureRating', 'unknown');
    expectInputError(() => checkBundle(as({ ...named, cable: 'Cat5e' })), 'cable', 'unknown');
    expectInputError(() => warmRun(as({ ...run, recomendedRise: 10 })), 'recomendedRise', 'unknown');
    expectInputError(() => warmRun(as({ ...run, conections: 2 })), 'conections', 'unknown');
    expectInputError(() => warmRun({ ...run, installed: [] }), 'installed', 'missing');
    const byName = warmRun({ ...run, installed: run.installed.map((piece) => ({ ...piece, cable: 'cat6' as const })) });
    expect(byName).toEqual(warmRun(run));
    const taken = byName.feasible && byName.pieces[0]?.bundle.assumptions.map(({ parameter }) => parameter);
    expect(taken).toEqual(['temperatureRating', 'recommendedRise']);
  });
});

describe('warmRun', () => {
  test('current, heat and resistance agree: the fixed point of all three', () => {
    const warm = warmRun(frozen(run));
    expectPlain(warm);
    if (!warm.feasible || !warm.run.operating.feasible) throw new Error('does not settle');
    const [piece] = warm.pieces;
    expect(piece?.temperature).toBe(40 + (piece?.rise as number));
    // Resistance from that temperature, current from that resistance, rise from that current.
    const segments = [{ cable: cable('cat6'), length: 80, temperature: piece?.temperature as number }, ...cords];
    const { fourPair } = runResistance({ segments, connections: 2 });
    const point = operatingPoint({ supplyVoltage: 52, resistance: fourPair, load: { power: 71.3 } });
    if (!point.feasible) throw new Error('collapses');
    expectWithin(warm.run.totalCurrent as number, point.current, 1e-12);
    const rise = bundleRise({ cable: cable('cat6'), bundle: 61, pairCurrent: point.current / 2, ambient: 40, installation: 'open-air' });
    expect(Math.abs((rise.feasible ? rise.rise : Number.NaN) - (piece?.rise as number))).toBeLessThan(1e-8);
  });

  test('is warmer, and draws more, than with the current that cool cable makes', () => {
    const warm = warmRun(run);
    const cool = checkPoweredRun(alone);
    if (!warm.feasible || cool.totalCurrent === undefined || cool.pairsetCurrent === undefined) throw new Error('does not settle');
    expect(warm.run.totalCurrent).toBeGreaterThan(cool.totalCurrent);
    const once = bundleRise({
      cable: cable('cat6'),
      bundle: 61,
      pairCurrent: cool.pairsetCurrent,
      ambient: 40,
      installation: 'open-air',
    });
    expect(warm.pieces[0]?.rise).toBeGreaterThan(once.feasible ? once.rise : Number.NaN);
  });

  test('each piece in its own air, cords as they were; power over two pairs heats two', () => {
    const installed = [
      { cable: cable('cat6'), length: 40, temperature: 45 },
      { cable: cable('cat5e'), length: 40 },
    ];
    const warm = warmRun({ ...run, installed, poeClass: 4 });
    if (!warm.feasible || warm.run.pairsetCurrent === undefined) throw new Error('does not settle');
    expect(warm.pieces.map(({ ambient }) => ambient)).toEqual([45, 20]);
    const lone = bundleRise({
      cable: cable('cat5e'),
      bundle: 61,
      pairCurrent: warm.run.pairsetCurrent,
      energisedPairs: 2,
      installation: 'open-air',
    });
    expect(Math.abs((lone.feasible ? lone.rise : Number.NaN) - (warm.pieces[1]?.rise as number))).toBeLessThan(1e-8);
    expect(warm.run.at20.pairLoop).toBe(checkPoweredRun({ ...alone, installed, poeClass: 4 }).at20.pairLoop);
  });

  test('without heat to speak of it is the run as it was', () => {
    const cold = warmRun({ ...run, pdPower: 0 });
    expect(cold.feasible && cold.run).toEqual(checkPoweredRun({ ...alone, pdPower: 0 }));
  });

  test('a line that only cool cable carries collapses when warm, and a bundle may run away', () => {
    const { bundle } = run;
    const installation = { filmCoefficient: 3 };
    const long = {
      ...alone,
      installed: [{ cable: cable('cat6'), length: 180, temperature: 20 }],
      pseVoltage: 52,
      cabling: 'none',
    } as const;
    expect(checkPoweredRun(long).operating.feasible).toBe(true);
    expect(warmRun({ ...long, bundle, installation })).toMatchObject({ feasible: false, reason: 'collapse', verdict: 'fail' });
    expect(warmRun({ ...run, installation: { filmCoefficient: 0.01 }, bundle: 5000 })).toMatchObject({
      feasible: false,
      reason: 'no-steady-state',
    });
    expect(warmRun({ ...run, pdPower: 1000 })).toMatchObject({ feasible: false, reason: 'collapse' });
    expect(warmRun({ ...run, installation: 'wound-drum' })).toMatchObject({ feasible: false, reason: 'wound-drum', verdict: 'uncertain' });
  });
});
