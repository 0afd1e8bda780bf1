/** How low: the lowest supply voltage at which a run still holds. @module */
import type { Check, CheckName } from '../limits/check.ts';
import { requireObject } from '../quantity/guards.ts';
import type { Volts } from '../quantity/units.ts';
import { passesAt } from './absent-checks.ts';
import { edge } from './edge.ts';
import { isPowered, poweredChecks, twoWireChecks } from './one-unknown.ts';
import type { PoweredRunInput } from './powered-run.ts';
import { type Solved, solveUnknown, type UnknownLimit, type Unsolvable } from './solve-unknown.ts';
import type { TwoWireRunInput, UnequalTwoWireRunInput } from './two-wire-run.ts';

/** A run whose supply voltage is asked for. */
export type LowestSupplyVoltageInput =
  | Omit<PoweredRunInput, 'pseVoltage'>
  | Omit<TwoWireRunInput, 'supplyVoltage'>
  | Omit<UnequalTwoWireRunInput, 'supplyVoltage'>;

/** The lowest voltage, or that any will do, or that none is enough. */
export type LowestSupplyVoltage =
  | {
      readonly feasible: true;
      readonly unbounded?: undefined;
      /** At the port, or at the supply. [V] */
      readonly supplyVoltage: Volts;
      readonly governedBy: CheckName;
      readonly limits: readonly UnknownLimit[];
    }
  | { readonly feasible: true; readonly unbounded: true; readonly limits: readonly UnknownLimit[] }
  | Unsolvable;

/** Highest voltage at a port of any type (IEEE 802.3). [V] */
const MOST_PSE: Volts = 57;
/** Where the search for a two-wire supply ends; far above what may be called low voltage. [V] */
const MOST_TWO_WIRE: Volts = 1000;
const LEAST: Volts = 1e-6;

/**
 * The lowest supply voltage at which no check of a run fails, and the one that each limit alone would allow.
 *
 * For a powered device up to 57 V at the port, for a two-wire circuit up to 1000 V: an answer above 60 V DC is outside
 * extra-low voltage, and for a licensed person to judge. A stated `maximumVoltage` is where the search ends; so is, of a load in
 * ohms, the voltage at which it draws the ampacity or drops the permitted volts. Whether other devices nearer by bear it is not
 * looked at.
 *
 * @param input - The run, as for {@link checkPoweredRun} or {@link checkTwoWireRun}, without its supply voltage.
 * @returns The voltage [V] with the limit that governs; or `unbounded`; or the shortfall.
 * @throws {@link InputError} As the check of that run.
 * @example A class 4 camera on 100 m of Category 5e
 * const least = lowestSupplyVoltage({ installed: [{ cable: cable('cat5e'), length: 100 }], poeClass: 4, cabling: 'none' });
 * least.feasible && !least.unbounded && least.supplyVoltage.toFixed(2); // => '48.13'
 */
export function lowestSupplyVoltage(input: LowestSupplyVoltageInput): LowestSupplyVoltage {
  requireObject(input, 'input', 'a run to a powered device, or a two-wire run');
  const solved = isPowered<Omit<PoweredRunInput, 'pseVoltage'>, Exclude<LowestSupplyVoltageInput, Omit<PoweredRunInput, 'pseVoltage'>>>(
    input,
  )
    ? solveUnknown(MOST_PSE, LEAST, (pseVoltage) => poweredChecks({ ...input, pseVoltage }))
    : solveTwoWire(Math.min(input.maximumVoltage ?? MOST_TWO_WIRE, MOST_TWO_WIRE), input.load?.resistance !== undefined, (low) =>
        twoWireChecks({ ...input, supplyVoltage: { low, high: low } } as TwoWireRunInput),
      );
  if (!solved.feasible || solved.unbounded) return solved;
  const { value, ...rest } = solved;
  return { ...rest, supplyVoltage: value };
}

/** Limits that a load in ohms reaches at a high voltage, for it then draws more: they bound the search from above. */
const FROM_ABOVE: readonly CheckName[] = ['voltage-drop', 'ampacity'];

function solveTwoWire(top: Volts, isResistance: boolean, checksAt: (voltage: Volts) => readonly Check[]): Solved {
  const isBorne = (voltage: Volts): boolean => FROM_ABOVE.every((name) => passesAt(name, checksAt(voltage)));
  // Where not even the least voltage is borne, the limit is missed as it is.
  const start = !isResistance || isBorne(top) || !isBorne(LEAST) ? top : edge(LEAST, top, isBorne);
  return solveUnknown(start, LEAST, checksAt);
}
