/** Audio, speaker and control cable: two cores, perhaps a screen, out on one thing and back on another. @module */
import type { Conductor } from '../conductor/conductor.ts';
import { conductorFromResistance } from '../conductor/conductor-from-resistance.ts';
import type { MaterialName } from '../conductor/material.ts';
import { requireConductor } from '../conductor/resistance-per-metre.ts';
import { requireObject, requireOneOf, requirePositive } from '../quantity/guards.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Celsius } from '../quantity/units.ts';

/** What a two-core cable is sold for. */
export type TwoCoreUse = 'audio' | 'speaker' | 'control';

/** A screen that carries the current back. */
export interface ScreenReturn {
  readonly screen: {
    /** Resistance of the screen, drain wire included, from its data sheet or measured. No gauge gives it. [Ω/km] */
    readonly ohmsPerKilometre: number;
    /** Temperature at which it holds; 20 if absent. [°C] */
    readonly temperature?: Celsius | undefined;
    /** The metal of the screen; `annealed-copper` if absent. */
    readonly material?: MaterialName | undefined;
    /** `measured`, or `maximum` from a data sheet; `maximum` if absent. */
    readonly basis?: 'maximum' | 'measured' | undefined;
  };
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
  requireObject(input, 'input', 'an object with conductor, use and return');
  const { conductor, use, return: path = 'conductor', cores = 1 } = input;
  requireConductor(conductor, 'conductor');
  requireOneOf(use, ['audio', 'speaker', 'control'], 'use');
  requireOneOf(cores, [1, 2], 'cores');
  if (path === 'conductor') {
    if (cores === 2) throw new InputError('conflict', 'cores', '1: the second core carries the current back', cores);
    return { name: `${use} cable, ${conductor.name}`, use, out: { ...conductor }, back: { ...conductor } };
  }
  const back = screenConductor(path);
  const out = cores === 2 ? doubled(conductor) : { ...conductor };
  return { name: `${use} cable, ${out.name}, back on the screen`, use, out, back };
}

function screenConductor(path: ScreenReturn): Conductor {
  if (typeof path === 'string' && path !== 'screen') requireOneOf(path, ['conductor'], 'return');
  // Someone who only says that it is the screen is asked for the figure, at the place where it belongs.
  if (typeof path !== 'string') requireObject(path, 'return', "'conductor', or an object with screen");
  const screen = typeof path === 'string' ? undefined : path.screen;
  if (screen === undefined || (typeof screen === 'object' && screen !== null && screen.ohmsPerKilometre === undefined)) {
    const expected = 'the resistance of the screen in Ω/km, from its data sheet or measured: none is assumed';
    throw new InputError('missing', 'return.screen.ohmsPerKilometre', expected, undefined);
  }
  requireObject(screen, 'return.screen', 'an object with ohmsPerKilometre');
  const { ohmsPerKilometre, temperature, material, basis = 'maximum' } = screen;
  requirePositive(ohmsPerKilometre, 'return.screen.ohmsPerKilometre', 'Ω/km');
  requireOneOf(basis, ['maximum', 'measured'], 'return.screen.basis');
  return conductorFromResistance({ ohmsPerKilometre, temperature, material, basis, name: 'screen' });
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
