/** The loops that power sees, from the loops of four pairs. @module */
import type { SheetStep } from '../sheet.ts';

/** Whether the pairs have any resistance: two loops of none in parallel are one of none. */
export const SOME = 'some resistance';
export const NONE = 'no resistance';

/**
 * Of pairs `c_1` to `c_4` (at 20 °C) or `m_1` to `m_4` (as they were).
 *
 * @param when - The condition of all of them, if there is one; with it go `SOME` and `NONE`, as in `warm, some resistance`.
 */
export function measuredLoops(pair: 'c' | 'm', end: '20' | 'T', core: 'at20' | 'measured', words: string, when?: string): SheetStep[] {
  const under = (condition: string): string => (when === undefined ? condition : `${when}, ${condition}`);
  const loop = (name: string, of: string, meaning: string, formula: string, condition?: string): SheetStep => {
    const only = condition === undefined ? when : under(condition);
    return {
      symbol: `R_${name}${end}`,
      meaning: `${words}: ${meaning}`,
      formula,
      unit: 'Ω',
      latex: `R_{\\mathrm{${name}},${end}}`,
      source: 'three-loops',
      core: `loops.${core}.${of}.value`,
      ...(only === undefined ? {} : { when: only }),
    };
  };
  const [A, B] = [`R_A${end}`, `R_B${end}`];
  return [
    loop('loop', 'pairLoop', 'the highest pair, as a meter sees it', `max([${pair}_#,])`),
    loop('A', 'pairsetA', 'pairset on 1,2 and 3,6, a pair in parallel being a quarter of its loop', `${pair}_1 / 4 + ${pair}_2 / 4`),
    loop('B', 'pairsetB', 'pairset on 4,5 and 7,8', `${pair}_3 / 4 + ${pair}_4 / 4`),
    loop('pairset', 'twoPair', 'the higher pairset, which power over two pairs must reckon with', `max(${A}, ${B})`),
    loop('four', 'fourPair', 'both pairsets in parallel, for power over four pairs', `${A} * ${B} / (${A} + ${B})`, SOME),
    loop('four', 'fourPair', 'both pairsets in parallel, of which each is nothing', `${A} / 2`, NONE),
  ];
}

