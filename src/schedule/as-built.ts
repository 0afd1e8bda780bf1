/** A run as it was measured, and the measurement beside what was expected. @module */

import { expectedReading } from '../cable/field/expected-reading.ts';
import { fromMeasurement } from '../cable/field/from-measurement.ts';
import type { RunPair } from '../cable/unbalance.ts';
import { CONDUCTOR_TEMPERATURE } from '../conductor/resistance-per-metre.ts';
import type { PoweredFacts } from '../plan/powered-input.ts';
import { InputError } from '../quantity/input-error.ts';
import type { Ohms } from '../quantity/units.ts';
import type { ReportedMeasurement } from './report.ts';

/** Readings by pair. [Ω] */
type Readings = Readonly<Partial<Record<RunPair, Ohms>>>;

/**
 * The same run with installed cable of just the resistance that was read on its highest pair, at 20 °C.
 *
 * Its connections are in the reading already, so they add nothing more; cords are added as they were.
 * @internal
 */
export function asBuilt(input: PoweredFacts, readings: Readonly<Readings>): PoweredFacts {
  const highest = Math.max(...Object.values(readings));
  const length = input.installed.reduce((sum, piece) => sum + piece.length, 0);
  if (!(length > 0)) throw new InputError('conflict', 'measured', 'installed cable of more than 0 m', length);
  const perMetre = highest / 2 / length;
  const installed = input.installed.map((piece) => ({
    ...piece,
    cable: { ...piece.cable, nominalResistancePerMetre: perMetre, maximumResistancePerMetre: perMetre },
  }));
  return { ...input, installed, connectionResistance: 0 };
}

/** The readings held beside the run as it was described. @internal */
export function measuredAgainstExpected(input: PoweredFacts, readings: Readings): ReportedMeasurement {
  const { installed, connections = 0, connectionResistance } = input;
  const [first] = installed;
  const temperatures = installed.map(({ temperature = CONDUCTOR_TEMPERATURE.default }) => temperature);
  const temperature = { low: Math.min(20, ...temperatures), high: Math.max(20, ...temperatures) };
  const bounds = [temperature.low, temperature.high].map(
    (all) =>
      expectedReading({
        installed: installed.map((piece) => ({ ...piece, temperature: all })),
        connections,
        linkConnections: connections,
        connectionResistance,
      }).permanentLink.atTemperature,
  );
  const expected = { low: Math.min(...bounds.map(({ low }) => low)), high: Math.max(...bounds.map(({ high }) => high)) };
  const alike = installed.every(({ cable }) => cable.name === first?.cable.name);
  const length = installed.reduce((sum, piece) => sum + piece.length, 0);
  // Cables of several kinds have no one wire to suppose: the bounds of the whole are all that can be held against it.
  const explanations =
    alike && first !== undefined
      ? fromMeasurement({
          pairs: readings,
          temperature,
          knownLength: length,
          cable: first.cable,
          scope: 'permanent-link',
          connections,
          connectionResistance,
        }).explanations
      : [];
  const ohms = Object.values(readings);
  const own = Math.max(0, Math.max(...ohms) - expected.high, expected.low - Math.min(...ohms));
  const described = explanations.find(({ name }) => name === 'as-described');
  const distance = described?.distance ?? own;
  return {
    readings: (Object.entries(readings) as [RunPair, Ohms][]).map(([pair, reading]) => ({ pair, ohms: reading })),
    expected,
    status: distance === 0 ? 'consistent' : 'inconsistent',
    distance,
    consistentWith: explanations.filter(({ name, status }) => status === 'consistent' && name !== 'as-described').map(({ name }) => name),
  };
}
