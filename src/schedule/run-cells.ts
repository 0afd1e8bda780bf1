/** The cells of one row of the runs, each read as what its column holds. @module */
import type { Load } from '../circuit/operating-point.ts';
import type { SupplyVoltage } from '../plan/two-wire-input.ts';
import type { QuantityName } from '../quantity/parse-quantity.ts';
import { type Cell, type CellReader, cellReader, holds, nameReader, refused } from './cell.ts';
import type { RunColumn } from './columns.ts';
import { cableShop, type NamedCable, type ReadCord, readCable, readCords } from './read-cable.ts';
import { type QuantityStyle, readLoad, readPieces, readQuantity, readWhole } from './read-quantity.ts';
import { allowedInRun, type RunValues } from './row-schema.ts';
import type { Table } from './table.ts';

/** Numbers of several pieces, with the least and the greatest. */
export interface Pieces {
  readonly values: readonly number[];
  readonly least: number;
  readonly greatest: number;
}

/** One row. Names that are empty are absent; every other cell says itself whether it is empty, good or bad. */
export interface RunCells {
  readonly run: string | undefined;
  readonly switch: string | undefined;
  readonly device: string | undefined;
  readonly port: Cell<number>;
  readonly poeClass: Cell<number>;
  readonly pdPower: Cell<number>;
  readonly minimumVoltage: Cell<number>;
  readonly maximumResistance: Cell<number>;
  readonly resistanceLoop: Cell<string>;
  readonly cable: Cell<readonly NamedCable[]>;
  readonly length: Cell<Pieces>;
  readonly cords: Cell<readonly ReadCord[]>;
  readonly connections: Cell<number>;
  readonly ambient: Cell<Pieces>;
  readonly bundle: Cell<number>;
  readonly installation: Cell<string>;
  readonly measuredLoop: Cell<Pieces>;
  readonly priority: Cell<string>;
  readonly supply: Cell<{ readonly voltage: SupplyVoltage; readonly low: number }>;
  readonly load: Cell<{ readonly load: Load; readonly size: number }>;
}

// In small letters without blanks, `_` and hyphens; anything else is left as it is, for the schema to refuse.
const LOOPS: Readonly<Record<string, string>> = {
  pairloop: 'pairLoop',
  onepairset: 'twoPair',
  '1pairset': 'twoPair',
  twopairsets: 'fourPair',
  '2pairsets': 'fourPair',
  unstated: 'unstated',
};

const INSTALLATIONS: Readonly<Record<string, string>> = {
  openair: 'open-air',
  closedconduit: 'closed-conduit',
  conduit: 'closed-conduit',
  drum: 'wound-drum',
  wounddrum: 'wound-drum',
};

