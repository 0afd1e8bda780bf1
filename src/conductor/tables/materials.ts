/** The metals that wire is made of. Digits as printed; each row is stated once, in the unit its source prints. @module */

/**
 * `iacs`, conductivity in percent of 58 MS/m, or `resistivity` [Ω·mm²/m]: one of them, at 20 °C, or `bands` where a standard
 * gives one for each range of wire diameter. `best`: the least resistivity, where what is bought may lie between two.
 * `temperatureCoefficient` at 20 °C [1/K], or `'copper'`: 0.00393/K times the conductivity as a fraction of IACS.
 * `density` [g/cm³].
 */
// biome-ignore format: trailing zeros as printed
export const MATERIALS = {
  'annealed-copper': { iacs: 100, temperatureCoefficient: 'copper', density: 8.89, source: 'iec-60028' },
  'hard-drawn-copper': { bands: 'astm-b1', temperatureCoefficient: 'copper', density: 8.89, source: 'astm-b1' },
  'tinned-copper': { bands: 'astm-b33', temperatureCoefficient: 'copper', density: 8.89, source: 'astm-b33' },
  aluminium: { resistivity: 0.028264, temperatureCoefficient: 0.00403, density: 2.703, source: 'iec-60889' },
  'aluminium-1350-o': { resistivity: 0.027899, temperatureCoefficient: 0.00408, density: 2.703, source: 'astm-b233' },
  'aluminium-1350-h12': { resistivity: 0.028035, temperatureCoefficient: 0.00406, density: 2.703, source: 'astm-b233' },
  'aluminium-1350-h14': { resistivity: 0.028080, temperatureCoefficient: 0.00406, density: 2.703, source: 'astm-b233' },
  'aluminium-1350-h16': { resistivity: 0.028126, temperatureCoefficient: 0.00405, density: 2.703, source: 'astm-b233' },
  'copper-clad-aluminium': { resistivity: 0.027586, best: 0.024138, temperatureCoefficient: 0.00405, source: 'clad-aluminium-unknown' },
  'copper-clad-aluminium-10': { iacs: 62.9, temperatureCoefficient: 0.00405, density: 3.32, source: 'astm-b566' },
  'copper-clad-aluminium-15': { iacs: 64.4, temperatureCoefficient: 0.00405, density: 3.63, source: 'astm-b566' },
  'copper-clad-steel-40': { resistivity: 0.04397, density: 8.24, source: 'astm-b227' },
  'copper-clad-steel-30': { resistivity: 0.05862, density: 8.15, source: 'astm-b227' },
  'phosphor-bronze': { resistivity: 0.0359, density: 8.89, source: 'phosphor-bronze' },
  'phosphor-bronze-c51000': { iacs: 15, source: 'phosphor-bronze-c51000' },
  'bronze-contact-wire': { resistivity: 0.05, best: 0.04, source: 'bronze-contact-wire' },
  silver: { resistivity: 0.01587, temperatureCoefficient: 0.003819, source: 'crc' },
} as const;
