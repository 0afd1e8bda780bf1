/** How much more signal a warm cable loses than a cool one. @module */
import { type Fields, readInput } from '../quantity/fields.ts';
import type { Celsius } from '../quantity/units.ts';
import { INSERTION_LOSS } from './insertion-loss-table.ts';

/** The hottest cable for which any rule of the cabling standards was read. [°C] @internal */
export const HOTTEST_CABLING = 60;

/** A cable at a temperature. */
export interface InsertionLossInput {
  /** Average over the cable, -100 to 60. [°C] */
  readonly temperature: Celsius;
  /** Whether it has a screen; `false` if absent. */
  readonly screened?: boolean | undefined;
}

/** @internal */
export const INSERTION_LOSS_FIELDS: Fields<InsertionLossInput, 'screened'> = {
  temperature: { between: [-100, 60], is: 'a temperature', unit: '°C' },
  screened: { flag: true, default: false },
};

/**
 * Insertion loss of a cable against the same cable at 20 °C, by the percentage rule of the cabling standards.
 *
 * Unscreened: 0.4 % per kelvin from 20 to 40 °C, then 0.6 % more to 60 °C. Screened: 0.2 % per kelvin. 1 at 20 °C and
 * below: no rule rewards the cold. It is about signals, not about resistance, which rises 0.393 % per kelvin throughout.
 *
 * @param input - Average temperature of the cable [°C], and whether it is screened.
 * @returns A factor, 1 or more.
 * @throws {@link InputError} If the temperature is not from -100 to 60 °C, where the rule ends.
 * @example
 * insertionLossFactor({ temperature: 50 }).toFixed(2); // => '1.14'
 */
export function insertionLossFactor(input: InsertionLossInput): number {
  const { temperature, screened } = readInput(INSERTION_LOSS_FIELDS, input);
  return lossFactor(temperature, screened);
}

/** The same; past its end the last slope goes on, for a run that fails for its heat anyway. @internal */
export function lossFactor(temperature: Celsius, screened: boolean): number {
  const stretches = INSERTION_LOSS[screened ? 'screened' : 'unscreened'];
  let percent = 0;
  let from = 20;
  for (const [index, { to, percentPerKelvin }] of stretches.entries()) {
    const end = index === stretches.length - 1 ? temperature : Math.min(temperature, to);
    if (end > from) percent += percentPerKelvin * (end - from);
    from = to;
  }
  return 1 + percent / 100;
}
