/** A large schedule, text to report, against csv-parse returning arrays; argument `memory` runs the largest once. @module */
import { parse } from 'csv-parse/sync';
import { builtSchedule, print, spreadOf, stream } from './measure.mts';

const { parseSchedule, checkSchedule, reportText } = await builtSchedule();
const PORTS = 48;

/** A schedule of ordinary runs: every cell filled, every row good, 48 to a switch. */
function scheduleText(rows: number): { runs: string; switches: string } {
  const next = stream(rows);
  const pick = <T,>(list: readonly T[]): T => list[Math.floor(next() * list.length)] as T;
  const runs = ['Run,Switch,Port,Device,PoE class,PD power,Minimum voltage,Cable,Length,Cords,Connections,Ambient,Priority'];
  for (let row = 0; row < rows; row++) {
    const [poeClass, power] = pick([
      [2, '4.2 W'],
      [3, '9.5 W'],
      [4, '18 W'],
    ] as const);
    const cable = pick(['cat5e', 'cat6', 'cat6a']);
    runs.push(
      `R-${row},S-${Math.floor(row / PORTS)},${(row % PORTS) + 1},"Intercom pack, place ${row}",${poeClass},${power},37 V,${cable},` +
        `${(10 + 70 * next()).toFixed(1)} m,2 m cord-24 + 3 m cord-24,2,${Math.round(15 + 25 * next())} °C,${pick(['critical', 'high', 'low'])}`,
    );
  }
  const switches = ['Switch,Type,Ports,Budget (W)'];
  for (let index = 0; index < Math.ceil(rows / PORTS); index++) switches.push(`S-${index},802.3at,${PORTS},1440`);
  return { runs: `${runs.join('\n')}\n`, switches: `${switches.join('\n')}\n` };
}

function toReport(text: { runs: string; switches: string }, rows: number): ReturnType<typeof checkSchedule> {
  const { schedule, findings } = parseSchedule(text);
  const wrong = findings.find((finding) => finding.severity === 'error');
  if (wrong !== undefined) throw new Error(`the benchmark's own schedule is wrong: ${JSON.stringify(wrong)}`);
  const report = checkSchedule(schedule);
  if (report.runs.length !== rows) throw new Error(`${report.runs.length} of ${rows} runs were reported`);
  return report;
}

const seconds = (run: () => unknown): number => {
  const start = performance.now();
  run();
  return (performance.now() - start) / 1000;
};

if (process.argv[2] === 'memory') {
  const text = scheduleText(200_000);
  toReport(text, 200_000);
  const gigabytes = process.resourceUsage().maxRSS / 1e6;
  print('200,000 rows, text to report: largest resident memory', spreadOf([gigabytes]), ' GB', 1, 'one process that does nothing else');
} else {
  const small = scheduleText(100_000);
  const large = scheduleText(200_000);
  const rounds = Array.from({ length: 6 }, () => ({
    baseline: seconds(() => parse(small.runs)),
    small: seconds(() => toReport(small, 100_000)),
    large: seconds(() => toReport(large, 200_000)),
  })).slice(1);
  const baseline = spreadOf(rounds.map((round) => round.baseline));
  const smallTime = spreadOf(rounds.map((round) => round.small));
  print(
    '100,000 rows, text to report, over csv-parse/sync',
    spreadOf(rounds.map((round) => round.small / round.baseline)),
    'x',
    5,
    `${smallTime.median.toFixed(2)} against ${baseline.median.toFixed(2)} s`,
  );
  print('200,000 rows over 100,000 rows', spreadOf(rounds.map((round) => round.large / round.small)), 'x', 2.5, '');
  const report = toReport(small, 100_000);
  print('the report of 100,000 rows as text', spreadOf([1, 2, 3].map(() => seconds(() => reportText(report)))), ' s', undefined, '');
}
