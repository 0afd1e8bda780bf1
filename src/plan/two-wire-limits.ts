/** What a two-wire circuit is held against, each as the most ohms of the loop. @module */

import type { FeasiblePoint, Load } from '../circuit/operating-point.ts';
import { AMPACITY, COLLAPSE, DEVICE_OVERVOLTAGE, DEVICE_RESISTANCE, DEVICE_VOLTAGE, VOLTAGE_DROP } from '../limits/all.ts';
import type { CheckName } from '../limits/check.ts';
import type { CheckUnit, Limit } from '../limits/limit.ts';
import { resistanceAtCollapse } from '../limits/resistance-at.ts';
import type { Amperes, Ohms, Volts } from '../quantity/units.ts';
import type { TwoWireCircuit, UnequalTwoWireCircuit } from './two-wire-input.ts';

/** One limit of a circuit at its supply. @internal */
export interface TwoWireLimit {
  readonly limit: Limit<CheckName>;
  readonly bound: number;
  readonly unit: CheckUnit;
  /** The most ohms out and back at which it is met; `undefined` where they play no part, `NO_LINE` where not even none will do. [Ω] */
  readonly ohms: Ohms | undefined;
  /** The supply voltage at which it is nearest. [V] */
  readonly at: Volts;
  /** The value where the load settles at a point, behind a line of so many ohms. */
  readonly measure: (point: FeasiblePoint, resistance: Ohms) => number;
  /** The value where there is no line. */
  readonly bare: number;
  /** Whether there is nothing to measure where the line does not carry the load. */
  readonly arrives: boolean;
}

/** In the order in which they are listed. @internal */
export function twoWireLimits(input: TwoWireCircuit | UnequalTwoWireCircuit, low: Volts, high: Volts): TwoWireLimit[] {
  const { load, minimumVoltage, maximumVoltage, permittedDrop, maximumResistance, ampacity } = input;
  const found: TwoWireLimit[] = [];
  const add = (
    limit: Limit<CheckName>,
    bound: number,
    at: Volts,
    bare: number,
    measure: TwoWireLimit['measure'],
    unit: CheckUnit = limit.unit,
  ): void => {
    // What a current, or a resistance, draws at the most does not hang on the line.
    const arrives = limit.aboutArrival === true && (limit !== AMPACITY || load.power !== undefined);
    found.push({ limit, bound, unit, ohms: limit.asResistance?.(at, load, bound, unit), at, measure, bare, arrives });
  };
  add(COLLAPSE, resistanceAtCollapse(low, load) ?? 0, low, 0, (_, resistance) => resistance, 'Ω');
  if (minimumVoltage !== undefined) add(DEVICE_VOLTAGE, minimumVoltage, low, low, ({ loadVoltage }) => loadVoltage);
  if (typeof permittedDrop === 'number') add(VOLTAGE_DROP, permittedDrop, low, 0, ({ dropFraction }) => dropFraction);
  else if (permittedDrop !== undefined) {
    // In volts a resistance drops most at the highest supply, a power at the lowest; a current the same at both.
    const at = load.resistance === undefined ? low : high;
    add(VOLTAGE_DROP, permittedDrop.volts, at, 0, ({ voltageDrop }) => voltageDrop, 'V');
  }
  if (ampacity !== undefined) {
    const most = mostCurrent(low, high, load);
    add(AMPACITY, ampacity, low, most, ({ current }) => (load.power === undefined ? most : current));
  }
  if (maximumVoltage !== undefined) add(DEVICE_OVERVOLTAGE, maximumVoltage, high, high, () => high);
  if (maximumResistance !== undefined) add(DEVICE_RESISTANCE, maximumResistance, low, 0, (_, resistance) => resistance);
  return found;
}

/** Current of a load where there is no line at all, which is the most that a resistance or a current draws. [A] */
function mostCurrent(low: Volts, high: Volts, load: Load): Amperes {
  if (load.current !== undefined) return load.current;
  return load.resistance === undefined ? load.power / low : high / load.resistance;
}
