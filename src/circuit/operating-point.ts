/** Where a load settles at the end of a resistive line. @module */
import type { Load } from '../limits/load.ts';
import { differenceOfProducts, nextDown, nextUp } from '../quantity/exact.ts';
import type { Fields } from '../quantity/fields.ts';
import { LARGEST, requireNonNegative, requireObject, requirePositive, SMALLEST } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Amperes, Ohms, Volts, Watts } from '../quantity/units.ts';

export type { Load };

/** A load behind a line. */
export interface OperatingPointInput {
  /** Voltage at the supply. [V] */
  readonly supplyVoltage: Volts;
  /** Resistance of the line, out and back. [Ω] */
  readonly resistance: Ohms;
  /** Power [W], current [A] or resistance [Ω] of the load. */
  readonly load: Load;
}

/** @internal */
export const LOAD_FIELDS: Fields<Load> = {
  power: { nonNegative: 'W', optional: true },
  current: { nonNegative: 'A', optional: true },
  resistance: { nonNegative: 'Ω', optional: true },
};

/** Guarded by hand, for speed. @internal */
export const OPERATING_POINT_FIELDS: Fields<OperatingPointInput> = {
  supplyVoltage: { positive: 'V' },
  resistance: { nonNegative: 'Ω' },
  load: { exactlyOne: () => LOAD_FIELDS },
};

/** Feasible: the state in which line and load agree. */
export interface FeasiblePoint {
  readonly feasible: true;
  /** [A] */
  readonly current: Amperes;
  /** Voltage at the load. [V] */
  readonly loadVoltage: Volts;
  /** [W] */
  readonly loadPower: Watts;
  /** Voltage lost along the line. [V] */
  readonly voltageDrop: Volts;
  /** The drop as a fraction of the supply voltage, 0 to 1. */
  readonly dropFraction: number;
  /** Heat in the line. [W] */
  readonly lineLoss: Watts;
  /** Power taken from the supply. [W] */
  readonly supplyPower: Watts;
  /** Power at the load over power from the supply, 0 to 1; 1 at no load. */
  readonly efficiency: number;
}

/** Infeasible: the line cannot carry the load. */
export interface InfeasiblePoint {
  readonly feasible: false;
  /** The most power this line can deliver to any load, `V²/4R`. [W] */
  readonly maximumLoadPower: Watts;
  /** The most current this line can carry, into a short at its far end, `V/R`. [A] */
  readonly maximumCurrent: Amperes;
}

/** The operating point of a load; infeasible: the most that the line delivers. */
export type OperatingPoint = FeasiblePoint | InfeasiblePoint;

/**
 * Current, voltage and power of a load at the end of a resistive line. DC, steady state.
 *
 * A constant-power load has two roots; the one returned is the stable one, with the higher voltage. Results are
 * within 4 ulp of the exact ones (line loss 6), and `feasible` is exactly right up to the limit `P = V²/4R`.
 *
 * @param input - Supply voltage [V], line resistance out and back [Ω], load: power [W], current [A] or resistance [Ω].
 * @returns The operating point, or the most power [W] and current [A] that the line can deliver.
 * @throws {@link InputError} If a number is outside its domain (0 or 1e-12 to 1e12), if the load does not name
 *   exactly one of the three, or if a load of 0 Ω shorts a line of 0 Ω.
 * @example A 25.5 W device behind 12.5 Ω at 50 V
 * const point = operatingPoint({ supplyVoltage: 50, resistance: 12.5, load: { power: 25.5 } });
 * point.feasible && [point.current, point.loadVoltage, point.supplyPower]; // => [0.6, 42.5, 30]
 * @example The same line cannot carry 60 W
 * operatingPoint({ supplyVoltage: 50, resistance: 12.5, load: { power: 60 } }); // => { feasible: false, maximumLoadPower: 50, maximumCurrent: 4 }
 */
export function operatingPoint(input: OperatingPointInput): OperatingPoint {
  // A list has none of these keys: only what lacks one is asked whether it is a list.
  if (typeof input !== 'object' || input === null || input.resistance === undefined)
    requireObject(input, 'input', 'an object with supplyVoltage, resistance and load');
  requireNonNegative(input.resistance, 'resistance', 'Ω');
  // `+ 0` turns a -0 into 0, which is what JSON would make of it.
  return settle(input.supplyVoltage, input.resistance + 0, input.load);
}

