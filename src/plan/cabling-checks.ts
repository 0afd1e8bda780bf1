/** A run held against the rules of a cabling standard. @module */
import { deratingRules } from '../cable/derated-length.ts';
import type { RunResistance, Segment } from '../cable/run-resistance.ts';
import { type CablingCheckName, type Check, verdictOf } from '../circuit/check.ts';
import type { PoeClass } from '../ethernet/poe-class.ts';
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
    rule('channel-length', channelLength, rules.channelLength.limit, 'm', rules.channelLength.source),
    rule('permanent-link-length', installedLength, rules.permanentLinkLength.limit, 'm', rules.permanentLinkLength.source),
    rule('channel-loop', at20.pairLoop, rules.channelLoop.limit, 'Ω', rules.channelLoop.source),
  ];
  if (rules.permanentLinkLoop !== undefined) {
    // Connections are counted in the link though some lie outside it: the sum is then never too small.
    checks.push(rule('permanent-link-loop', facts.linkAt20.pairLoop, rules.permanentLinkLoop.limit, 'Ω', rules.permanentLinkLoop.source));
  }
  const seen = limits.pairs === 4 ? resistance.fourPair : resistance.twoPair;
  checks.push(rule('channel-resistance', seen, limits.channelResistance, 'Ω', 'ieee-802.3-channel'));
  const category = categoryCheck([...installed, ...cords], limits.type);
  if (category !== undefined) checks.push(category);
  const count = rule('connections', connections + 0, rules.connections.limit, '1', rules.connections.source);
  // Four of four connections is a full house, not a narrow escape.
  checks.push(count.verdict === 'marginal' ? { ...count, verdict: 'pass' } : count);

  const derated = deratedRule(averageTemperature(installed), allScreened(installed), rules);
  if (derated !== undefined) checks.push(rule('derated-length', installedLength, derated.limit, 'm', derated.source));
  const { insertionLossLength: loss } = rules;
  if (cords.length > 0 || derated !== undefined) {
    checks.push(rule('insertion-loss-length', insertionLossLength(installed, cords, rules), loss.limit, 'm', loss.source));
  }
  const cord = closestCord(cords, rules);
  if (cord !== undefined) checks.push(rule('cord-length', cord.value, cord.limit, 'm', cord.source));
  const gauge = closestGauge(installed, cords, rules);
  if (gauge !== undefined) {
    const thinnest = rule('conductor-gauge', gauge.value, gauge.limit, 'AWG', gauge.source);
    checks.push(thinnest.verdict === 'marginal' ? { ...thinnest, verdict: 'pass' } : thinnest);
  }
  const hottest = Math.max(hottestOf(installed), hottestOf(cords));
  if (hottest > rules.temperature.limit) {
    checks.push(rule('cable-temperature', hottest, rules.temperature.limit, '°C', rules.temperature.source));
  }
  return checks;

  function rule(name: CablingCheckName, raw: number, limit: number, unit: Check['unit'], source: SourceKey): Check {
    // 90 m and cords of 0.1, 0.1 and 9.8 m are 100 m on paper, and the double after it in a sum: not a metre too long.
    const value = unit === 'm' && Math.abs(raw - limit) < ROUNDING ? limit : raw;
    const margin = limit - value;
    return { name, value, limit, unit, margin, marginFraction: margin / limit, verdict: verdictOf(margin, limit, marginalBelow), source };
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
