/** What drop must be permitted for a run to be in order. @module */
import { VOLTAGE_DROP } from '../limits/all.ts';
import { readInput } from '../quantity/fields.ts';
import type { Volts } from '../quantity/units.ts';
import { passesAt } from './absent-checks.ts';
import { edge } from './edge.ts';
import { without } from './open-run.ts';
import { type PermittedDrop, TWO_WIRE_RUN_FIELDS, type TwoWireRunInput, type UnequalTwoWireRunInput } from './two-wire-input.ts';
import { judgeTwoWireRun } from './two-wire-run.ts';

/** A two-wire run whose permitted drop is asked for. */
export type LeastPermittedDropInput = Omit<TwoWireRunInput, 'permittedDrop'> | Omit<UnequalTwoWireRunInput, 'permittedDrop'>;

/** The drop, or that the line does not carry the load whatever is permitted. */
export type LeastPermittedDrop =
  | {
      readonly feasible: true;
      /** Of the supply voltage, 0 to 1, at the supply voltage at which it is largest. */
      readonly fraction: number;
      /** At the supply voltage at which it is largest. [V] */
      readonly volts: Volts;
    }
  | { readonly feasible: false };

/**
 * The least drop that must be permitted along a two-wire run: as a fraction of the supply voltage, and in volts.
 *
 * Conductors at their maximum, over the whole range of the supply. Put back as `permittedDrop`, either of them is met.
 *
 * @param input - The run, as for {@link checkTwoWireRun}, without `permittedDrop`.
 * @returns The fraction and the volts [V]; or that the line carries no such load.
 * @throws {@link InputError} As {@link checkTwoWireRun}.
 * @example
 * const drop = leastPermittedDrop({ supplyVoltage: { low: 21, high: 27.6 }, conductor: awg(18), length: 60, load: { power: 6 } });
 * drop.feasible && [drop.fraction.toFixed(4), drop.volts.toFixed(3)]; // => ['0.0362', '0.760']
 */
export function leastPermittedDrop(input: LeastPermittedDropInput): LeastPermittedDrop {
  const run = readInput(without(TWO_WIRE_RUN_FIELDS, ['permittedDrop']) as never, input as never) as TwoWireRunInput;
  const { operating, atHighest } = judgeTwoWireRun(run);
  if (!operating.feasible || !atHighest.feasible) return { feasible: false };
  // The check is settled in ohms, where these figures may lie an ulp or two to the other side.
  const met = (permittedDrop: PermittedDrop): boolean => passesAt(VOLTAGE_DROP.name, judgeTwoWireRun({ ...run, permittedDrop }).checks);
  return {
    feasible: true,
    fraction: leastMet(Math.max(operating.dropFraction, atHighest.dropFraction), met, 1),
    volts: leastMet(Math.max(operating.voltageDrop, atHighest.voltageDrop), (volts) => met({ volts }), Number.MAX_VALUE),
  };
}

/** The figure, or the least above it that is met: next to nothing out of a large voltage may be many of its own last places off. */
function leastMet(figure: number, met: (figure: number) => boolean, most: number): number {
  if (!(figure > 0) || met(figure)) return figure;
  let low = figure;
  for (let step = figure * 2 ** -52; ; step *= 2) {
    const high = Math.min(figure + step, most);
    if (high === most || met(high)) return edge(high, low, met);
    low = high;
  }
}
