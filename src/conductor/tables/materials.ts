/** The metals that wire is made of. Digits as printed; each figure is stated once, in the unit its source prints. @module */
import type { SourceKey } from '../../sources/sources.ts';

/**
 * What wire is computed from. Columns: resistivity at 20 °C [Ω·mm²/m], or, from 1 up, conductivity in percent of 58 MS/m,
 * or null where a standard gives it for each range of wire diameter; temperature coefficient at 20 °C [1/K], or
 * `'copper'`: 0.00393/K times the conductivity as a fraction of 58 MS/m, or null where no source gives one.
 */
// biome-ignore format: trailing zeros as printed
export const MATERIALS = {
  'annealed-copper': [100, 'copper'],
  'hard-drawn-copper': [null, 'copper'],
  'tinned-copper': [null, 'copper'],
  aluminium: [0.028264, 0.00403],
  'aluminium-1350-o': [0.027899, 0.00408],
  'aluminium-1350-h12': [0.028035, 0.00406],
  'aluminium-1350-h14': [0.028080, 0.00406],
  'aluminium-1350-h16': [0.028126, 0.00405],
  'copper-clad-aluminium': [0.027586, 0.00405],
  'copper-clad-aluminium-10': [62.9, 0.00405],
  'copper-clad-aluminium-15': [64.4, 0.00405],
  'copper-clad-steel-40': [0.04397, null],
  'copper-clad-steel-30': [0.05862, null],
  'phosphor-bronze': [0.0359, null],
  'phosphor-bronze-c51000': [15, null],
  'bronze-contact-wire': [0.05, null],
  silver: [0.01587, 0.003819],
} as const;

/**
 * What else is known of them. Columns: source; density [g/cm³], null where no source gives one; the least resistivity
 * [Ω·mm²/m], where what is bought may lie between two.
 */
// biome-ignore format: trailing zeros as printed
export const MATERIAL_FACTS: Readonly<Record<keyof typeof MATERIALS, readonly [source: SourceKey, density: number | null, best?: number]>> = {
  'annealed-copper': ['iec-60028', 8.89],
  'hard-drawn-copper': ['astm-b1', 8.89],
  'tinned-copper': ['astm-b33', 8.89],
  aluminium: ['iec-60889', 2.703],
  'aluminium-1350-o': ['astm-b233', 2.703],
  'aluminium-1350-h12': ['astm-b233', 2.703],
  'aluminium-1350-h14': ['astm-b233', 2.703],
  'aluminium-1350-h16': ['astm-b233', 2.703],
  'copper-clad-aluminium': ['clad-aluminium-unknown', null, 0.024138],
  'copper-clad-aluminium-10': ['astm-b566', 3.32],
  'copper-clad-aluminium-15': ['astm-b566', 3.63],
  'copper-clad-steel-40': ['astm-b227', 8.24],
  'copper-clad-steel-30': ['astm-b227', 8.15],
  'phosphor-bronze': ['phosphor-bronze', 8.89],
  'phosphor-bronze-c51000': ['phosphor-bronze-c51000', null],
  'bronze-contact-wire': ['bronze-contact-wire', null, 0.04],
  silver: ['crc', null],
};
