/** One two-wire DC run, judged: does enough voltage reach the device at every supply voltage it will see. @module */
import { requireJoints } from '../cable/run-resistance.ts';
import { type Load, type OperatingPoint, operatingPoint } from '../circuit/operating-point.ts';
import { legsOf, type TwoWireLegs, twoWirePerMetre } from '../circuit/voltage-drop.ts';
import type { Conductor } from '../conductor/conductor.ts';
import { atMaximum } from '../conductor/to-maximum.ts';
import { AMPACITY } from '../limits/ampacity.ts';
import type { Check, Draft } from '../limits/check.ts';
import { COLLAPSE } from '../limits/collapse.ts';
import { DEVICE_OVERVOLTAGE } from '../limits/device-overvoltage.ts';
import { DEVICE_RESISTANCE } from '../limits/device-resistance.ts';
import { DEVICE_VOLTAGE } from '../limits/device-voltage.ts';
import { held, MARGINAL_BELOW, requireMarginalBelow } from '../limits/held.ts';
import type { Limit } from '../limits/limit.ts';
import { NO_LINE, resistanceAtCollapse } from '../limits/resistance-at.ts';
import { type Verdict, worstVerdict } from '../limits/verdict.ts';
import { VOLTAGE_DROP } from '../limits/voltage-drop.ts';
import { requireNonNegative, requireObject, requirePositive } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Amperes, Celsius, Metres, Ohms, Volts } from '../quantity/units.ts';
import { governingCheck } from './governing-check.ts';
import { twoWireCautions } from './two-wire-cautions.ts';

/** A voltage that is known, or known to stay between two others. [V] */
export type SupplyVoltage = Volts | { readonly low: Volts; readonly high: Volts };

/** A drop that is permitted: a fraction of the supply voltage, or volts. [V] */
export type PermittedDrop = number | { readonly volts: Volts };

interface TwoWireCommon {
  /** One figure [V], or a range: a nominal 24 V on battery is 21 to 27.6 V. One figure makes the verdict at best uncertain. */
  readonly supplyVoltage: SupplyVoltage;
  /** Conductor temperature; 20 if absent. [°C] */
  readonly temperature?: Celsius | undefined;
  /** Joints along the run, each through both conductors. 0 if absent. */
  readonly connections?: number | undefined;
  /** One joint, one conductor; 0 if absent. [Ω] */
  readonly connectionResistance?: Ohms | undefined;
  /** Power [W], current [A] or resistance [Ω] of the device. */
  readonly load: Load;
  /** Lowest voltage at which the device works. [V] */
  readonly minimumVoltage?: Volts | undefined;
  /** Highest voltage that the device bears. [V] */
  readonly maximumVoltage?: Volts | undefined;
  /** Most drop along the run that is permitted: a fraction of the supply voltage, 0 to 1, or volts [V]. */
  readonly permittedDrop?: PermittedDrop | undefined;
  /** Most current of its conductors as they are installed, from the table that applies. [A] */
  readonly ampacity?: Amperes | undefined;
  /** Most resistance out and back on the device's data sheet. [Ω] */
  readonly maximumResistance?: Ohms | undefined;
  /** A margin under this fraction of the limit is marginal; 0.05 if absent. */
  readonly marginalBelow?: number | undefined;
}

/** What a two-wire circuit of equal conductors is made of, its length apart. */
export interface TwoWireCircuit extends TwoWireCommon {
  /** Both conductors alike; a nominal one is taken at its maximum. */
  readonly conductor: Conductor;
  readonly out?: undefined;
  readonly back?: undefined;
}

/** What a two-wire circuit of unequal conductors is made of, such as a core and a screen, its length apart. */
export interface UnequalTwoWireCircuit extends TwoWireCommon {
  /** What the current goes out on; a nominal one is taken at its maximum. */
  readonly out: Conductor;
  /** What it comes back on. */
  readonly back: Conductor;
  readonly conductor?: undefined;
}

/** A two-wire run of equal conductors. */
export interface TwoWireRunInput extends TwoWireCircuit {
  /** Length of the run, one way. [m] */
  readonly length: Metres;
}

/** A two-wire run of unequal conductors. */
export interface UnequalTwoWireRunInput extends UnequalTwoWireCircuit {
  /** Length of the run, one way. [m] */
  readonly length: Metres;
}

