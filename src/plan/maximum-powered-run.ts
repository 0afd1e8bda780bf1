/** The longest run to a powered device. @module */
import type { Cable } from '../cable/cable.ts';
import { CABLE, type CableOrName } from '../cable/read-cable.ts';
import { type Loop, loopsOf, type RunResistance, type Segment } from '../cable/run-resistance.ts';
import { CONDUCTOR_TEMPERATURE } from '../conductor/resistance-per-metre.ts';
import { grantedClass, wantedPower } from '../ethernet/granted-class.ts';
import { appliedLimits } from '../ethernet/power-at-pd.ts';
import { COLLAPSE, DEVICE_RESISTANCE, DEVICE_VOLTAGE, MATERIAL, PD_POWER, PD_VOLTAGE, PSE_POWER, PSE_VOLTAGE_TOP } from '../limits/all.ts';
import type { CheckName } from '../limits/check.ts';
import type { Limit } from '../limits/limit.ts';
import { NO_LINE } from '../limits/resistance-at.ts';
import { readInput } from '../quantity/fields.ts';
import type { Celsius, Metres } from '../quantity/units.ts';
import { CABLING_LIMITS, type Channel, seenLoop } from './cabling-limits.ts';
import { CABLING_RULES } from './cabling-rules.ts';
import { judgedLoop } from './device-resistance.ts';
import { copperFraction } from './material-check.ts';
import { without } from './open-run.ts';
import { POWERED_RUN_FIELDS, type PoweredCircuit, type PoweredFacts, type PoweredRead } from './powered-input.ts';
import { fixedLimit, governed, growingLimit, longestAt, type MaximumRun, type RunLimit } from './run-limit.ts';

/** A run to a powered device whose length is asked for. */
export interface MaximumPoweredRunInput extends PoweredCircuit {
  /** The cable whose length is asked for, or its name. */
  readonly cable: CableOrName;
  /** Temperature of that cable; 20 if absent. [°C] */
  readonly temperature?: Celsius | undefined;
}

/** The same with its cables looked up. @internal */
export interface MaximumPoweredFacts extends Omit<PoweredFacts, 'installed'> {
  readonly cable: Cable;
  readonly temperature?: Celsius | undefined;
}

const OWN_FIELDS = (): object => ({ cable: CABLE, temperature: CONDUCTOR_TEMPERATURE });

/** Every limit expressed as a length, and the shortest of them. @internal */
export function maximumPoweredRun(input: MaximumPoweredRunInput): MaximumRun {
  const fields = { ...without(POWERED_RUN_FIELDS, ['installed']), ...OWN_FIELDS() };
  const facts = readInput(fields as never, input as never) as PoweredRead & { cable: Cable; temperature: Celsius };
  const { cable, temperature, cords, connections, connectionResistance, cabling, maximumResistance, minimumVoltage } = facts;
  const granted = grantedClass(facts.poeClass, { pseType: facts.pseType }).grantedClass;
  const wanted = wantedPower(facts.poeClass, granted, facts.pdPower);
  const classLimits = appliedLimits({ ...facts, poeClass: granted, pdPower: wanted });
  const { pseVoltage = classLimits.pseVoltageMin } = facts;
  const pdPower = wanted ?? classLimits.pdPower;
  const seen = seenLoop(classLimits);
  const ohmsAt = (loop: Loop) => (length: Metres) => channelAt(length).resistance[loop];
  const bare = channelAt(0);

  const found: RunLimit[] = [
    fixedLimit(PD_POWER, pdPower, classLimits.pdPower),
    fixedLimit(MATERIAL, copperFraction([...bare.installed, ...cords]), 1),
  ];
  if (pseVoltage > classLimits.pseVoltageMax) found.push(fixedLimit(PSE_VOLTAGE_TOP, pseVoltage, classLimits.pseVoltageMax));
  const electrical: [Limit<CheckName>, number | undefined][] = [
    [COLLAPSE, 0],
    [PSE_POWER, classLimits.psePowerLimit],
    [PD_VOLTAGE, classLimits.pdVoltageLimit],
    [DEVICE_VOLTAGE, minimumVoltage],
  ];
  for (const [limit, bound] of electrical) {
    if (bound === undefined) continue;
    const ohms = limit.asResistance?.(pseVoltage, { power: pdPower }, bound);
    // At the port itself: what the device draws, at the voltage of the port.
    if (ohms === NO_LINE) found.push(fixedLimit(limit, limit.unit === 'W' ? pdPower : pseVoltage, bound));
    else found.push(growingLimit(limit, ohms, limit.source, ohmsAt(seen), seen));
  }
  if (maximumResistance !== undefined) {
    const { ohms, loop } = maximumResistance;
    const judged = judgedLoop(maximumResistance);
    const strict = growingLimit(DEVICE_RESISTANCE, ohms, DEVICE_RESISTANCE.source, ohmsAt(judged), judged);
    const asTwoPair = loop === 'unstated' && strict.length !== undefined ? longestAt(ohms, ohmsAt('twoPair')) : undefined;
    found.push(asTwoPair === undefined ? strict : { ...strict, lengthAsTwoPair: asTwoPair });
  }
  if (cabling !== 'none') {
    const rules = CABLING_RULES[cabling];
    for (const { limit, measure, grows, loop } of CABLING_LIMITS) {
      const none = measure(bare, rules);
      if (none === undefined) continue;
      const { value, limit: bound, source } = none;
      const valueAt = (length: Metres): number => measure(channelAt(length), rules)?.value ?? value;
      found.push(grows ? growingLimit(limit, bound, source, valueAt, loop?.(classLimits)) : fixedLimit(limit, value, bound, source));
    }
  }
  return governed(found, (length) => channelAt(length).resistance.length);

  /** The channel with so much installed cable; its sums are made where they are looked at. */
  function channelAt(length: Metres): Channel {
    const installed: Segment[] = [{ cable, length, temperature }];
    const loops = (pieces: readonly Segment[], cooled: boolean): RunResistance =>
      loopsOf(pieces, connections, connectionResistance, 'maximum', cooled);
    return {
      installed,
      cords,
      connections,
      classLimits,
      get resistance() {
        return loops([...installed, ...cords], false);
      },
      get at20() {
        return loops([...installed, ...cords], true);
      },
      get linkAt20() {
        return loops(installed, true);
      },
    };
  }
}
