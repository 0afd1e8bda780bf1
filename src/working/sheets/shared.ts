/** Figures that several sheets have in common. @module */
import type { Conductor } from '../../conductor/conductor.ts';
import type { Figures, SheetGiven, SheetStep } from '../sheet.ts';

/** Keys of the command for a load. */
export const loadKeys: readonly string[] = ['power', 'current', 'loadResistance'];
/** For a two-wire circuit without its length. */
export const circuitKeys: readonly string[] = ['supplyVoltage', 'conductor', 'out', 'back', 'temperature', ...loadKeys];
/** For a powered device without its run. */
export const poweredKeys: readonly string[] = ['poeClass', 'pseType', 'pairs', 'pseVoltage', 'pdPower'];

/** Power over one pairset, and over two. */
export const TWO_PAIRS = 'two pairs';
export const FOUR_PAIRS = 'four pairs';

/** Of a conductor whose temperature coefficient is known. */
export const WARM = 'warm';
/** Of one that is known at 20 °C alone. */
export const COLD = 'cold';

/** The reference temperature. */
export const twentyGiven: SheetGiven = {
  symbol: 'T_ref',
  meaning: 'reference temperature',
  unit: '°C',
  latex: 'T_{\\mathrm{ref}}',
  core: 'the temperature coefficient',
  source: 'iec-60028',
};

/** One conductor and its temperature. */
export const conductorGivens: readonly SheetGiven[] = [
  {
    symbol: 'r_20',
    meaning: 'resistance of one metre of one conductor at 20 °C',
    unit: 'Ω/m',
    latex: 'r_{20}',
    core: 'conductor.resistancePerMetre',
  },
  {
    symbol: 'alpha',
    meaning: 'temperature coefficient of resistance at 20 °C',
    unit: '1/K',
    latex: '\\alpha',
    core: 'conductor.temperatureCoefficient',
    when: WARM,
  },
  { symbol: 'T', meaning: 'temperature of the conductor', unit: '°C', latex: 'T', core: 'temperature', when: WARM },
  { ...twentyGiven, when: WARM },
];

/** The conductor at its temperature. */
export const conductorSteps: readonly SheetStep[] = [
  {
    symbol: 'r',
    meaning: 'resistance of one metre at its temperature',
    formula: 'r_20 * (1 + alpha * (T - T_ref))',
    unit: 'Ω/m',
    latex: 'r',
    source: 'circuit-laws',
    when: WARM,
  },
  {
    symbol: 'r',
    meaning: 'resistance of one metre, at 20 °C',
    formula: 'r_20',
    unit: 'Ω/m',
    latex: 'r',
    source: 'circuit-laws',
    when: COLD,
  },
];

/** The figures of a conductor, and whether it can be warm. */
export function conductorReading(conductor: Conductor, temperature: number | undefined): { values: Figures; cases: string[] } {
  const { resistancePerMetre, temperatureCoefficient } = conductor;
  return {
    values: { r_20: resistancePerMetre, alpha: temperatureCoefficient ?? 0, T: temperature ?? 20, T_ref: 20 },
    cases: [temperatureCoefficient === undefined ? COLD : WARM],
  };
}

/** What is said where the temperature was left out. */
export function temperatureAssumption(temperature: number | undefined): string[] {
  return temperature === undefined ? ['The conductor is at 20 °C: no temperature was stated.'] : [];
}
