/** The columns of the CSV report: their heads, and what each run has in them. @module */
import type { FeasiblePoint } from '../circuit/operating-point.ts';
import { checkNames, LIMITS } from '../limits/all.ts';
import type { CheckName } from '../limits/check.ts';
import { RUN_COLUMNS } from './columns/run-columns.ts';
import type { CsvCell } from './csv-row.ts';
import type { PoweredRunReport, ReportedHeat, ReportedMeasurement, RunReport } from './report.ts';
import { combination, conductorCurrent, whatIsTheMatter, whatOf, whatToDo, wholeLength } from './run-words.ts';

/** Columns that stand side by side. */
export interface CsvColumns {
  readonly heads: readonly string[];
  /** A cell for each head. */
  readonly cells: (run: RunReport, standard: string) => readonly CsvCell[];
}

const { run: RUN, device: DEVICE, switch: SWITCH, port: PORT, priority: PRIORITY, poeClass: CLASS, cable: CABLE } = RUN_COLUMNS;
const HEAT_CHECKS: readonly CheckName[] = /* @__PURE__ */ (() =>
  LIMITS.filter(({ aspect }) => aspect === 'heat').map(({ name }) => name))();

/** What every report has. @internal */
export const CSV_COLUMNS: readonly CsvColumns[] = [
  column(RUN.title, ({ run }) => run),
  column(DEVICE.title, ({ device }) => device),
  column('Kind', ({ kind }) => kind),
  column('Line', ({ line }) => line),
  column('Outcome', ({ outcome }) => outcome),
  column('Power', ({ verdict }) => verdict.power),
  column('Cabling', ({ verdict }) => verdict.cabling),
  powered('Allocation', ({ allocation }) => allocation),
  powered(SWITCH.title, (run) => run.switch),
  powered(PORT.title, ({ port }) => port),
  powered(PRIORITY.title, ({ priority }) => priority),
  powered(CLASS.title, ({ poeClass }) => poeClass),
  powered('Granted class', ({ grantedClass }) => grantedClass),
  powered('Port type', ({ classLimits }) => classLimits.type),
  powered('Pairs', ({ classLimits }) => classLimits.pairs),
  column('Supply low (V)', ({ supplyVoltage }) => supplyVoltage.low),
  column('Supply high (V)', ({ supplyVoltage }) => supplyVoltage.high),
  column(CABLE.title, whatOf),
  column(RUN_COLUMNS.connections.title, ({ connections }) => connections),
  column('Installed length (m)', (run) => (run.kind === 'powered' ? run.installedLength : run.length)),
  column('Channel length (m)', wholeLength),
  column('Pair loop (ohm)', (run) => (run.kind === 'powered' ? run.resistance.pairLoop : run.resistance)),
  powered('One pairset (ohm)', ({ resistance }) => resistance.twoPair),
  powered('Two pairsets (ohm)', ({ resistance }) => resistance.fourPair),
  powered('Pair loop at 20 degC (ohm)', ({ at20 }) => at20.pairLoop),
  column('Meter, usual copper (ohm)', ({ meterReading }) => meterReading.nominal),
  column('Meter, most allowed (ohm)', ({ meterReading }) => meterReading.maximum),
  flow('Far end (V)', ({ loadVoltage }) => loadVoltage),
  flow('Far end (W)', ({ loadPower }) => loadPower),
  powered('Available (W)', ({ available }) => available),
  powered('Allowed (W)', ({ allowed }) => allowed),
  flow('Total current (A)', ({ current }) => current),
  powered('Pairset current (A)', ({ pairsetCurrent }) => pairsetCurrent),
  column('Conductor current (A)', conductorCurrent),
  column('Heat in cable (W)', ({ cableHeat }) => cableHeat),
  column('Governing check', ({ governing }) => governing?.name),
  column('Governing margin', ({ governing }) => governing?.margin),
  column('Governing margin of limit', ({ governing }) => governing?.marginFraction),
  column('Why', (run, standard) => whatIsTheMatter(run, standard).join(' ')),
  column('What to do', todo),
  column('Notes', ({ notes }) => notes.join('; ')),
  checks(checkNames.filter((name) => !HEAT_CHECKS.includes(name))),
];

/** What a report has where a run of it lies in a bundle or was measured. @internal */
export const WARM_CSV_COLUMNS: readonly CsvColumns[] = [
  heat('Bundle (cables)', ({ cables }) => cables),
  heat(RUN_COLUMNS.installation.title, ({ installation }) =>
    typeof installation === 'string' ? installation : `${installation.filmCoefficient} W/(m²·K)`,
  ),
  heat('Bundle rise (K)', ({ rise }) => rise),
  heat('Conductors (degC)', ({ temperature }) => temperature),
  column('Heat', ({ verdict }) => verdict.heat),
  heat('Largest bundle (cables)', ({ largestBundle }) => largestBundle),
  measured('Measured (ohm)', ({ readings }) => readings.map(({ ohms }) => ohms).join(' ')),
  measured('Expected, least (ohm)', ({ expected }) => expected.low),
  measured('Expected, most (ohm)', ({ expected }) => expected.high),
  measured('Measured is', ({ status }) => status),
  measured('Consistent with', ({ consistentWith }) => consistentWith.join(' ')),
  checks(HEAT_CHECKS),
];

function column(head: string, cell: (run: RunReport, standard: string) => CsvCell): CsvColumns {
  return { heads: [head], cells: (run, standard) => [cell(run, standard)] };
}

/** A column of runs to a switch port; empty for the others. */
function powered(head: string, cell: (run: PoweredRunReport) => CsvCell): CsvColumns {
  return column(head, (run) => (run.kind === 'powered' ? cell(run) : undefined));
}

/** A column of runs over which something flows. */
function flow(head: string, cell: (point: FeasiblePoint) => CsvCell): CsvColumns {
  return column(head, ({ operating }) => (operating.feasible ? cell(operating) : undefined));
}

/** A column of runs in a bundle. */
function heat(head: string, cell: (found: ReportedHeat) => CsvCell): CsvColumns {
  return column(head, (run) => run.heat && cell(run.heat));
}

/** A column of runs that were measured. */
function measured(head: string, cell: (found: ReportedMeasurement) => CsvCell): CsvColumns {
  return column(head, (run) => run.measured && cell(run.measured));
}

/** Four columns for each check. */
function checks(names: readonly CheckName[]): CsvColumns {
  return {
    heads: names.flatMap((name) => [`${name}: value`, `${name}: limit`, `${name}: margin`, `${name}: verdict`]),
    cells: (run) => {
      const known = new Map(run.checks.map((check) => [check.name, check]));
      return names.flatMap((name) => {
        const check = known.get(name);
        return [check?.value, check?.limit, check?.margin, check?.verdict];
      });
    },
  };
}

/** What to do about a run; for a failing one, at the least what it takes. */
function todo(run: RunReport): string {
  const changes = whatToDo(run);
  return changes.length === 0 && run.outcome === 'fail' ? combination(run) : changes.join('; ');
}
