/** The longest two-wire DC run. @module */
import { requireLoad } from '../circuit/operating-point.ts';
import { twoWirePerMetre } from '../circuit/voltage-drop.ts';
import { AMPACITY, DEVICE_RESISTANCE } from '../limits/all.ts';
import type { Limit } from '../limits/limit.ts';
import { NO_LINE } from '../limits/resistance-at.ts';
import { readInput } from '../quantity/fields.ts';
import { without } from './open-run.ts';
import { fixedLimit, governed, growingLimit, type MaximumRun } from './run-limit.ts';
import {
  legsAtMaximum,
  supplyRange,
  TWO_WIRE_RUN_FIELDS,
  type TwoWireCircuit,
  twoWireJoints,
  type UnequalTwoWireCircuit,
} from './two-wire-input.ts';
import { type TwoWireLimit, twoWireLimits } from './two-wire-limits.ts';

/** Every limit expressed as a loop resistance, then as a length, at the lowest supply voltage. @internal */
export function maximumTwoWireRun(circuit: TwoWireCircuit | UnequalTwoWireCircuit): MaximumRun {
  const input = readInput(without(TWO_WIRE_RUN_FIELDS, ['length']) as never, circuit as never) as TwoWireCircuit;
  const { low, high } = supplyRange(input.supplyVoltage);
  const perMetre = twoWirePerMetre(legsAtMaximum(input), input.temperature);
  const joints = twoWireJoints(input);
  // A run of no length would leave a load of 0 Ω at the supply.
  requireLoad(input.load, 0);
  // Of two that no length meets, the one about the supply itself is named.
  const last: readonly Limit[] = [AMPACITY, DEVICE_RESISTANCE];
  const order = ({ limit }: TwoWireLimit): number => last.indexOf(limit);
  const found = twoWireLimits(input, low, high)
    .sort((a, b) => order(a) - order(b))
    .map(({ limit, bound, ohms, bare }) =>
      ohms === undefined || ohms === NO_LINE
        ? fixedLimit(limit, bare, bound)
        : growingLimit(limit, ohms, limit.source, (length) => perMetre * length + joints, 'pairLoop'),
    );
  return governed(found, (length) => length);
}
