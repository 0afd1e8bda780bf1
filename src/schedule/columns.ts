/** The columns of the two files: their names, and what their cells hold. @module */
import { parseQuantity, type QuantityName } from '../quantity/parse-quantity.ts';

/** What a column is called and holds. */
export interface Column {
  /** As documents name it. */
  readonly title: string;
  /** Further names, in small letters without blanks, `_` and `-`; its title is understood without being listed. */
  readonly also: readonly string[];
  /** What its cells may hold, in words. */
  readonly allowed: string;
  /** The quantity, where a unit in the header can matter. */
  readonly quantity?: readonly QuantityName[];
}

/** The columns of the runs. */
export type RunColumn =
  | 'run'
  | 'switch'
  | 'port'
  | 'device'
  | 'poeClass'
  | 'pdPower'
  | 'minimumVoltage'
  | 'maximumResistance'
  | 'resistanceLoop'
  | 'cable'
  | 'length'
  | 'cords'
  | 'connections'
  | 'ambient'
  | 'bundle'
  | 'installation'
  | 'measuredLoop'
  | 'priority'
  | 'supply'
  | 'load';

/** The columns of the switches. */
export type SwitchColumn = 'switch' | 'type' | 'ports' | 'budget' | 'supplies' | 'systemLoad' | 'minimumVoltage';

const VOLTS: readonly QuantityName[] = ['voltage'];
const WATTS: readonly QuantityName[] = ['power'];
const METRES: readonly QuantityName[] = ['length'];

// biome-ignore format: columns
export const RUN_COLUMNS: Readonly<Record<RunColumn, Column>> = {
  run: { title: 'Run', also: ['circuit', 'cablenumber', 'cableno', 'runnumber'], allowed: 'a name of its own for each run' },
  switch: { title: 'Switch', also: ['switchname'], allowed: 'the name of a switch' },
  port: { title: 'Port', also: ['switchport', 'portnumber'], allowed: 'a whole number from 1' },
  device: { title: 'Device', also: [], allowed: 'what is at the far end' },
  poeClass: { title: 'PoE class', also: ['class'], allowed: 'a whole number from 0 to 8' },
  pdPower: { title: 'PD power', also: ['devicepower'], quantity: WATTS, allowed: 'a power above 0, such as 12.95 W or 4200 mW' },
  minimumVoltage: { title: 'Minimum voltage', also: ['minvoltage', 'deviceminimumvoltage'], quantity: VOLTS, allowed: 'a voltage above 0, such as 37 V' },
  maximumResistance: { title: 'Maximum resistance', also: ['maxresistance'], quantity: ['resistance'], allowed: 'a resistance above 0, such as 13 ohm' },
  resistanceLoop: { title: 'Resistance loop', also: ['loop'], allowed: 'pair loop, one pairset, two pairsets or unstated' },
  cable: { title: 'Cable', also: ['cabletype'], allowed: 'a category such as cat5e, cat6 or cat6a; for a two-wire run 18 AWG, 1.5 mm2, cat5e 2 pairs or 39 ohm/km' },
  length: { title: 'Length', also: ['installedlength', 'cablelength'], quantity: METRES, allowed: 'a length from 0 to 100 km, such as 65 m or 212 ft' },
  cords: { title: 'Cords', also: ['cord', 'patchcords'], quantity: METRES, allowed: 'each a length and a kind, such as 2 m cord-24 + 5 m 28 AWG; kinds are 24, 26 and 28 AWG' },
  connections: { title: 'Connections', also: ['connection'], allowed: 'a whole number from 0 to 1000' },
  ambient: { title: 'Ambient', also: ['temperature', 'ambienttemperature'], quantity: ['temperature'], allowed: 'a temperature from -100 to 400 °C, such as 35 °C or 95 degF' },
  bundle: { title: 'Bundle', also: ['bundlesize', 'cablesinbundle'], allowed: 'how many cables lie together, a whole number from 1 to 10000' },
  installation: { title: 'Installation', also: [], allowed: 'open air, closed conduit or drum' },
  measuredLoop: { title: 'Measured loop', also: ['measured', 'measuredloops', 'measuredresistance'], quantity: ['resistance'], allowed: 'what a meter read on shorted pairs of the installed cable, such as 14.1 ohm, or up to four in the order of the pins: 14.1 ohm + 14.2 ohm' },
  priority: { title: 'Priority', also: [], allowed: 'critical, high or low' },
  supply: { title: 'Supply', also: ['supplyvoltage'], quantity: VOLTS, allowed: 'a voltage above 0, such as 24 V, or a range from low to high, such as 21 V to 27.6 V' },
  load: { title: 'Load', also: [], quantity: ['power', 'current', 'resistance'], allowed: 'above 0 and with its unit: 6 W, 250 mA or 96 ohm' },
};

