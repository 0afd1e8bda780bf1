/** What one port takes out of the budget, on each of the four bases. @module */
import { constantPower } from '../../circuit/operating-point.ts';
import type { PoeClassNumber } from '../../ethernet/class-table.ts';
import { grantedClass } from '../../ethernet/granted-class.ts';
import { lldpClassLimit } from '../../ethernet/lldp.ts';
import { classLimits, mostDraw, type PoeClass } from '../../ethernet/poe-class.ts';
import { PSE_TYPES } from '../../ethernet/port-table.ts';
import { appliedLimits, loopThatPowerSees } from '../../ethernet/power-at-pd.ts';
import { requireInteger, requireNonNegative, requireObject, requireOneOf, requirePositive } from '../../quantity/guards.ts';
import { InputError } from '../../quantity/input-error.ts';
import { refuseUnknown } from '../../quantity/nearest.ts';
import type { Ohms, Volts, Watts } from '../../quantity/units.ts';
import { requireWatts, wholeNanowatts } from './nanowatts.ts';
import { BUDGET_PORT_FIELDS, type BudgetBasis, type BudgetPort, type PortPriority, PRIORITIES } from './switch-input.ts';

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
  /** Whether its own limit leaves room for a class, and for what it takes. */
  readonly withinLimit: boolean;
  /** Whether the run can carry the draw at all. */
  readonly carried: boolean;
  readonly defaults: readonly PortDefault[];
  /** Whether it takes more than the class lets the port give. */
  readonly overClass: boolean;
  /** Whether the device wants more than the class granted allows it, and is taken at that. */
  readonly capped: boolean;
}

/** @internal */
export function portDemand(entry: BudgetPort, basis: BudgetBasis, path: string, portLimit: Watts | undefined): PortDemandAtSwitch {
  const { grantedClass, anyClass, limits, priority } = checked(entry, path, portLimit);
  const { port, pseType, requested, pdPower, measured, group, limit = portLimit } = entry;
  const defaults: PortDefault[] = [];
  let power = limits.psePower;
  let psePowerLimit = limits.psePowerLimit;
  let carried = true;
  let capped = false;
  if (basis === 'requested' && requested !== undefined) {
    const point = constantPower(limits.pseVoltageMin, limits.channelResistance, drawOf(entry, basis, limits));
    // Never more than the class itself is set aside, which the standard's rounded figures would otherwise exceed.
    if (point.feasible && point.supplyPower < power) power = point.supplyPower;
    // LLDP rounds the limit of the class up: a request for just that limit loses nothing.
    capped = requested > lldpClassLimit(grantedClass) / 10;
    if (pseType === undefined) defaults.push('type');
  } else if (basis === 'calculated') {
    const draw = drawOf(entry, basis, limits);
    const flow = portFlow(draw, entry, limits);
    carried = flow !== undefined;
    psePowerLimit = psePowerLimitOf(draw, limits);
    // Over the printed power by the rounding of the standard alone, it is the printed power that is set aside.
    if (flow !== undefined && (flow.psePower < power || flow.psePower > psePowerLimit)) power = flow.psePower;
    capped = pdPower !== undefined && draw < pdPower;
    if (pdPower === undefined) defaults.push('draw');
    if (entry.resistance === undefined) defaults.push('run');
    if (pseType === undefined) defaults.push('type');
  } else if (basis === 'measured') {
    if (measured === undefined) defaults.push('measurement');
    else power = measured;
  }
  const fits = limit === undefined || wholeNanowatts(power, 'up') <= wholeNanowatts(limit, 'down');
  // What was measured has been powered, whatever class the limit leaves room for.
  const withinLimit = fits && (anyClass || (basis === 'measured' && measured !== undefined));
  const overClass = power > psePowerLimit;
  return { port, poeClass: entry.poeClass, grantedClass, priority, power, group, withinLimit, carried, defaults, overClass, capped };
}

/** What the device draws: as stated, or by its request, and never more than its class allows, or all that it allows. [W] @internal */
export function drawOf({ pdPower, requested }: BudgetPort, basis: BudgetBasis, limits: PoeClass): Watts {
  const stated = basis === 'requested' ? (requested ?? pdPower) : pdPower;
  if (stated === undefined) return limits.pdPower;
  // A device that is granted a lower class than it asks for must keep to it.
  const allowed = mostDraw(limits);
  return stated < allowed ? stated : allowed;
}

