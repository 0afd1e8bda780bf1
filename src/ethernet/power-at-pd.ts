/** What arrives at a powered device over Ethernet. @module */
import type { RunResistance } from '../cable/run-resistance.ts';
import { constantPower, type FeasiblePoint, type InfeasiblePoint } from '../circuit/operating-point.ts';
import type { Check, Draft } from '../limits/check.ts';
import { COLLAPSE } from '../limits/collapse.ts';
import { DEVICE_VOLTAGE } from '../limits/device-voltage.ts';
import { held, heldInOhms, MARGINAL_BELOW, MARGINAL_BELOW_FIELD, requireMarginalBelow } from '../limits/held.ts';
import { PD_POWER } from '../limits/pd-power.ts';
import { PD_VOLTAGE } from '../limits/pd-voltage.ts';
import { PSE_POWER } from '../limits/pse-power.ts';
import { resistanceAtLoadVoltage, resistanceAtPowerCollapse, resistanceAtSupplyPower } from '../limits/resistance-at.ts';
import { type Verdict, worstVerdict } from '../limits/verdict.ts';
import type { Fields } from '../quantity/fields.ts';
import { requireComputed, requireNonNegative, requireObject, requirePositive } from '../quantity/guards.ts';
import { refuseUnknown } from '../quantity/nearest.ts';
import type { Ohms, Volts, Watts } from '../quantity/units.ts';
import { CLASS_TABLE, type ClassRow, type PoeClassNumber } from './class-table.ts';
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

/** What arrives at the device; infeasible: the most that the line delivers. */
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
  let unread = 2 + +(pseType !== undefined) + +(input.pseVoltage !== undefined) + +(input.pdPower !== undefined) + +(pairs !== undefined);
  unread += +(minimumVoltage !== undefined) + +(input.marginalBelow !== undefined);
  // Counted by hand: as arguments of a guard they would cost a tenth of the whole.
  for (const key in input) if (input[key as keyof PowerAtPdInput] !== undefined) unread -= 1;
  if (unread < 0) refuseUnknown(input, Object.keys(POWER_AT_PD_FIELDS), '');
  const limits = appliedLimits(input);
  const { pseVoltage = limits.pseVoltageMin, pdPower: drawn = limits.pdPower } = input;
  requirePositive(pseVoltage, 'pseVoltage', 'V');
  requireNonNegative(drawn, 'pdPower', 'W');
  const pdPower = drawn + 0; // no -0
  if (minimumVoltage !== undefined) requirePositive(minimumVoltage, 'minimumVoltage', 'V');
  if (input.marginalBelow !== undefined) requireMarginalBelow(marginalBelow);
  const resistance = loopThatPowerSees(input.resistance, limits.pairs);

  const operating = constantPower(pseVoltage, resistance, pdPower);
  const { pdPower: allowed, psePower, psePowerLimit, pdVoltageLimit } = limits;
  const checks: Check[] = [held(PD_POWER, pdPower, allowed, 0)];
  if (resistance > 0) {
    const most = operating.feasible ? (pseVoltage * pseVoltage) / (4 * resistance) : operating.maximumLoadPower;
    const ohms = resistanceAtPowerCollapse(pseVoltage, pdPower);
    checks.push(heldInOhms(COLLAPSE, pdPower, most, marginalBelow, ohms, resistance, operating.feasible));
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
  const atPort = resistanceAtSupplyPower(pseVoltage, pdPower, psePowerLimit);
  const pse = heldInOhms(PSE_POWER, supplyPower, psePowerLimit, marginalBelow, atPort, resistance);
  if (psePowerLimit !== psePower) pse.published = psePower;
  const ofClass = resistanceAtLoadVoltage(pseVoltage, pdPower, pdVoltageLimit);
  const voltage = heldInOhms(PD_VOLTAGE, loadVoltage, pdVoltageLimit, marginalBelow, ofClass, resistance);
  if (pdVoltageLimit !== limits.pdVoltageMin) voltage.published = limits.pdVoltageMin;
  checks.push(pse, voltage);
  if (minimumVoltage !== undefined) {
    const ofDevice = resistanceAtLoadVoltage(pseVoltage, pdPower, minimumVoltage);
    checks.push(heldInOhms(DEVICE_VOLTAGE, loadVoltage, minimumVoltage, marginalBelow, ofDevice, resistance));
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
