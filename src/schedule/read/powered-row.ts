/** From a row to a run that a switch port feeds. @module */

import type { Segment } from '../../cable/run-resistance.ts';
import type { RunPair } from '../../cable/unbalance.ts';
import type { PoeClassNumber } from '../../ethernet/class-table.ts';
import { poeClass } from '../../ethernet/poe-class.ts';
import type { ResistanceLimit } from '../../plan/device-resistance.ts';
import { RUN_COLUMNS, type RunColumns } from '../columns/run-columns.ts';
import type { Draft, ScheduledPoweredRun } from '../schedule.ts';
import type { RowReader } from './row-reader.ts';

type Rows = RowReader<RunColumns>;

const { cable: CABLE, ambient: AMBIENT } = RUN_COLUMNS;
const CORDS_AT_20 = 'cords are taken at 20 °C in every run, whatever the ambient of the installed cable';
const READINGS_AT_20 =
  'readings are taken at 20 °C for power, and between 20 °C and the ambient when held beside what was expected; the meter as exact and its leads as nulled';

/** A run to a powered device; nothing where a cell is missing that it needs. @internal */
export function poweredRow(reader: Rows, name: string, line: number): ScheduledPoweredRun | undefined {
  const switchName = reader.needed('switch');
  const port = reader.needed('port');
  const classNumber = reader.needed('poeClass');
  const installed = installedSegments(reader);
  const cords = cordSegments(reader);
  const connections = reader.orNoted('connections') ?? 0;
  const priority = reader.orNoted('priority') ?? 'low';
  const minimumVoltage = reader.optional('minimumVoltage');
  const maximumResistance = resistanceLimit(reader);
  const pdPower = classNumber === undefined ? undefined : devicePower(reader, classNumber);
  if (switchName === undefined || port === undefined || classNumber === undefined || installed === undefined) return undefined;

  const input: Draft<ScheduledPoweredRun['input']> = { poeClass: classNumber, installed, cords, connections };
  if (pdPower !== undefined) input.pdPower = pdPower;
  if (minimumVoltage !== undefined) input.minimumVoltage = minimumVoltage;
  if (maximumResistance !== undefined) input.maximumResistance = maximumResistance;
  const device = reader.cell('device').value;
  // Two literals instead of a spread: a large file has a hundred thousand of these.
  const run: Draft<ScheduledPoweredRun> =
    device === undefined
      ? { kind: 'powered', run: name, line, switch: switchName, port, priority, input }
      : { kind: 'powered', run: name, device, line, switch: switchName, port, priority, input };
  if (!reader.isEmpty('bundle') || !reader.isEmpty('installation')) addBundle(reader, run);
  if (!reader.isEmpty('measuredLoop')) addReadings(reader, run);
  return run;
}

/** The bundle of a run: a number of cables, and how they are installed. */
function addBundle(reader: Rows, run: Draft<ScheduledPoweredRun>): void {
  const cables = reader.optional('bundle');
  const installation = reader.optional('installation');
  if (cables === undefined && installation !== 'wound-drum') {
    if (reader.isEmpty('bundle')) {
      reader.say('installation', 'conflicting-values', 'warning', 'an installation without a bundle; it is not used');
    }
    return;
  }
  if (reader.isEmpty('installation')) reader.noteDefault('installation');
  run.bundle = { cables: cables ?? 1, installation: installation ?? 'open-air' };
}

const PAIRS: readonly RunPair[] = ['1,2', '3,6', '4,5', '7,8'];

/** What was read on its pairs, in the order of the pins. */
function addReadings(reader: Rows, run: Draft<ScheduledPoweredRun>): void {
  const readings = reader.optional('measuredLoop');
  if (readings === undefined) return;
  if (!run.input.installed.some(({ length }) => length > 0)) {
    reader.say('measuredLoop', 'conflicting-values', 'warning', 'a reading of a cable of 0 m; it is not used');
    return;
  }
  reader.once('default-applied', 'note', 'readings at 20 °C', READINGS_AT_20);
  run.measured = Object.fromEntries(readings.map((ohms, index) => [PAIRS[index] as RunPair, ohms]));
}

