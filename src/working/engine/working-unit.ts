/** Units of the working: how the trade spells each, what mathjs calls it, how LaTeX sets it. @module */

/** A unit that a figure of a working is in; `1` for a number without one. */
export type WorkingUnit =
  | '1'
  | 'm'
  | 'mm'
  | 'mm²'
  | 'Ω'
  | 'Ω/m'
  | 'Ω·mm²/m'
  | 'MS/m'
  | '1/K'
  | '°C'
  | 'K'
  | 'V'
  | 'V²'
  | 'A'
  | 'W'
  | 'S'
  | 'W/m'
  | 'K·m/W'
  | 'W/(m·K)'
  | 'W/(m²·K)'
  | 'W/(m²·K⁴)'
  | 'Pa'
  | 'Pa·s'
  | 'Pa·s/√K'
  | 'J/(kg·K)'
  | 'm/s²'
  | 'm²/s';

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
  '1/K': { mathjs: 'K^-1', latex: '\\mathrm{K^{-1}}' },
  '°C': { mathjs: 'K', latex: '^{\\circ}\\mathrm{C}' },
  K: { mathjs: 'K', latex: '\\mathrm{K}' },
  V: { mathjs: 'V', latex: '\\mathrm{V}' },
  'V²': { mathjs: 'V^2', latex: '\\mathrm{V^{2}}' },
  A: { mathjs: 'A', latex: '\\mathrm{A}' },
  W: { mathjs: 'W', latex: '\\mathrm{W}' },
  S: { mathjs: 'S', latex: '\\mathrm{S}' },
  'W/m': { mathjs: 'W/m', latex: '\\mathrm{W/m}' },
  'K·m/W': { mathjs: 'K m/W', latex: '\\mathrm{K\\,m/W}' },
  'W/(m·K)': { mathjs: 'W/(m K)', latex: '\\mathrm{W/(m\\,K)}' },
  'W/(m²·K)': { mathjs: 'W/(m^2 K)', latex: '\\mathrm{W/(m^{2}\\,K)}' },
  'W/(m²·K⁴)': { mathjs: 'W/(m^2 K^4)', latex: '\\mathrm{W/(m^{2}\\,K^{4})}' },
  Pa: { mathjs: 'Pa', latex: '\\mathrm{Pa}' },
  Pa·s: { mathjs: 'Pa s', latex: '\\mathrm{Pa\\,s}' },
  'Pa·s/√K': { mathjs: 'Pa s/K^0.5', latex: '\\mathrm{Pa\\,s/K^{1/2}}' },
  'J/(kg·K)': { mathjs: 'J/(kg K)', latex: '\\mathrm{J/(kg\\,K)}' },
  'm/s²': { mathjs: 'm/s^2', latex: '\\mathrm{m/s^{2}}' },
  'm²/s': { mathjs: 'm^2/s', latex: '\\mathrm{m^{2}/s}' },
};
