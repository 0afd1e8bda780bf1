/** What readings are consistent with: suppositions held against them one by one, never the reason itself. @module */
import { atTemperature } from '../../conductor/resistance-per-metre.ts';
import type { Interval } from '../../quantity/interval.ts';
import type { Celsius, Ohms } from '../../quantity/units.ts';
import type { SourceKey } from '../../sources/sources.ts';
import type { RunPair } from '../unbalance.ts';
import { beyondRounding, fitOf, type PairBounds, type Supposition } from './fit.ts';
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

/** The readings and what is known of the run. @internal */
export interface Known {
  readonly names: readonly RunPair[];
  readonly pairs: readonly PairBounds[];
  readonly open: readonly RunPair[];
  readonly wire: Wire;
  readonly rest: PairBounds;
  /** [m] */
  readonly length: Interval;
  readonly isLengthKnown: boolean;
  /** [°C] */
  readonly temperature: Interval;
}

/** Highest rating of the insulation of data cable (NEC 2017, Table 725.144). [°C] */
const HOTTEST_CABLE: Celsius = 90;
/** What leads may add, and what no shorted pair of a building has. [Ω] */
const LEADS: Ohms = 1;
const UNSHORTED: Ohms = 1000;
/** Thinnest conductor of the trade. [AWG] */
const THINNEST = 28;
/** Longer than any run; every reading bounds it further. [m] @internal */
export const ANY_LENGTH: Interval = { low: 0, high: 1e12 };

