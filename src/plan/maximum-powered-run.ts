/** The longest run to a powered device. @module */
import type { Cable } from '../cable/cable.ts';
import {
  cableResistancePerMetre,
  type Loop,
  loopsOf,
  type RunResistance,
  requireJoints,
  requireSegments,
  type Segment,
} from '../cable/run-resistance.ts';
import { assignedClass, poeClass } from '../ethernet/poe-class.ts';
import { appliedLimits, type PowerAtPdInput } from '../ethernet/power-at-pd.ts';
import type { CheckName } from '../limits/check.ts';
import type { CheckUnit } from '../limits/limit.ts';
import { NO_LINE, resistanceAtLoadVoltage, resistanceAtPowerCollapse, resistanceAtSupplyPower } from '../limits/resistance-at.ts';
import { requireNonNegative, requireOneOf, requirePositive } from '../quantity/guards.ts';
import type { Celsius, Metres, Ohms, Volts } from '../quantity/units.ts';
import type { SourceKey } from '../sources/sources.ts';
import { closestCord, closestGauge, deratedRule, type Held } from './cabling-checks.ts';
import { CABLING_RULES, type CablingStandard } from './cabling-rules.ts';
import { categoryCheck } from './category-check.ts';
import { judgedLoop, type ResistanceLimit, requireResistanceLimit } from './device-resistance.ts';
import { longestPassing } from './longest.ts';
import { copperFraction } from './material-check.ts';
import { governed, type MaximumRun, type RunLimit } from './run-limit.ts';
import { hottestOf, insertionLossLength, isScreened } from './signal-length.ts';