/** The power limit that the port applies for this draw: classes 0 and 3 have two. [W] @internal */
export function psePowerLimitOf(draw: Watts, { poeClass: number, type, pairs }: PoeClass): Watts {
  return appliedLimits({ poeClass: number, pseType: type, pairs, pdPower: draw }).psePowerLimit;
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

/** The flow at a draw over the run of the port; `undefined` where the line cannot carry it. @internal */
export function portFlow(draw: Watts, { resistance, pseVoltage }: BudgetPort, limits: PoeClass): PortFlow | undefined {
  const point = constantPower(voltageOf(pseVoltage, limits), loopOf(resistance, limits), draw);
  return point.feasible ? { psePower: point.supplyPower, cableHeat: point.lineLoss, devicePower: draw } : undefined;
}

/** The flow that a power given by the port means: one that was measured, or all that is set aside. @internal */
export function givenFlow(measured: Watts, { resistance, pseVoltage }: BudgetPort, limits: PoeClass, path: string): PortFlow {
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
  portLimit: Watts | undefined,
): {
  readonly grantedClass: PoeClassNumber;
  /** Whether the limit of the port leaves room for any class; if not, the class is what the port would grant without it. */
  readonly anyClass: boolean;
  readonly limits: PoeClass;
  readonly priority: PortPriority;
} {
  requireObject(entry, path, 'an object with port and poeClass');
  for (const key in entry) if (!Object.hasOwn(BUDGET_PORT_FIELDS, key)) refuseUnknown(entry, Object.keys(BUDGET_PORT_FIELDS), path);
  const { pseType, requested, pdPower, pseVoltage, measured, limit, pairs, priority = 'low' } = entry;
  requireInteger(entry.port, 1, 1e6, `${path}.port`);
  requireInteger(entry.poeClass, 0, 8, `${path}.poeClass`);
  requireOneOf(priority, PRIORITIES, `${path}.priority`);
  if (pseType !== undefined) requireOneOf(pseType, PSE_TYPES, `${path}.pseType`);
  if (pairs !== undefined) requireOneOf(pairs, [2, 4], `${path}.pairs`);
  if (pseVoltage !== undefined) requirePositive(pseVoltage, `${path}.pseVoltage`, 'V');
  if (measured !== undefined) requireWatts(measured, `${path}.measured`);
  if (limit !== undefined) requireWatts(limit, `${path}.limit`);
  if (pairs === 4 && pseType !== undefined && pseType < 3) {
    throw new InputError('conflict', `${path}.pairs`, `2 pairs for a Type ${pseType} port`, 4);
  }
  const { grantedClass: number, anyClass } = grantedClass(entry.poeClass, { pseType, pairs, limit: limit ?? portLimit });
  const limits = classLimits(number, { pseType: pseType ?? (pairs === 4 && number < 5 ? 3 : undefined), pairs });
  if (entry.resistance !== undefined) loopThatPowerSees(entry.resistance, limits.pairs, `${path}.resistance`);
  // A demoted device is capped; one that wants more than it ever asked for is a mistake.
  if (requested !== undefined || pdPower !== undefined) {
    const own = number === entry.poeClass ? limits : classLimits(entry.poeClass, {});
    if (requested !== undefined) requireDraw(requested, `${path}.requested`, lldpClassLimit(entry.poeClass) / 10, entry.poeClass);
    if (pdPower !== undefined) requireDraw(pdPower, `${path}.pdPower`, mostDraw(own), entry.poeClass);
  }
  // Key by key: spread, this takes longer than all the rest.
  return { grantedClass: number, anyClass, limits, priority };
}

function requireDraw(draw: Watts, parameter: string, most: Watts, number: PoeClassNumber): void {
  requireNonNegative(draw, parameter, 'W');
  if (draw > most) throw new InputError('range', parameter, `at most the ${most} W that class ${number} allows a device`, draw);
}

function voltageOf(pseVoltage: Volts | undefined, limits: PoeClass): Volts {
  return pseVoltage ?? limits.pseVoltageMin;
}

function loopOf(resistance: BudgetPort['resistance'], limits: PoeClass): Ohms {
  return resistance === undefined ? limits.channelResistance : loopThatPowerSees(resistance, limits.pairs);
}
