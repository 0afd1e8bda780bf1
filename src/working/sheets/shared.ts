/** Figures that several sheets have in common. @module */
import type { Cable } from '../../cable/cable.ts';
import type { Conductor } from '../../conductor/conductor.ts';
import { COPPER_COEFFICIENT } from '../../conductor/copper-standard.ts';
import type { SourceKey } from '../../sources/sources.ts';
import type { FigureSources, Figures, SheetGiven, SheetStep } from '../sheet.ts';

/** Keys of the command for a load. */
export const loadKeys: readonly string[] = ['power', 'current', 'loadResistance'];
/** For a two-wire circuit without its length. */
export const circuitKeys: readonly string[] = ['supplyVoltage', 'conductor', 'out', 'back', 'temperature', ...loadKeys];
/** For a powered device without its run. */
export const poweredKeys: readonly string[] = ['poeClass', 'pseType', 'pairs', 'pseVoltage', 'pdPower'];

/** For the run of a powered device, by its pieces. */
export const runKeys: readonly string[] = ['run', 'connections', 'connectionResistance'];

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
    source: 'row',
  },
  {
    symbol: 'alpha',
    meaning: 'temperature coefficient of resistance at 20 °C',
    unit: '1/K',
    latex: '\\alpha',
    core: 'conductor.temperatureCoefficient',
    source: 'row',
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

/** The figures of a conductor, where they come from, and whether it can be warm. */
export function conductorReading(
  conductor: Conductor,
  temperature: number | undefined,
): { values: Figures; sources: FigureSources; cases: string[] } {
  const { resistancePerMetre, temperatureCoefficient } = conductor;
  return {
    values: { r_20: resistancePerMetre, alpha: temperatureCoefficient ?? 0, T: temperature ?? 20, T_ref: 20 },
    sources: { r_20: conductor.source, alpha: coefficientSource(temperatureCoefficient) },
    cases: [temperatureCoefficient === undefined ? COLD : WARM],
  };
}

/** Where a temperature coefficient comes from, if it is that of annealed copper. */
export function coefficientSource(coefficient: number | undefined): SourceKey | undefined {
  return coefficient === COPPER_COEFFICIENT ? 'iec-60028' : undefined;
}

/** Where the resistance of a conductor of a cable comes from: its usual gauge, or its limit. */
export function cableSource({ source }: Cable, basis: 'nominal' | 'maximum'): SourceKey {
  return basis === 'nominal' && source !== 'data-sheet' ? 'astm-b258' : source;
}

/** What is taken for the conductors of a run. */
export function basisAssumption(basis: 'nominal' | 'maximum'): string {
  return basis === 'maximum'
    ? 'Every conductor at the highest resistance its standard allows.'
    : 'Conductors of the usual gauge, at their nominal size.';
}

/** What is said where the connections of a run were left out, or how much one of them has. */
export function connectionAssumptions(connections: number | undefined, connectionResistance: number | undefined): string[] {
  if (connections === undefined) return ['There are no connections: none were stated.'];
  if (connections === 0 || connectionResistance !== undefined) return [];
  return ['Each connection has 0.2 Ω in each conductor, the most that its standard allows: no other figure was stated.'];
}

/** What is said where the temperature was left out. */
export function temperatureAssumption(temperature: number | undefined): string[] {
  return temperature === undefined ? ['The conductor is at 20 °C: no temperature was stated.'] : [];
}