/** A run to a powered device whose length is asked for. */
export interface MaximumPoweredRunInput extends Omit<PowerAtPdInput, 'resistance' | 'marginalBelow'> {
  /** The cable whose length is asked for. */
  readonly cable: Cable;
  /** Temperature of that cable; 20 if absent. [°C] */
  readonly temperature?: Celsius | undefined;
  /** Cords at its ends, each with its own length [m] and temperature [°C] (20 if absent); none if absent. */
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

/** Every limit expressed as a length, and the shortest of them. @internal */
export function maximumPoweredRun(input: MaximumPoweredRunInput): MaximumRun {
  const { cable, temperature = 20, cords = [], connections = 0, connectionResistance = 0.2, cabling = 'TIA-568' } = input;
  const { maximumResistance, minimumVoltage } = input;
  cableResistancePerMetre(cable, temperature, 'maximum', '');
  requireSegments(cords, 'cords');
  requireJoints(connections, connectionResistance);
  requireOneOf(cabling, ['TIA-568', 'ISO/IEC 11801', 'none'], 'cabling');
  if (minimumVoltage !== undefined) requirePositive(minimumVoltage, 'minimumVoltage', 'V');
  if (maximumResistance !== undefined) requireResistanceLimit(maximumResistance, 'maximumResistance');
  // As in the check of a run: a port of too weak a type grants less, and the device still wants what it is made for.
  const granted = input.pseType === undefined ? input.poeClass : assignedClass(input.poeClass, input.pseType);
  const wanted = input.pdPower ?? (granted === input.poeClass ? undefined : poeClass(input.poeClass).pdPower);
  const limits = appliedLimits({ ...input, poeClass: granted, pdPower: wanted });
  const { pseVoltage = limits.pseVoltageMin } = input;
  const pdPower = wanted ?? limits.pdPower;
  requirePositive(pseVoltage, 'pseVoltage', 'V');
  requireNonNegative(pdPower, 'pdPower', 'W');
  const cordsLength = cords.reduce((sum, { length }) => sum + length, 0);
  const seen: Loop = limits.pairs === 4 ? 'fourPair' : 'twoPair';

  const found: RunLimit[] = [];
  addFixed('pd-power', { value: pdPower, limit: limits.pdPower, source: 'ieee-802.3-class' }, 'W');
  // Of what is not copper there may be none.
  addFixed('material', { value: 1 - copperFraction([own(0), ...cords]), limit: 0, source: 'copper-conductors' }, '1');
  const excessVoltage = pseVoltage - limits.pseVoltageMax;
  if (excessVoltage > 0) found.push({ limit: 'pse-voltage', shortfall: excessVoltage, unit: 'V', source: 'ieee-802.3-pse-voltage' });
  addResistance('collapse', seen, resistanceAtPowerCollapse(pseVoltage, pdPower), 'collapse');
  const sourced = resistanceAtSupplyPower(pseVoltage, pdPower, limits.psePowerLimit);
  if (sourced === NO_LINE) {
    found.push({ limit: 'pse-power', shortfall: pdPower - limits.psePowerLimit, unit: 'W', source: 'ieee-802.3-class' });
  } else addResistance('pse-power', seen, sourced, 'ieee-802.3-class');
  addVoltage('pd-voltage', limits.pdVoltageLimit, 'ieee-802.3-pd-voltage');
  if (minimumVoltage !== undefined) addVoltage('device-voltage', minimumVoltage, 'data-sheet');
  if (maximumResistance !== undefined) {
    addResistance('device-resistance', judgedLoop(maximumResistance), maximumResistance.ohms, 'data-sheet');
    const strict = found.at(-1) as RunLimit;
    if (maximumResistance.loop === 'unstated' && strict.length !== undefined) {
      const lengthAsTwoPair = lengthAt('twoPair', maximumResistance.ohms, 'as stated');
      if (lengthAsTwoPair !== undefined) found[found.length - 1] = { ...strict, lengthAsTwoPair };
    }
  }
  if (cabling !== 'none') {
    const rules = CABLING_RULES[cabling];
    addLength('channel-length', rules.channelLength, cordsLength, (length) => runOf(length, 'as stated').length);
    addLength('permanent-link-length', rules.permanentLinkLength, 0, itself);
    addResistance('channel-loop', 'pairLoop', rules.channelLoop.limit, rules.channelLoop.source, 'at 20');
    if (rules.permanentLinkLoop !== undefined) {
      addResistance('permanent-link-loop', 'pairLoop', rules.permanentLinkLoop.limit, rules.permanentLinkLoop.source, 'link at 20');
    }
    addResistance('channel-resistance', seen, limits.channelResistance, 'ieee-802.3-channel');
    const category = categoryCheck([own(0), ...cords], limits.type);
    if (category !== undefined) found.push({ limit: category.name, shortfall: -category.margin, unit: '1', source: category.source });
    addFixed('connections', { value: connections, ...rules.connections }, '1');
    const derated = deratedRule(temperature, isScreened(cable), rules);
    if (derated !== undefined) addLength('derated-length', derated, 0, itself);
    if (cords.length > 0 || derated !== undefined) {
      const total = (length: Metres): Metres => insertionLossLength([own(length)], cords, rules);
      addLength('insertion-loss-length', rules.insertionLossLength, total(0), total, insertionLossLength([own(1)], [], rules));
    }
    addFixed('cord-length', closestCord(cords, rules), 'm');
    addFixed('conductor-gauge', closestGauge([own(0)], cords, rules), 'AWG');
    const hottest = hottestOf([own(0), ...cords]);
    if (hottest > rules.temperature.limit) addFixed('cable-temperature', { value: hottest, ...rules.temperature }, '°C');
  }
  return governed(found, (length) => runOf(length, 'as stated').length);

  type Conditions = 'as stated' | 'at 20' | 'link at 20';

  function addVoltage(limit: CheckName, minimum: Volts, source: SourceKey): void {
    const ohms = resistanceAtLoadVoltage(pseVoltage, pdPower, minimum);
    if (ohms === NO_LINE) found.push({ limit, shortfall: minimum - pseVoltage, unit: 'V', source });
    else addResistance(limit, seen, ohms, source);
  }

  function addResistance(
    limit: CheckName,
    loop: Loop,
    ohms: Ohms | undefined,
    source: SourceKey,
    conditions: Conditions = 'as stated',
  ): void {
    if (ohms === undefined) {
      found.push({ limit, source });
      return;
    }
    const length = lengthAt(loop, ohms, conditions);
    const shared = { limit, resistance: ohms, loop, source };
    found.push(length === undefined ? { ...shared, shortfall: runOf(0, conditions)[loop] - ohms, unit: 'Ω' } : { ...shared, length });
  }

  function addLength(
    limit: CheckName,
    { limit: metres, source }: Omit<Held, 'value'>,
    others: Metres,
    total: (length: Metres) => Metres,
    perMetre: number = 1,
  ): void {
    const length = longestPassing((metres - others) / perMetre, (candidate) => total(candidate) <= metres);
    found.push(length === undefined ? { limit, shortfall: others - metres, unit: 'm', source } : { limit, length, source });
  }

  /** A limit that the installed length plays no part in. */
  function addFixed(limit: CheckName, held: Held | undefined, unit: CheckUnit): void {
    if (held === undefined) return;
    const excess = held.value - held.limit;
    found.push({ limit, source: held.source, ...(excess > 0 ? { shortfall: excess, unit } : {}) });
  }

  function own(length: Metres): Segment {
    return { cable, length, temperature };
  }

  function lengthAt(loop: Loop, ohms: Ohms, conditions: Conditions): Metres | undefined {
    const slope = cableResistancePerMetre(cable, conditions === 'as stated' ? temperature : 20, 'maximum', '');
    const perLoop = loop === 'pairLoop' ? 2 : loop === 'twoPair' ? 1 : 0.5;
    const guess = (ohms / perLoop - runOf(0, conditions).twoPair) / slope;
    return longestPassing(guess, (length) => runOf(length, conditions)[loop] <= ohms);
  }

  function runOf(length: Metres, conditions: Conditions): RunResistance {
    const pieces = conditions === 'link at 20' ? [own(length)] : [own(length), ...cords];
    return loopsOf(pieces, connections, connectionResistance, 'maximum', conditions !== 'as stated');
  }
}

function itself(length: Metres): Metres {
  return length;
}
