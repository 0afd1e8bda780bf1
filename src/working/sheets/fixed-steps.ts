/** Limits that are held against a figure as it stands, for what is asked for plays no part in them. @module */
import { givens } from '../rows.ts';
import type { SheetGiven, SheetNo, SheetStep } from '../sheet.ts';
import type { WorkingUnit } from '../working-unit.ts';

/** The current that a resistance takes at the highest voltage without any line: none takes more with one. */
export const MOST_CURRENT = 'A of a resistance';

/** What there is, or a limit, of so many units, each with what the core calls it. */
export function fixedGiven(
  symbol: 'v_#' | 'w_#',
  meaning: string,
  cores: Partial<Record<WorkingUnit, string>>,
  source?: 'row',
): SheetGiven[] {
  return Object.entries(cores).map(([unit, core]) => ({
    symbol,
    meaning,
    unit: unit as WorkingUnit,
    latex: symbol.replace('_#', '_{#}'),
    core,
    ...(source === undefined ? {} : { source }),
    each: 'fixed',
    when: unit,
  }));
}

/** What is held against what, on every sheet of limits. */
export const fixedGivens: readonly SheetGiven[] = [
  ...fixedGiven('v_#', '@: value here', { W: 'pdPower', '1': 'the input', V: 'supplyVoltage, or the limit', A: 'load.current' }),
  ...fixedGiven('w_#', '@: limit', { W: 'poeClass', '1': 'the rule' }, 'row'),
  ...fixedGiven('w_#', '@: limit', { V: 'the supply or the device', A: 'ampacity' }),
  ...givens([
    ['w_#', 'A', '@: limit', 'ampacity', { each: 'fixed', when: MOST_CURRENT }],
  ]),
];

/** What is left of each; of a temperature in kelvins. */
export function fixedSteps(units: readonly WorkingUnit[], no: SheetNo): readonly SheetStep[] {
  const left = { symbol: 's_#', meaning: '@: what is left', latex: 's_{#}', each: 'fixed', no } as const;
  return [
    ...units.map(
      (unit): SheetStep => ({
        ...left,
        formula: 'w_# - v_#',
        unit: unit === '°C' ? 'K' : unit,
        source: unit === 'W' ? 'ieee-802.3-class' : 'row',
        when: unit,
      }),
    ),
    {
      ...left,
      meaning: '@: what is left where the load takes most, without any line',
      formula: 'w_# - V_hi / R_L',
      unit: 'A',
      source: 'row',
      when: MOST_CURRENT,
    },
  ];
}

