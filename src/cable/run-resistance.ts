/** From the pieces of a run to the three loops that people mean by "its resistance". @module */
import { atTemperature, requireCoefficient } from '../conductor/resistance-per-metre.ts';
import {
  refuse,
  requireArray,
  requireInteger,
  requireNonNegative,
  requireObject,
  requireOneOf,
  requirePositive,
  requireTemperature,
} from '../quantity/guards.ts';
import type { Celsius, Metres, Ohms } from '../quantity/units.ts';
import type { Cable } from './cable.ts';

/** One piece of cable at one temperature. */
export interface Segment {
  readonly cable: Cable;
  /** Length of the piece, one way. [m] */
  readonly length: Metres;
  /** Conductor temperature (ambient plus bundle rise); 20 if absent. [°C] */
  readonly temperature?: Celsius | undefined;
}

/** A run from the switch to the device. */
export interface RunResistanceInput {
  /** The pieces in series: installed cable and cords, in any order. */
  readonly segments: readonly Segment[];
  /** Mated plugs and jacks along the run; an in-line coupler is two. 0 if absent. */
  readonly connections?: number | undefined;
  /** Input to output of one connection, per conductor; 0.2 if absent (ANSI/TIA-568.2-D, from memory). [Ω] */
  readonly connectionResistance?: Ohms | undefined;
  /** `maximum` (what a check uses, and the default) or `nominal`. */
  readonly basis?: 'nominal' | 'maximum' | undefined;
}

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
  readonly basis: 'nominal' | 'maximum';
}

/**
 * Resistance of a run of cables, cords and connections, as each of the three circuits that people mean by it.
 *
 * Equal conductors; each piece at its own temperature. Cords count as pieces like any other.
 *
 * @param input - Pieces (length [m], temperature [°C]), connections, resistance per connection [Ω], basis.
 * @returns The three loops [Ω] and the total length [m].
 * @throws {@link InputError} If a piece is not a cable, or a number is outside its domain; `parameter` is a path
 *   such as `segments[3].length`.
 * @example 90 m of Category 5e at its limit, as a meter reads it and as 2-pair power sees it
 * const run = runResistance({ segments: [{ cable: cable('cat5e'), length: 90 }] });
 * [run.pairLoop.toFixed(2), run.twoPair.toFixed(2)]; // => ['16.88', '8.44']
 */
export function runResistance(input: RunResistanceInput): RunResistance {
  requireObject(input, 'input', 'an object with segments');
  const { segments, connections = 0, connectionResistance = 0.2, basis = 'maximum' } = input;
  requireArray(segments, 'segments', 'a list of { cable, length, temperature }');
  requireJoints(connections, connectionResistance);
  requireOneOf(basis, ['nominal', 'maximum'], 'basis');

  for (let i = 0; i < segments.length; i++) segmentResistance(segments[i] as Segment, basis, `segments[${i}]`);
  return loopsOf(segments, connections, connectionResistance, basis, false);
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
  basis: 'nominal' | 'maximum',
  cooled: boolean,
): RunResistance {
  let length = 0;
  let oneWay = connections * connectionResistance + 0;
  for (let i = 0; i < segments.length; i++) {
    const { cable, length: piece, temperature = 20 } = segments[i] as Segment;
    const at20 = basis === 'maximum' ? cable.maximumResistancePerMetre : cable.nominalResistancePerMetre;
    oneWay += atTemperature(at20, cable.temperatureCoefficient, cooled ? 20 : temperature) * piece;
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
export function segmentResistance(segment: Segment, basis: 'nominal' | 'maximum', path: string): Ohms {
  requireObject(segment, path, 'an object with cable and length');
  requireNonNegative(segment.length, `${path}.length`, 'm');
  return (
    cableResistancePerMetre(segment.cable, segment.temperature === undefined ? 20 : segment.temperature, basis, `${path}.`) * segment.length
  );
}

/** Requires every piece of a list to be one, so that an error names the list it stands in. @internal */
export function requireSegments(segments: readonly Segment[], parameter: string): void {
  requireArray(segments, parameter, 'a list of { cable, length, temperature }');
  for (let index = 0; index < segments.length; index++) {
    const segment = segments[index] as Segment;
    segmentResistance(segment, 'maximum', `${parameter}[${index}]`);
    const { gauge } = segment.cable;
    if (!(typeof gauge === 'number' && gauge >= -3 && gauge <= 40)) requireInteger(gauge, -3, 40, `${parameter}[${index}].cable.gauge`);
  }
}

/** One conductor of a cable at a temperature. [Ω/m] @internal */
export function cableResistancePerMetre(cable: Cable, temperature: Celsius, basis: 'nominal' | 'maximum', prefix: string): number {
  if (typeof cable !== 'object' || cable === null) {
    refuse(cable, `${prefix}cable`, "a cable, such as cable('cat5e')", 'type');
  }
  const at20 = basis === 'maximum' ? cable.maximumResistancePerMetre : cable.nominalResistancePerMetre;
  requirePositive(at20, `${prefix}cable.${basis}ResistancePerMetre`, 'Ω/m');
  requireCoefficient(cable.temperatureCoefficient, `${prefix}cable.temperatureCoefficient`);
  requireTemperature(temperature, `${prefix}temperature`);
  return atTemperature(at20, cable.temperatureCoefficient, temperature);
}
