/** One two-wire DC run, judged: does enough voltage reach the device at every supply voltage it will see. @module */
import { requireJoints } from '../cable/run-resistance.ts';
import {
  type Check,
  MARGINAL_BELOW,
  requireMarginalBelow,
  settledMargin,
  type Verdict,
  verdictOf,
  worstVerdict,
} from '../circuit/check.ts';
import { NO_LINE, resistanceAtLimit, resistanceAtVoltage } from '../circuit/loop-limits.ts';
import { type Load, type OperatingPoint, operatingPoint } from '../circuit/operating-point.ts';
import { legsOf, type TwoWireLegs, twoWirePerMetre } from '../circuit/voltage-drop.ts';
import type { Conductor } from '../conductor/conductor.ts';
import { atMaximum } from '../conductor/to-maximum.ts';
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
  const limit = resistanceAtLimit(low, load);
  if (limit !== undefined) {
    checks.push({
      ...judged('collapse', resistance, limit, 'Ω', limit - resistance, atLowest.feasible),
      source: 'collapse',
      loop: { limit, margin: limit - resistance },
    });
  }
  if (atLowest.feasible) {
    for (const bound of voltageBounds(low, high, load, minimumVoltage, permittedDrop)) {
      const bounded = bound.loop !== undefined && bound.loop !== NO_LINE;
      const passes = bound.loop === undefined || resistance <= bound.loop;
      const point = bound.at === high && atHighest.feasible ? atHighest : atLowest;
      const value = bound.name === 'device-voltage' ? point.loadVoltage : bound.unit === 'V' ? point.voltageDrop : point.dropFraction;
      const margin = bound.name === 'device-voltage' ? value - bound.limit : bound.limit - value;
      const check = { ...judged(bound.name, value, bound.limit, bound.unit, margin, passes), source: 'data-sheet' as const };
      checks.push(bounded ? { ...check, loop: { limit: bound.loop as Ohms, margin: (bound.loop as Ohms) - resistance } } : check);
    }
  }
  if (ampacity !== undefined && (load.power === undefined || atLowest.feasible)) {
    const current = atLowest.feasible && load.power !== undefined ? atLowest.current : mostCurrent(high, load);
    const loop = ampacityLoop(low, load, ampacity);
    const passes = loop === undefined ? current <= ampacity : resistance <= loop;
    checks.push({ ...judged('ampacity', current, ampacity, 'A', ampacity - current, passes), source: 'data-sheet' });
  }
  if (maximumVoltage !== undefined) {
    // A device that draws nothing drops nothing, however long and cold the line.
    const margin = maximumVoltage - high;
    checks.push({ ...judged('device-overvoltage', high, maximumVoltage, 'V', margin, margin >= 0), source: 'data-sheet' });
  }
  if (maximumResistance !== undefined) {
    const margin = maximumResistance - resistance;
    checks.push({
      ...judged('device-resistance', resistance, maximumResistance, 'Ω', margin, margin >= 0),
      source: 'data-sheet',
      loop: { limit: maximumResistance, margin },
    });
  }

  const worst = worstVerdict(checks);
  const deciding = [
    ...(single ? ['supplyVoltage'] : []),
    ...(minimumVoltage === undefined && permittedDrop === undefined ? ['minimumVoltage'] : []),
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

  function judged(
    name: Check['name'],
    value: number,
    against: number,
    unit: Check['unit'],
    raw: number,
    passes: boolean,
  ): Omit<Check, 'source'> {
    const margin = settledMargin(raw, against, passes);
    return {
      name,
      value,
      limit: against,
      unit,
      margin,
      marginFraction: margin / against,
      verdict: verdictOf(margin, against, marginalBelow),
    };
  }
}

/** The voltage limits of a two-wire run, each with the most loop resistance it allows, and the supply voltage it is for. @internal */
export function voltageBounds(
  low: Volts,
  high: Volts,
  load: Load,
  minimumVoltage: Volts | undefined,
  permittedDrop: PermittedDrop | undefined,
): { name: 'device-voltage' | 'voltage-drop'; limit: number; unit: 'V' | '1'; loop: Ohms | undefined; at: Volts }[] {
  const bounds: ReturnType<typeof voltageBounds> = [];
  if (minimumVoltage !== undefined) {
    const loop = resistanceAtVoltage(low, load, minimumVoltage);
    bounds.push({ name: 'device-voltage', limit: minimumVoltage, unit: 'V', loop, at: low });
  }
  if (typeof permittedDrop === 'number') {
    const loop = resistanceAtVoltage(low, load, low * (1 - permittedDrop));
    bounds.push({ name: 'voltage-drop', limit: permittedDrop, unit: '1', loop, at: low });
  } else if (permittedDrop !== undefined) {
    // In volts a resistance drops most at the highest supply, a power at the lowest; a current the same at both.
    const at = load.resistance === undefined ? low : high;
    const { volts } = permittedDrop;
    const loop = volts < at ? resistanceAtVoltage(at, load, at - volts) : undefined;
    bounds.push({ name: 'voltage-drop', limit: volts, unit: 'V', loop, at });
  }
  return bounds;
}

/** Most line resistance at which a power still draws no more than `ampacity`; nothing for loads that a line only calms. @internal */
export function ampacityLoop(low: Volts, load: Load, ampacity: Amperes): Ohms | undefined {
  return load.power === undefined || load.power === 0 ? undefined : resistanceAtVoltage(low, load, load.power / ampacity);
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
