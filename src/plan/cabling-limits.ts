/** The rules of a cabling standard as limits of one channel. @module */
import { deratingRules } from '../cable/derated-length.ts';
import type { Loop, RunResistance, Segment } from '../cable/run-resistance.ts';
import type { PoeClass } from '../ethernet/poe-class.ts';
import {
  CABLE_CATEGORY,
  CABLE_TEMPERATURE,
  CHANNEL_LENGTH,
  CHANNEL_LOOP,
  CHANNEL_RESISTANCE,
  CONDUCTOR_GAUGE,
  CONNECTIONS,
  CORD_LENGTH,
  DERATED_LENGTH,
  INSERTION_LOSS_LENGTH,
  PERMANENT_LINK_LENGTH,
  PERMANENT_LINK_LOOP,
} from '../limits/all.ts';
import type { Check, CheckName } from '../limits/check.ts';
import { held } from '../limits/held.ts';
import type { Limit } from '../limits/limit.ts';
import type { Metres } from '../quantity/units.ts';
import { CABLING_RULES, type CablingRules, type CablingStandard, type Rule } from './cabling-rules.ts';
import { allScreened, averageTemperature, hottestOf, insertionLossLength } from './signal-length.ts';

/** Type 1 is for Category 3 and up; Types 2 to 4 are for Category 5 and up (Class D). */
const LEAST_CATEGORY = 5;
/** Far above the rounding of a sum of lengths, far under anything that can be measured. [m] */
const ROUNDING: Metres = 1e-12;

/** What the rules look at. @internal */
export interface Channel {
  /** As hot as stated. */
  readonly resistance: RunResistance;
  /** Installed cable, cords and connections, at 20 °C. */
  readonly at20: RunResistance;
  /** Installed cable and connections without the cords, at 20 °C. */
  readonly linkAt20: RunResistance;
  readonly installed: readonly Segment[];
  readonly cords: readonly Segment[];
  readonly connections: number;
  readonly classLimits: PoeClass;
}

/** One value to be held against one limit. @internal */
export interface Held extends Rule {
  readonly value: number;
}

/** One rule of a standard. @internal */
export interface CablingLimit {
  readonly limit: Limit<CheckName>;
  /** Value and bound; `undefined` where the rule has nothing to say of the channel. */
  readonly measure: (channel: Channel, rules: CablingRules) => Held | undefined;
  /** More installed cable means more of it. */
  readonly grows?: true;
  /** The circuit of a limit in ohms. */
  readonly loop?: (classLimits: PoeClass) => Loop;
}

const pairLoop = (): Loop => 'pairLoop';

/** Every rule, in the order in which they are listed. @internal */
export const CABLING_LIMITS: readonly CablingLimit[] = /* @__PURE__ */ (() => [
  { limit: CHANNEL_LENGTH, grows: true, measure: ({ resistance }, { channelLength }) => against(channelLength, resistance.length) },
  {
    limit: PERMANENT_LINK_LENGTH,
    grows: true,
    measure: ({ linkAt20 }, { permanentLinkLength }) => against(permanentLinkLength, linkAt20.length),
  },
  { limit: CHANNEL_LOOP, grows: true, loop: pairLoop, measure: ({ at20 }, { channelLoop }) => against(channelLoop, at20.pairLoop) },
  {
    limit: PERMANENT_LINK_LOOP,
    grows: true,
    loop: pairLoop,
    // Connections are counted in the link though some lie outside it: the sum is then never too small.
    measure: ({ linkAt20 }, { permanentLinkLoop }) => against(permanentLinkLoop, linkAt20.pairLoop),
  },
  {
    limit: CHANNEL_RESISTANCE,
    grows: true,
    loop: seenLoop,
    measure: ({ resistance, classLimits }) =>
      against({ limit: classLimits.channelResistance, source: CHANNEL_RESISTANCE.source }, resistance[seenLoop(classLimits)]),
  },
  { limit: CABLE_CATEGORY, measure: ({ installed, cords, classLimits }) => weakCategory([...installed, ...cords], classLimits) },
  { limit: CONNECTIONS, measure: ({ connections }, rules) => against(rules.connections, connections + 0) },
  { limit: DERATED_LENGTH, grows: true, measure: (channel, rules) => against(deratedRule(channel, rules), channel.linkAt20.length) },
  {
    limit: INSERTION_LOSS_LENGTH,
    grows: true,
    measure: (channel, rules) =>
      channel.cords.length > 0 || deratedRule(channel, rules) !== undefined
        ? against(rules.insertionLossLength, insertionLossLength(channel.installed, channel.cords, rules))
        : undefined,
  },
  { limit: CORD_LENGTH, measure: ({ cords }, rules) => closestCord(cords, rules) },
  { limit: CONDUCTOR_GAUGE, measure: ({ installed, cords }, rules) => closestGauge(installed, cords, rules) },
  {
    limit: CABLE_TEMPERATURE,
    measure: ({ installed, cords }, { temperature }) => {
      const hottest = Math.max(hottestOf(installed), hottestOf(cords));
      return hottest > temperature.limit ? against(temperature, hottest) : undefined;
    },
  },
])();

