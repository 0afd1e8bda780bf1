/** One run to a powered device, judged: does power arrive, and is it an Ethernet channel. @module */
import { loopsOf, type RunResistance, requireSegments, runResistance, type Segment } from '../cable/run-resistance.ts';
import type { PoeClassNumber } from '../ethernet/class-table.ts';
import { assignedClass, poeClass } from '../ethernet/poe-class.ts';
import { type PowerAtPd, type PowerAtPdInput, powerAtPd } from '../ethernet/power-at-pd.ts';
import type { Check } from '../limits/check.ts';
import { MARGINAL_BELOW, requireMarginalBelow } from '../limits/held.ts';
import { type Verdict, worstVerdict } from '../limits/verdict.ts';
import { requireObject, requireOneOf } from '../quantity/guards.ts';
import type { Metres, Ohms } from '../quantity/units.ts';
import { cablingChecks } from './cabling-checks.ts';
import type { CablingStandard } from './cabling-rules.ts';
import { deviceResistanceCheck, type ResistanceLimit, requireResistanceLimit } from './device-resistance.ts';
import { governingCheck } from './governing-check.ts';
import { materialCheck } from './material-check.ts';

/** A run from a switch port to a powered device. */
export interface PoweredRunInput extends Omit<PowerAtPdInput, 'resistance'> {
  /** Cable installed for good: the permanent link. */
  readonly installed: readonly Segment[];
  /** Cords at its ends; none if absent. */
  readonly cords?: readonly Segment[] | undefined;
  /** Mated plugs and jacks along the run; an in-line coupler is two. 0 if absent. */
  readonly connections?: number | undefined;
  /** Input to output of one connection, per conductor; 0.2 if absent. [Ω] */
  readonly connectionResistance?: Ohms | undefined;
  /** Line-resistance limit on the device's data sheet. */
  readonly maximumResistance?: ResistanceLimit | undefined;
  /** Whose cabling rules apply; `TIA-568` if absent. */
  readonly cabling?: CablingStandard | undefined;
}

/** A run, judged. */
export interface PoweredRun {
  /** The three loops at the stated temperatures, every cable at its maximum: what the power checks use. [Ω] */
  readonly resistance: RunResistance;
  /** The same at 20 °C: what the cabling limits are about. [Ω] */
  readonly at20: RunResistance;
  /** What a meter should show on one pair shorted at the far end, at the stated temperatures: usual copper, and the most allowed. [Ω] */
  readonly meterReading: { readonly nominal: Ohms; readonly maximum: Ohms };
  /** Installed cable alone, one way. [m] */
  readonly installedLength: Metres;
  /** Installed cable and cords, one way. [m] */
  readonly channelLength: Metres;
  /** The class that the port grants, lower than the device's own where the port's type is too weak. */
  readonly grantedClass: PoeClassNumber;
  readonly power: PowerAtPd;
  readonly powerChecks: readonly Check[];
  readonly cablingChecks: readonly Check[];
  readonly verdict: { readonly power: Verdict; readonly cabling: Verdict };
  /** The check that is closest to its limit, or furthest beyond it. */
  readonly governing: Check;
}

/**
 * Judges one run to a powered device: power (does enough arrive) and cabling (is it a channel of the standard).
 *
 * Power is judged hot, at the stated temperatures, and fails where a conductor is not copper; the loop limits of the cabling
 * standard at 20 °C, as they are written, its lengths less where the cable is warm. Compliant cable up to 60 °C never fails
 * on power, and a run of 120 m may power its device and still be no Ethernet channel.
 *
 * @param input - Installed cable and cords (length [m], temperature [°C]), connections, class, port, device limits.
 * @returns Resistances [Ω], lengths [m], the power at the device, all checks, two verdicts and the governing check.
 * @throws {@link InputError} If a piece is not a cable, or a number is outside its domain.
 * @example A 94 m run to a class 3 help point
 * const run = checkPoweredRun({ installed: [{ cable: cable('cat6'), length: 94 }], connections: 2, poeClass: 3 });
 * [run.verdict.power, run.verdict.cabling, run.governing.name]; // => ['pass', 'fail', 'permanent-link-length']
 */
export function checkPoweredRun(input: PoweredRunInput): PoweredRun {
  requireObject(input, 'input', 'an object with installed, poeClass and more');
  const { installed, cords = [], connections = 0, connectionResistance, cabling = 'TIA-568', maximumResistance } = input;
  const { marginalBelow = MARGINAL_BELOW } = input;
  requireSegments(installed, 'installed');
  requireSegments(cords, 'cords');
  requireOneOf(cabling, ['TIA-568', 'ISO/IEC 11801', 'none'], 'cabling');
  requireMarginalBelow(marginalBelow);
  if (maximumResistance !== undefined) requireResistanceLimit(maximumResistance, 'maximumResistance');

  const segments = [...installed, ...cords];
  const resistance = runResistance({ segments, connections, connectionResistance });
  const nominal = runResistance({ segments, connections, connectionResistance, basis: 'nominal' });
  // Every piece has passed its guards: from here on only the sums are needed.
  const at20 = loopsOf(segments, connections, connectionResistance ?? 0.2, 'maximum', true);
  const linkAt20 = loopsOf(installed, connections, connectionResistance ?? 0.2, 'maximum', true);
  const installedLength = linkAt20.length;

  const grantedClass = input.pseType === undefined ? input.poeClass : assignedClass(input.poeClass, input.pseType);
  const power = powerAtPd({
    poeClass: grantedClass,
    resistance,
    pseType: input.pseType,
    pseVoltage: input.pseVoltage,
    // A device that is granted less than it asks for still wants all of it: the class check then says how much is missing.
    pdPower: input.pdPower ?? (grantedClass === input.poeClass ? undefined : poeClass(input.poeClass).pdPower),
    pairs: input.pairs,
    minimumVoltage: input.minimumVoltage,
    marginalBelow,
  });
  const powerChecks = power.checks.slice();
  if (maximumResistance !== undefined) powerChecks.push(deviceResistanceCheck(resistance, maximumResistance, marginalBelow));
  powerChecks.push(materialCheck(segments));
  const channelLength = resistance.length;
  const channel = { resistance, at20, linkAt20, installed, cords, installedLength, channelLength, connections, limits: power.limits };
  const standardChecks = cablingChecks(cabling, channel, marginalBelow);
  return {
    resistance,
    at20,
    meterReading: { nominal: nominal.pairLoop, maximum: resistance.pairLoop },
    installedLength,
    channelLength,
    grantedClass,
    power,
    powerChecks,
    cablingChecks: standardChecks,
    verdict: { power: worstVerdict(powerChecks), cabling: worstVerdict(standardChecks) },
    governing: governingCheck(powerChecks, standardChecks),
  };
}
