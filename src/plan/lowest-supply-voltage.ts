/** How low: the lowest supply voltage at which a run still holds. @module */
import { PSE_VOLTAGE_MAX } from '../ethernet/port-table.ts';
import { AMPACITY, VOLTAGE_DROP } from '../limits/all.ts';
import type { Check, CheckName } from '../limits/check.ts';
import type { Volts } from '../quantity/units.ts';
import { passesAt } from './absent-checks.ts';
import { edge } from './edge.ts';
import { openRun } from './open-run.ts';
import type { PoweredRunInput } from './powered-input.ts';
import { type Answered, answered, type Solved, solveUnknown } from './solve-unknown.ts';
import type { TwoWireRunInput, UnequalTwoWireRunInput } from './two-wire-input.ts';

/** A run whose supply voltage is asked for. */
export type LowestSupplyVoltageInput =
  | Omit<PoweredRunInput, 'pseVoltage'>
  | Omit<TwoWireRunInput, 'supplyVoltage'>
  | Omit<UnequalTwoWireRunInput, 'supplyVoltage'>;

/** The lowest voltage, or that any will do, or that none is enough. */
export type LowestSupplyVoltage = Answered<{
  /** At the port, or at the supply. [V] */
  readonly supplyVoltage: Volts;
}>;

/** Where the search for a two-wire supply ends; far above what may be called low voltage. [V] @internal */
export const MOST_TWO_WIRE: Volts = 1000;
/** Where it begins. [V] @internal */
export const LEAST_SUPPLY: Volts = 1e-6;

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
  const open = openRun(input, { powered: ['pseVoltage'], twoWire: ['supplyVoltage'] });
  const solved =
    open.kind === 'powered'
      ? solveUnknown(PSE_VOLTAGE_MAX, LEAST_SUPPLY, (pseVoltage) => open.checksWith({ pseVoltage }))
      : solveTwoWire(open.run, open.checksWith);
  return answered(solved, (supplyVoltage) => ({ supplyVoltage }));
}

/** Limits that a load in ohms reaches at a high voltage, for it then draws more: they bound the search from above. */
const fromAbove = (): readonly CheckName[] => [VOLTAGE_DROP.name, AMPACITY.name];

function solveTwoWire(
  { maximumVoltage = MOST_TWO_WIRE, load }: TwoWireRunInput,
  checksWith: (change: Partial<TwoWireRunInput>) => readonly Check[],
): Solved {
  const top = Math.min(maximumVoltage, MOST_TWO_WIRE);
  const checksAt = (volts: Volts): readonly Check[] => checksWith({ supplyVoltage: { low: volts, high: volts } });
  const isBorne = (voltage: Volts): boolean => fromAbove().every((name) => passesAt(name, checksAt(voltage)));
  // Where not even the least voltage is borne, the limit is missed as it is.
  const start = load.resistance === undefined || isBorne(top) || !isBorne(LEAST_SUPPLY) ? top : edge(LEAST_SUPPLY, top, isBorne);
  return solveUnknown(start, LEAST_SUPPLY, checksAt);
}
