/** Numbers for reading: rounded here and nowhere else. @module */
import { UNIT_WORDS } from './unit-words.ts';

/** From here on, counting digits helps nobody. */
const LARGE = 1e6;

/** A number with a fixed count of decimals, for columns; very large ones as a power of ten. @internal */
export function fixed(value: number, decimals: number): string {
  if (Math.abs(value) >= LARGE) return value.toExponential(2).replace('e+', 'e');
  const text = value.toFixed(decimals);
  // A rounded -0.001 is no negative number.
  return text.startsWith('-') && Number(text) === 0 ? text.slice(1) : text;
}

/** A number without needless zeros, for sentences. @internal */
export function brief(value: number, decimals: number): string {
  const text = fixed(value, decimals);
  return text.includes('.') && !text.includes('e') ? text.replace(/\.?0+$/, '') : text;
}

/** Decimals that a reader can use. */
function decimalsOf(unit: string): number {
  return Object.hasOwn(UNIT_WORDS, unit) ? UNIT_WORDS[unit as keyof typeof UNIT_WORDS].decimals : 2;
}

/** A number with its unit, as in `12.95 W`. @internal */
export function amount(value: number, unit: string, decimals: number = decimalsOf(unit)): string {
  return `${brief(value, decimals)} ${unit}`;
}

/** Two figures with as many decimals as it takes to see that they differ. @internal */
export function apart(a: number, b: number, unit: string): [string, string] {
  let decimals = decimalsOf(unit);
  while (a !== b && decimals < 15 && brief(a, decimals) === brief(b, decimals)) decimals++;
  return [amount(a, unit, decimals), amount(b, unit, decimals)];
}

/** A fraction as a percentage, never rounded to 0 from either side. @internal */
export function percent(fraction: number): string {
  const hundredths = fraction * 100;
  let decimals = 0;
  while (hundredths !== 0 && decimals < 12 && Number(hundredths.toFixed(decimals)) === 0) decimals++;
  return `${fixed(hundredths, decimals)} %`;
}

/** `1 run`, `2 runs`. @internal */
export function count(number: number, one: string, many: string = `${one}s`): string {
  return `${number} ${number === 1 ? one : many}`;
}

/** Words with `{name}` filled in. @internal */
export function filled(words: string, parts: Readonly<Record<string, string | number>>): string {
  return words.replace(/\{(\w+)\}/g, (whole, name: string) => (Object.hasOwn(parts, name) ? String(parts[name]) : whole));
}
