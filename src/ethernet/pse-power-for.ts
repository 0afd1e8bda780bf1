/** From what a device draws to what the port must source. @module */
import type { RunResistance } from '../cable/run-resistance.ts';
import { constantPower, type FeasiblePoint, type OperatingPoint } from '../circuit/operating-point.ts';
import type { Check } from '../limits/check.ts';
import { MARGINAL_BELOW_FIELD } from '../limits/held.ts';
import { PSE_VOLTAGE } from '../limits/pse-voltage.ts';
import { type Assumption, type Fields, readInput } from '../quantity/fields.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Interval } from '../quantity/interval.ts';
import type { Ohms, Watts } from '../quantity/units.ts';
import { classRow, type PoeClassNumber } from './class-table.ts';
import type { PoeClass } from './poe-class.ts';
import { type PortCurrents, portCurrents } from './port-currents.ts';
import * as port from './port-fields.ts';
import { appliedLimits, loopThatPowerSees, type PowerAtPdInput, powerAtPd } from './power-at-pd.ts';
import { type PortVoltage, portVoltageCheck, portVoltageRange } from './pse-voltage.ts';

/** A device whose draw is known. */
export interface PsePowerForInput extends Pick<PowerAtPdInput, 'pseType' | 'pairs' | 'marginalBelow'> {
  /** Class that the port has granted, 0 to 8. */
  readonly poeClass: PoeClassNumber;
  /** What the device draws on average; all that its class allows if absent. [W] */
  readonly pdPower?: Watts | undefined;
  /** What it draws at its peaks; the class's peak power, in proportion to `pdPower`, if absent (memory). [W] */
  readonly pdPeakPower?: Watts | undefined;
  /** The loop that power sees [Ω], or a `runResistance` result; the worst channel that the type allows if absent. */
  readonly resistance?: Ohms | RunResistance | undefined;
  /** Voltage at the port, one figure or its range; the lowest of its type, which is the worst case, if absent. [V] */
  readonly pseVoltage?: PortVoltage | undefined;
}

/** @internal */
export const PSE_POWER_FOR_FIELDS: Fields<PsePowerForInput, 'marginalBelow'> = {
  poeClass: () => port.POE_CLASS_FIELD,
  pdPower: () => port.PD_POWER_FIELD,
  pdPeakPower: { nonNegative: 'W', optional: true },
  resistance: () => port.RESISTANCE_FIELD,
  pseVoltage: () => port.PORT_VOLTAGE_FIELD,
  pseType: () => port.PSE_TYPE_FIELD,
  pairs: () => port.PAIRS_FIELD,
  marginalBelow: () => MARGINAL_BELOW_FIELD,
};

/** A draw and what it takes from the port. */
export type PortDemand =
  | (PortCurrents & {
      readonly feasible: true;
      /** At the device. [W] */
      readonly pdPower: Watts;
      /** What the port must source: the most within the range of its voltage, which is at the lowest. [W] */
      readonly psePower: Watts;
      /** The least, which is at the highest voltage. [W] */
      readonly psePowerLeast: Watts;
      /** The currents are those at the lowest voltage. */
      readonly atLowest: FeasiblePoint;
      readonly atHighest: FeasiblePoint;
    })
  | {
      readonly feasible: false;
      /** At the device. [W] */
      readonly pdPower: Watts;
      readonly atLowest: OperatingPoint;
      readonly atHighest: OperatingPoint;
    };

/** What a port must source. */
export interface PsePowerFor {
  readonly average: PortDemand;
  /** At most 5 % of the time and 50 ms long (time from memory). */
  readonly peak: PortDemand;
  /** The class and its limits, as applied. */
  readonly limits: PoeClass;
  /** The loop that power sees. [Ω] */
  readonly resistance: Ohms;
  readonly resistanceBasis: 'stated' | 'worst-case';
  readonly pseVoltage: Interval;
  readonly voltageBasis: 'stated' | 'worst-case' | 'range';
  /** The average draw at the lowest voltage against every limit of the class, and a stated voltage against its type's window. */
  readonly checks: readonly Check[];
  /** What was taken for what the caller left out; of a peak nobody stated, the class peak in proportion to the draw. */
  readonly assumptions: readonly Assumption[];
}

