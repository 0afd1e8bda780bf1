/** A run held against the rules of a cabling standard. @module */
import type { RunResistance } from '../cable/run-resistance.ts';
import { type CablingCheckName, type Check, verdictOf } from '../circuit/check.ts';
import type { PoeClass } from '../ethernet/poe-class.ts';
import type { Metres } from '../quantity/units.ts';
import type { SourceKey } from '../sources/sources.ts';
import { CABLING_RULES, type CablingStandard } from './cabling-rules.ts';

/** What the rules look at. @internal */
export interface ChannelFacts {
  /** As hot as stated. */
  readonly resistance: RunResistance;
  /** Installed cable, cords and connections, at 20 °C. */
  readonly at20: RunResistance;
  /** Installed cable and connections without the cords, at 20 °C. */
  readonly linkAt20: RunResistance;
  readonly installedLength: Metres;
  readonly channelLength: Metres;
  readonly connections: number;
  readonly limits: PoeClass;
}

/** Every rule of the standard as a check; none for `none`. @internal */
export function cablingChecks(standard: CablingStandard, facts: ChannelFacts, marginalBelow: number): Check[] {
  if (standard === 'none') return [];
  const rules = CABLING_RULES[standard];
  const { resistance, at20, installedLength, channelLength, connections, limits } = facts;
  const checks = [
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
  const count = rule('connections', connections, rules.connections.limit, '1', rules.connections.source);
  // Four of four connections is a full house, not a narrow escape.
  checks.push(count.verdict === 'marginal' ? { ...count, verdict: 'pass' } : count);
  return checks;

  function rule(name: CablingCheckName, value: number, limit: number, unit: 'm' | 'Ω' | '1', source: SourceKey): Check {
    const margin = limit - value;
    return { name, value, limit, unit, margin, marginFraction: margin / limit, verdict: verdictOf(margin, limit, marginalBelow), source };
  }
}
