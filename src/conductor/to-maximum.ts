/** From the resistance a conductor should have to the most it may have, and back. @module */
import { type Fields, readInput } from '../quantity/fields.ts';
import { requirePositive } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { SourceKey } from '../sources/sources.ts';
import type { Conductor } from './conductor.ts';
import { CONDUCTOR, requireConductor } from './resistance-per-metre.ts';

/** ASTM B3: ±1 % of diameter, so 2 % of resistance. */
const DIAMETER_TOLERANCE_FACTOR = 1.02;
/** The same tolerance below 0.0100 in: ±0.0001 in. [mm] */
const FINE_WIRE = 0.254;
const FINE_TOLERANCE = 0.00254;

/** A conductor, and how far the most it may have lies above its nominal resistance. */
export interface AllowanceInput {
  readonly conductor: Conductor;
  /** Maximum resistance over nominal resistance: a ratio of at least 1. */
  readonly allowance?: number | undefined;
}

/** @internal */
export const ALLOWANCE_FIELDS: Fields<AllowanceInput> = {
  conductor: () => CONDUCTOR,
  allowance: { between: [1, 2], is: 'a ratio', unit: 'of maximum to nominal resistance', optional: true },
};

/** An allowance between the nominal resistance and the most it may be. */
export interface Allowance {
  /** Maximum over nominal resistance, a ratio. */
  readonly factor: number;
  readonly source: SourceKey;
}

/**
 * The same conductor at the most resistance its gauge tolerance allows: what a check uses.
 *
 * A nominal conductor is taken 2 % up for the tolerance of its diameter (stranding already carries its own 2 % for
 * the lay), or by the `allowance` given. A conductor whose basis is `maximum` or `measured` is returned as it is: nothing
 * is added twice. Solid wire thinner than 30 AWG has a wider tolerance: see {@link diameterAllowance}.
 *
 * @param input - Any conductor, and the allowance; 1.02 if absent.
 * @returns A conductor with `basis: 'maximum'` (or `'measured'`), resistance at 20 °C [Ω/m].
 * @throws {@link InputError} If the conductor is not one, or the allowance is not from 1 to 2.
 * @example
 * (toMaximum({ conductor: awg(18) }).resistancePerMetre / awg(18).resistancePerMetre).toFixed(2); // => '1.02'
 */
export function toMaximum(input: AllowanceInput): Conductor {
  const { conductor, allowance } = readInput(ALLOWANCE_FIELDS, input);
  return allowance === undefined ? atMaximum(conductor) : atMaximum(conductor, allowance, conductor.source);
}

/** The same for a conductor that is known to be one. @internal */
export function atMaximum(conductor: Conductor, allowance: number = DIAMETER_TOLERANCE_FACTOR, source: SourceKey = 'astm-b3'): Conductor {
  if (conductor.basis !== 'nominal') return { ...conductor };
  return { ...conductor, resistancePerMetre: conductor.resistancePerMetre * allowance, basis: 'maximum', source };
}

/**
 * The nominal conductor behind a maximum: {@link toMaximum} undone.
 *
 * What {@link toMaximum} made is brought back by the same 2 %. A maximum from a table or a data sheet does not say how far
 * above nominal it lies (IEC 60228 by 4 to 16 %): there the allowance must be given.
 *
 * @param input - Any conductor that was not measured, and the allowance that its maximum contains; 1.02 if absent and the
 *   maximum came from {@link toMaximum}.
 * @returns A conductor with `basis: 'nominal'`, resistance at 20 °C [Ω/m].
 * @throws {@link InputError} If the conductor is not one, was measured, or its allowance is not known.
 * @example
 * toNominal({ conductor: toMaximum({ conductor: awg(18) }) }).resistancePerMetre.toFixed(5) === awg(18).resistancePerMetre.toFixed(5); // => true
 * @example A data sheet with 10 % to spare
 * toNominal({ conductor: metric(0.22), allowance: 1.1 }).resistancePerMetre.toFixed(4); // => '0.0873'
 */
export function toNominal(input: AllowanceInput): Conductor {
  const { conductor, allowance: given } = readInput(ALLOWANCE_FIELDS, input);
  if (conductor.basis === 'nominal') return { ...conductor };
  if (conductor.basis !== 'maximum') {
    throw new InputError('conflict', 'conductor.basis', 'nominal or maximum: a measured resistance has no allowance', conductor.basis);
  }
  const allowance = given ?? (conductor.source === 'astm-b3' ? DIAMETER_TOLERANCE_FACTOR : undefined);
  if (allowance === undefined) {
    throw new InputError('missing', 'allowance', 'the ratio of this maximum to the nominal resistance, from 1 to 2', allowance);
  }
  return { ...conductor, resistancePerMetre: conductor.resistancePerMetre / allowance, basis: 'nominal' };
}

/**
 * What the diameter tolerance of ASTM B3 allows a solid wire of this gauge in resistance.
 *
 * ±1 % of diameter from 0.0100 in (30 AWG) up, so 2 %; ±0.0001 in below, so 4 % at 36 AWG. Remembered, not re-read.
 *
 * @param conductor - A solid conductor.
 * @returns The allowance, to hand to {@link toMaximum}.
 * @throws {@link InputError} If the conductor is not one.
 * @example
 * diameterAllowance(awg(36)).factor.toFixed(2); // => '1.04'
 * @example
 * toMaximum({ conductor: awg(36), allowance: diameterAllowance(awg(36)).factor }).basis; // => 'maximum'
 */
export function diameterAllowance(conductor: Conductor): Allowance {
  requireConductor(conductor, 'conductor');
  requirePositive(conductor.diameter, 'conductor.diameter', 'mm');
  const factor = conductor.diameter >= FINE_WIRE ? DIAMETER_TOLERANCE_FACTOR : 1 + (2 * FINE_TOLERANCE) / conductor.diameter;
  return { factor, source: 'astm-b3' };
}
