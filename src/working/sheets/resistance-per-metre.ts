/** Resistance of one metre of a conductor, hot or cold. @module */
import type { Conductor } from '../../conductor/conductor.ts';
import { resistancePerMetre } from '../../conductor/resistance-per-metre.ts';
import { requireObject } from '../../quantity/guards.ts';
import type { Celsius } from '../../quantity/units.ts';
import type { Sheet } from '../sheet.ts';
import { conductorGivens, conductorReading, conductorSteps, temperatureAssumption } from './shared.ts';

/** The arguments of `resistancePerMetre` in one object. */
export interface ResistancePerMetreInput {
  readonly conductor: Conductor;
  /** Conductor temperature; 20 if absent. [°C] */
  readonly temperature?: Celsius | undefined;
}

export const resistancePerMetreSheet: Sheet<ResistancePerMetreInput> = {
  title: 'Resistance of a conductor at its temperature',
  core: 'resistancePerMetre',
  keys: ['conductor', 'temperature'],
  givens: conductorGivens,
  steps: conductorSteps.map((step) => ({ ...step, core: 'resistancePerMetre' })),
  assumptions: ['Resistance rises along a straight line with temperature.'],
  validity: 'For copper the straight line is within 0.45 % from 0 to 77 °C. The temperature is that of the conductor, not of the air.',
  cautions: [],
  slips: [{ slip: 'cold-resistance', givens: { T: 'T_ref' } }],
  guard: (input) => {
    requireObject(input, 'input', 'an object with conductor');
    return resistancePerMetre(input.conductor, input.temperature);
  },
  read: ({ conductor, temperature }) => ({ ...conductorReading(conductor, temperature), assumptions: temperatureAssumption(temperature) }),
};

