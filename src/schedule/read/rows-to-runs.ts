/** From the rows of a table to the runs of a schedule, a bad cell costing only what depends on it. @module */
import { keysOf } from '../columns/column-use.ts';
import { RUN_COLUMNS, type RunColumns } from '../columns/run-columns.ts';
import type { ScheduledPoweredRun, ScheduledRun, UnreadCell } from '../schedule.ts';
import type { FindingList } from './findings.ts';
import { portTaken, portTrouble } from './port-trouble.ts';
import { poweredRow } from './powered-row.ts';
import { type RowReader, rowReader } from './row-reader.ts';
import type { SwitchList } from './switch-list.ts';
import type { Table } from './table.ts';
import { twoWireRow } from './two-wire-row.ts';

const { switch: SWITCH, port: PORT, poeClass: CLASS, supply: SUPPLY, load: LOAD } = RUN_COLUMNS;
const FEEDING = ['switch', 'port', 'poeClass', 'supply', 'load'] as const;
const FED_BY = /* @__PURE__ */ (() => `${SWITCH.title}, ${PORT.title} and ${CLASS.title}, or ${SUPPLY.title} and ${LOAD.title}`)();
/** The cells that could make a run worse than the default in their place. */
const BURDENS = /* @__PURE__ */ (() => keysOf(RUN_COLUMNS).filter((key) => RUN_COLUMNS[key].bearsOn !== undefined))();
const POWER: UnreadCell['bearsOn'] = ['power'];

/**
 * The runs of a table.
 *
 * @param table - The rows.
 * @param switches - The switches that are listed; absent where no list was given.
 * @param findings - Where everything wrong, doubtful or assumed is noted.
 * @internal
 */
export function rowsToRuns(table: Table<RunColumns>, switches: SwitchList | undefined, findings: FindingList): ScheduledRun[] {
  const { columns } = table;
  const reader = rowReader(RUN_COLUMNS, table, findings);
  const names = new Map<string, number>();
  const ports = new Map<string, Map<number, string>>();
  const runs: ScheduledRun[] = [];
  for (const key of keysOf(RUN_COLUMNS)) {
    if (RUN_COLUMNS[key].needed !== 'always' || columns[key] !== undefined) continue;
    reader.noColumn(key, key === 'run' ? RUN_COLUMNS.run.instead : 'no run can be judged');
  }
  for (const row of table.rows) {
    reader.begin(row, 'a run without a name');
    const name = reader.cell('run').value ?? unnamed(row.line);
    reader.begin(row, `run ${name}`);
    if (!reader.isEmpty('run')) checkName(name, row.line);
    const isPowered = !reader.isEmpty('switch') || !reader.isEmpty('port') || !reader.isEmpty('poeClass');
    const isTwoWire = !reader.isEmpty('supply') || !reader.isEmpty('load');
    if (isPowered === isTwoWire) {
      wrongFeed(isPowered);
      continue;
    }
    const run = isPowered ? poweredRow(reader, name, row.line) : twoWireRow(reader, name, row.line);
    if (run === undefined) continue;
    const unread = unreadCells(reader, run.kind);
    const whole = unread.length === 0 ? run : { ...run, unread };
    runs.push(whole.kind === 'powered' ? onPort(whole) : whole);
  }
  return runs;

  function unnamed(line: number): string {
    if (columns.run !== undefined) reader.say('run', 'missing-value', 'error', `it is called line ${line}`);
    return `line ${line}`;
  }

  function checkName(name: string, line: number): void {
    const before = names.get(name);
    if (before === undefined) names.set(name, line);
    else {
      const words = `the name is on line ${before} already; both are judged`;
      reader.say('run', 'duplicate', 'error', words, 'a name that no other run has');
    }
  }

  function wrongFeed(isBoth: boolean): void {
    if (isBoth) {
      const words = `it has a switch port and a supply of its own; a run is fed by one of them; ${LOAD.instead}`;
      reader.say(undefined, 'conflicting-values', 'error', words, `either ${FED_BY}`);
    } else if (FEEDING.every((key) => columns[key] === undefined)) {
      reader.once('missing-column', 'error', FED_BY, `there are no columns ${FED_BY}: no run can be judged`);
    } else {
      const words = `it has neither a switch port with a PoE class nor a supply with a load; ${LOAD.instead}`;
      reader.say(undefined, 'missing-value', 'error', words, FED_BY);
    }
  }

  /** The run on its port; one without a place there is judged all the same. */
  function onPort(run: ScheduledPoweredRun): ScheduledPoweredRun {
    const feed = switches?.find(run.switch);
    const found = feed === undefined || feed.switch === run.switch ? run : { ...run, switch: feed.switch };
    const trouble = switches && portTrouble(found, feed, undefined, switches.names, switches.isUnusable(run.switch));
    if (trouble !== undefined) reader.say(trouble.key, trouble.code, 'error', trouble.words, trouble.allowed);
    if (trouble?.key === 'port') return found;
    const taken = ports.get(found.switch) ?? new Map<number, string>();
    ports.set(found.switch, taken);
    const holder = taken.get(found.port);
    if (holder === undefined) taken.set(found.port, found.run);
    else {
      const { key, code, words, allowed } = portTaken(found, holder);
      reader.say(key, code, 'error', words, allowed);
    }
    return found;
  }
}

/** What could not be read about a run that is judged all the same: a default in its place must not make it pass. */
function unreadCells(reader: RowReader<RunColumns>, kind: ScheduledRun['kind']): UnreadCell[] {
  const unread: UnreadCell[] = [];
  for (const key of BURDENS) {
    const { title, bearsOn = POWER, poweredOnly } = RUN_COLUMNS[key];
    if (kind === 'two-wire' && poweredOnly === true) continue;
    const words = reader.unread(key);
    if (words !== undefined) unread.push({ column: title, words, bearsOn: kind === 'powered' ? bearsOn : POWER });
  }
  return unread;
}