/** The installed pieces: a cable and a temperature for each length, or one for all. */
function installedSegments(reader: Rows): Segment[] | undefined {
  const cables = reader.needed('cable');
  const lengths = reader.needed('length');
  const ambient = reader.orNoted('ambient');
  if (cables === undefined || lengths === undefined) return undefined;
  if (cables.length !== 1 && cables.length !== lengths.length) {
    const words = `${cables.length} cables and ${lengths.length} lengths; ${CABLE.instead}`;
    reader.say('length', 'conflicting-values', 'error', words, 'one cable for all lengths, or one for each');
    return undefined;
  }
  const temperatures = temperaturesOf(reader, ambient, lengths.length);
  const segments: Segment[] = [];
  let sum = 0;
  for (let index = 0; index < lengths.length; index++) {
    const cable = cables[cables.length === 1 ? 0 : index]?.cable;
    if (cable === undefined) {
      const allowed = 'a category such as cat5e, cat6 or cat6a';
      const words = `a run to a switch port is of four-pair cable; write ${allowed}; ${CABLE.instead}`;
      reader.say('cable', 'conflicting-values', 'error', words, allowed);
      return undefined;
    }
    const length = lengths[index] as number;
    sum += length;
    segments.push({ cable, length, temperature: temperatures[temperatures.length === 1 ? 0 : index] as number });
  }
  warnOfNoLength(reader, sum);
  return segments;
}

const TWENTY: readonly number[] = [20];

function temperaturesOf(reader: Rows, ambient: readonly number[] | undefined, pieces: number): readonly number[] {
  if (ambient === undefined) return TWENTY;
  const hottest = Math.max(...ambient);
  if (hottest > 60) {
    const words = 'an ambient above 60 °C is more than most cable is made for; it is used as it stands (write 95 degF for Fahrenheit)';
    reader.say('ambient', 'value-out-of-range', 'warning', words, AMBIENT.allowed);
  }
  if (ambient.length === 1 || ambient.length === pieces) return ambient;
  const words = `${ambient.length} temperatures for ${pieces} lengths; the highest is used for all`;
  reader.say('ambient', 'conflicting-values', 'error', words, 'one temperature for all lengths, or one for each');
  return [hottest];
}

function cordSegments(reader: Rows): Segment[] {
  const cords = reader.orNoted('cords');
  if (cords === undefined || cords.length === 0) return [];
  reader.once('default-applied', 'note', 'cords at 20 °C', CORDS_AT_20);
  return cords.map(({ cable, length }) => ({ cable, length, temperature: 20 }));
}

/** What a port sets aside, by class from 0 to 8. */
const CLASS_PSE_POWER: readonly number[] = /* @__PURE__ */ (() =>
  ([0, 1, 2, 3, 4, 5, 6, 7, 8] as const).map((classNumber) => poeClass(classNumber).psePower))();

function devicePower(reader: Rows, classNumber: PoeClassNumber): number | undefined {
  const pdPower = reader.orNoted('pdPower');
  if (pdPower !== CLASS_PSE_POWER[classNumber]) return pdPower;
  const { psePower, pdPower: allowed, pdPowerLater = allowed } = poeClass(classNumber);
  if (pdPower === undefined || pdPower <= pdPowerLater) return pdPower;
  const words = `${psePower} W is what a port sets aside for class ${classNumber}; the device may draw ${allowed} W, which is used`;
  reader.say('pdPower', 'pse-power-as-pd-power', 'error', words, `at most ${allowed} W for class ${classNumber}`);
  return allowed;
}

function resistanceLimit(reader: Rows): ResistanceLimit | undefined {
  const ohms = reader.optional('maximumResistance');
  const loop = reader.optional('resistanceLoop');
  if (ohms === undefined) {
    if (loop !== undefined && loop !== 'unstated' && reader.isEmpty('maximumResistance')) {
      reader.say('resistanceLoop', 'conflicting-values', 'warning', 'a loop without a maximum resistance; it is not used');
    }
    return undefined;
  }
  if (reader.isEmpty('resistanceLoop')) reader.noteDefault('resistanceLoop', 'unstated is used, so it is judged as a pair loop');
  return { ohms, loop: loop ?? 'unstated' };
}

/** @internal */
export function warnOfNoLength(reader: Rows, length: number): void {
  if (length > 0) return;
  reader.say('length', 'value-out-of-range', 'warning', 'a length of 0 m; it is used as it stands');
}