/** Every rule of the standard as a check; none for `none`. @internal */
export function cablingChecks(standard: CablingStandard, channel: Channel, marginalBelow: number): Check[] {
  if (standard === 'none') return [];
  const checks: Check[] = [];
  for (const { limit, measure } of CABLING_LIMITS) {
    const found = measure(channel, CABLING_RULES[standard]);
    if (found === undefined) continue;
    const { value, limit: bound, source } = found;
    // 90 m and cords of 0.1, 0.1 and 9.8 m are 100 m on paper, and the double after it in a sum: not a metre too long.
    const check = held(limit, limit.unit === 'm' && Math.abs(value - bound) < ROUNDING ? bound : value, bound, marginalBelow);
    check.source = source;
    checks.push(check);
  }
  return checks;
}

/** The circuit that power sees. @internal */
export function seenLoop({ pairs }: Pick<PoeClass, 'pairs'>): Loop {
  return pairs === 4 ? 'fourPair' : 'twoPair';
}

function against(rule: Rule | undefined, value: number): Held | undefined {
  return rule === undefined ? undefined : { value, limit: rule.limit, source: rule.source };
}

/** The category of a piece that is too low for the type of port. @internal */
export function weakCategory(pieces: readonly Segment[], { type }: Pick<PoeClass, 'type'>): Held | undefined {
  if (type === 1 || !pieces.some(({ cable }) => cable.category === '3')) return undefined;
  return { value: 3, limit: LEAST_CATEGORY, source: CABLE_CATEGORY.source };
}

/** What the standard leaves of the permanent link; `undefined` where it is cool, or too hot for any length. @internal */
export function deratedRule({ installed }: Pick<Channel, 'installed'>, rules: CablingRules): Rule | undefined {
  const temperature = averageTemperature(installed);
  if (temperature <= 20 || temperature > rules.temperature.limit) return undefined;
  const { length, source } = deratingRules(temperature, allScreened(installed)).shorter;
  return { limit: length, source };
}

/** The cord that is nearest to the limit of its gauge. @internal */
export function closestCord(cords: readonly Segment[], { cordLength }: CablingRules): Held | undefined {
  return closest(cords.map(({ cable, length }) => ({ value: length, ...(cable.gauge <= 24 ? cordLength.thick : cordLength.thin) })));
}

/** The conductor that is nearest to the thinnest allowed where it is. @internal */
export function closestGauge(installed: readonly Segment[], cords: readonly Segment[], { thinnestGauge }: CablingRules): Held | undefined {
  if (thinnestGauge === undefined) return undefined;
  return closest([
    ...installed.map(({ cable }) => ({ value: cable.gauge, ...thinnestGauge.installed })),
    ...cords.map(({ cable }) => ({ value: cable.gauge, ...thinnestGauge.cords })),
  ]);
}

function closest(values: readonly Held[]): Held | undefined {
  return values.reduce<Held | undefined>(
    (least, one) => (least === undefined || one.limit - one.value < least.limit - least.value ? one : least),
    undefined,
  );
}
