/** Units of the working: how the trade spells each, what mathjs calls it, how LaTeX sets it. @module */

/** A unit that a figure of a working is in; `1` for a number without one. */
export type WorkingUnit = '1' | 'm' | 'mm' | 'mm²' | 'Ω' | 'Ω/m' | 'Ω·mm²/m' | 'MS/m' | 'S' | '1/K' | '°C' | 'K' | 'V' | 'V²' | 'A' | 'W';

/**
 * A temperature in °C is held as so many kelvins above 0 °C: only differences of it ever enter a formula, and mathjs would
 * take the difference of two of its own Celsius temperatures for a temperature again.
 */
export const WORKING_UNITS: Readonly<Record<WorkingUnit, { readonly mathjs: string; readonly latex: string }>> = {
  '1': { mathjs: '', latex: '' },
  m: { mathjs: 'm', latex: '\\mathrm{m}' },
  mm: { mathjs: 'mm', latex: '\\mathrm{mm}' },
  'mm²': { mathjs: 'mm^2', latex: '\\mathrm{mm^{2}}' },
  Ω: { mathjs: 'ohm', latex: '\\Omega' },
  'Ω/m': { mathjs: 'ohm/m', latex: '\\Omega/\\mathrm{m}' },
  'Ω·mm²/m': { mathjs: 'ohm mm^2/m', latex: '\\Omega\\,\\mathrm{mm^{2}/m}' },
  'MS/m': { mathjs: 'MS/m', latex: '\\mathrm{MS/m}' },
  S: { mathjs: 'S', latex: '\\mathrm{S}' },
  '1/K': { mathjs: 'K^-1', latex: '\\mathrm{K^{-1}}' },
  '°C': { mathjs: 'K', latex: '^{\\circ}\\mathrm{C}' },
  K: { mathjs: 'K', latex: '\\mathrm{K}' },
  V: { mathjs: 'V', latex: '\\mathrm{V}' },
  'V²': { mathjs: 'V^2', latex: '\\mathrm{V^{2}}' },
  A: { mathjs: 'A', latex: '\\mathrm{A}' },
  W: { mathjs: 'W', latex: '\\mathrm{W}' },
};
