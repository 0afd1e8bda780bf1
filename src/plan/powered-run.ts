/** One run to a powered device, judged: does power arrive, and is it an Ethernet channel. @module */
import { CONNECTION_RESISTANCE } from '../cable/read-cable.ts';
import { loopsOf, type RunResistance, readSegments, requireJoints } from '../cable/run-resistance.ts';
import type { OperatingPoint } from '../circuit/operating-point.ts';
import type { PoeClassNumber } from '../ethernet/class-table.ts';
import { grantedClass, wantedPower } from '../ethernet/granted-class.ts';
import type { PoeClass } from '../ethernet/poe-class.ts';
import { portAssumptions } from '../ethernet/port-fields.ts';
import { powerAtPd } from '../ethernet/power-at-pd.ts';
import type { Check, Draft } from '../limits/check.ts';
import { MARGINAL_BELOW, requireMarginalBelow } from '../limits/held.ts';
import { type Assumption, assumptionsOf, readInput } from '../quantity/fields.ts';
import { requireObject, requireOneOf } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Amperes, Metres, Ohms, Volts, Watts } from '../quantity/units.ts';
import { cablingChecks } from './cabling-limits.ts';
import { CABLING_STANDARDS } from './cabling-rules.ts';
import { deviceResistanceCheck, requireResistanceLimit } from './device-resistance.ts';
import { type Doubt, type JudgedRun, judgement } from './judged-run.ts';
import { materialCheck } from './material-check.ts';
import { POWERED_RUN_FIELDS, type PoweredFacts, type PoweredRunInput } from './powered-input.ts';

/** A run to a powered device, judged. */
export interface PoweredRun extends JudgedRun {
  readonly kind: 'powered';
  readonly governing: Check;
  /** Where the device settles, or the most that the line delivers. */
  readonly operating: OperatingPoint;
  /** Through the whole port; this and the next two are absent where the line does not carry the device. [A] */
  readonly totalCurrent?: Amperes;
  /** Through one pairset: out on one pair, back on another. [A] */
  readonly pairsetCurrent?: Amperes;
  /** Through one wire of a pair. [A] */
  readonly conductorCurrent?: Amperes;
  /** The three loops at the stated temperatures, every cable at its maximum: what the power checks use. [Ω] */
  readonly resistance: RunResistance;
  /** The same at 20 °C: what the cabling limits are about. [Ω] */
  readonly at20: RunResistance;
  /** The loop that power sees. [Ω] */
  readonly poweredLoop: Ohms;
  /** What a meter should show on one pair shorted at the far end, at the stated temperatures: usual copper, and the most allowed. [Ω] */
  readonly meterReading: { readonly nominal: Ohms; readonly maximum: Ohms };
  /** Installed cable alone, one way. [m] */
  readonly installedLength: Metres;
  /** Installed cable and cords, one way. [m] */
  readonly channelLength: Metres;
  /** The class that the port grants, lower than the device's own where the port's type is too weak. */
  readonly grantedClass: PoeClassNumber;
  /** The class granted and its limits, as applied. */
  readonly classLimits: PoeClass;
  /** The voltage at the port that was used. [V] */
  readonly pseVoltage: Volts;
  /** Most power that the printed PSE power of the class delivers over this run. [W] */
  readonly available: Watts;
  /** Most power that the class allows the device to draw, however short the run. [W] */
  readonly allowed: Watts;
  /** A stated `pseVoltage` against the window of the port's type: a finding about the port, apart from the verdict of the run. */
  readonly portVoltage?: Check;
}

/**
 * Judges one run to a powered device: power (does enough arrive) and cabling (is it a channel of the standard).
 *
 * Power is judged hot, at the stated temperatures, and fails where a conductor is not copper; the loop limits of the cabling
 * standard at 20 °C, as they are written, its lengths less where the cable is warm. Compliant cable up to 60 °C never fails
 * on power, and a run of 120 m may power its device and still be no Ethernet channel.
 *
 * @param input - Installed cable and cords (length [m], temperature [°C]), connections, class, port, device limits.
 * @returns Verdicts, all checks and the governing one, where the device settles, currents [A], resistances [Ω], lengths [m], and what was assumed.
 * @throws {@link InputError} If a key is not known, nothing is installed, a piece is not a cable, or a number is outside its domain.
 * @example A 94 m run to a class 3 help point
 * const run = checkPoweredRun({ installed: [{ cable: cable('cat6'), length: 94 }], connections: 2, poeClass: 3 });
 * [run.verdict.power, run.verdict.cabling, run.governing.name]; // => ['pass', 'fail', 'permanent-link-length']
 */
