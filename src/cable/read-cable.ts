/** A cable or its name, and the pieces of a run, as public inputs hold them. @module */
import { LARGEST_GAUGE, SMALLEST_GAUGE } from '../conductor/gauge.ts';
import { CONDUCTOR_TEMPERATURE, requireCoefficient } from '../conductor/resistance-per-metre.ts';
import type { DefaultField, Field, Fields } from '../quantity/fields.ts';
import { refuse, requireInteger, requirePositive } from '../quantity/guards.ts';
import { requireName } from '../quantity/nearest.ts';
import type { Celsius, Metres, Ohms } from '../quantity/units.ts';
import { type Cable, cable } from './cable.ts';
import { type CableName, cableNames } from './cables.ts';

/** A cable, or the name of one of the table. */
export type CableOrName = Cable | CableName;

/** One piece of cable at one temperature. */
export interface RunPiece {
  /** The cable, such as `cable('cat6')`, or its name. */
  readonly cable: CableOrName;
  /** Length of the piece, one way. [m] */
  readonly length: Metres;
  /** Conductor temperature (ambient plus bundle rise); 20 if absent. [°C] */
  readonly temperature?: Celsius | undefined;
}

/** One piece whose cable was looked up. */
export interface Segment extends RunPiece {
  readonly cable: Cable;
}

/** A run from the switch to the device, as every function takes it that asks for one. */
export interface RunInput {
  /** Cable installed for good: the permanent link. At least one piece. */
  readonly installed: readonly RunPiece[];
  /** Cords at its ends; none if absent. */
  readonly cords?: readonly RunPiece[] | undefined;
  /** Mated plugs and jacks along the run; an in-line coupler is two. 0 if absent. */
  readonly connections?: number | undefined;
  /** Input to output of one connection, per conductor, at most; 0.2 if absent (ANSI/TIA-568.2-D, from memory). [Ω] */
  readonly connectionResistance?: Ohms | undefined;
}

/** @internal */
export const CABLE: Field<CableOrName, Cable> = { read: (given, path) => readCable(given, path), type: 'Cable' };

/** @internal */
export const RUN_PIECE_FIELDS: Fields<RunPiece, 'temperature', { readonly cable: Cable }> = {
  cable: () => CABLE,
  length: { nonNegative: 'm' },
  temperature: () => CONDUCTOR_TEMPERATURE,
};

/** @internal */
export const INSTALLED: Field<readonly RunPiece[], readonly Segment[]> = {
  list: { object: () => RUN_PIECE_FIELDS },
  least: 'piece of cable',
};

/** @internal */
export const CORDS: DefaultField<readonly RunPiece[], readonly Segment[]> = {
  list: { object: () => RUN_PIECE_FIELDS },
  default: [],
  source: 'library-default',
};

/** Mated plugs and jacks. @internal */
export const CONNECTION_COUNT: DefaultField<number> = { whole: [0, 1000], default: 0, source: 'library-default' };

/** Input to output of one connection, per conductor. [Ω] @internal */
export const CONNECTION_RESISTANCE: DefaultField<Ohms> = { nonNegative: 'Ω', default: 0.2, source: 'tia-568.2-d-connection' };

/** The cable itself, checked so far as arithmetic needs it; a name is looked up. @internal */
export function readCable(given: CableOrName, path: string): Cable {
  if (typeof given === 'string') {
    requireName(given, cableNames, path);
    return cable(given);
  }
  if (typeof given !== 'object' || given === null) refuse(given, path, "a cable, such as cable('cat5e'), or its name", 'type');
  requirePositive(given.maximumResistancePerMetre, `${path}.maximumResistancePerMetre`, 'Ω/m');
  requirePositive(given.nominalResistancePerMetre, `${path}.nominalResistancePerMetre`, 'Ω/m');
  requireCoefficient(given.temperatureCoefficient, `${path}.temperatureCoefficient`);
  const { gauge } = given;
  if (!(typeof gauge === 'number' && gauge >= LARGEST_GAUGE && gauge <= SMALLEST_GAUGE)) {
    requireInteger(gauge, LARGEST_GAUGE, SMALLEST_GAUGE, `${path}.gauge`);
  }
  return given;
}