/**
 * What a port must source so that a device receives its power: the exact quadratic, average and peak.
 *
 * `V·I = P + I²·R`, the root with the higher voltage; DC, steady state, equal conductors. Over the stated run or the
 * worst channel of the type, at the lowest voltage of the type, a stated voltage, or a range of it. A device draws less
 * from a port at a higher voltage, so the lowest voltage is the most that the port must source.
 *
 * @param input - Class, draw and peak [W], loop or run [Ω], voltage or range [V], type of the port, powered pairs.
 * @returns Power at the port and currents [A] for average and peak [W], the limits applied and the checks.
 * @throws {@link InputError} If the class, type or number of pairs do not go together, a number is outside its domain,
 *   or the peak is under the average.
 * @example A class 4 device at its worst, and the same on a port that is known to hold 53 to 57 V
 * const worst = psePowerFor({ poeClass: 4 }).average;
 * const known = psePowerFor({ poeClass: 4, pseVoltage: { low: 53, high: 57 } }).average;
 * [worst, known].map((demand) => demand.feasible && demand.psePower.toFixed(2)); // => ['30.00', '29.33']
 */
export function psePowerFor(input: PsePowerForInput): PsePowerFor {
  const { pdPeakPower: peak, ...stated } = readInput(PSE_POWER_FOR_FIELDS, input);
  const limits = appliedLimits(stated);
  const { pdPower = limits.pdPower } = stated;
  const pdPeakPower = peak ?? (pdPower / limits.pdPower) * classRow(stated.poeClass).pdPeakPower;
  if (pdPeakPower < pdPower) throw new InputError('conflict', 'pdPeakPower', `at least the ${pdPower} W of pdPower`, pdPeakPower);
  const resistance = loopThatPowerSees(stated.resistance ?? limits.channelResistance, limits.pairs);
  const pseVoltage = portVoltageRange(stated.pseVoltage ?? limits.pseVoltageMin);

  const { checks } = powerAtPd({ ...stated, pdPower, resistance, pseVoltage: pseVoltage.low });
  const assumptions = port.portAssumptions(stated, limits, ['pdPower', 'resistance', 'pseVoltage', 'pseType']);
  if (peak === undefined) {
    assumptions.push({ parameter: 'pdPeakPower', value: pdPeakPower, unit: 'W', source: 'ieee-802.3-peak' });
  }
  return {
    average: demand(pdPower, pseVoltage, resistance, limits.pairs),
    peak: demand(pdPeakPower, pseVoltage, resistance, limits.pairs),
    limits,
    resistance,
    resistanceBasis: stated.resistance === undefined ? 'worst-case' : 'stated',
    pseVoltage,
    voltageBasis: stated.pseVoltage === undefined ? 'worst-case' : typeof stated.pseVoltage === 'object' ? 'range' : 'stated',
    // The check of the whole range in place of that of its low end, which `powerAtPd` adds above the window.
    checks:
      stated.pseVoltage === undefined
        ? checks
        : [...checks.filter(({ name }) => name !== PSE_VOLTAGE.name), portVoltageCheck(pseVoltage, limits.type)],
    assumptions,
  };
}

function demand(pdPower: Watts, { low, high }: Interval, resistance: Ohms, pairs: 2 | 4): PortDemand {
  const atLowest = constantPower(low, resistance, pdPower);
  const atHighest = constantPower(high, resistance, pdPower);
  if (!atLowest.feasible || !atHighest.feasible) return { feasible: false, pdPower, atLowest, atHighest };
  return {
    feasible: true,
    pdPower,
    psePower: atLowest.supplyPower,
    psePowerLeast: atHighest.supplyPower,
    ...portCurrents(atLowest.current, pairs),
    atLowest,
    atHighest,
  };
}
