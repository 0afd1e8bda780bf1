/** What arrives at a powered device over Ethernet. @module */
import type { RunResistance } from '../cable/run-resistance.ts';
import { constantPower, type FeasiblePoint, type InfeasiblePoint } from '../circuit/operating-point.ts';
import type { Check, CheckName, Draft } from '../limits/check.ts';
import { COLLAPSE } from '../limits/collapse.ts';
import { held, MARGINAL_BELOW, MARGINAL_BELOW_FIELD, requireMarginalBelow } from '../limits/held.ts';
import type { Limit } from '../limits/limit.ts';
import { PD_POWER } from '../limits/pd-power.ts';
import { NO_LINE, resistanceAtPowerCollapse } from '../limits/resistance-at.ts';
import { type Verdict, worstVerdict } from '../limits/verdict.ts';
import type { Fields } from '../quantity/fields.ts';
import { hasMoreKeys, requireComputed, requireNonNegative, requireObject, requirePositive } from '../quantity/guards.ts';
import { refuseUnknown } from '../quantity/nearest.ts';
import type { Ohms, Volts, Watts } from '../quantity/units.ts';
import { CLASS_TABLE, type ClassRow, type PoeClassNumber } from './class-table.ts';
import { electricalLimits } from './electrical-limits.ts';
import { classLimits, type PoeClass, type PoeClassOptions } from './poe-class.ts';
import type { PortCurrents } from './port-currents.ts';
import * as port from './port-fields.ts';
import { portVoltageCheck } from './pse-voltage.ts';

/** A powered device at the end of a run. */
export interface PowerAtPdInput extends PoeClassOptions {
  /** Class of the device, 0 to 8. */
  readonly poeClass: PoeClassNumber;
  /** The loop that power sees [Ω], or a `runResistance` result, from which the number of pairs picks. */
  readonly resistance: Ohms | RunResistance;
  /** Voltage at the port; the lowest of its type if absent. [V] */
  readonly pseVoltage?: Volts | undefined;
  /** What the device draws; all that its class allows if absent. [W] */
  readonly pdPower?: Watts | undefined;
  /** Lowest voltage on the device's own data sheet, where it states one. [V] */
  readonly minimumVoltage?: Volts | undefined;
  /** A margin under this fraction of the limit is marginal; 0.05 if absent. */
  readonly marginalBelow?: number | undefined;
}

/** @internal */
export const POWER_AT_PD_FIELDS: Fields<PowerAtPdInput, 'marginalBelow'> = {
  poeClass: () => port.POE_CLASS_FIELD,
  resistance: { check: (resistance, path) => void loopThatPowerSees(resistance, 2, path) },
  pseType: () => port.PSE_TYPE_FIELD,
  pseVoltage: () => port.PSE_VOLTAGE_FIELD,
  pdPower: () => port.PD_POWER_FIELD,
  pairs: () => port.PAIRS_FIELD,
  minimumVoltage: { positive: 'V', optional: true },
  marginalBelow: () => MARGINAL_BELOW_FIELD,
};

interface PowerAtPdCommon {
  /** Most power that the class's printed PSE power delivers over this run. [W] */
  readonly available: Watts;
  /** Most power that the class allows the device to draw, however short the run. [W] */
  readonly allowed: Watts;
  /** The class and its limits, as applied. */
  readonly limits: PoeClass;
  /** The voltage at the port that was used. [V] */
  readonly pseVoltage: Volts;
  /** The loop that power sees. [Ω] */
  readonly resistance: Ohms;
  readonly checks: readonly Check[];
  /** A stated `pseVoltage` against the window of the port's type: a finding about the port, apart from the verdict of the run. */
  readonly portVoltage?: Check;
  /** The worst verdict of the checks. */
  readonly verdict: Verdict;
}

/** What arrives at the device, or the plain no. */
export type PowerAtPd =
  | (PowerAtPdCommon & PortCurrents & { readonly feasible: true; readonly operating: FeasiblePoint })
  | (PowerAtPdCommon & { readonly feasible: false; readonly operating: InfeasiblePoint });

/**
 * Power, voltage and currents at a powered device, and every electrical limit of its class held against them.
 *
 * DC, steady state, equal conductors, constant-power device. On a short run more power is *available* than the class
 * *allows*; the device may draw what is allowed. A device of class 0 or 3 that states exactly 13.0 W is held against
 * the later editions' figures, any other against 12.95 W.
 *
 * @param input - Class, resistance of the loop that power sees [Ω] or a run, port type, voltage at the port [V],
 *   power drawn [W], powered pairs, the device's own minimum voltage [V].
 * @returns Available and allowed power [W], the operating point, currents in total, per pairset and per conductor
 *   [A], and the checks. Where the line cannot carry the load: `feasible: false` and the most it can deliver.
 * @throws {@link InputError} If the class, type or number of pairs do not go together, or a number is outside its domain.
 * @example A class 4 camera behind 90 m of Category 5e
 * const run = runResistance({ segments: [{ cable: cable('cat5e'), length: 90 }] });
 * const camera = powerAtPd({ poeClass: 4, resistance: run });
 * [camera.available.toFixed(2), camera.allowed, camera.verdict]; // => ['26.96', 25.5, 'pass']
 */