/** A reader for the rows of one table. @internal */
export function runCellsReader({ columns, decimalComma }: Table<RunColumn>): (cells: readonly string[]) => RunCells {
  const shop = cableShop();
  const style = (key: RunColumn): QuantityStyle => ({ decimalComma, unit: columns[key]?.unit });
  const quantity = (key: RunColumn & keyof RunValues, name: QuantityName): CellReader<number> => {
    const how = style(key);
    return cellReader(columns[key], (text) => allowedInRun(readQuantity(text, name, how), (value) => ({ [key]: value })));
  };
  const pieces = (key: RunColumn, name: QuantityName, values: (pieces: Pieces) => RunValues): CellReader<Pieces> => {
    const how = style(key);
    return cellReader(columns[key], (text) => allowedInRun(spread(readPieces(text, (piece) => readQuantity(piece, name, how))), values));
  };
  const whole = (key: RunColumn & keyof RunValues, prefix?: RegExp): CellReader<number> =>
    cellReader(columns[key], (text) =>
      allowedInRun(readWhole(prefix === undefined ? text : text.replace(prefix, '')), (value) => ({ [key]: value })),
    );
  const word = (key: RunColumn & keyof RunValues, tidy: (text: string) => string): CellReader<string> =>
    cellReader(columns[key], (text) => allowedInRun(holds(tidy(text)), (value) => ({ [key]: value })));

  const read = {
    run: nameReader(columns.run),
    switch: nameReader(columns.switch),
    device: nameReader(columns.device),
    port: whole('port', /^port\s*/i),
    poeClass: whole('poeClass', /^class\s*/i),
    pdPower: quantity('pdPower', 'power'),
    minimumVoltage: quantity('minimumVoltage', 'voltage'),
    maximumResistance: quantity('maximumResistance', 'resistance'),
    resistanceLoop: word('resistanceLoop', (text) => tidied(text, LOOPS)),
    cable: cellReader(columns.cable, (text) => readPieces(text, (piece) => readCable(piece, shop, style('cable')))),
    length: pieces('length', 'length', ({ least, greatest }) => ({ shortest: least, longest: greatest })),
    cords: cellReader(columns.cords, (text) => readCords(text, shop, style('cords'))),
    connections: whole('connections'),
    ambient: pieces('ambient', 'temperature', ({ least, greatest }) => ({ coldest: least, hottest: greatest })),
    bundle: whole('bundle'),
    installation: word('installation', (text) => tidied(text, INSTALLATIONS)),
    measuredLoop: pieces('measuredLoop', 'resistance', ({ values, least, greatest }) => ({
      leastReading: least,
      greatestReading: greatest,
      readings: values.length,
    })),
    priority: word('priority', (text) => text.toLowerCase()),
    supply: cellReader(columns.supply, (text) => allowedInRun(readSupply(text, style('supply')), ({ low }) => ({ supply: low }))),
    load: cellReader(columns.load, (text) => allowedInRun(readLoad(text, style('load')), ({ size }) => ({ load: size }))),
  };

  return (cells) => ({
    run: read.run(cells),
    switch: read.switch(cells),
    device: read.device(cells),
    port: read.port(cells),
    poeClass: read.poeClass(cells),
    pdPower: read.pdPower(cells),
    minimumVoltage: read.minimumVoltage(cells),
    maximumResistance: read.maximumResistance(cells),
    resistanceLoop: read.resistanceLoop(cells),
    cable: read.cable(cells),
    length: read.length(cells),
    cords: read.cords(cells),
    connections: read.connections(cells),
    ambient: read.ambient(cells),
    bundle: read.bundle(cells),
    installation: read.installation(cells),
    measuredLoop: read.measuredLoop(cells),
    priority: read.priority(cells),
    supply: read.supply(cells),
    load: read.load(cells),
  });
}

function spread({ value: values, ...rest }: Cell<readonly number[]>): Cell<Pieces> {
  if (values === undefined) return { ...rest, value: undefined };
  return { ...rest, value: { values, least: Math.min(...values), greatest: Math.max(...values) } };
}

/** The name that the library has for it; the text itself, for the schema to refuse, where it has none. */
function tidied(text: string, names: Readonly<Record<string, string>>): string {
  const name = text.toLowerCase().replace(/[\s_-]+/g, '');
  return Object.hasOwn(names, name) ? (names[name] as string) : text;
}

const RANGE = /^(.+?)\s*(?:\bto\b|\.\.\.?|[-\u2010-\u2015\u2026])\s*(.+)$/i;

/** `24 V`, `21 V to 27.6 V` or `21-27.6 V`, where the first takes the unit of the second. */
function readSupply(text: string, style: QuantityStyle): Cell<{ readonly voltage: SupplyVoltage; readonly low: number }> {
  const ends = RANGE.exec(text);
  if (ends === null) {
    const single = readQuantity(text, 'voltage', style);
    return single.value === undefined ? refused(single.code ?? 'unreadable-value', single.hint) : { ...single, value: alone(single.value) };
  }
  const high = readQuantity(ends[2] as string, 'voltage', style);
  const unit = /[a-z]+$/i.exec(ends[2] as string)?.[0] ?? style.unit;
  const low = readQuantity(ends[1] as string, 'voltage', { ...style, unit });
  if (low.value === undefined) return refused(low.code ?? 'unreadable-value', low.hint);
  if (high.value === undefined) return refused(high.code ?? 'unreadable-value', high.hint);
  if (low.value > high.value) return refused('value-out-of-range', 'the lower voltage comes first');
  return { ...high, value: { voltage: { low: low.value, high: high.value }, low: low.value } };
}

function alone(voltage: number): { readonly voltage: SupplyVoltage; readonly low: number } {
  return { voltage, low: voltage };
}
