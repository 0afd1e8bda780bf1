/** What readings are consistent with: suppositions held against them one by one, never the reason itself. @module */
import { atTemperature } from '../../conductor/resistance-per-metre.ts';
import type { Interval } from '../../quantity/interval.ts';
import type { Celsius, Ohms } from '../../quantity/units.ts';
import type { SourceKey } from '../../sources/sources.ts';
import type { RunPair } from '../unbalance.ts';
import { beyondRounding, fitOf, inOrder, type Supposition } from './fit.ts';
import { cladWire, copperWire, loopPerMetre, type Wire } from './wire.ts';

/** Something that may be so. */
export type ExplanationName =
  /** The run as it was described, within its tolerances. */
  | 'as-described'
  | 'longer'
  | 'shorter'
  | 'hotter'
  | 'clad-aluminium'
  | 'thinner-gauge'
  /** One pair has a bad connection, the others are as described. */
  | 'one-bad-joint'
  /** More connections than described, or poorer ones, on every pair. */
  | 'many-joints'
  /** One pair goes further than the others, which are as described. */
  | 'one-pair-longer'
  /** One pair ends, or is shorted, nearer than the others. */
  | 'one-pair-shorter'
  | 'not-shorted'
  | 'leads-not-nulled';

/** One supposition, held against the readings. Consistent with them is not the reason for them. */
export interface Explanation {
  readonly name: ExplanationName;
  readonly status: 'consistent' | 'inconsistent';
  /** By how much every reading would have to be off before it is consistent; 0 where it is. [Ω] */
  readonly distance: Ohms;
  /** What it would take, in its unit; absent where it takes nothing in particular, or nothing suffices. */
  readonly takes?: Interval & { readonly unit: 'm' | '°C' | 'Ω' | 'Ω/m' | 'AWG' };
  /** The pair it is about. */
  readonly pair?: RunPair;
  readonly source: SourceKey;
}

/** The loop of a pair as it was read. [Ω] */
interface MeasuredPair extends Interval {
  readonly pair: RunPair;
}

/** The readings and what is known of the run. @internal */
export interface Known {
  readonly pairs: readonly MeasuredPair[];
  readonly open: readonly RunPair[];
  readonly wire: Wire;
  readonly rest: Interval;
  /** [m] */
  readonly knownLength: Interval | undefined;
  /** [°C] */
  readonly temperature: Interval;
}

/** What a supposition comes to: by how much it misses, and what it would take. */
type Held = Pick<Explanation, 'distance' | 'pair'> & { readonly range?: Interval };

/** Highest rating of the insulation of data cable (NEC 2017, Table 725.144). [°C] */
const HOTTEST_CABLE: Celsius = 90;
/** What leads may add, and what no shorted pair of a building has. [Ω] */
const LEADS: Ohms = 1;
const UNSHORTED: Ohms = 1000;
/** Larger than any real joint; means "no limit". [Ω] */
const UNLIMITED: Ohms = 1e12;
/** Thinnest conductor of the trade. [AWG] */
const THINNEST = 28;
/** Longer than any run; every reading bounds it further. [m] @internal */
export const ANY_LENGTH: Interval = { low: 0, high: 1e12 };

