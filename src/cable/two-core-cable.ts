/** Audio, speaker and control cable: two cores, perhaps a screen, out on one thing and back on another. @module */
import type { Conductor } from '../conductor/conductor.ts';
import { conductorFromResistance } from '../conductor/conductor-from-resistance.ts';
import { type MaterialName, materialNames } from '../conductor/material.ts';
import { CONDUCTOR, CONDUCTOR_TEMPERATURE } from '../conductor/resistance-per-metre.ts';
import { type Fields, readInput } from '../quantity/fields.ts';
import { refuse, requireObject } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Celsius } from '../quantity/units.ts';

/** What a two-core cable is sold for. */
export type TwoCoreUse = 'audio' | 'speaker' | 'control';

/** A screen as its data sheet or a meter has it. */
export interface Screen {
  /** Resistance of the screen, drain wire included, from its data sheet or measured. No gauge gives it. [Ω/km] */
  readonly ohmsPerKilometre: number;
  /** Temperature at which it holds; 20 if absent. [°C] */
  readonly temperature?: Celsius | undefined;
  /** The metal of the screen; `annealed-copper` if absent. */
  readonly material?: MaterialName | undefined;
  /** `measured`, or `maximum` from a data sheet; `maximum` if absent. */
  readonly basis?: 'maximum' | 'measured' | undefined;
}

/** A screen that carries the current back. */
export interface ScreenReturn {
  readonly screen: Screen;
}

/** A cable of two equal cores. */
export interface TwoCoreCableInput {
  /** One core, by AWG or mm², as `awg(22, { stranding: 'stranded' })`. */
  readonly conductor: Conductor;
  readonly use: TwoCoreUse;
  /** What the current comes back on: the other core if absent, or the screen. */
  readonly return?: 'conductor' | ScreenReturn | undefined;
  /** Cores that carry it out, side by side: 1 if absent; 2 only where the screen carries it back. */
  readonly cores?: 1 | 2 | undefined;
}

/** @internal */
export const SCREEN_FIELDS: Fields<Screen, 'temperature' | 'material' | 'basis'> = {
  ohmsPerKilometre: { positive: 'Ω/km' },
  temperature: () => CONDUCTOR_TEMPERATURE,
  material: { oneOf: () => materialNames, default: 'annealed-copper' },
  basis: { oneOf: () => ['maximum', 'measured'], default: 'maximum' },
};

/** @internal */
export const TWO_CORE_CABLE_FIELDS: Fields<TwoCoreCableInput, 'return' | 'cores', { return: Conductor | undefined }> = {
  conductor: () => CONDUCTOR,
  use: { oneOf: () => ['audio', 'speaker', 'control'] },
  return: { read: (value, path) => screenConductor(value, path), type: 'ScreenReturn', default: 'conductor' },
  cores: { oneOf: () => [1, 2], default: 1 },
};

/** A two-core cable, as plain data: `out` and `back` go into `voltageDrop`, `checkTwoWireRun` and `maximumRun` as they are. */
export interface TwoCoreCable {
  /** As in `audio cable, 22 AWG stranded, back on the screen`. */
  readonly name: string;
  readonly use: TwoCoreUse;
  readonly out: Conductor;
  readonly back: Conductor;
}

/**
 * A two-core cable for a DC circuit: out on a core, back on the other, or on the screen.
 *
 * A screen has no gauge, and no figure is assumed for it: braid, foil and drain wire differ by a factor of ten. State
 * the one on the data sheet, or measure core and screen shorted at the far end and take the core off. Cores are as
 * given: a nominal one is brought to its maximum by the checks.
 *
 * @param input - One core, what the cable is for, what the current comes back on (a screen in Ω/km), cores in parallel.
 * @returns Name, and the conductors out and back (resistance at 20 °C [Ω/m]).
 * @throws {@link InputError} If the screen has no resistance (`missing`), or two cores go out and none is left to come back.
 * @example A beltpack on 80 m of screened audio pair, the screen 15 Ω/km by its data sheet
 * const { out, back } = twoCoreCable({
 *   conductor: awg(22, { stranding: 'stranded' }), use: 'audio', return: { screen: { ohmsPerKilometre: 15 } },
 * });
 * const point = voltageDrop({ supplyVoltage: 24, out, back, length: 80, load: { current: 0.1 } });
 * point.feasible && point.voltageDrop.toFixed(2); // => '0.55'
 */
export function twoCoreCable(input: TwoCoreCableInput): TwoCoreCable {
  const { conductor, use, return: screen, cores } = readInput(TWO_CORE_CABLE_FIELDS, input);
  if (screen === undefined) {
    if (cores === 2) throw new InputError('conflict', 'cores', '1: the second core carries the current back', cores);
    return { name: `${use} cable, ${conductor.name}`, use, out: { ...conductor }, back: { ...conductor } };
  }
  const out = cores === 2 ? doubled(conductor) : { ...conductor };
  return { name: `${use} cable, ${out.name}, back on the screen`, use, out, back: screen };
}

/** The screen as a conductor; nothing where the other core carries the current back. */
function screenConductor(back: 'conductor' | ScreenReturn, path: string): Conductor | undefined {
  if (back === 'conductor') return undefined;
  // Someone who only says that it is the screen is asked for the figure, at the place where it belongs.
  const given: unknown = back;
  if (typeof given !== 'string') requireObject(given, path, "'conductor', or an object with screen");
  else if (given !== 'screen') refuse(given, path, "'conductor', or an object with screen", 'unknown');
  const { screen = {} }: { readonly screen?: Partial<Screen> | null } = Object(given);
  if (typeof screen === 'object' && screen?.ohmsPerKilometre === undefined) {
    const expected = 'the resistance of the screen in Ω/km, from its data sheet or measured: none is assumed';
    throw new InputError('missing', `${path}.screen.ohmsPerKilometre`, expected, undefined);
  }
  return conductorFromResistance({ ...readInput(SCREEN_FIELDS, screen as Screen, `${path}.screen`), name: 'screen' });
}

/** Two cores side by side. */
function doubled(conductor: Conductor): Conductor {
  return {
    ...conductor,
    name: `2 × ${conductor.name}`,
    area: 2 * conductor.area,
    diameter: Math.SQRT2 * conductor.diameter,
    resistancePerMetre: conductor.resistancePerMetre / 2,
  };
}
