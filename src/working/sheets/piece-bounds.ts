/** Pieces of cable from a thick conductor of their gauge to the most that their limit allows: what sheets of readings share. @module */
import { steps } from '../rows.ts';
import { leastShare } from '../../cable/field/wire.ts';
import type { Segment } from '../../cable/run-resistance.ts';
import type { ReadingRow, SheetGiven, SheetStep } from '../sheet.ts';
import { cableSource, coefficientSource } from './shared.ts';

/** What is known of each piece of a list. */
export function pieceGivens(each: 'installed' | 'cords'): SheetGiven[] {
  const of = (symbol: string, latex: string, unit: SheetGiven['unit'], meaning: string, core: string): SheetGiven => ({
    symbol,
    meaning: `@: ${meaning}`,
    unit,
    latex,
    core: `${each}[].${core}`,
    ...(symbol === 'T_#' || symbol === 'L_#' ? {} : { source: 'row' as const }),
    each,
  });
  return [
    of('rn_#', 'r_{n,#}', 'Ω/m', 'one metre of one usual conductor at 20 °C', 'cable'),
    of('rm_#', 'r_{m,#}', 'Ω/m', 'the same at the highest resistance that its limit allows', 'cable'),
    of('t_#', 't_{#}', '1', 'what a thick conductor of its gauge has of the usual resistance', 'cable'),
    of('alpha_#', '\\alpha_{#}', '1/K', 'temperature coefficient at 20 °C', 'cable'),
    of('T_#', 'T_{#}', '°C', 'temperature of the conductor', 'temperature'),
    of('L_#', 'L_{#}', 'm', 'length, one way', 'length'),
  ];
}

/** The loop of each piece, at least and at most; its temperature may be off by `s` if there is one. */
export function pieceSteps(each: 'installed' | 'cords', spread: 's' | undefined): SheetStep[] {
  const colder = spread === undefined ? '' : ` - ${spread}`;
  const hotter = spread === undefined ? '' : ` + ${spread}`;
  return steps([
    ['rt_#', 'Ω/m', 'min(t_# * rn_#, rm_#)', '@: one metre of one thick conductor at 20 °C', { source: 'row' }],
    ['Zl_#', 'Ω', `2 * rt_# * (1 + alpha_# * (T_#${colder} - T_ref)) * L_#`, '@: its loop at least, out and back'],
    ['Zh_#', 'Ω', `2 * rm_# * (1 + alpha_# * (T_#${hotter} - T_ref)) * L_#`, '@: its loop at most'],
  ], { each });
}

/** Where it comes from how thick a conductor may be. */
export const THICK_SOURCES = ['astm-b3', 'stranded-lead-chart', 'clad-aluminium-40'] as const;

/** Of a cable. */
export function thickSource({ stranding, material }: Segment['cable']): (typeof THICK_SOURCES)[number] {
  if (stranding === 'stranded') return 'stranded-lead-chart';
  return material === 'copper-clad-aluminium' ? 'clad-aluminium-40' : 'astm-b3';
}

/** The rows of a list, numbered on from those before. */
export function pieceRows(pieces: readonly Segment[], before: number = 0): ReadingRow[] {
  return pieces.map(({ cable, length, temperature = 20 }, index) => ({
    label: cable.title,
    number: before + index + 1,
    source: thickSource(cable),
    sources: {
      'rn_#': cableSource(cable, 'nominal'),
      'rm_#': cableSource(cable, 'maximum'),
      'alpha_#': coefficientSource(cable.temperatureCoefficient),
    },
    values: {
      'rn_#': cable.nominalResistancePerMetre,
      'rm_#': cable.maximumResistancePerMetre,
      't_#': leastShare(cable),
      'alpha_#': cable.temperatureCoefficient,
      'T_#': temperature,
      'L_#': length,
    },
  }));
}

