/** Units of the working: how the trade spells each, what mathjs calls it, how LaTeX sets it. @module */

const UNITS = [
  '1',
  'm',
  'mm',
  'mm²',
  'Ω',
  'Ω/m',
  'Ω·mm²/m',
  'MS/m',
  '1/K',
  '°C',
  'K',
  'V',
  'V²',
  'A',
  'W',
  'S',
  'W/m',
  'K·m/W',
  'W/(m·K)',
  'W/(m²·K)',
  'W/(m²·K⁴)',
  'Pa',
  'Pa·s',
  'Pa·s/√K',
  'J/(kg·K)',
  'm/s²',
  'm²/s',
] as const;

/** A unit that a figure of a working is in; `1` for a number without one. */
export type WorkingUnit = (typeof UNITS)[number];

/** Every unit. @internal */
export const WORKING_UNITS: readonly WorkingUnit[] = UNITS;

const OHM = { mathjs: 'ohm' } as const;

/**
 * As mathjs calls it. A temperature in °C is held as so many kelvins above 0 °C: only differences of it ever enter a formula, and
 * mathjs would take the difference of two of its own Celsius temperatures for a temperature again.
 * @internal
 */
export function unitMathjs(unit: WorkingUnit): string {
  if (unit === '1') return '';
  return unit
    .replace('1/K', 'K^-1')
    .replace('°C', 'K')
    .replace('√K', 'K^0.5')
    .replaceAll('Ω', OHM.mathjs)
    .replaceAll('·', ' ')
    .replaceAll('²', '^2')
    .replaceAll('⁴', '^4');
}

/** As LaTeX sets it. @internal */
export function unitLatex(unit: WorkingUnit): string {
  if (unit === '1') return '';
  if (unit === '°C') return '^{\\circ}\\mathrm{C}';
  const upright = unit
    .replace('1/K', 'K^{-1}')
    .replace('√K', 'K^{1/2}')
    .replaceAll('·', '\\,')
    .replaceAll('²', '^{2}')
    .replaceAll('⁴', '^{4}');
  return upright.replace(
    /^(Ω?)(\/|\\,)?(.*)$/,
    (_whole, ohm: string, sign: string = '', rest: string) => `${ohm && '\\Omega'}${sign}${rest && `\\mathrm{${rest}}`}`,
  );
}
