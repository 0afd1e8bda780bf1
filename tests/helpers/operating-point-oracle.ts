/** Random lines and loads, crowded around the limit of what a line can carry, and the exact answer to each. @module */
import type { BigNumber } from 'mathjs';
import type { FeasiblePoint, OperatingPointInput } from '../../src/circuit/operating-point.ts';
import { big, errorInUlp } from './big.ts';
import { compare, neighbour, product } from './exact.ts';
import { logUniform, pick, type Random, uniform, whole } from './random.ts';

/** A field of an operating point. */
export type Field = Exclude<keyof FeasiblePoint, 'feasible'>;

/** The exact operating point, or the exact no. */
export type ExactPoint = { readonly [field in Field]: BigNumber } | 'infeasible';

function randomLine(random: Random): { supplyVoltage: number; resistance: number } {
  const kind = random();
  // Short binary numbers make the limit itself a double, so that the discriminant is exactly 0.
  if (kind < 0.1) return { supplyVoltage: whole(random, 1, 1000), resistance: 2 ** whole(random, -19, 19) };
  // Short decimals are what people type.
  if (kind < 0.25) return { supplyVoltage: whole(random, 10, 10000) / 10, resistance: whole(random, 1, 10000) / 100 };
  return { supplyVoltage: uniform(random, 1, 1000), resistance: logUniform(random, 1e-6, 1e6) };
}

/** A figure somewhere below, at, or beyond a limit: half of them within 1e-3 of it, a quarter within 8 doubles. */
function aroundLimit(random: Random, limit: number): number {
  const kind = random();
  if (kind < 0.02) return 0;
  if (kind < 0.25) return logUniform(random, 1e-12, Math.min(limit * 10, 1e12));
  if (kind < 0.5) return neighbour(limit, whole(random, -8, 8));
  const distance = 10 ** -uniform(random, kind < 0.6 ? 0.1 : 3, 16);
  return limit * (random() < 0.5 ? 1 - distance : 1 + distance);
}

/** A constant-power load of 0 or 1e-12 W up, around the limit `V²/4R`. */
export function randomPowerCase(random: Random): OperatingPointInput & { readonly load: { readonly power: number } } {
  const { supplyVoltage, resistance } = randomLine(random);
  const power = aroundLimit(random, (supplyVoltage * supplyVoltage) / (4 * resistance));
  return { supplyVoltage, resistance, load: { power } };
}

/** A constant-current load, around the limit `V/R`. */
export function randomCurrentCase(random: Random): OperatingPointInput & { readonly load: { readonly current: number } } {
  const { supplyVoltage, resistance } = randomLine(random);
  return { supplyVoltage, resistance, load: { current: aroundLimit(random, supplyVoltage / resistance) } };
}

/** A resistance, from a short to nothing connected. */
export function randomResistanceCase(random: Random): OperatingPointInput & { readonly load: { readonly resistance: number } } {
  const { supplyVoltage, resistance } = randomLine(random);
  const load = pick(random, [0, resistance, neighbour(resistance, 1), logUniform(random, 1e-12, 1e12), logUniform(random, 1e-3, 1e5)]);
  return { supplyVoltage, resistance, load: { resistance: load } };
}

/** Whether `4PR <= V²`, in integers. */
export function carriesPower(supplyVoltage: number, resistance: number, power: number): boolean {
  return compare(product(4, power, resistance), product(supplyVoltage, supplyVoltage)) <= 0;
}

/** Whether `IR <= V`, in integers. */
export function carriesCurrent(supplyVoltage: number, resistance: number, current: number): boolean {
  return compare(product(current, resistance), product(supplyVoltage)) <= 0;
}

/** Kirchhoff and Ohm at 64 digits, in their textbook form. */
export function exactPoint({ supplyVoltage, resistance, load }: OperatingPointInput): ExactPoint {
  const V = big(supplyVoltage);
  const R = big(resistance);
  let current: BigNumber;
  let loadVoltage: BigNumber;
  if (load.power !== undefined) {
    if (!carriesPower(supplyVoltage, resistance, load.power)) return 'infeasible';
    const discriminant = V.times(V).minus(big(load.power).times(R).times(4));
    // Exactly 0 may come out as a negative 1e-64.
    loadVoltage = discriminant.isNegative() ? V.div(2) : V.plus(discriminant.sqrt()).div(2);
    current = big(load.power).div(loadVoltage);
  } else if (load.current !== undefined) {
    if (!carriesCurrent(supplyVoltage, resistance, load.current)) return 'infeasible';
    current = big(load.current);
    loadVoltage = V.minus(current.times(R));
  } else {
    current = V.div(R.plus(big(load.resistance)));
    loadVoltage = current.times(big(load.resistance));
  }
  const voltageDrop = current.times(R);
  return {
    current,
    loadVoltage,
    loadPower: load.power === undefined ? loadVoltage.times(current) : big(load.power),
    voltageDrop,
    dropFraction: voltageDrop.div(V),
    lineLoss: voltageDrop.times(current),
    supplyPower: V.times(current),
    efficiency: loadVoltage.div(V),
  };
}

/** The error of each field in ulp. */
export function pointErrors(point: FeasiblePoint, exact: Exclude<ExactPoint, 'infeasible'>): Record<Field, number> {
  return {
    current: errorInUlp(point.current, exact.current),
    loadVoltage: errorInUlp(point.loadVoltage, exact.loadVoltage),
    loadPower: errorInUlp(point.loadPower, exact.loadPower),
    voltageDrop: errorInUlp(point.voltageDrop, exact.voltageDrop),
    dropFraction: errorInUlp(point.dropFraction, exact.dropFraction),
    lineLoss: errorInUlp(point.lineLoss, exact.lineLoss),
    supplyPower: errorInUlp(point.supplyPower, exact.supplyPower),
    efficiency: errorInUlp(point.efficiency, exact.efficiency),
  };
}
