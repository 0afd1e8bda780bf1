/** What one port takes out of the budget, on each of the four bases. @module */
import { constantPower } from '../../circuit/operating-point.ts';
import type { PoeClassNumber } from '../../ethernet/class-table.ts';
import { assignedClass, type PoeClass, poeClass } from '../../ethernet/poe-class.ts';
import { loopThatPowerSees } from '../../ethernet/power-at-pd.ts';
import { requireInteger, requireNonNegative, requireObject, requireOneOf, requirePositive } from '../../quantity/guards.ts';
import { InputError } from '../../quantity/input-error.ts';
import type { Ohms, Volts, Watts } from '../../quantity/units.ts';
import { requireWatts } from './nanowatts.ts';
import type { BudgetBasis, BudgetPort, PortPriority } from './switch-input.ts';

/** Defaults that a port's figure rests on. @internal */
export type PortDefault = 'type' | 'draw' | 'run' | 'measurement';

/** One port and what it wants. @internal */
export interface PortDemandAtSwitch {
  readonly port: number;
  readonly poeClass: PoeClassNumber;
  readonly grantedClass: PoeClassNumber;
  readonly priority: PortPriority;
  readonly power: Watts;
  readonly group: string | undefined;
  readonly limit: Watts | undefined;
  /** Whether the run can carry the draw at all. */
  readonly carried: boolean;
  readonly defaults: readonly PortDefault[];
  /** Whether it takes more than the class lets the port give. */
  readonly overClass: boolean;
}

/** @internal */
export function portDemand(entry: BudgetPort, basis: BudgetBasis, path: string): PortDemandAtSwitch {
  const { grantedClass, limits, priority } = checked(entry, path);
  const { port, pseType, requested, measured, group, limit } = entry;
  const defaults: PortDefault[] = [];
  let power = limits.psePower;
  let carried = true;
  if (basis === 'requested' && requested !== undefined) {
    const point = constantPower(limits.pseVoltageMin, limits.channelResistance, requested);
    // Never more than the class itself is set aside, which the standard's rounded figures would otherwise exceed.
    if (point.feasible && point.supplyPower < power) power = point.supplyPower;
    if (pseType === undefined) defaults.push('type');
  } else if (basis === 'calculated') {
    const flow = portFlow(entry, limits);
    carried = flow !== undefined;
    if (flow !== undefined) power = flow.psePower;
    if (entry.pdPower === undefined) defaults.push('draw');
    if (entry.resistance === undefined) defaults.push('run');
    if (pseType === undefined) defaults.push('type');
  } else if (basis === 'measured') {
    if (measured === undefined) defaults.push('measurement');
    else power = measured;
  }
  const overClass = power > limits.psePowerLimit;
  return { port, poeClass: entry.poeClass, grantedClass, priority, power, group, limit, carried, defaults, overClass };
}

/** What flows at one port. */
export interface PortFlow {
  /** What the port gives. [W] */
  readonly psePower: Watts;
  /** [W] */
  readonly cableHeat: Watts;
  /** What arrives at the device. [W] */
  readonly devicePower: Watts;
}

/** The flow at the device's own draw over its run; `undefined` where the line cannot carry it. @internal */
export function portFlow(
  { pdPower = Number.POSITIVE_INFINITY, resistance, pseVoltage }: BudgetPort,
  limits: PoeClass,
): PortFlow | undefined {
  // A device that is granted a lower class than it asks for must keep to it.
  const allowed = limits.pdPowerLater ?? limits.pdPower;
  const draw = pdPower === undefined ? limits.pdPower : pdPower < allowed ? pdPower : allowed;
  const point = constantPower(voltageOf(pseVoltage, limits), loopOf(resistance, limits), draw);
  return point.feasible ? { psePower: point.supplyPower, cableHeat: point.lineLoss, devicePower: draw } : undefined;
}

/** The flow that a power measured at the port means. @internal */
export function measuredFlow(measured: Watts, { resistance, pseVoltage }: BudgetPort, limits: PoeClass, path: string): PortFlow {
  const voltage = voltageOf(pseVoltage, limits);
  const current = measured / voltage;
  const cableHeat = current * current * loopOf(resistance, limits);
  if (cableHeat > measured) {
    throw new InputError(
      'conflict',
      `${path}.measured`,
      `at most the ${(voltage * voltage) / loopOf(resistance, limits)} W of a shorted run`,
      measured,
    );
  }
  return { psePower: measured, cableHeat, devicePower: measured - cableHeat };
}

/** The class that the port grants, every figure of the entry checked. @internal */
export function checked(
  entry: BudgetPort,
  path: string,
): { readonly grantedClass: PoeClassNumber; readonly limits: PoeClass; readonly priority: PortPriority } {
  requireObject(entry, path, 'an object with port and poeClass');
  const { pseType, requested, pdPower, pseVoltage, measured, limit, pairs, priority = 'low' } = entry;
  requireInteger(entry.port, 1, 1e6, `${path}.port`);
  requireInteger(entry.poeClass, 0, 8, `${path}.poeClass`);
  requireOneOf(priority, ['critical', 'high', 'low'], `${path}.priority`);
  if (pseType !== undefined) requireOneOf(pseType, [1, 2, 3, 4], `${path}.pseType`);
  if (pairs !== undefined) requireOneOf(pairs, [2, 4], `${path}.pairs`);
  if (pseVoltage !== undefined) requirePositive(pseVoltage, `${path}.pseVoltage`, 'V');
  if (measured !== undefined) requireWatts(measured, `${path}.measured`);
  if (limit !== undefined) requireWatts(limit, `${path}.limit`);
  if (entry.resistance !== undefined && typeof entry.resistance !== 'object')
    requireNonNegative(entry.resistance, `${path}.resistance`, 'Ω');
  if (pairs === 4 && pseType !== undefined && pseType < 3) {
    throw new InputError('conflict', `${path}.pairs`, `2 pairs for a Type ${pseType} port`, 4);
  }
  const byType = pseType === undefined ? entry.poeClass : assignedClass(entry.poeClass, pseType);
  // One pairset carries class 4 at most.
  const grantedClass = pairs === 2 && byType > 4 ? 4 : byType;
  const limits = poeClass(grantedClass, { pseType: pseType ?? (pairs === 4 && grantedClass < 5 ? 3 : undefined), pairs });
  if (requested !== undefined) requireDraw(requested, `${path}.requested`, limits);
  // A demoted device is capped; one that draws more than it ever asked for is a mistake.
  if (pdPower !== undefined) requireDraw(pdPower, `${path}.pdPower`, grantedClass === entry.poeClass ? limits : poeClass(entry.poeClass));
  return { grantedClass, limits, priority };
}

function requireDraw(draw: Watts, parameter: string, { pdPower, pdPowerLater = pdPower, poeClass }: PoeClass): void {
  requireNonNegative(draw, parameter, 'W');
  if (draw > pdPowerLater)
    throw new InputError('range', parameter, `at most the ${pdPowerLater} W that class ${poeClass} allows a device`, draw);
}

function voltageOf(pseVoltage: Volts | undefined, limits: PoeClass): Volts {
  return pseVoltage ?? limits.pseVoltageMin;
}

function loopOf(resistance: BudgetPort['resistance'], limits: PoeClass): Ohms {
  return resistance === undefined ? limits.channelResistance : loopThatPowerSees(resistance, limits.pairs);
}
