/** Source and line from two voltages at the far end, without a load and with one. @module */
import { type Fields, readInput } from '../../quantity/fields.ts';
import { InputError } from '../../quantity/input-error.ts';
import type { BoundedFigure } from '../../quantity/interval.ts';
import type { Amperes, Volts } from '../../quantity/units.ts';

/** How far a meter may be off: a fraction of the reading and a fixed part, in the unit of the reading. */
export interface MeterAccuracy {
  /** Of the reading, a fraction from 0 to 0.5; 0 if absent. */
  readonly fraction?: number | undefined;
  /** In the unit that is read; 0 if absent. */
  readonly fixed?: number | undefined;
}

/** Two readings at the far end. */
export interface LoadedVoltageInput {
  /** Nothing drawn. [V] */
  readonly openVoltage: Volts;
  /** With the load on. [V] */
  readonly loadedVoltage: Volts;
  /** Through the load. [A] */
  readonly current: Amperes;
  /** Lowest voltage of the device that is to be fed, where it matters. [V] */
  readonly minimumVoltage?: Volts | undefined;
  /** Of both voltages; exact if absent. */
  readonly voltageAccuracy?: MeterAccuracy | undefined;
  /** Of the current; exact if absent. */
  readonly currentAccuracy?: MeterAccuracy | undefined;
}

/** @internal */
export const METER_ACCURACY_FIELDS: Fields<MeterAccuracy, 'fraction' | 'fixed'> = {
  fraction: { between: [0, 0.5], is: 'a fraction of the reading', default: 0 },
  fixed: { nonNegative: '(in the unit of the reading)', default: 0 },
};

/** @internal */
export const LOADED_VOLTAGE_FIELDS: Fields<LoadedVoltageInput> = {
  openVoltage: { positive: 'V' },
  loadedVoltage: { nonNegative: 'V' },
  current: { positive: 'A' },
  minimumVoltage: { positive: 'V', optional: true },
  voltageAccuracy: { object: () => METER_ACCURACY_FIELDS, optional: true },
  currentAccuracy: { object: () => METER_ACCURACY_FIELDS, optional: true },
};

/** What the two readings say. */
export interface LoadedVoltage {
  /** Source and line together. [Ω] */
  readonly resistance: BoundedFigure;
  /** Delivered to the load as it was read. [W] */
  readonly loadPower: BoundedFigure;
  /** Most power that any load could get, `V²/4R`; absent where the readings do not bound it. [W] */
  readonly maximumPower?: BoundedFigure;
  /** Most power while the far end stays at `minimumVoltage`; absent without one, or where nothing bounds it. [W] */
  readonly powerAtMinimum?: BoundedFigure;
  /** Most power, by whichever of the two is less, less what was delivered; below 0 where the load is already too much. [W] */
  readonly powerLeft?: BoundedFigure;
}

/**
 * Resistance of source and line, and the power that is left, from open-circuit and loaded readings at the far end.
 *
 * `R = (V0 - V) / I`. For sources that act as a voltage behind a resistance, DC, both readings of the same minute: a supply
 * that limits its current, or folds back, is not one, and a line that warms up changes. Bounds are exact for meters within
 * their accuracy, every reading at its worst on its own; those of `powerLeft` may be a little too wide.
 *
 * @param input - Open and loaded voltage [V], current [A], lowest voltage of the device [V], accuracies.
 * @returns Resistance [Ω] and powers [W], each with its bounds.
 * @throws {@link InputError} If a number is outside its domain, or the loaded voltage is the higher one beyond accuracy.
 * @example 24.0 V open, 21.6 V at 0.5 A
 * const line = loadedVoltage({ openVoltage: 24, loadedVoltage: 21.6, current: 0.5 });
 * [line.resistance.value.toFixed(2), line.maximumPower?.value.toFixed(1)]; // => ['4.80', '30.0']
 */
export function loadedVoltage(input: LoadedVoltageInput): LoadedVoltage {
  const { openVoltage, loadedVoltage: loaded, current, minimumVoltage, ...accuracy } = readInput(LOADED_VOLTAGE_FIELDS, input);
  const open = readingBounds(openVoltage, accuracy.voltageAccuracy);
  const under = readingBounds(loaded, accuracy.voltageAccuracy);
  const through = readingBounds(current, accuracy.currentAccuracy);
  if (open.high < under.low) {
    throw new InputError('conflict', 'loadedVoltage', `at most the open voltage of ${openVoltage} V, within accuracy`, loaded);
  }
  if (!(through.low > 0)) {
    throw new InputError('conflict', 'current', `more than the accuracy of its meter, ${through.high - current} A`, current);
  }
  const clipped = (value: number): number => (value > 0 ? value : 0);
  const resistance: BoundedFigure = {
    low: clipped(open.low - under.high) / through.high,
    value: clipped(openVoltage - loaded) / current,
    high: (open.high - under.low) / through.low,
  };
  const loadPower: BoundedFigure = { low: under.low * through.low, value: loaded * current, high: under.high * through.high };

  const maximumPower = mostPower((v0, v, i) => ((v0 * v0) / (4 * clipped(v0 - v))) * i, true);
  const powerAtMinimum =
    minimumVoltage === undefined
      ? undefined
      : mostPower((v0, v, i) => ((clipped(v0 - minimumVoltage) * minimumVoltage) / clipped(v0 - v)) * i, false);
  const powers = [maximumPower, powerAtMinimum].filter((power) => power !== undefined);
  const least = (bound: keyof BoundedFigure) => Math.min(...powers.map((power) => power[bound]));
  return {
    resistance,
    loadPower,
    ...(maximumPower && { maximumPower }),
    ...(powerAtMinimum && { powerAtMinimum }),
    ...(powers.length > 0 && {
      powerLeft: { low: least('low') - loadPower.high, value: least('value') - loadPower.value, high: least('high') - loadPower.low },
    }),
  };

  /** Corners, and where one is inside them the turning point `V0 = 2 V` of `V0²/(V0 - V)`. */
  function mostPower(power: (v0: number, v: number, i: number) => number, hasTurn: boolean): BoundedFigure | undefined {
    if (!(resistance.low > 0)) return undefined;
    const opens = [open.low, open.high];
    for (const v of [under.low, under.high]) if (hasTurn && 2 * v > open.low && 2 * v < open.high) opens.push(2 * v);
    const all = opens.flatMap((v0) => [under.low, under.high].flatMap((v) => [through.low, through.high].map((i) => power(v0, v, i))));
    return { low: Math.min(...all), value: power(openVoltage, loaded, current), high: Math.max(...all) };
  }
}

/** What the reading may stand for. @internal */
export function readingBounds(value: number, { fraction = 0, fixed = 0 }: MeterAccuracy = {}): BoundedFigure {
  const off = value * fraction + fixed;
  return { low: value > off ? value - off : 0, value, high: value + off };
}
