/** Figures as a person writes them: sensible digits, the unit as the trade spells it. @module */
import { unitLatex, type WorkingUnit } from './working-unit.ts';

/** Significant figures of a step; a figure that needs fewer is written with fewer. */
const DIGITS = 4;
/** Of a given, which is written as it was stated, if that is not longer. */
const GIVEN_DIGITS = 6;

/** The number alone: all its digits if it has few, else rounded, a half away from 0. */
export function shownNumber(value: number, isGiven: boolean): string {
  const text = roundedTo(value, isGiven ? GIVEN_DIGITS : DIGITS);
  const rounded = Number(text);
  // 0.6 as it came out of a root, a few units in the last place off, is 0.6.
  if (Math.abs(rounded - value) <= 1e-12 * Math.abs(value)) return String(rounded);
  // A whole number is not cut: 123 456 is not 1.235e+5.
  return text.includes('e') && Math.abs(value) >= 1 && Math.abs(value) < 1e9 ? value.toFixed(0) : text.replace('e+', 'e');
}

/** 328.15 is held a little below what it says; to twelve digits it is what it says, and a half of the last place goes up. */
function roundedTo(value: number, digits: number): string {
  const decimal = Number(value.toPrecision(12));
  return (decimal * (1 + 1e-14)).toPrecision(digits);
}

/** The number with its unit. */
export function shownFigure(value: number, unit: WorkingUnit, isGiven: boolean): string {
  const number = shownNumber(value, isGiven);
  if (unit === '1/K') return `${number}/K`;
  return unit === '1' ? number : `${number} ${unit}`;
}

/** The number alone in LaTeX. */
export function latexNumber(value: number, isGiven: boolean): string {
  const [mantissa = '', exponent] = shownNumber(value, isGiven).split('e');
  return exponent === undefined ? mantissa : `${mantissa} \\times 10^{${exponent}}`;
}

/** The number with its unit in LaTeX. */
export function latexFigure(value: number, unit: WorkingUnit, isGiven: boolean): string {
  const number = latexNumber(value, isGiven);
  return unit === '1' ? number : `${number}\\,${unitLatex(unit)}`;
}

/** Whether the figure was rounded to be shown. */
export function isRounded(value: number, isGiven: boolean): boolean {
  return Math.abs(Number(shownNumber(value, isGiven)) - value) > 1e-12 * Math.abs(value);
}
