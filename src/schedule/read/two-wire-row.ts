/** From a row to a two-wire run. @module */
import { keysOf } from '../columns/column-use.ts';
import { RUN_COLUMNS, type RunColumns } from '../columns/run-columns.ts';
import type { Draft, ScheduledTwoWireRun } from '../schedule.ts';
import { warnOfNoLength } from './powered-row.ts';
import type { RowReader } from './row-reader.ts';

const POWERED_ONLY = /* @__PURE__ */ (() => keysOf(RUN_COLUMNS).filter((key) => RUN_COLUMNS[key].poweredOnly === true))();
const CONDUCTORS = 'one of 18 AWG, 1.5 mm2, cat5e 2 pairs or 39 ohm/km';

/** A two-wire run; nothing where a cell is missing that it needs. @internal */
export function twoWireRow(reader: RowReader<RunColumns>, name: string, line: number): ScheduledTwoWireRun | undefined {
  for (const key of POWERED_ONLY) {
    if (reader.isEmpty(key)) continue;
    reader.say(key, 'conflicting-values', 'warning', `${RUN_COLUMNS[key].title} has no meaning for a two-wire run; it is not used`);
  }
  const supply = reader.needed('supply');
  const load = reader.needed('load');
  const cables = reader.needed('cable');
  const lengths = reader.needed('length');
  const ambient = reader.orNoted('ambient');
  const connections = reader.orNoted('connections') ?? 0;
  if (connections > 0) {
    reader.once('default-applied', 'note', 'joints without resistance', 'two-wire runs: their joints are taken at 0 ohm each');
  }
  const minimumVoltage = reader.optional('minimumVoltage');
  const maximumResistance = reader.optional('maximumResistance');
  const loop = reader.optional('resistanceLoop', 'out and back is used');
  if (loop === 'twoPair' || loop === 'fourPair') {
    const words = 'a two-wire run has one loop, out and back; the resistance is taken as that';
    reader.say('resistanceLoop', 'conflicting-values', 'warning', words, 'pair loop, or nothing');
  }
  if (supply === undefined || load === undefined || cables === undefined || lengths === undefined) return undefined;
  const [cable, ...others] = cables;
  if (cable?.conductor === undefined || others.length > 0) {
    const words = `a two-wire run has one conductor, out and back alike; write ${CONDUCTORS}; ${RUN_COLUMNS.cable.instead}`;
    reader.say('cable', 'conflicting-values', 'error', words, CONDUCTORS);
    return undefined;
  }
  const { conductor, assumed, cores } = cable;
  if (assumed !== undefined) {
    reader.say('cable', 'default-applied', 'note', `${RUN_COLUMNS.cable.title} states no class of conductor: ${assumed}`);
  }
  const length = lengths.reduce((sum, piece) => sum + piece, 0);
  warnOfNoLength(reader, length);
  if (ambient !== undefined && ambient.length > 1) {
    reader.say('ambient', 'conflicting-values', 'warning', 'a two-wire run has one temperature; the highest is used');
  }
  const input: Draft<ScheduledTwoWireRun['input']> = {
    supplyVoltage: typeof supply === 'number' ? supply : { ...supply },
    conductor,
    length,
    temperature: ambient === undefined ? 20 : Math.max(...ambient),
    connections,
    load: { ...load },
  };
  if (minimumVoltage !== undefined) input.minimumVoltage = minimumVoltage;
  if (maximumResistance !== undefined) input.maximumResistance = maximumResistance;
  const device = reader.cell('device').value;
  return {
    kind: 'two-wire',
    run: name,
    ...(device === undefined ? {} : { device }),
    line,
    input,
    ...(cores === undefined ? {} : { cores }),
  };
}