/** A two-wire run, judged. */
export interface TwoWireRun {
  /** Out and back, conductors at their maximum, at the stated temperature. [Ω] */
  readonly resistance: Ohms;
  /** What a meter should show with the far end shorted: the conductor as given, and its maximum. [Ω] */
  readonly meterReading: { readonly nominal: Ohms; readonly maximum: Ohms };
  /** [m] */
  readonly length: Metres;
  /** At the lowest supply voltage. */
  readonly atLowest: OperatingPoint;
  /** At the highest supply voltage. */
  readonly atHighest: OperatingPoint;
  readonly checks: readonly Check[];
  readonly verdict: Verdict;
  /** The check that is closest to its limit; absent where there is no limit at all. */
  readonly governing?: Check;
  /** What a person must know before building it. */
  readonly cautions: readonly string[];
}

/**
 * Judges one two-wire DC run at the lowest supply voltage it will see.
 *
 * Out and back alike, or `out` and `back` on their own. DC, steady state; inrush and protective devices are not considered. A single supply figure, or
 * no limit to hold the result against, makes a pass `uncertain` and says which input would settle it.
 *
 * @param input - Supply voltage [V] or range, conductor (or `out` and `back`), length one way [m], temperature [°C], load,
 *   device limits.
 * @returns Loop resistance [Ω], operating points at the lowest and highest supply, checks and verdict.
 * @throws {@link InputError} If a number is outside its domain or the range is upside down.
 * @example A 6 W cue light on 60 m of 18 AWG, on a battery-backed 24 V supply
 * const cue = checkTwoWireRun({
 *   supplyVoltage: { low: 21, high: 27.6 }, conductor: awg(18), length: 60, load: { power: 6 }, minimumVoltage: 19,
 * });
 * [cue.resistance.toFixed(2), cue.verdict]; // => ['2.56', 'pass']
 */
export function checkTwoWireRun(input: TwoWireRunInput | UnequalTwoWireRunInput): TwoWireRun {
  requireTwoWire(input);
  const { length, temperature, load, minimumVoltage, maximumVoltage, permittedDrop, maximumResistance, ampacity } = input;
  const { marginalBelow = MARGINAL_BELOW } = input;
  const { low, high, single } = supplyRange(input.supplyVoltage);
  const joints = twoWireJoints(input);
  requireNonNegative(length, 'length', 'm');
  const resistance = twoWirePerMetre(legsAtMaximum(input), temperature) * length + joints;
  const atLowest = operatingPoint({ supplyVoltage: low, resistance, load });
  const atHighest = operatingPoint({ supplyVoltage: high, resistance, load });

  const checks: Check[] = [];
  const limit = resistanceAtCollapse(low, load);
  if (limit !== undefined) {
    const check = held(COLLAPSE, resistance, limit, marginalBelow, atLowest.feasible);
    check.unit = 'Ω';
    checks.push(withLoop(check, limit));
  }
  if (atLowest.feasible) {
    for (const bound of voltageBounds(low, high, load, minimumVoltage, permittedDrop)) {
      const isMet = bound.loop === undefined || resistance <= bound.loop;
      const point = bound.at === high && atHighest.feasible ? atHighest : atLowest;
      const value = bound.limit === DEVICE_VOLTAGE ? point.loadVoltage : bound.unit === 'V' ? point.voltageDrop : point.dropFraction;
      const check = held(bound.limit, value, bound.bound, marginalBelow, isMet);
      check.unit = bound.unit;
      checks.push(withLoop(check, bound.loop));
    }
  }
  if (ampacity !== undefined && (load.power === undefined || atLowest.feasible)) {
    const current = atLowest.feasible && load.power !== undefined ? atLowest.current : mostCurrent(high, load);
    const loop = AMPACITY.asResistance?.(low, load, ampacity);
    const check = held(AMPACITY, current, ampacity, marginalBelow, loop === undefined ? undefined : resistance <= loop);
    // Of a line it is a question of power: there is no bundle that gets warm.
    check.aspect = 'power';
    checks.push(check);
  }
  // A device that draws nothing drops nothing, however long and cold the line.
  if (maximumVoltage !== undefined) checks.push(held(DEVICE_OVERVOLTAGE, high, maximumVoltage, marginalBelow));
  if (maximumResistance !== undefined) {
    checks.push(withLoop(held(DEVICE_RESISTANCE, resistance, maximumResistance, marginalBelow), maximumResistance));
  }

  const worst = worstVerdict(checks);
  const deciding = [
    ...(single ? [{ parameter: 'supplyVoltage' }] : []),
    ...(minimumVoltage === undefined && permittedDrop === undefined ? [{ parameter: 'minimumVoltage' }] : []),
  ];
  const verdict = worst === 'fail' || deciding.length === 0 ? worst : 'uncertain';
  const settled = verdict === 'uncertain' ? checks.map((check): Check => ({ ...check, verdict: 'uncertain', deciding })) : checks;
  return {
    resistance,
    meterReading: { nominal: twoWirePerMetre(legsOf(input), temperature) * length + joints, maximum: resistance },
    length: length + 0, // no -0
    atLowest,
    atHighest,
    checks: settled,
    verdict,
    ...(settled.length === 0 ? {} : { governing: governingCheck(settled) }),
    cautions: twoWireCautions(high, atHighest),
  };

  function withLoop(check: Draft<Check>, most: Ohms | undefined): Check {
    if (most !== undefined && most !== NO_LINE) check.loop = { limit: most, margin: most - resistance };
    return check;
  }
}

