/** From the rows of a table to the runs of a schedule, a bad cell costing only what depends on it. @module */
import type { Installation } from '../cable/heat/bundle-rise.ts';
import type { Segment } from '../cable/run-resistance.ts';
import type { RunPair } from '../cable/unbalance.ts';
import type { Conductor } from '../conductor/conductor.ts';
import type { PoeClassNumber } from '../ethernet/class-table.ts';
import { poeClass } from '../ethernet/poe-class.ts';
import type { ResistanceLimit } from '../plan/device-resistance.ts';
import type { PortPriority } from '../plan/switch/switch-budget.ts';
import type { Cell } from './cell.ts';
import { RUN_COLUMNS, type RunColumn } from './columns.ts';
import type { FindingList } from './findings.ts';
import { listed } from './findings.ts';
import type { NamedCable } from './read-cable.ts';
import { type RowFindings, rowFindings } from './row-findings.ts';
import { type Pieces, type RunCells, runCellsReader } from './run-cells.ts';
import type { ScheduledPoweredRun, ScheduledRun, ScheduledTwoWireRun, UnreadCell } from './schedule.ts';
import type { SwitchList } from './switch-list.ts';
import type { Table, TableRow } from './table.ts';

type Draft<T> = { -readonly [K in keyof T]: T[K] };

const NOT_JUDGED = 'the run is not judged';

/**
 * The runs of a table.
 *
 * @param table - The rows.
 * @param switches - The switches that are listed; absent where no list was given.
 * @param findings - Where everything wrong, doubtful or assumed is noted.
 * @internal
 */
export function rowsToRuns(table: Table<RunColumn>, switches: SwitchList | undefined, findings: FindingList): ScheduledRun[] {
  const { columns } = table;
  const read = runCellsReader(table);
  const said = rowFindings(RUN_COLUMNS, columns, findings, table.headerDoubt);
  const names = new Map<string, number>();
  const ports = new Map<string, Map<number, string>>();
  const runs: ScheduledRun[] = [];
  for (const key of ['run', 'cable', 'length'] as const) {
    if (columns[key] === undefined) said.noColumn(key, key === 'run' ? 'runs are named by their lines' : 'no run can be judged');
  }

  for (const row of table.rows) {
    const cells = read(row.cells);
    const name = nameOf(row, cells);
    const powered = cells.switch !== undefined || !cells.port.empty || !cells.poeClass.empty;
    const twoWire = !cells.supply.empty || !cells.load.empty;
    if (powered && twoWire) {
      const message = `${who(name)}: it has a switch port and a supply of its own; a run is fed by one of them; ${NOT_JUDGED}`;
      said.say(row, undefined, 'conflicting-values', 'error', message, 'either Switch, Port and PoE class, or Supply and Load');
    } else if (!powered && !twoWire) nothingFeeds(row, name);
    else {
      const run = powered ? poweredRun(row, name, cells, said) : twoWireRun(row, name, cells, said);
      if (run === undefined) continue;
      const unread = unreadCells(row, cells, said, run.kind);
      if (unread.length > 0) run.unread = unread;
      if (run.kind === 'powered') plug(row, run);
      runs.push(run);
    }
  }
  return runs;

  function nameOf(row: TableRow, { run }: RunCells): string {
    if (run === undefined) {
      const name = `line ${row.line}`;
      if (columns.run !== undefined) {
        said.say(row, 'run', 'missing-value', 'error', `a run without a name; it is called ${name}`, RUN_COLUMNS.run.allowed);
      }
      return name;
    }
    const before = names.get(run);
    if (before === undefined) names.set(run, row.line);
    else {
      const message = `${who(run)}: the name is on line ${before} already; both are judged`;
      said.say(row, 'run', 'duplicate', 'error', message, 'a name that no other run has');
    }
    return run;
  }

  function nothingFeeds(row: TableRow, name: string): void {
    const allowed = 'Switch, Port and PoE class, or Supply and Load';
    if (FEEDING.every((key) => columns[key] === undefined)) {
      said.once('missing-column', 'error', allowed, `there are no columns ${allowed}: no run can be judged`);
    } else {
      const message = `${who(name)}: it has neither a switch port with a PoE class nor a supply with a load; ${NOT_JUDGED}`;
      said.say(row, undefined, 'missing-value', 'error', message, allowed);
    }
  }

  /** Puts the run on its port; a run without a place there is judged all the same. */
  function plug(row: TableRow, run: Draft<ScheduledPoweredRun>): void {
    if (switches !== undefined) {
      const known = switches.find(run.switch);
      if (known === undefined) {
        const allowed = switches.names.length === 0 ? 'a switch of the switch file' : `one of ${listed(switches.names)}`;
        const why = switches.isUnusable(run.switch) ? 'cannot be used: see its own row' : 'is not listed';
        const message = `${who(run.run)}: switch ${run.switch} ${why}; the run is judged on the weakest type of port that serves its class, and is in no budget`;
        said.say(row, 'switch', 'unknown-switch', 'error', message, allowed);
      } else {
        run.switch = known.switch;
        if (run.port > known.ports) {
          const message = `${who(run.run)}: switch ${run.switch} has ports 1 to ${known.ports}, not ${run.port}; the run is judged, and left out of the budget`;
          said.say(row, 'port', 'no-such-port', 'error', message, `1 to ${known.ports}`);
          return;
        }
      }
    }
    let taken = ports.get(run.switch);
    if (taken === undefined) {
      taken = new Map();
      ports.set(run.switch, taken);
    }
    const holder = taken.get(run.port);
    if (holder === undefined) taken.set(run.port, run.run);
    else {
      const message = `${who(run.run)}: port ${run.port} of switch ${run.switch} is taken by run ${holder}; this run is judged, and left out of the budget`;
      said.say(row, 'port', 'duplicate', 'error', message, 'a port that no other run has');
    }
  }
}

