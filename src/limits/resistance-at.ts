/** Electrical limits of a load, each expressed as the most resistance the line may have. @module */
import { differenceOfProducts, nextDown, nextUp } from '../quantity/exact.ts';
import type { Ohms, Volts, Watts } from '../quantity/units.ts';
import type { Load } from './load.ts';

/** In place of a resistance: the supply itself is under the minimum, so no line is short enough. @internal */
export const NO_LINE = -1;

/**
 * Most line resistance at which the supply gives no more than `limit`.
 *
 * From `P = W - (W/V)²·R`; {@link NO_LINE} if the load alone takes more. `undefined` if the line collapses before the supply ever has to give that much.
 * @internal
 */
export function resistanceAtSupplyPower(supplyVoltage: Volts, power: Watts, limit: Watts): Ohms | undefined {
  // At collapse the supply gives 2P: a limit above that is never the one that bites.
  if (limit >= 2 * power) return undefined;
  if (limit < power) return NO_LINE;
  const voltsPerWatt = supplyVoltage / limit;
  return (limit - power) * voltsPerWatt * voltsPerWatt;
}

/**
 * Most line resistance at which the load still sees `minimum`.
 *
 * From `(V - U)/R = P/U`. `undefined` if the line collapses before the voltage falls that low, or at no load;
 * {@link NO_LINE} if the supply is under the minimum.
 * @internal
 */
export function resistanceAtLoadVoltage(supplyVoltage: Volts, power: Watts, minimum: Volts): Ohms | undefined {
  if (minimum > supplyVoltage) return NO_LINE;
  // The stable root never lies under half the supply voltage.
  if (power === 0 || minimum * 2 < supplyVoltage) return undefined;
  return ((supplyVoltage - minimum) * minimum) / power;
}

/** Most line resistance at which any kind of load still sees `minimum`; `undefined` where nothing bounds it. @internal */
export function resistanceAtVoltage(supplyVoltage: Volts, load: Load, minimum: Volts): Ohms | undefined {
  if (load.power !== undefined) return resistanceAtLoadVoltage(supplyVoltage, load.power, minimum);
  if (minimum > supplyVoltage) return NO_LINE;
  if (load.resistance !== undefined) return load.resistance * ((supplyVoltage - minimum) / minimum);
  return load.current > 0 ? (supplyVoltage - minimum) / load.current : undefined;
}

/** Most line resistance that carries the load at all, `V²/4P` of a power; `undefined` where nothing bounds it. @internal */
export function resistanceAtCollapse(supplyVoltage: Volts, { power, current }: Load): Ohms | undefined {
  if (power !== undefined) return resistanceAtPowerCollapse(supplyVoltage, power);
  if (current === undefined || current === 0) return undefined;
  const limit = supplyVoltage / current;
  return differenceOfProducts(supplyVoltage, 1, current, limit) < 0 ? nextDown(limit) : limit;
}

/** Most line resistance that carries `power` at all, `V²/4P`; `undefined` at no load. @internal */
export function resistanceAtPowerCollapse(supplyVoltage: Volts, power: Watts): Ohms | undefined {
  if (power === 0) return undefined;
  let limit = (supplyVoltage * supplyVoltage) / (4 * power);
  // The largest double that still carries the load: the quotient may lie an ulp or two on either side of it.
  while (differenceOfProducts(supplyVoltage, supplyVoltage, 4 * power, limit) < 0) limit = nextDown(limit);
  while (differenceOfProducts(supplyVoltage, supplyVoltage, 4 * power, nextUp(limit)) >= 0) limit = nextUp(limit);
  return limit;
}
