import { expect, test } from 'vitest';
import { checkSchedule, parseSchedule, reportMarkdown, reportText, scheduleFromRows, templateCsv } from '../../../src/schedule/index.ts';
import { as, expectInputError } from '../../helpers/expectations.ts';

const { schedule } = parseSchedule({ runs: 'Run,Switch,Port,PoE class,Cable,Length\nCM-01,Rack,1,4,cat6,60 m\n' });
const report = checkSchedule(schedule);

test.each([
  ['switchs', 'switches', () => parseSchedule(as({ runs: 'Run\n', switchs: 'Switch\n' }))],
  ['switchez', 'switches', () => scheduleFromRows(as({ runs: [], switchez: [] }))],
  ['options.cablng', 'cabling', () => checkSchedule(schedule, as({ cablng: 'none' }))],
  ['options.budget.bassis', 'basis', () => checkSchedule(schedule, as({ budget: { bassis: 'class' } }))],
  ['options.widht', 'width', () => reportText(report, as({ widht: 80 }))],
  ['options.ful', 'full', () => reportMarkdown(report, as({ ful: true }))],
  ['fil', 'file', () => templateCsv(as({ file: 'runs', fil: 1 }))],
])('a misspelt %s is refused, and %s suggested', (parameter, near, call) => {
  expect(expectInputError(call, parameter, 'unknown').message).toBe(`${parameter}: unknown; did you mean ${near}?`);
});