const FEEDING: readonly RunColumn[] = ['switch', 'port', 'poeClass', 'supply', 'load'];

type Said = RowFindings<RunColumn>;

const POWER: UnreadCell['bearsOn'] = ['power'];
const BOTH: UnreadCell['bearsOn'] = ['power', 'cabling'];

/** The cells that could make a run worse than the default in their place, and what they bear on. */
const BURDENS = {
  pdPower: POWER,
  minimumVoltage: POWER,
  maximumResistance: POWER,
  cords: BOTH,
  connections: BOTH,
  ambient: BOTH,
  bundle: BOTH,
  installation: ['power', 'cabling', 'heat'],
  measuredLoop: BOTH,
} as const satisfies Partial<Record<RunColumn, UnreadCell['bearsOn']>>;
type Burden = keyof typeof BURDENS;
const BURDEN_COLUMNS = /* @__PURE__ */ (() => Object.keys(BURDENS) as Burden[])();
const TWO_WIRE_BURDENS: readonly Burden[] = ['minimumVoltage', 'maximumResistance', 'connections', 'ambient'];

/** What could not be read about a run that is judged all the same: a default in its place must not make it pass. */
function unreadCells(row: TableRow, cells: RunCells, said: Said, kind: ScheduledRun['kind']): UnreadCell[] {
  const unread: UnreadCell[] = [];
  for (const key of kind === 'powered' ? BURDEN_COLUMNS : TWO_WIRE_BURDENS) {
    const words = said.unread(row, key, cells[key]);
    if (words !== undefined) unread.push({ column: RUN_COLUMNS[key].title, words, bearsOn: kind === 'powered' ? BURDENS[key] : POWER });
  }
  return unread;
}

function who(name: string): string {
  return `run ${name}`;
}

function poweredRun(row: TableRow, name: string, cells: RunCells, said: Said): Draft<ScheduledPoweredRun> | undefined {
  const whose = who(name);
  const switchName = said.needed(row, whose, 'switch', nameCell(cells.switch), NOT_JUDGED);
  const port = said.needed(row, whose, 'port', cells.port, NOT_JUDGED);
  const classNumber = said.needed(row, whose, 'poeClass', cells.poeClass, NOT_JUDGED) as PoeClassNumber | undefined;
  const installed = installedSegments(row, whose, cells, said);
  const cords = cordSegments(row, whose, cells, said);
  const connections = orDefault(row, whose, 'connections', cells.connections, 0, '0 is used', said);
  const priority = orDefault(row, whose, 'priority', cells.priority as Cell<PortPriority>, 'low', 'low is used', said);
  const minimumVoltage = said.optional(row, whose, 'minimumVoltage', cells.minimumVoltage, 'it is not checked');
  const maximumResistance = resistanceLimit(row, whose, cells, said);
  const pdPower = classNumber === undefined ? undefined : devicePower(row, whose, cells, classNumber, said);
  if (switchName === undefined || port === undefined || classNumber === undefined || installed === undefined) return undefined;

  const input: Draft<ScheduledPoweredRun['input']> = { poeClass: classNumber, installed, cords, connections };
  if (pdPower !== undefined) input.pdPower = pdPower;
  if (minimumVoltage !== undefined) input.minimumVoltage = minimumVoltage;
  if (maximumResistance !== undefined) input.maximumResistance = maximumResistance;
  const run = poweredDraft(row, name, cells.device, switchName, port, priority, input);
  if (!cells.bundle.empty || !cells.installation.empty) bundled(row, whose, cells, run, said);
  if (!cells.measuredLoop.empty) measured(row, whose, cells, run, said);
  return run;
}

