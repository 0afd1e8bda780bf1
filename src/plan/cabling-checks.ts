/** A run held against the rules of a cabling standard. @module */
import { deratingRules } from '../cable/derated-length.ts';
import type { RunResistance, Segment } from '../cable/run-resistance.ts';
import type { PoeClass } from '../ethernet/poe-class.ts';
import { CABLE_TEMPERATURE } from '../limits/cable-temperature.ts';
import { CHANNEL_LENGTH } from '../limits/channel-length.ts';
import { CHANNEL_LOOP } from '../limits/channel-loop.ts';
import { CHANNEL_RESISTANCE } from '../limits/channel-resistance.ts';
import type { Check, CheckName } from '../limits/check.ts';
import { CONDUCTOR_GAUGE } from '../limits/conductor-gauge.ts';
import { CONNECTIONS } from '../limits/connections.ts';
import { CORD_LENGTH } from '../limits/cord-length.ts';
import { DERATED_LENGTH } from '../limits/derated-length.ts';
import { held } from '../limits/held.ts';
import { INSERTION_LOSS_LENGTH } from '../limits/insertion-loss-length.ts';
import type { Limit } from '../limits/limit.ts';
import { PERMANENT_LINK_LENGTH } from '../limits/permanent-link-length.ts';
import { PERMANENT_LINK_LOOP } from '../limits/permanent-link-loop.ts';
import type { Celsius, Metres } from '../quantity/units.ts';
import type { SourceKey } from '../sources/sources.ts';
import { CABLING_RULES, type CablingRules, type CablingStandard } from './cabling-rules.ts';
import { categoryCheck } from './category-check.ts';
import { allScreened, averageTemperature, hottestOf, insertionLossLength } from './signal-length.ts';

/** Far above the rounding of a sum of lengths, far under anything that can be measured. [m] */
const ROUNDING: Metres = 1e-12;

/** What the rules look at. @internal */
export interface ChannelFacts {
  /** As hot as stated. */
  readonly resistance: RunResistance;
  /** Installed cable, cords and connections, at 20 °C. */
  readonly at20: RunResistance;
  /** Installed cable and connections without the cords, at 20 °C. */
  readonly linkAt20: RunResistance;
  readonly installed: readonly Segment[];
  readonly cords: readonly Segment[];
  readonly installedLength: Metres;
  readonly channelLength: Metres;
  readonly connections: number;
  readonly limits: PoeClass;
}

/** Every rule of the standard as a check; none for `none`. @internal */
export function cablingChecks(standard: CablingStandard, facts: ChannelFacts, marginalBelow: number): Check[] {
  if (standard === 'none') return [];
  const rules = CABLING_RULES[standard];
  const { resistance, at20, installed, cords, installedLength, channelLength, connections, limits } = facts;
  const checks: Check[] = [
    rule(CHANNEL_LENGTH, channelLength, rules.channelLength),
    rule(PERMANENT_LINK_LENGTH, installedLength, rules.permanentLinkLength),
    rule(CHANNEL_LOOP, at20.pairLoop, rules.channelLoop),
  ];
  // Connections are counted in the link though some lie outside it: the sum is then never too small.
  if (rules.permanentLinkLoop !== undefined) checks.push(rule(PERMANENT_LINK_LOOP, facts.linkAt20.pairLoop, rules.permanentLinkLoop));
  const seen = limits.pairs === 4 ? resistance.fourPair : resistance.twoPair;
  checks.push(held(CHANNEL_RESISTANCE, seen, limits.channelResistance, marginalBelow));
  const category = categoryCheck([...installed, ...cords], limits.type);
  if (category !== undefined) checks.push(category);
  checks.push(rule(CONNECTIONS, connections + 0, rules.connections));

  const derated = deratedRule(averageTemperature(installed), allScreened(installed), rules);
  if (derated !== undefined) checks.push(rule(DERATED_LENGTH, installedLength, derated));
  if (cords.length > 0 || derated !== undefined) {
    checks.push(rule(INSERTION_LOSS_LENGTH, insertionLossLength(installed, cords, rules), rules.insertionLossLength));
  }
  const cord = closestCord(cords, rules);
  if (cord !== undefined) checks.push(rule(CORD_LENGTH, cord.value, cord));
  const gauge = closestGauge(installed, cords, rules);
  if (gauge !== undefined) checks.push(rule(CONDUCTOR_GAUGE, gauge.value, gauge));
  const hottest = Math.max(hottestOf(installed), hottestOf(cords));
  if (hottest > rules.temperature.limit) checks.push(rule(CABLE_TEMPERATURE, hottest, rules.temperature));
  return checks;

  function rule(limit: Limit<CheckName>, raw: number, { limit: bound, source }: Omit<Held, 'value'>): Check {
    // 90 m and cords of 0.1, 0.1 and 9.8 m are 100 m on paper, and the double after it in a sum: not a metre too long.
    const check = held(limit, limit.unit === 'm' && Math.abs(raw - bound) < ROUNDING ? bound : raw, bound, marginalBelow);
    check.source = source;
    return check;
  }
}

/** One value to be held against one limit. @internal */
export interface Held {
  readonly value: number;
  readonly limit: number;
  readonly source: SourceKey;
}

/** What the standard leaves of the permanent link; `undefined` where it is cool, or too hot for any length. @internal */
export function deratedRule(temperature: Celsius, screened: boolean, rules: CablingRules): Omit<Held, 'value'> | undefined {
  if (temperature <= 20 || temperature > rules.temperature.limit) return undefined;
  const { length, source } = deratingRules(temperature, screened).shorter;
  return { limit: length, source };
}

/** The cord that is nearest to the limit of its gauge. @internal */
export function closestCord(cords: readonly Segment[], { cordLength }: CablingRules): Held | undefined {
  return closest(
    cords.map(({ cable, length }) => {
      const { limit, source } = cable.gauge <= 24 ? cordLength.thick : cordLength.thin;
      return { value: length, limit, source };
    }),
  );
}

/** The conductor that is nearest to the thinnest allowed where it is. @internal */
export function closestGauge(installed: readonly Segment[], cords: readonly Segment[], rules: CablingRules): Held | undefined {
  const { thinnestGauge } = rules;
  if (thinnestGauge === undefined) return undefined;
  return closest([
    ...installed.map(({ cable }) => ({ value: cable.gauge, ...thinnestGauge.installed })),
    ...cords.map(({ cable }) => ({ value: cable.gauge, ...thinnestGauge.cords })),
  ]);
}

function closest(values: readonly Held[]): Held | undefined {
  return values.reduce<Held | undefined>(
    (least, held) => (least === undefined || held.limit - held.value < least.limit - least.value ? held : least),
    undefined,
  );
}
