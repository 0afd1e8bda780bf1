/** A cable or its name, and the pieces of a run, as public inputs hold them. @module */
import type { DefaultField, Fields } from '../quantity/fields.ts';
import { refuse } from '../quantity/guards.ts';
import { requireName } from '../quantity/nearest.ts';
import type { Celsius, Metres, Ohms } from '../quantity/units.ts';
import { type Cable, cable } from './cable.ts';
import { CABLES, type CableName } from './cables.ts';

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

/** The cable itself; a name is looked up. @internal */
export function readCable(given: CableOrName, path: string): Cable {
  if (typeof given === 'string') {
    requireName(given, Object.keys(CABLES), path);
    return cable(given);
  }
  if (typeof given !== 'object' || given === null) refuse(given, path, "a cable, such as cable('cat5e'), or its name", 'type');
  return given;
}

/** @internal */
export const RUN_PIECE_FIELDS: Fields<RunPiece, 'temperature', { readonly cable: Cable }> = {
  cable: { read: (given, path) => readCable(given, path), type: 'Cable' },
  length: { nonNegative: 'm' },
  temperature: () => CONDUCTOR_TEMPERATURE,
};

/** @internal */
export const CONDUCTOR_TEMPERATURE: DefaultField<Celsius> = { temperature: '°C', default: 20, source: 'library-default' };

/** Mated plugs and jacks. @internal */
export const CONNECTION_COUNT: DefaultField<number> = { whole: [0, 1000], default: 0, source: 'library-default' };

/** Input to output of one connection, per conductor. [Ω] @internal */
export const CONNECTION_RESISTANCE: DefaultField<Ohms> = { nonNegative: 'Ω', default: 0.2, source: 'tia-568.2-d-connection' };
