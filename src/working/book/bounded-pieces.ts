/** Pieces of cable from a thick conductor of their gauge to the most that their limit allows. @module */

import { leastShare } from '../../cable/field/wire.ts';
import type { Cable, Segment } from '../../cable/index.ts';
import type { SourceKey } from '../../sources/sources.ts';
import { givens, steps } from '../engine/rows.ts';
import type { FigureSources, Figures, Givens, ReadingRow, Steps } from '../engine/sheet.ts';
import { coefficientSource, TWENTY } from './conductors.ts';
import { cableSource } from './runs.ts';

type List = 'installed' | 'cords';

/** What is known of each piece of a list. */
export function boundedPieceGivens(each: List): Givens<never> {
  const cable = `${each}[].cable`;
  // biome-ignore format: one figure a row
  return givens([
    ['rn_#', 'Ω/m', '@: one metre of one usual conductor at 20 °C', cable, { source: 'row' }],
    ['rm_#', 'Ω/m', '@: the same at the highest resistance that its limit allows', cable, { source: 'row' }],
    ['t_#', '1', '@: what a thick conductor of its gauge has of the usual resistance', cable, { source: 'row' }],
    ['alpha_#', '1/K', '@: temperature coefficient at 20 °C', cable, { source: 'row' }],
    ['T_#', '°C', '@: temperature of the conductor', `${each}[].temperature`],
    ['L_#', 'm', '@: length, one way', `${each}[].length`],
  ], { each });
}

/** The loop of each piece, at least and at most; its temperature may be off by `s` if there is one. */
export function boundedPieceSteps(each: List, colder: '' | ' - s', hotter: '' | ' + s'): Steps<never> {
  // biome-ignore format: one figure a row
  return steps([
    ['rt_#', 'Ω/m', 'min(t_# * rn_#, rm_#)', '@: one metre of one thick conductor at 20 °C', { source: 'row' }],
    ['Zl_#', 'Ω', `2 * rt_# * (1 + alpha_# * (T_#${colder} - T_ref)) * L_#`, '@: its loop at least, out and back'],
    ['Zh_#', 'Ω', `2 * rm_# * (1 + alpha_# * (T_#${hotter} - T_ref)) * L_#`, '@: its loop at most'],
  ], { each });
}

/** Where it comes from how thick a conductor of a cable may be. */
export function thickSource({ stranding, material }: Cable): SourceKey {
  if (stranding === 'stranded') return 'stranded-lead-chart';
  return material === 'copper-clad-aluminium' ? 'clad-aluminium-40' : 'astm-b3';
}

/** Usual, thinnest and thick conductors of a cable, and where each comes from, by these symbols. */
export function boundedCable(
  cable: Cable,
  [n, m, t]: readonly [string, string, string],
): { readonly values: Figures; readonly sources: FigureSources } {
  return {
    values: { [n]: cable.nominalResistancePerMetre, [m]: cable.maximumResistancePerMetre, [t]: leastShare(cable) },
    sources: { [n]: cableSource(cable, 'nominal'), [m]: cableSource(cable, 'maximum'), [t]: thickSource(cable) },
  };
}

/** The rows of a list, numbered on from those before. */
export function boundedPieceRows(pieces: readonly Segment[], before: number = 0): ReadingRow<never>[] {
  return pieces.map(({ cable, length, temperature = TWENTY }, index) => {
    const { values, sources } = boundedCable(cable, ['rn_#', 'rm_#', 't_#']);
    const alpha = cable.temperatureCoefficient;
    return {
      label: cable.title,
      number: before + index + 1,
      source: thickSource(cable),
      sources: { ...sources, 'alpha_#': coefficientSource(alpha) },
      values: { ...values, 'alpha_#': alpha, 'T_#': temperature, 'L_#': length },
    };
  });
}