function poweredDraft(
  row: TableRow,
  name: string,
  device: string | undefined,
  switchName: string,
  port: number,
  priority: PortPriority,
  input: ScheduledPoweredRun['input'],
): Draft<ScheduledPoweredRun> {
  return device === undefined
    ? { kind: 'powered', run: name, line: row.line, switch: switchName, port, priority, input }
    : { kind: 'powered', run: name, device, line: row.line, switch: switchName, port, priority, input };
}

/** The bundle of a run: a number of cables, and how they are installed. */
function bundled(row: TableRow, whose: string, cells: RunCells, run: Draft<ScheduledPoweredRun>, said: Said): void {
  const cables = said.optional(row, whose, 'bundle', cells.bundle, 'the heat of its bundle is not judged');
  const way = said.optional(row, whose, 'installation', cells.installation, 'open air is used');
  if (cables === undefined && way !== 'wound-drum') {
    if (cells.bundle.empty) {
      said.say(row, 'installation', 'conflicting-values', 'warning', `${whose}: an installation without a bundle; it is not used`);
    }
    return;
  }
  if (cells.installation.empty) said.byDefault(row, 'installation', 'open air is used');
  run.bundle = { cables: cables ?? 1, installation: (way ?? 'open-air') as Installation };
}

const PAIRS: readonly RunPair[] = ['1,2', '3,6', '4,5', '7,8'];

/** What was read on its pairs, in the order of the pins. */
function measured(row: TableRow, whose: string, cells: RunCells, run: Draft<ScheduledPoweredRun>, said: Said): void {
  const readings = said.optional(row, whose, 'measuredLoop', cells.measuredLoop, 'the run is judged by its cable')?.values;
  if (readings === undefined) return;
  if (!run.input.installed.some(({ length }) => length > 0)) {
    said.say(row, 'measuredLoop', 'conflicting-values', 'warning', `${whose}: a reading of a cable of 0 m; it is not used`);
    return;
  }
  said.once(
    'default-applied',
    'note',
    'readings at 20 °C',
    'readings are taken at 20 °C for power, and between 20 °C and the ambient when held beside what was expected; the meter as exact and its leads as nulled',
  );
  run.measured = Object.fromEntries(readings.map((ohms, index) => [PAIRS[index] as RunPair, ohms]));
}