/** The same for a line resistance that the library itself has made, however small. @internal */
export function settle(supplyVoltage: Volts, resistance: Ohms, load: Load): OperatingPoint {
  requirePositive(supplyVoltage, 'supplyVoltage', 'V');
  if (!isPlainLoad(load)) requireLoad(load, resistance);
  if (load.power !== undefined) return constantPower(supplyVoltage, resistance, load.power + 0);
  if (load.current !== undefined) return constantCurrent(supplyVoltage, resistance, load.current + 0);
  return constantResistance(supplyVoltage, resistance, load.resistance + 0);
}

/** Requires exactly one of the three, at the end of a line of so many ohms. @internal */
export function requireLoad(load: Load, lineResistance: Ohms, path: string = 'load'): void {
  if (typeof load !== 'object' || load === null) requireObject(load, path, LOAD);
  const { power, current, resistance } = load;
  if (+(power === undefined) + +(current === undefined) + +(resistance === undefined) !== 2) {
    requireObject(load, path, LOAD);
    throw new InputError('conflict', path, 'exactly one of power, current and resistance', load);
  }
  if (power !== undefined) requireNonNegative(power, `${path}.power`, 'W');
  else if (current !== undefined) requireNonNegative(current, `${path}.current`, 'A');
  // A load of 0 Ω is a short, which a line without resistance cannot limit.
  else (lineResistance > 0 ? requireNonNegative : requirePositive)(resistance as Ohms, `${path}.resistance`, 'Ω');
}

/** Whether a load passes every guard as it is: most do. @internal */
export function isPlainLoad(load: Load): boolean {
  if (typeof load !== 'object' || load === null) return false;
  const { power, current, resistance } = load;
  return +(power === undefined) + +(current === undefined) + +(resistance === undefined) === 2 && isPlain(power ?? current ?? resistance);
}

/** Whether a value is a number that no guard refuses. @internal */
export function isPlain(value: unknown): boolean {
  return typeof value === 'number' && value >= SMALLEST && value <= LARGEST;
}

const LOAD = 'an object with power, current or resistance';

/** The stable root for a constant power. Arguments are already within their domains. @internal */
export function constantPower(V: Volts, R: Ohms, P: Watts): OperatingPoint {
  const fourPR = 4 * P * R;
  // V² - 4PR, the discriminant; the plain difference has no correct digit left near the limit.
  const discriminant = fourPR > 0.25 * V * V ? differenceOfProducts(V, V, 4 * P, R) : V * V - fourPR;
  if (discriminant < 0) return infeasible(V, R);
  // The larger root as a sum and the current by the conjugate form: nothing cancels, and R = 0 is no special case.
  const twiceLoadVoltage = V + Math.sqrt(discriminant);
  const current = (2 * P) / twiceLoadVoltage;
  return point(V, R, current, twiceLoadVoltage / 2, P);
}

function constantCurrent(V: Volts, R: Ohms, current: Amperes): OperatingPoint {
  const loadVoltage = differenceOfProducts(V, 1, current, R);
  return loadVoltage < 0 ? infeasible(V, R) : point(V, R, current, loadVoltage, loadVoltage * current);
}

function constantResistance(V: Volts, R: Ohms, loadResistance: Ohms): OperatingPoint {
  const total = R + loadResistance;
  // What the sum lost in rounding (Knuth's two-sum): squared in the powers, it would cost a digit.
  const back = total - R;
  const lost = R - (total - back) + (loadResistance - back);
  const rounded = V / total;
  const current = rounded - rounded * (lost / total);
  const loadVoltage = current * loadResistance;
  return point(V, R, current, loadVoltage, loadVoltage * current);
}

function point(V: Volts, R: Ohms, current: Amperes, loadVoltage: Volts, loadPower: Watts): FeasiblePoint {
  const voltageDrop = current * R;
  return {
    feasible: true,
    current,
    loadVoltage,
    loadPower,
    voltageDrop,
    // Each quotient may round to a hair over 1.
    dropFraction: Math.min(1, voltageDrop / V),
    lineLoss: voltageDrop * current,
    supplyPower: V * current,
    efficiency: Math.min(1, loadVoltage / V),
  };
}

function infeasible(V: Volts, R: Ohms): InfeasiblePoint {
  // `V²/4R` rounded up would itself be infeasible: step to the largest double that the line does carry.
  let maximumLoadPower = (V * V) / (4 * R);
  while (differenceOfProducts(V, V, 4 * maximumLoadPower, R) < 0) maximumLoadPower = nextDown(maximumLoadPower);
  while (differenceOfProducts(V, V, 4 * nextUp(maximumLoadPower), R) >= 0) maximumLoadPower = nextUp(maximumLoadPower);
  let maximumCurrent = V / R;
  while (differenceOfProducts(V, 1, maximumCurrent, R) < 0) maximumCurrent = nextDown(maximumCurrent);
  return { feasible: false, maximumLoadPower, maximumCurrent };
}