export function powerAtPd(input: PowerAtPdInput): PowerAtPd {
  requireObject(input, 'input', 'an object with poeClass and resistance');
  const { minimumVoltage, marginalBelow = MARGINAL_BELOW, pseType, pairs } = input;
  if (
    hasMoreKeys(
      input,
      input.poeClass,
      input.resistance,
      pseType,
      input.pseVoltage,
      input.pdPower,
      pairs,
      minimumVoltage,
      input.marginalBelow,
    )
  ) {
    refuseUnknown(input, Object.keys(POWER_AT_PD_FIELDS), '');
  }
  const limits = appliedLimits(input);
  const { pseVoltage = limits.pseVoltageMin, pdPower: drawn = limits.pdPower } = input;
  requirePositive(pseVoltage, 'pseVoltage', 'V');
  requireNonNegative(drawn, 'pdPower', 'W');
  const pdPower = drawn + 0; // no -0
  if (minimumVoltage !== undefined) requirePositive(minimumVoltage, 'minimumVoltage', 'V');
  if (input.marginalBelow !== undefined) requireMarginalBelow(marginalBelow);
  const resistance = loopThatPowerSees(input.resistance, limits.pairs);

  const operating = constantPower(pseVoltage, resistance, pdPower);
  const { pdPower: allowed, psePower } = limits;
  const load = { power: pdPower };
  const checks: Check[] = [held(PD_POWER, pdPower, allowed, 0)];
  if (resistance > 0) {
    const most = operating.feasible ? (pseVoltage * pseVoltage) / (4 * resistance) : operating.maximumLoadPower;
    checks.push(judged(COLLAPSE, pdPower, most, resistanceAtPowerCollapse(pseVoltage, pdPower), operating.feasible));
  }
  // Below its type's window the other checks tell what follows; above 57 V nothing else would.
  const portVoltage = input.pseVoltage === undefined ? undefined : portVoltageCheck({ low: pseVoltage, high: pseVoltage }, limits.type);
  if (portVoltage !== undefined && pseVoltage > limits.pseVoltageMax) checks.push(portVoltage);
  const available = availablePower(pseVoltage, resistance, psePower);
  if (!operating.feasible) {
    const no: Draft<PowerAtPd> = {
      available,
      allowed,
      limits,
      pseVoltage,
      resistance,
      checks,
      feasible: false,
      operating,
      verdict: 'fail',
    };
    if (portVoltage !== undefined) no.portVoltage = portVoltage;
    return no;
  }

  const { current, loadVoltage, supplyPower } = operating;
  for (const { limit, bound, printed } of electricalLimits(limits, minimumVoltage)) {
    const value = limit.unit === 'W' ? supplyPower : loadVoltage;
    const check = judged(limit, value, bound, limit.asResistance?.(pseVoltage, load, bound));
    if (bound !== printed) check.published = printed;
    checks.push(check);
  }

  const verdict = worstVerdict(checks);
  const pairsetCurrent = current / (limits.pairs / 2);
  // One literal, and what may be absent put in after it: pieced together by spreads it takes several times as long.
  const yes: Draft<PowerAtPd> = {
    available,
    allowed,
    limits,
    pseVoltage,
    resistance,
    checks,
    feasible: true,
    operating,
    totalCurrent: current,
    pairsetCurrent,
    conductorCurrent: pairsetCurrent / 2,
    verdict,
  };
  if (portVoltage !== undefined) yes.portVoltage = portVoltage;
  return yes;

  /** A check that was settled in ohms: the most of them at which it is met is beside it. */
  function judged(
    limit: Limit<CheckName>,
    value: number,
    bound: number,
    most: Ohms | undefined,
    isMet: boolean = most === undefined || resistance <= most,
  ): Draft<Check> {
    const check = held(limit, value, bound, marginalBelow, isMet);
    if (most !== undefined && most !== NO_LINE) check.loop = { limit: most, margin: most - resistance };
    return check;
  }
}

/** The class limits; those of the later editions where the device states just their power. @internal */
export function appliedLimits(input: Pick<PowerAtPdInput, 'poeClass' | 'pseType' | 'pairs' | 'pdPower'>): PoeClass {
  const limits = classLimits(input.poeClass, input);
  if (limits.pdPowerLater === undefined || input.pdPower !== limits.pdPowerLater) return limits;
  const row = CLASS_TABLE[input.poeClass] as ClassRow;
  const weakest = limits.type === row.type;
  return {
    ...limits,
    pdPower: limits.pdPowerLater,
    psePowerLimit: (weakest && row.psePowerLimitLater) || limits.psePowerLimit,
    pdVoltageLimit: (weakest && row.pdVoltageLimitLater) || limits.pdVoltageLimit,
  };
}

/** The loop itself, or of a run the one that so many pairs make. [Ω] @internal */
export function loopThatPowerSees(resistance: Ohms | RunResistance, pairs: 2 | 4, parameter: string = 'resistance'): Ohms {
  if (typeof resistance === 'object' && resistance !== null) {
    const loop = pairs === 4 ? 'fourPair' : 'twoPair';
    requireComputed(resistance[loop], `${parameter}.${loop}`, 'Ω');
    return resistance[loop];
  }
  requireNonNegative(resistance, parameter, 'Ω');
  return resistance + 0;
}

/** Most power that `psePower` delivers: less its own loss, until the line itself can deliver no more. */
function availablePower(V: Volts, R: Ohms, psePower: Watts): Watts {
  if (2 * psePower * R > V * V) return (V * V) / (4 * R);
  const current = psePower / V;
  return psePower - current * current * R;
}
