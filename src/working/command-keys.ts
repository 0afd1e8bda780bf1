/** The keys of the command: how the value of each is read, and where it goes. @module */
import { MATERIALS } from '../conductor/tables/materials.ts';
import type { QuantityName } from '../quantity/parse-quantity.ts';
import { sheets, type WorkingName } from './book/sheets.ts';
import * as read from './command-readers.ts';

/** Quantities with their unit. */
const QUANTITIES: Readonly<Record<string, QuantityName>> = {
  resistance: 'resistance',
  leadResistance: 'resistance',
  accuracyFixed: 'resistance',
  connectionResistance: 'resistance',
  loadResistance: 'resistance',
  pairFloor: 'resistance',
  pairToPairFloor: 'resistance',
  maximumResistance: 'resistance',
  sourceResistance: 'resistance',
  length: 'length',
  area: 'area',
  temperature: 'temperature',
  at: 'temperature',
  coefficientTemperature: 'temperature',
  temperatureRating: 'temperature',
  ambient: 'temperature',
  surfaceTemperature: 'temperature',
  openVoltage: 'voltage',
  loadedVoltage: 'voltage',
  voltageFixed: 'voltage',
  minimumVoltage: 'voltage',
  maximumVoltage: 'voltage',
  current: 'current',
  loadCurrent: 'current',
  currentFixed: 'current',
  ampacity: 'current',
  tripCurrent: 'current',
  pairCurrent: 'current',
  power: 'power',
  pdPower: 'power',
  capacity: 'power',
};

/** The words that a key takes. */
export const WORDS: Readonly<Record<string, readonly string[]>> = {
  stranding: ['solid', 'stranded'],
  family: ['formula', 'astm-b258'],
  material: Object.keys(MATERIALS),
  fn: ['operatingPoint', 'voltageDrop', 'powerAtPd'],
  scope: ['cable', 'permanent-link', 'channel'],
  basis: ['nominal', 'maximum'],
  'basis of switchBudget': ['class', 'requested', 'calculated', 'measured'],
  policy: ['strict', 'fill'],
  loop: ['pairLoop', 'twoPair', 'fourPair'],
  cabling: ['TIA-568', 'ISO/IEC 11801', 'none'],
  kind: ['power', 'current', 'resistance'],
  code: ['NEC 2017'],
  installation: ['open-air', 'closed-conduit', 'wound-drum'],
  halfLoaded: ['yes', 'no'],
};

/** Keys of other kinds; a key that is in none of the three takes a number. */
const READERS: Readonly<Record<string, read.Reader>> = {
  size: (text) => (text.includes('/') ? text : read.number(text)),
  resistivity: read.resistivity,
  conductor: read.conductor,
  out: read.conductor,
  back: read.conductor,
  coefficient: read.perKelvin,
  segments: read.pieces,
  installed: read.pieces,
  cords: read.pieces,
  run: read.pieces,
  accuracyFraction: read.fraction,
  voltageFraction: read.fraction,
  currentFraction: read.fraction,
  pairFraction: read.fraction,
  pairToPairFraction: read.fraction,
  reserve: read.fraction,
  temperatureSpread: (text) => read.number(text.replace(/ ?K$/, '')),
  cable: read.named,
  supplyVoltage: read.voltage,
  pseVoltage: read.voltage,
  pairs: read.pairs,
  positive: read.pairNames,
  psePairResistance: read.pairResistance,
  pdPairResistance: read.pairResistance,
  permittedDrop: read.drop,
  candidates: read.choice,
  ports: read.ports,
  supplies: read.supplies,
  sections: read.sections,
  taps: read.taps,
  halfLoaded: read.yesOrNo,
  diameter: read.millimetres,
  outsideDiameter: read.millimetres,
  conductorCurrents: read.currents,
};

/** How the value of a key is read. */
export function readerOf(key: string): read.Reader {
  const kind = QUANTITIES[key];
  return READERS[key] ?? (kind === undefined ? (Object.hasOwn(WORDS, key) ? read.word : read.number) : read.quantity(kind));
}

/** Where the value of a key goes, if that is not by its own name. */
export const PATHS: Readonly<Record<string, string>> = {
  accuracyFraction: 'accuracy.fraction',
  accuracyFixed: 'accuracy.fixed',
  power: 'load.power',
  current: 'load.current',
  loadResistance: 'load.resistance',
  loadCurrent: 'current',
  voltageFraction: 'voltageAccuracy.fraction',
  voltageFixed: 'voltageAccuracy.fixed',
  currentFraction: 'currentAccuracy.fraction',
  currentFixed: 'currentAccuracy.fixed',
  pairFraction: 'limits.pairFraction',
  pairFloor: 'limits.pairFloor',
  pairToPairFraction: 'limits.pairToPairFraction',
  pairToPairFloor: 'limits.pairToPairFloor',
  filmCoefficient: 'installation.filmCoefficient',
  thermalResistivity: 'installation.thermalResistivity',
};

/** Every key that a calculation takes, those first that it cannot do without. */
export function keysOf(name: WorkingName): readonly string[] {
  const { needs = [], keys = [] } = sheets[name];
  return [...new Set([...needs.flatMap((key) => key.split('|')), ...keys])];
}

/** What a key that is needed may be, where people do not know it by heart. */
export const SUCH_AS: Readonly<Record<string, string>> = { coefficient: '0.00393 for copper' };