/** Every supposition. At least one pair has a reading. @internal */
export function explanationsOf({ pairs, open, wire, rest, knownLength, temperature }: Known): Explanation[] {
  const length = knownLength ?? ANY_LENGTH;
  const perMetre = loopPerMetre(wire, temperature);
  const described: Supposition = { perMetre, rest, length };
  const supposing = (supposed: Partial<Supposition>) => fitOf(pairs, { ...described, ...supposed });
  const most = pairs.reduce((one, other) => (other.low > one.low ? other : one));
  const least = pairs.reduce((one, other) => (other.high < one.high ? other : one));

  const found: Explanation[] = [];
  add('as-described', 'tia-568.2-d-cable', 'm', supposing({}));
  if (knownLength !== undefined) {
    add('longer', 'field-loop-reading', 'm', supposing({ length: { low: length.high, high: ANY_LENGTH.high } }));
    add('shorter', 'field-loop-reading', 'm', supposing({ length: { low: 0, high: length.low } }));
  }
  add('hotter', 'nec-725.144', '°C', hotter());
  add('clad-aluminium', 'clad-aluminium-55', 'm', supposing({ perMetre: loopPerMetre(cladWire(wire.gauge), temperature) }));
  if (wire.gauge < THINNEST) add('thinner-gauge', 'astm-b258', 'AWG', thinnerGauge());
  const onOne = withExtra(UNLIMITED, (reading) => (reading === most ? UNLIMITED : 0));
  add('one-bad-joint', 'field-loop-reading', 'Ω', { ...onOne, pair: most.pair });
  add('many-joints', 'tia-568.2-d-connection', 'Ω', withExtra(UNLIMITED));
  if (pairs.length > 1) {
    add('one-pair-longer', 'field-loop-reading', 'm', ownLength(most, true));
    add('one-pair-shorter', 'field-loop-reading', 'm', ownLength(least, false));
  }
  const [pair = most.pair] = open;
  add('not-shorted', 'field-practice', 'Ω', { distance: open.length > 0 ? 0 : Math.max(0, UNSHORTED - most.high), pair });
  add('leads-not-nulled', 'field-practice', 'Ω', withExtra(LEADS));
  return found;

  function add(
    name: ExplanationName,
    source: SourceKey,
    unit: NonNullable<Explanation['takes']>['unit'],
    { distance, range, ...pair }: Held,
  ) {
    const isConsistent = distance === 0;
    const takes = isConsistent && range ? { takes: { ...inOrder(range), unit } } : {};
    found.push({ name, status: isConsistent ? 'consistent' : 'inconsistent', distance, ...takes, ...pair, source });
  }

  /** One temperature for all pairs, and the readings between the coolest and the warmest that it makes. */
  function hotter(): Held {
    const hottest = Math.max(HOTTEST_CABLE, temperature.high);
    if (knownLength === undefined) {
      return { distance: supposing({ perMetre: loopPerMetre(wire, { low: temperature.low, high: hottest }) }).distance };
    }
    // A metal that does not change has no temperature to tell.
    const coefficient = wire.coefficient || 1e-9;
    const [atMost, atLeast] = [most.low - rest.high, least.high - rest.low];
    const reached = (conductor: Ohms, loop: Ohms, otherwise: Celsius) =>
      conductor > 0 ? 20 + (loop / (2 * conductor) - 1) / coefficient : otherwise;
    const [longest, shortest] = [wire.most * length.high, wire.least * length.low];
    // Off by the same at both ends: where the two lines cross, or at the end that is nearer.
    const crossing = reached(longest + shortest, atMost + atLeast, temperature.high);
    const best = Math.min(hottest, Math.max(temperature.high, crossing));
    const missing = Math.max(
      atMost - 2 * length.high * atTemperature(wire.most, wire.coefficient, best),
      2 * length.low * atTemperature(wire.least, wire.coefficient, best) - atLeast,
    );
    return {
      distance: beyondRounding(missing, pairs),
      range: {
        low: Math.max(temperature.high, reached(longest, atMost, temperature.high)),
        high: Math.min(hottest, reached(shortest, atLeast, atLeast < 0 ? temperature.high : hottest)),
      },
    };
  }

  function thinnerGauge(): Held {
    const thinner = Array.from({ length: THINNEST - wire.gauge }, (_, step) => wire.gauge + 1 + step);
    const fits = thinner.map((gauge) => supposing({ perMetre: loopPerMetre(copperWire(gauge), temperature) }).distance);
    const [low = 0, ...others] = thinner.filter((_, index) => fits[index] === 0);
    return { distance: Math.min(...fits), range: { low, high: others.at(-1) ?? low } };
  }

  /** What the highest pair would have besides, over the lengths that the readings leave. */
  function withExtra(limit: Ohms, extra: Supposition['extra'] = () => limit): Held {
    const { range, distance } = supposing({ extra });
    const low = Math.max(0, most.low - rest.high - perMetre.high * range.high);
    return { distance, range: { low, high: Math.min(limit, most.high - rest.low - perMetre.low * range.low) } };
  }

  function ownLength(reading: MeasuredPair, isLonger: boolean): Held {
    const own = fitOf([reading], { ...described, length: ANY_LENGTH });
    const others = pairs.filter((other) => other !== reading);
    const shared = fitOf(others, described);
    const low = isLonger ? Math.max(own.range.low, shared.range.low) : own.range.low;
    const high = isLonger ? own.range.high : Math.min(own.range.high, shared.range.high);
    const missed = (low - high) / (1 / perMetre.low + 1 / perMetre.high);
    const distance = beyondRounding(Math.max(shared.distance, own.distance, missed), pairs);
    return { distance, range: { low, high }, pair: reading.pair };
  }
}