export function checkPoweredRun(input: PoweredRunInput): PoweredRun {
  const run = judgePoweredRun(readInput(POWERED_RUN_FIELDS, input));
  return { ...run, assumptions: poweredAssumptions(input, run) };
}

const NONE: readonly never[] = [];

/** Judges a run whose cables are looked up; what was assumed is left to the caller. @internal */
export function judgePoweredRun(facts: PoweredFacts): PoweredRun {
  requireObject(facts, 'input', 'an object with installed, poeClass and more');
  const { connections = 0, cabling = 'TIA-568', maximumResistance } = facts;
  const { connectionResistance = CONNECTION_RESISTANCE.default, marginalBelow = MARGINAL_BELOW } = facts;
  const installed = readSegments(facts.installed, 'installed');
  if (installed.length === 0) throw new InputError('missing', 'installed', 'at least one piece of cable', installed);
  const cords = facts.cords === undefined ? NONE : readSegments(facts.cords, 'cords');
  requireJoints(connections, connectionResistance);
  requireOneOf(cabling, CABLING_STANDARDS, 'cabling');
  requireMarginalBelow(marginalBelow);
  if (maximumResistance !== undefined) requireResistanceLimit(maximumResistance, 'maximumResistance');

  const segments = [...installed, ...cords];
  const resistance = loopsOf(segments, connections, connectionResistance, 'maximum', false);
  const nominal = loopsOf(segments, connections, connectionResistance, 'nominal', false);
  const at20 = loopsOf(segments, connections, connectionResistance, 'maximum', true);
  const linkAt20 = loopsOf(installed, connections, connectionResistance, 'maximum', true);

  const granted = grantedClass(facts.poeClass, { pseType: facts.pseType }).grantedClass;
  const power = powerAtPd({
    poeClass: granted,
    resistance,
    pseType: facts.pseType,
    pseVoltage: facts.pseVoltage,
    // A device that is granted less than it asks for still wants all of it: the class check then says how much is missing.
    pdPower: wantedPower(facts.poeClass, granted, facts.pdPower),
    pairs: facts.pairs,
    minimumVoltage: facts.minimumVoltage,
    marginalBelow,
  });
  const { limits: classLimits, operating } = power;
  const checks = power.checks.slice();
  let doubts: readonly Doubt[] = NONE;
  if (maximumResistance !== undefined) {
    const check = deviceResistanceCheck(resistance, maximumResistance, marginalBelow);
    checks.push(check);
    if (check.deciding !== undefined)
      doubts = check.deciding.map(({ parameter }) => ({ code: 'two-readings', parameter, aspect: 'power' }));
  }
  checks.push(materialCheck(segments));
  checks.push(...cablingChecks(cabling, { resistance, at20, linkAt20, installed, cords, connections, classLimits }, marginalBelow));
  const { verdict, governing, deciding } = judgement(checks, doubts, cabling !== 'none');
  // One literal, and what may be absent put in after it: pieced together by spreads it takes several times as long.
  const run: Draft<PoweredRun> = {
    kind: 'powered',
    verdict,
    checks,
    governing: governing as Check,
    operating,
    resistance,
    at20,
    poweredLoop: power.resistance,
    meterReading: { nominal: nominal.pairLoop, maximum: resistance.pairLoop },
    installedLength: linkAt20.length,
    channelLength: resistance.length,
    grantedClass: granted,
    classLimits,
    pseVoltage: power.pseVoltage,
    available: power.available,
    allowed: power.allowed,
    assumptions: NONE,
    cautions: NONE,
    doubts,
  };
  if (power.feasible) {
    run.totalCurrent = power.totalCurrent;
    run.pairsetCurrent = power.pairsetCurrent;
    run.conductorCurrent = power.conductorCurrent;
  }
  if (power.portVoltage !== undefined) run.portVoltage = power.portVoltage;
  if (deciding !== undefined) run.deciding = deciding;
  if (facts.label !== undefined) run.label = facts.label;
  return run;
}

/** What was taken for what the caller left out: by itself, or by what the class decides. @internal */
export function poweredAssumptions(input: PoweredRunInput, run: PoweredRun): Assumption[] {
  const { grantedClass: granted, classLimits } = run;
  const pdPower = wantedPower(input.poeClass, granted, undefined) ?? classLimits.pdPower;
  const ofPort = portAssumptions(input, { ...classLimits, pdPower }, ['pseType', 'pseVoltage', 'pdPower']);
  return [...assumptionsOf(POWERED_RUN_FIELDS, input), ...ofPort];
}