// biome-ignore format: columns
export const SWITCH_COLUMNS: Readonly<Record<SwitchColumn, Column>> = {
  switch: { title: 'Switch', also: ['switchname'], allowed: 'a name of its own for each switch' },
  type: { title: 'Type', also: ['switchtype', 'porttype', 'psetype'], allowed: '1 to 4, 802.3af, 802.3at, 802.3bt type 3 or 802.3bt type 4' },
  ports: { title: 'Ports', also: ['numberofports'], allowed: 'a whole number from 1 to 1000000' },
  budget: { title: 'Budget', also: ['powerbudget'], quantity: WATTS, allowed: 'a power from 0 to 1 MW, such as 370 W' },
  supplies: { title: 'Supplies', also: ['powersupplies'], quantity: WATTS, allowed: 'powers above 0, at most 1 MW each, such as 150 W + 150 W' },
  systemLoad: { title: 'System load', also: [], quantity: WATTS, allowed: 'a power from 0 to 1 MW, such as 35 W' },
  minimumVoltage: { title: 'Minimum output voltage', also: ['minimumvoltage', 'minoutputvoltage'], quantity: VOLTS, allowed: 'a voltage above 0 and up to 57 V, such as 50 V' },
};

/** A column as one file has it. */
export interface ColumnUse {
  readonly column: Column;
  /** Position of its cell in a row, from 0. */
  readonly index: number;
  /** As the file writes it. */
  readonly header: string;
  /** The unit of bare numbers, where the header names one. */
  readonly unit?: string;
  /** What stands in brackets in the header, where it is no unit of this column. */
  readonly strangeUnit?: string;
}

const BRACKETS = /\(([^()]*)\)|\[([^[\]]*)\]/;
/** Signs that tell names apart for no one. */
const IGNORED = /[\s_\-.:*\u2010-\u2015\ufeff]+/g;

/** The column that a header names. @internal */
export function columnOf<K extends string>(
  header: string,
  columns: Readonly<Record<K, Column>>,
): { readonly key: K; readonly bracket: string | undefined } | undefined {
  const brackets = BRACKETS.exec(header);
  const name = plainName(brackets === null ? header : header.replace(brackets[0], ''));
  for (const key of Object.keys(columns) as K[]) {
    const { title, also } = columns[key];
    if (plainName(title) === name || also.includes(name)) {
      return { key, bracket: brackets === null ? undefined : (brackets[1] ?? brackets[2])?.trim() };
    }
  }
  return undefined;
}

/** A column in use, with the unit that its header gives bare numbers. @internal */
export function columnUse(column: Column, index: number, header: string, bracket: string | undefined): ColumnUse {
  const bare = { column, index, header };
  if (bracket === undefined || bracket === '' || column.quantity === undefined) return bare;
  return column.quantity.some((quantity) => isUnit(bracket, quantity)) ? { ...bare, unit: bracket } : { ...bare, strangeUnit: bracket };
}

function plainName(header: string): string {
  return header.toLowerCase().replace(IGNORED, '');
}

function isUnit(unit: string, quantity: QuantityName): boolean {
  try {
    // A sign or a digit in front would make a number of `1` and the text together.
    return /^\D/.test(unit) && parseQuantity(`1 ${unit}`, { quantity }).quantity === quantity;
  } catch {
    return false;
  }
}
