/** The American Wire Gauge: numbers, names, diameters. @module */
import { refuse } from '../quantity/guards.ts';
import type { Millimetres } from '../quantity/units.ts';

/** A gauge: a whole number from -3 (4/0) to 40, or the trade's names for the four largest. */
export type AwgSize = number | '1/0' | '2/0' | '3/0' | '4/0';

/**
 * The two families of published wire tables. `formula`: unrounded diameters. `astm-b258`: diameters rounded to
 * 0.0001 in, as ASTM B258, B3, B33 and the NEC tabulate them.
 */
export type AwgFamily = 'formula' | 'astm-b258';

/** Gauge number of 4/0. */
export const LARGEST_GAUGE = -3;
/** Gauge number of the thinnest wire here. */
export const SMALLEST_GAUGE = 40;
/** Diameter of 36 AWG [mm], and of 4/0 over it: 39 gauges apart. ASTM B258. */
const FINE_DIAMETER = 0.127;
const DIAMETER_RATIO = 92;
const STEPS = 39;
/** ASTM B258 tabulates to 0.0001 in. [mm] */
const TABULATED_STEP = 0.00254;

/** @internal */
export function gaugeNumber(size: AwgSize, parameter = 'size'): number {
  if (typeof size === 'number' && Number.isInteger(size) && size >= LARGEST_GAUGE && size <= SMALLEST_GAUGE) return size;
  if (size === '1/0' || size === '2/0' || size === '3/0' || size === '4/0') return 1 - Number(size[0]);
  refuse(size, parameter, "a whole number from -3 to 40, or '1/0' to '4/0'", typeof size === 'number' ? 'range' : 'unknown');
}

/** `24`, or `2/0`. @internal */
export function gaugeName(gauge: number): string {
  return gauge < 1 ? `${1 - gauge}/0` : `${gauge}`;
}

/** Unrounded, by the progression of ASTM B258. @internal */
export function formulaDiameter(gauge: number): Millimetres {
  return FINE_DIAMETER * DIAMETER_RATIO ** ((36 - gauge) / STEPS);
}

/** To 0.0001 in, as ASTM B258 tabulates it. @internal */
export function tabulatedDiameter(gauge: number): Millimetres {
  return Math.round(formulaDiameter(gauge) / TABULATED_STEP) * TABULATED_STEP;
}

/** The place of a diameter on the progression, between whole gauges. @internal */
export function gaugeOfDiameter(diameter: Millimetres): number {
  return 36 - (STEPS * Math.log(diameter / FINE_DIAMETER)) / Math.log(DIAMETER_RATIO);
}
