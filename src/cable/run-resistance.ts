/** From the pieces of a run to the three loops that people mean by "its resistance". @module */
import { atTemperature, CONDUCTOR_TEMPERATURE } from '../conductor/resistance-per-metre.ts';
import type { Fields } from '../quantity/fields.ts';
import {
  hasMoreKeys,
  requireArray,
  requireInteger,
  requireNonNegative,
  requireObject,
  requireOneOf,
  requireTemperature,
} from '../quantity/guards.ts';
import { refuseUnknown } from '../quantity/nearest.ts';
import type { Celsius, Metres, Ohms } from '../quantity/units.ts';
import type { Cable } from './cable.ts';
import {
  CONNECTION_COUNT,
  CONNECTION_RESISTANCE,
  RUN_PIECE_FIELDS,
  type RunInput,
  type RunPiece,
  readCable,
  type Segment,
} from './read-cable.ts';

export type { RunInput, RunPiece, Segment } from './read-cable.ts';

/** Pieces in series, in any order. */
export interface RunResistanceInput extends Omit<RunInput, 'installed' | 'cords'> {
  /** Installed cable and cords. */
  readonly segments: readonly RunPiece[];
  /** `maximum` (what a check uses, and the default) or `nominal`. */
  readonly basis?: CableBasis | undefined;
}

/** At which of its resistances a cable is taken. */
export type CableBasis = (typeof CABLE_BASES)[number];

/** @internal */
export const CABLE_BASES = ['nominal', 'maximum'] as const;

/** @internal */
export const RUN_RESISTANCE_FIELDS: Fields<
  RunResistanceInput,
  'connections' | 'connectionResistance' | 'basis',
  { segments: readonly Segment[] }
> = {
  segments: { list: { object: () => RUN_PIECE_FIELDS } },
  connections: () => CONNECTION_COUNT,
  connectionResistance: () => CONNECTION_RESISTANCE,
  basis: { oneOf: () => CABLE_BASES, default: 'maximum' },
};

/** Which circuit a resistance in ohms belongs to. */
export type Loop = 'pairLoop' | 'twoPair' | 'fourPair';

/** The three loops of one run. With r the resistance of one conductor, end to end: */
export interface RunResistance {
  /** `2 r`: one pair shorted at the far end, as a meter reads it. [Ω] */
  readonly pairLoop: Ohms;
  /** `r`: out on both conductors of one pair, back on both of another: 2-pair power, one pairset. [Ω] */
  readonly twoPair: Ohms;
  /** `r/2`: two pairsets in parallel: 4-pair power. [Ω] */
  readonly fourPair: Ohms;
  /** All the pieces together, one way. [m] */
  readonly length: Metres;
  readonly basis: CableBasis;
}

/**
 * Resistance of a run of cables, cords and connections, as each of the three circuits that people mean by it.
 *
 * Equal conductors; each piece at its own temperature. Cords count as pieces like any other.
 *
 * @param input - Pieces (length [m], temperature [°C]), connections, resistance per connection [Ω], basis.
 * @returns The three loops [Ω] and the total length [m].
 * @throws {@link InputError} If a piece is not of a cable, a key is not known, or a number is outside its domain; `parameter` is a path
 *   such as `segments[3].length`.
 * @example 90 m of Category 5e at its limit, as a meter reads it and as 2-pair power sees it
 * const run = runResistance({ segments: [{ cable: 'cat5e', length: 90 }] });
 * [run.pairLoop.toFixed(2), run.twoPair.toFixed(2)]; // => ['16.88', '8.44']
 */
export function runResistance(input: RunResistanceInput): RunResistance {
  requireObject(input, 'input', 'an object with segments');
  if (hasMoreKeys(input, input.segments, input.connections, input.connectionResistance, input.basis)) {
    refuseUnknown(input, ['segments', 'connections', 'connectionResistance', 'basis'], '');
  }
  const { segments, connections = 0, connectionResistance = CONNECTION_RESISTANCE.default, basis = 'maximum' } = input;
  const pieces = readSegments(segments, 'segments');
  requireJoints(connections, connectionResistance);
  requireOneOf(basis, CABLE_BASES, 'basis');
  return loopsOf(pieces, connections, connectionResistance, basis, false);
}

/**
 * The loops of pieces that are known to be in order, as hot as they are or at 20 °C.
 *
 * Pieces are added in their order, so that equal runs have equal sums. @internal
 */
export function loopsOf(
  segments: readonly Segment[],
  connections: number,
  connectionResistance: Ohms,
  basis: CableBasis,
  cooled: boolean,
): RunResistance {
  let length = 0;
  let oneWay = connections * connectionResistance + 0;
  for (const { cable, length: piece, temperature } of segments) {
    oneWay += cableResistancePerMetre(cable, cooled ? 20 : temperature, basis) * piece;
    length += piece;
  }
  return { pairLoop: 2 * oneWay, twoPair: oneWay, fourPair: oneWay / 2, length, basis };
}

/** @internal */
export function requireJoints(connections: number, connectionResistance: Ohms): void {
  requireInteger(connections, 0, 1000, 'connections');
  requireNonNegative(connectionResistance, 'connectionResistance', 'Ω');
}

/** One conductor of one piece, end to end. [Ω] @internal */
export function segmentResistance({ cable, length, temperature }: Segment, basis: CableBasis): Ohms {
  return cableResistancePerMetre(cable, temperature, basis) * length;
}

/** The pieces of a list, each with its cable; an error names the list that a piece stands in. @internal */
export function readSegments(segments: readonly RunPiece[], parameter: string): readonly Segment[] {
  requireArray(segments, parameter, 'a list of { cable, length, temperature }');
  // By index: a hole in the list is no piece.
  return Array.from(segments, (segment, index) => {
    const path = `${parameter}[${index}]`;
    requireObject(segment, path, 'an object with cable and length');
    const { cable, length, temperature } = segment;
    if (hasMoreKeys(segment, cable, length, temperature)) refuseUnknown(segment, ['cable', 'length', 'temperature'], path);
    const known = readCable(cable, `${path}.cable`);
    requireNonNegative(length, `${path}.length`, 'm');
    if (temperature !== undefined) requireTemperature(temperature, `${path}.temperature`);
    return known === cable ? (segment as Segment) : { ...segment, cable: known };
  });
}

/** One conductor of a cable at a temperature. [Ω/m] @internal */
export function cableResistancePerMetre(
  cable: Cable,
  temperature: Celsius | undefined = CONDUCTOR_TEMPERATURE.default,
  basis: CableBasis,
): number {
  const at20 = basis === 'maximum' ? cable.maximumResistancePerMetre : cable.nominalResistancePerMetre;
  return atTemperature(at20, cable.temperatureCoefficient, temperature);
}