function twoWireRun(row: TableRow, name: string, cells: RunCells, said: Said): Draft<ScheduledTwoWireRun> | undefined {
  const whose = who(name);
  for (const key of ['pdPower', 'cords', 'priority', 'bundle', 'installation', 'measuredLoop'] as const) {
    if (cells[key].empty) continue;
    const { title } = RUN_COLUMNS[key];
    said.say(row, key, 'conflicting-values', 'warning', `${whose}: ${title} has no meaning for a two-wire run; it is not used`);
  }
  const supply = said.needed(row, whose, 'supply', cells.supply, NOT_JUDGED);
  const load = said.needed(row, whose, 'load', cells.load, NOT_JUDGED);
  const conductors = said.needed(row, whose, 'cable', cells.cable, NOT_JUDGED);
  const lengths = said.needed(row, whose, 'length', cells.length, NOT_JUDGED);
  const ambient = said.optional(row, whose, 'ambient', cells.ambient, '20 °C is used');
  if (cells.ambient.empty) said.byDefault(row, 'ambient', '20 °C is used');
  const connections = orDefault(row, whose, 'connections', cells.connections, 0, '0 is used', said);
  if (connections > 0) {
    said.once('default-applied', 'note', 'joints without resistance', 'two-wire runs: their joints are taken at 0 ohm each');
  }
  const minimumVoltage = said.optional(row, whose, 'minimumVoltage', cells.minimumVoltage, 'it is not checked');
  const maximumResistance = said.optional(row, whose, 'maximumResistance', cells.maximumResistance, 'it is not checked');
  const loop = said.optional(row, whose, 'resistanceLoop', cells.resistanceLoop, 'out and back is used');
  if (loop === 'twoPair' || loop === 'fourPair') {
    const message = `${whose}: a two-wire run has one loop, out and back; the resistance is taken as that`;
    said.say(row, 'resistanceLoop', 'conflicting-values', 'warning', message, 'pair loop, or nothing');
  }
  if (supply === undefined || load === undefined || conductors === undefined || lengths === undefined) return undefined;
  const conductor = conductors[0]?.conductor;
  if (conductor === undefined || conductors.length > 1) {
    const allowed = 'one of 18 AWG, 1.5 mm2, cat5e 2 pairs or 39 ohm/km';
    const message = `${whose}: a two-wire run has one conductor, out and back alike; write ${allowed}; ${NOT_JUDGED}`;
    said.say(row, 'cable', 'conflicting-values', 'error', message, allowed);
    return undefined;
  }
  const { assumed, cores } = conductors[0] as NamedCable & { readonly conductor: Conductor };
  if (assumed !== undefined) said.say(row, 'cable', 'default-applied', 'note', `${whose}: Cable states no class of conductor: ${assumed}`);
  const length = lengths.values.reduce((sum, piece) => sum + piece, 0);
  warnOfNoLength(row, whose, length, said);
  const temperature = ambient === undefined ? 20 : ambient.greatest;
  if (ambient !== undefined && ambient.values.length > 1) {
    said.say(row, 'ambient', 'conflicting-values', 'warning', `${whose}: a two-wire run has one temperature; the highest is used`);
  }
  const { voltage } = supply;
  const input: Draft<ScheduledTwoWireRun['input']> = {
    supplyVoltage: typeof voltage === 'number' ? voltage : { ...voltage },
    conductor,
    length,
    temperature,
    connections,
    load: { ...load.load },
  };
  if (minimumVoltage !== undefined) input.minimumVoltage = minimumVoltage;
  if (maximumResistance !== undefined) input.maximumResistance = maximumResistance;
  const run: Draft<ScheduledTwoWireRun> = {
    kind: 'two-wire',
    run: name,
    ...(cells.device === undefined ? {} : { device: cells.device }),
    line: row.line,
    input,
  };
  if (cores !== undefined) run.cores = cores;
  return run;
}

/** The installed pieces: a cable and a temperature for each length, or one for all. */
function installedSegments(row: TableRow, whose: string, cells: RunCells, said: Said): Segment[] | undefined {
  const cables = said.needed(row, whose, 'cable', cells.cable, NOT_JUDGED);
  const lengths = said.needed(row, whose, 'length', cells.length, NOT_JUDGED)?.values;
  const ambient = said.optional(row, whose, 'ambient', cells.ambient, '20 °C is used');
  if (cells.ambient.empty) said.byDefault(row, 'ambient', '20 °C is used');
  if (cables === undefined || lengths === undefined) return undefined;
  if (cables.length !== 1 && cables.length !== lengths.length) {
    const message = `${whose}: ${cables.length} cables and ${lengths.length} lengths; ${NOT_JUDGED}`;
    said.say(row, 'length', 'conflicting-values', 'error', message, 'one cable for all lengths, or one for each');
    return undefined;
  }
  const temperatures = temperaturesOf(row, whose, ambient, lengths.length, said);
  const segments: Segment[] = [];
  let sum = 0;
  for (let index = 0; index < lengths.length; index++) {
    const cable = cables[cables.length === 1 ? 0 : index]?.cable;
    if (cable === undefined) {
      const allowed = 'a category such as cat5e, cat6 or cat6a';
      const message = `${whose}: a run to a switch port is of four-pair cable; write ${allowed}; ${NOT_JUDGED}`;
      said.say(row, 'cable', 'conflicting-values', 'error', message, allowed);
      return undefined;
    }
    const length = lengths[index] as number;
    sum += length;
    segments.push({ cable, length, temperature: temperatures[temperatures.length === 1 ? 0 : index] as number });
  }
  warnOfNoLength(row, whose, sum, said);
  return segments;
}