/** Every supposition. At least one pair has a reading. @internal */
export function explanationsOf(known: Known): Explanation[] {
  const { names, pairs, open, wire, rest, length, isLengthKnown, temperature } = known;
  const scale = Math.max(...pairs.map(({ high }) => high)) + 1;
  const described: Supposition = { perMetre: loopPerMetre(wire, temperature.low, temperature.high), rest, length };
  const any = pairs.map(() => UNLIMITED);
  const most = argmax(pairs.map(({ low }) => low));
  const least = argmax(pairs.map(({ high }) => -high));

  const found: Explanation[] = [lengths('as-described', described, 'tia-568.2-d-cable')];
  if (isLengthKnown) {
    found.push(lengths('longer', { ...described, length: { low: length.high, high: ANY_LENGTH.high } }, 'field-loop-reading'));
    found.push(lengths('shorter', { ...described, length: { low: 0, high: length.low } }, 'field-loop-reading'));
  }
  found.push(hotter());
  found.push(lengths('clad-aluminium', { ...described, perMetre: hot(cladWire(wire.gauge)) }, 'clad-aluminium-55'));
  const thinner = thinnerGauge();
  if (thinner !== undefined) found.push(thinner);
  found.push(oneBadJoint());
  found.push(extraOn('many-joints', { ...described, extra: any }, UNLIMITED, 'tia-568.2-d-connection'));
  if (pairs.length > 1) found.push(ownLength('one-pair-longer', most), ownLength('one-pair-shorter', least));
  found.push(notShorted());
  found.push(extraOn('leads-not-nulled', { ...described, extra: pairs.map(() => LEADS) }, LEADS, 'field-practice'));
  return found;

  function hot(own: Wire): Supposition['perMetre'] {
    return loopPerMetre(own, temperature.low, temperature.high);
  }

  function lengths(name: ExplanationName, supposed: Supposition, source: SourceKey): Explanation {
    const { length: range, distance } = fitOf(pairs, supposed);
    return explanation(name, distance, range, 'm', source);
  }

  /** One temperature for all pairs, and the readings between the coolest and the warmest that it makes. */
  function hotter(): Explanation {
    const source = 'nec-725.144';
    const hottest = Math.max(HOTTEST_CABLE, temperature.high);
    // A metal that does not change has no temperature to tell.
    const coefficient = wire.coefficient || 1e-9;
    if (!isLengthKnown) {
      return explanation(
        'hotter',
        fitOf(pairs, { ...described, perMetre: loopPerMetre(wire, temperature.low, hottest) }).distance,
        undefined,
        '°C',
        source,
      );
    }
    const highest = Math.max(...pairs.map(({ low }) => low)) - rest.high;
    const lowest = Math.min(...pairs.map(({ high }) => high)) - rest.low;
    const at = (perMetre: number, metres: number, ohms: Ohms): Celsius =>
      perMetre * metres > 0 ? 20 + (ohms / (2 * perMetre * metres) - 1) / coefficient : ohms >= 0 ? hottest : temperature.high;
    const from = Math.max(temperature.high, length.high > 0 ? at(wire.most, length.high, highest) : temperature.high);
    const to = Math.min(hottest, at(wire.least, length.low, lowest));
    // Off by the same at both ends: where the two lines cross, or at the end that is nearer.
    const missing = (celsius: Celsius): Ohms =>
      Math.max(
        0,
        highest - 2 * length.high * atTemperature(wire.most, wire.coefficient, celsius),
        2 * length.low * atTemperature(wire.least, wire.coefficient, celsius) - lowest,
      );
    const slope = 2 * (length.high * wire.most + length.low * wire.least);
    const crossing = slope > 0 ? 20 + ((highest + lowest) / slope - 1) / coefficient : temperature.high;
    const best = Math.min(hottest, Math.max(temperature.high, crossing));
    return explanation('hotter', beyondRounding(missing(best), scale), { low: from, high: to }, '°C', source);
  }

  function thinnerGauge(): Explanation | undefined {
    const gauges: number[] = [];
    let distance = Number.POSITIVE_INFINITY;
    for (let gauge = wire.gauge + 1; gauge <= THINNEST; gauge++) {
      const own = fitOf(pairs, { ...described, perMetre: hot(copperWire(gauge)) }).distance;
      if (own === 0) gauges.push(gauge);
      if (own < distance) distance = own;
    }
    if (distance === Number.POSITIVE_INFINITY) return undefined;
    const range = gauges.length === 0 ? undefined : { low: gauges[0] as number, high: gauges.at(-1) as number };
    return explanation('thinner-gauge', distance, range, 'AWG', 'astm-b258');
  }

  function oneBadJoint(): Explanation {
    const extra = pairs.map((_, index) => (index === most ? UNLIMITED : 0));
    return { ...extraOn('one-bad-joint', { ...described, extra }, UNLIMITED, 'field-loop-reading'), pair: names[most] as RunPair };
  }

  /** What the highest pair would have besides, over the lengths that the readings leave. */
  function extraOn(name: ExplanationName, supposed: Supposition, limit: Ohms, source: SourceKey): Explanation {
    const { length: range, distance } = fitOf(pairs, supposed);
    const { low, high } = pairs[most] as PairBounds;
    const { perMetre } = supposed;
    const takes = {
      low: Math.max(0, low - rest.high - perMetre.high * range.high),
      high: Math.min(limit, high - rest.low - perMetre.low * range.low),
    };
    return explanation(name, distance, takes, 'Ω', source);
  }

  function ownLength(name: 'one-pair-longer' | 'one-pair-shorter', index: number): Explanation {
    const others = pairs.filter((_, other) => other !== index);
    const shared = fitOf(others, described);
    const own = fitOf([pairs[index] as PairBounds], { ...described, length: ANY_LENGTH });
    const isLonger = name === 'one-pair-longer';
    const range = isLonger
      ? { low: Math.max(own.length.low, shared.length.low), high: own.length.high }
      : { low: own.length.low, high: Math.min(own.length.high, shared.length.high) };
    const missed = (range.low - range.high) / (1 / described.perMetre.low + 1 / described.perMetre.high);
    const distance = beyondRounding(Math.max(shared.distance, own.distance, missed), scale);
    return { ...explanation(name, distance, range, 'm', 'field-loop-reading'), pair: names[index] as RunPair };
  }

  function notShorted(): Explanation {
    const pair = open[0];
    if (pair !== undefined) return { ...explanation('not-shorted', 0, undefined, 'Ω', 'field-practice'), pair };
    return {
      ...explanation('not-shorted', Math.max(0, UNSHORTED - (pairs[most] as PairBounds).high), undefined, 'Ω', 'field-practice'),
      pair: names[most] as RunPair,
    };
  }
}

/** Larger than any real joint; means "no limit". [Ω] */
const UNLIMITED: Ohms = 1e12;

function explanation(
  name: ExplanationName,
  distance: Ohms,
  range: Interval | undefined,
  unit: NonNullable<Explanation['takes']>['unit'],
  source: SourceKey,
): Explanation {
  const isConsistent = distance === 0;
  const hasRange = isConsistent && range !== undefined;
  // Bounds that meet within rounding may have changed places.
  const takes = hasRange ? { low: Math.min(range.low, range.high), high: Math.max(range.low, range.high), unit } : undefined;
  return { name, status: isConsistent ? 'consistent' : 'inconsistent', distance, ...(takes === undefined ? {} : { takes }), source };
}

function argmax(values: readonly number[]): number {
  return values.indexOf(Math.max(...values));
}
