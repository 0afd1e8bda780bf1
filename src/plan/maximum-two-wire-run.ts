/** The longest two-wire DC run. @module */

import { requireLoad } from '../circuit/operating-point.ts';
import { twoWirePerMetre } from '../circuit/voltage-drop.ts';
import { AMPACITY } from '../limits/ampacity.ts';
import type { CheckName } from '../limits/check.ts';
import { COLLAPSE } from '../limits/collapse.ts';
import { DEVICE_OVERVOLTAGE } from '../limits/device-overvoltage.ts';
import { DEVICE_RESISTANCE } from '../limits/device-resistance.ts';
import { NO_LINE, resistanceAtCollapse } from '../limits/resistance-at.ts';
import type { Ohms } from '../quantity/units.ts';
import type { SourceKey } from '../sources/sources.ts';
import { longestPassing } from './longest.ts';
import { governed, type MaximumRun, type RunLimit } from './run-limit.ts';
import {
  legsAtMaximum,
  mostCurrent,
  requireTwoWire,
  supplyRange,
  type TwoWireCircuit,
  twoWireJoints,
  type UnequalTwoWireCircuit,
  voltageBounds,
} from './two-wire-run.ts';

/** Every limit expressed as a loop resistance, then as a length, at the lowest supply voltage. @internal */
export function maximumTwoWireRun(input: TwoWireCircuit | UnequalTwoWireCircuit): MaximumRun {
  requireTwoWire(input);
  const { temperature, load, minimumVoltage, maximumVoltage, permittedDrop, maximumResistance, ampacity } = input;
  const { low, high } = supplyRange(input.supplyVoltage);
  const perMetre = twoWirePerMetre(legsAtMaximum(input), temperature);
  const joints = twoWireJoints(input);
  // A run of no length would leave a load of 0 Ω at the supply.
  requireLoad(load, 0);

  const found: RunLimit[] = [];
  add(COLLAPSE.name, resistanceAtCollapse(low, load), COLLAPSE.source);
  for (const {
    limit: { name },
    bound,
    loop,
  } of voltageBounds(low, high, load, minimumVoltage, permittedDrop)) {
    if (loop === NO_LINE) found.push({ limit: name, shortfall: bound - low, unit: 'V', source: 'data-sheet' });
    else add(name, loop, 'data-sheet');
  }
  if (maximumVoltage !== undefined) {
    const excess = high - maximumVoltage;
    found.push({ limit: DEVICE_OVERVOLTAGE.name, source: 'data-sheet', ...(excess > 0 ? { shortfall: excess, unit: 'V' } : {}) });
  }
  if (ampacity !== undefined) {
    const loop = AMPACITY.asResistance?.(low, load, ampacity);
    if (loop !== undefined && loop !== NO_LINE) add(AMPACITY.name, loop, 'data-sheet');
    else {
      const excess = (load.power === undefined ? mostCurrent(high, load) : load.power / low) - ampacity;
      found.push({ limit: AMPACITY.name, source: 'data-sheet', ...(excess > 0 ? { shortfall: excess, unit: 'A' } : {}) });
    }
  }
  if (maximumResistance !== undefined) add(DEVICE_RESISTANCE.name, maximumResistance, 'data-sheet');
  return governed(found, (length) => length);

  function add(limit: CheckName, ohms: Ohms | undefined, source: SourceKey): void {
    if (ohms === undefined) {
      found.push({ limit, source });
      return;
    }
    const guess = (ohms - joints) / perMetre;
    const length = longestPassing(guess, (candidate) => perMetre * candidate + joints <= ohms);
    const shared = { limit, resistance: ohms, loop: 'pairLoop' as const, source };
    found.push(length === undefined ? { ...shared, shortfall: joints - ohms, unit: 'Ω' } : { ...shared, length });
  }
}