/** What a port sets aside, by class from 0 to 8. */
const CLASS_PSE_POWER: readonly number[] = /* @__PURE__ */ (() =>
  ([0, 1, 2, 3, 4, 5, 6, 7, 8] as const).map((classNumber) => poeClass(classNumber).psePower))();

const TWENTY: readonly number[] = [20];

function temperaturesOf(row: TableRow, whose: string, ambient: Pieces | undefined, pieces: number, said: Said): readonly number[] {
  if (ambient === undefined) return TWENTY;
  const { values, greatest } = ambient;
  if (greatest > 60) {
    const message = `${whose}: an ambient above 60 °C is more than most cable is made for; it is used as it stands (write 95 degF for Fahrenheit)`;
    said.say(row, 'ambient', 'value-out-of-range', 'warning', message);
  }
  if (values.length === 1 || values.length === pieces) return values;
  const message = `${whose}: ${values.length} temperatures for ${pieces} lengths; the highest is used for all`;
  said.say(row, 'ambient', 'conflicting-values', 'error', message, 'one temperature for all lengths, or one for each');
  return [greatest];
}

function cordSegments(row: TableRow, whose: string, cells: RunCells, said: Said): Segment[] {
  const cords = said.optional(row, whose, 'cords', cells.cords, 'the run is judged without cords');
  if (cells.cords.empty) said.byDefault(row, 'cords', 'the run is judged without cords');
  if (cords === undefined || cords.length === 0) return [];
  said.once(
    'default-applied',
    'note',
    'cords at 20 °C',
    'cords are taken at 20 °C in every run, whatever the ambient of the installed cable',
  );
  return cords.map(({ cable, length }) => ({ cable, length, temperature: 20 }));
}

function devicePower(row: TableRow, whose: string, cells: RunCells, classNumber: PoeClassNumber, said: Said): number | undefined {
  const pdPower = said.optional(row, whose, 'pdPower', cells.pdPower, 'all that its class allows is used');
  if (cells.pdPower.empty) said.byDefault(row, 'pdPower', 'all that the class allows is used');
  if (pdPower === undefined) return undefined;
  if (pdPower !== CLASS_PSE_POWER[classNumber]) return pdPower;
  const { psePower, pdPower: allowed, pdPowerLater = allowed } = poeClass(classNumber);
  if (pdPower <= pdPowerLater) return pdPower;
  const message = `${whose}: ${psePower} W is what a port sets aside for class ${classNumber}; the device may draw ${allowed} W, which is used`;
  said.say(row, 'pdPower', 'pse-power-as-pd-power', 'error', message, `at most ${allowed} W for class ${classNumber}`);
  return allowed;
}

function resistanceLimit(row: TableRow, whose: string, cells: RunCells, said: Said): ResistanceLimit | undefined {
  const ohms = said.optional(row, whose, 'maximumResistance', cells.maximumResistance, 'it is not checked');
  const loop = said.optional(row, whose, 'resistanceLoop', cells.resistanceLoop, 'unstated is used');
  if (ohms === undefined) {
    if (loop !== undefined && loop !== 'unstated' && cells.maximumResistance.empty) {
      said.say(row, 'resistanceLoop', 'conflicting-values', 'warning', `${whose}: a loop without a maximum resistance; it is not used`);
    }
    return undefined;
  }
  if (cells.resistanceLoop.empty) said.byDefault(row, 'resistanceLoop', 'unstated is used, so it is judged as a pair loop');
  return { ohms, loop: (loop ?? 'unstated') as ResistanceLimit['loop'] };
}

function orDefault<T>(row: TableRow, whose: string, key: RunColumn, cell: Cell<T>, value: T, words: string, said: Said): T {
  if (!cell.empty) return said.optional(row, whose, key, cell, words) ?? value;
  said.byDefault(row, key, words);
  return value;
}

function warnOfNoLength(row: TableRow, whose: string, length: number, said: Said): void {
  if (length > 0) return;
  said.say(row, 'length', 'value-out-of-range', 'warning', `${whose}: a length of 0 m; it is used as it stands`);
}

function nameCell(name: string | undefined): Cell<string> {
  return { value: name, code: undefined, hint: '', empty: name === undefined };
}
