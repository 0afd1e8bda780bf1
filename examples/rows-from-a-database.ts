/**
 * A schedule that comes from a database or a form, judged without any file: rows in, a report as data out.
 *
 * From a clone: `npx tsx examples/rows-from-a-database.ts`. In your own project import from `farend/schedule`.
 */
// biome-ignore-all lint/suspicious/noConsole: an example prints
import { checkSchedule, type Report, reportText, scheduleFromRows } from '../src/schedule/index.ts';

const runs = [
  { run: 'IC-01', switch: 'Foyer', port: 1, device: 'Intercom base', 'PoE class': 3, cable: 'cat6', length: 9, connections: 2 },
  { run: 'HP-01', switch: 'Foyer', port: 2, device: 'Help point', 'PoE class': 2, cable: 'cat6', length: '295 ft', connections: 2 },
  { run: 'AP-01', switch: 'Foyer', port: 3, device: 'Access point', 'PoE class': 9, cable: 'cat6', length: 64, connections: 2 },
];
const switches = [{ switch: 'Foyer', type: '802.3af', ports: 12, budget: 20 }];

const { schedule, findings } = scheduleFromRows({ runs, switches });
const report: Report = checkSchedule(schedule, { findings });

// What could not be read: for the page where the row was typed.
console.log(findings.filter(({ severity }) => severity === 'error').map(({ line, message }) => `row ${line}: ${message}`));
// => ['row 3: run AP-01: PoE class "9" is outside what is allowed; write a whole number from 0 to 8; the run is not judged']

// What becomes of each run that could be.
console.log(report.runs.map(({ run, outcome }) => `${run} ${outcome}`));
// => ['IC-01 pass', 'HP-01 denied']

// The same report for people; `reportMarkdown` and `reportCsv` write the other forms.
console.log(
  reportText(report)
    .split('\n')
    .find((line) => line.includes('runs:')),
);
// => '2 runs: 1 DENIED, 1 pass; 1 error in the files'