/** The voltage limits of a two-wire run, each with the most loop resistance it allows, and the supply voltage it is for. @internal */
export function voltageBounds(
  low: Volts,
  high: Volts,
  load: Load,
  minimumVoltage: Volts | undefined,
  permittedDrop: PermittedDrop | undefined,
): VoltageBound[] {
  const bounds: VoltageBound[] = [];
  const add = (limit: VoltageBound['limit'], bound: number, unit: 'V' | '1', at: Volts): void => {
    bounds.push({ limit, bound, unit, loop: limit.asResistance?.(at, load, bound, unit), at });
  };
  if (minimumVoltage !== undefined) add(DEVICE_VOLTAGE, minimumVoltage, 'V', low);
  if (typeof permittedDrop === 'number') add(VOLTAGE_DROP, permittedDrop, '1', low);
  // In volts a resistance drops most at the highest supply, a power at the lowest; a current the same at both.
  else if (permittedDrop !== undefined) add(VOLTAGE_DROP, permittedDrop.volts, 'V', load.resistance === undefined ? low : high);
  return bounds;
}

interface VoltageBound {
  readonly limit: Limit<'device-voltage' | 'voltage-drop'>;
  readonly bound: number;
  readonly unit: 'V' | '1';
  readonly loop: Ohms | undefined;
  readonly at: Volts;
}

/** Current of a load that draws most where there is no line at all. @internal */
export function mostCurrent(high: Volts, load: Load): Amperes {
  if (load.current !== undefined) return load.current;
  return load.resistance === undefined ? load.power / high : high / load.resistance;
}

/** @internal */
export function supplyRange(supplyVoltage: SupplyVoltage): { low: Volts; high: Volts; single: boolean } {
  if (typeof supplyVoltage === 'object' && supplyVoltage !== null) {
    requirePositive(supplyVoltage.low, 'supplyVoltage.low', 'V');
    requirePositive(supplyVoltage.high, 'supplyVoltage.high', 'V');
    if (supplyVoltage.high < supplyVoltage.low) {
      throw new InputError('conflict', 'supplyVoltage.high', `at least the low end, ${supplyVoltage.low} V`, supplyVoltage.high);
    }
    return { low: supplyVoltage.low, high: supplyVoltage.high, single: false };
  }
  requirePositive(supplyVoltage, 'supplyVoltage', 'V');
  return { low: supplyVoltage, high: supplyVoltage, single: true };
}

/** The conductors of a circuit, each at its maximum. @internal */
export function legsAtMaximum(input: TwoWireCircuit | UnequalTwoWireCircuit): TwoWireLegs {
  const [out, back] = legsOf(input);
  return [atMaximum(out), atMaximum(back)];
}

/** All the joints, out and back. [Ω] @internal */
export function twoWireJoints({ connections = 0, connectionResistance = 0 }: TwoWireCommon): Ohms {
  return 2 * connections * connectionResistance;
}

/** @internal */
export function requireTwoWire(input: TwoWireCircuit | UnequalTwoWireCircuit): void {
  requireObject(input, 'input', 'an object with supplyVoltage, conductor and load');
  const {
    connections = 0,
    connectionResistance = 0,
    minimumVoltage,
    maximumVoltage,
    permittedDrop,
    maximumResistance,
    ampacity,
    marginalBelow,
  } = input;
  requireJoints(connections, connectionResistance);
  if (minimumVoltage !== undefined) requirePositive(minimumVoltage, 'minimumVoltage', 'V');
  if (maximumVoltage !== undefined) requirePositive(maximumVoltage, 'maximumVoltage', 'V');
  if (typeof permittedDrop === 'object' && permittedDrop !== null) requirePositive(permittedDrop.volts, 'permittedDrop.volts', 'V');
  else if (permittedDrop !== undefined) {
    requirePositive(permittedDrop, 'permittedDrop', '(a fraction of the supply voltage)');
    if (permittedDrop >= 1) throw new InputError('range', 'permittedDrop', 'a fraction of the supply voltage under 1', permittedDrop);
  }
  if (ampacity !== undefined) requirePositive(ampacity, 'ampacity', 'A');
  if (maximumResistance !== undefined) requirePositive(maximumResistance, 'maximumResistance', 'Ω');
  if (marginalBelow !== undefined) requireMarginalBelow(marginalBelow);
}
