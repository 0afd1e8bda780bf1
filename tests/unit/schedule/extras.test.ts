import { expect, test, vi } from 'vitest';
import { awg } from '../../../src/conductor/awg.ts';
import { checkSchedule } from '../../../src/schedule/check-schedule.ts';
import { reportText } from '../../../src/schedule/report-text.ts';
import { cueLight, piece, powered } from './check-samples.ts';

// Whatever goes wrong beyond the verdict costs itself: here all of it goes wrong.
const broken = vi.hoisted(() => () => {
  throw new TypeError('a trial gone wrong');
});
vi.mock(import('../../../src/plan/remedies.ts'), () => ({ remedies: broken }));
vi.mock(import('../../../src/plan/heat/bundle-remedies.ts'), async (real) => ({ ...(await real()), largestPassing: broken }));
vi.mock(import('../../../src/schedule/as-built.ts'), async (real) => ({ ...(await real()), measuredAgainstExpected: broken }));

test('extras that cannot be worked out cost no run and no verdict', () => {
  const report = checkSchedule({
    runs: [
      powered({ run: 'LONG', line: 2 }, { installed: [piece('cat6', 94)] }),
      cueLight({ run: 'CUE', line: 3 }, { conductor: awg(22), length: 90 }),
      powered(
        { run: 'HOT', line: 4, port: 2, bundle: { cables: 192, installation: 'closed-conduit' } },
        { installed: [piece('cat5e', 80, 55)] },
      ),
      powered({ run: 'READ', line: 5, port: 3, measured: { '1,2': 6 } }),
    ],
    switches: [],
  });
  expect(report.findings).toEqual([]);
  expect(report.runs.map(({ run, verdict, remedies }) => [run, verdict, remedies])).toEqual([
    ['LONG', { power: 'pass', cabling: 'fail', worst: 'fail' }, []],
    ['CUE', { power: 'fail', worst: 'fail' }, []],
    ['HOT', expect.anything(), []],
    ['READ', { power: 'pass', cabling: 'pass', worst: 'pass' }, []],
  ]);
  expect(report.runs[0]?.notes).toContain('what would put it right could not be worked out');
  expect(report.runs[1]?.notes).toContain('what would put it right could not be worked out');
  expect(report.runs[3]).not.toHaveProperty('measured');
  expect(report.runs[3]?.notes).toContain('the reading could not be held beside what was expected; the run is judged by it');
  expect(reportText(report)).toContain('could not be worked out');
});
