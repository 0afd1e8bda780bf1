/** What a meter should show on a pair of a run. @module */

import { CONDUCTOR_TEMPERATURE } from '../../conductor/resistance-per-metre.ts';
import { ABSOLUTE_ZERO } from '../../conductor/temperature-coefficient.ts';
import { type Fields, readInput } from '../../quantity/fields.ts';
import { requireInteger } from '../../quantity/guards.ts';
import { InputError } from '../../quantity/input-error.ts';
import type { BoundedFigure, Interval } from '../../quantity/interval.ts';
import type { Kelvins, Metres } from '../../quantity/units.ts';
import type { SourceKey } from '../../sources/sources.ts';
import { CONNECTION_COUNT, CONNECTION_RESISTANCE, CORDS, INSTALLED, type RunInput, type Segment } from '../read-cable.ts';
import { loopsOf } from '../run-resistance.ts';
import { loopPerMetre, wireOf } from './wire.ts';

/** A run, and what is known of the reading. */
export interface ExpectedReadingInput extends RunInput {
  /** How many of the connections lie in the permanent link; all up to 3 if absent. A number. */
  readonly linkConnections?: number | undefined;
  /** How far each stated temperature may be off, either side; 0 if absent. [K] */
  readonly temperatureSpread?: Kelvins | undefined;
}

/** @internal */
export const EXPECTED_READING_FIELDS: Fields<
  ExpectedReadingInput,
  'cords' | 'connections' | 'connectionResistance' | 'temperatureSpread',
  { installed: readonly Segment[]; cords: readonly Segment[] }
> = {
  installed: () => INSTALLED,
  cords: () => CORDS,
  connections: () => CONNECTION_COUNT,
  linkConnections: { whole: [0, 1000], optional: true },
  connectionResistance: () => CONNECTION_RESISTANCE,
  temperatureSpread: { nonNegative: 'K', default: 0 },
};

/** The loop of one pair, shorted at the far end. */
export interface ExpectedLoop {
  /** One way. [m] */
  readonly length: Metres;
  readonly connections: number;
  /** `low` to `high`, and `value` for usual copper with connections at their most. [Ω] */
  readonly at20: BoundedFigure;
  /** The same at the stated temperatures. [Ω] */
  readonly atTemperature: BoundedFigure;
}

/** What a meter should show. */
export interface ExpectedReading {
  /** Without cords. */
  readonly permanentLink: ExpectedLoop;
  /** With cords. */
  readonly channel: ExpectedLoop;
  readonly source: SourceKey;
}

/**
 * What a meter should show on one pair of a run, shorted at the far end and with the leads nulled.
 *
 * Bounds hold for copper from the least that its gauge can have (4 % under nominal, strands of the trade 14 %) up to the limit
 * of the cable, for connections from none to the most each may have, and for the spread of temperature: all at their best, and
 * all at their worst. A reading outside them is not of the run as described; one inside may still be.
 *
 * @param input - Installed cable and cords (length [m], temperature [°C]), connections [Ω], spread of temperature [K].
 * @returns The pair loop of permanent link and channel at 20 °C and at the stated temperatures. [Ω]
 * @throws {@link InputError} If a piece is not a cable, a number is outside its domain, or the spread reaches below absolute zero.
 * @example 90 m of Category 5e with two connections, in a ceiling at 35 °C
 * const { permanentLink } = expectedReading({ installed: [{ cable: 'cat5e', length: 90, temperature: 35 }], connections: 2 });
 * const { low, value, high } = permanentLink.atTemperature;
 * [low, value, high].map((ohms) => ohms.toFixed(1)); // => ['15.4', '16.9', '18.7']
 */
export function expectedReading(input: ExpectedReadingInput): ExpectedReading {
  const { installed, cords, connections, connectionResistance, temperatureSpread, ...read } = readInput(EXPECTED_READING_FIELDS, input);
  const { linkConnections = connections < 3 ? connections : 3 } = read;
  requireInteger(linkConnections, 0, connections, 'linkConnections');
  const coldest = Math.min(...[...installed, ...cords].map(({ temperature = CONDUCTOR_TEMPERATURE.default }) => temperature));
  if (coldest - temperatureSpread < ABSOLUTE_ZERO) {
    throw new InputError('range', 'temperatureSpread', `so little that no piece may be under ${ABSOLUTE_ZERO} °C`, temperatureSpread);
  }
  const loop = (segments: readonly Segment[], count: number) => ({
    length: segments.reduce((sum, { length }) => sum + length, 0),
    connections: count,
    at20: figure(coldLoopOf(segments), segments, count, true),
    atTemperature: figure(loopOf(segments, temperatureSpread), segments, count, false),
  });
  return {
    permanentLink: loop(installed, linkConnections),
    channel: loop([...installed, ...cords], connections),
    source: 'field-loop-reading',
  };

  function figure({ low, high }: Interval, segments: readonly Segment[], count: number, isCold: boolean): BoundedFigure {
    const value = loopsOf(segments, count, connectionResistance, 'nominal', isCold).pairLoop;
    return { low, value, high: high + 2 * count * connectionResistance };
  }
}

/** The pair loop of pieces alone, at least and at most. [Ω] @internal */
export function loopOf(pieces: readonly Segment[], spread: Kelvins): Interval {
  let low = 0;
  let high = 0;
  for (const { cable, length, temperature = CONDUCTOR_TEMPERATURE.default } of pieces) {
    const perMetre = loopPerMetre(wireOf(cable), { low: temperature - spread, high: temperature + spread });
    low += perMetre.low * length;
    high += perMetre.high * length;
  }
  return { low, high };
}

/** The same of pieces at 20 °C. [Ω] @internal */
export function coldLoopOf(pieces: readonly Segment[]): Interval {
  return loopOf(
    pieces.map((piece) => ({ ...piece, temperature: 20 })),
    0,
  );
}
