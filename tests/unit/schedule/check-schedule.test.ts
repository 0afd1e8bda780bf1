import { describe, expect, test } from 'vitest';
import { checkSchedule } from '../../../src/schedule/check-schedule.ts';
import type { Finding } from '../../../src/schedule/finding.ts';
import { parseSchedule } from '../../../src/schedule/parse-schedule.ts';
import type { PoweredRunReport, Report } from '../../../src/schedule/report.ts';
import type { ScheduledRun } from '../../../src/schedule/schedule.ts';
import { cueLight, frozen, piece, powered, stageRack } from './check-samples.ts';

function outcomes({ runs }: Report): Record<string, string> {
  return Object.fromEntries(runs.map(({ run, outcome }) => [run, outcome]));
}

function allocations({ runs }: Report): Record<string, string | undefined> {
  return Object.fromEntries(runs.map((run) => [run.run, (run as PoweredRunReport).allocation]));
}

describe('the budget of a switch', () => {
  // IEEE 802.3: a port sets aside 30 W for class 4 and 15.4 W for class 3.
  const runs = [
    powered({ run: 'A', port: 1, priority: 'low' }, { poeClass: 4 }),
    powered({ run: 'B', port: 2, priority: 'critical' }, { poeClass: 4 }),
    powered({ run: 'C', port: 3, priority: 'low' }, { poeClass: 3 }),
    powered({ run: 'D', port: 4, priority: 'high' }, { poeClass: 3 }),
  ];

  test('sheds the lowest priority first, highest port number first', () => {
    const report = checkSchedule({ runs, switches: [stageRack({ budget: 50 })] });
    const budget = report.switches[0]?.budget;
    expect(budget).toMatchObject({ capacity: 50, capacityBasis: 'published', allocated: 45.4, demand: 90.8 });
    expect(budget?.headroom).toBeCloseTo(4.6, 9);
    expect(budget?.denied.map(({ run, device, port }) => [run, device, port])).toEqual([
      ['C', 'Help point, stage door', 3],
      ['A', 'Help point, stage door', 1],
    ]);
    expect(outcomes(report)).toEqual({ A: 'denied', B: 'pass', C: 'denied', D: 'pass' });
    expect(allocations(report)).toEqual({ A: 'denied', B: 'allocated', C: 'denied', D: 'allocated' });
    expect(report.totals.outcomes).toEqual({ pass: 2, marginal: 0, uncertain: 0, fail: 0, denied: 2 });
  });

  test('admits again what still fits, if told to', () => {
    const report = checkSchedule({ runs, switches: [stageRack({ budget: 65 })] }, { budget: { policy: 'fill' } });
    expect(outcomes(report)).toEqual({ A: 'denied', B: 'pass', C: 'pass', D: 'pass' });
  });

  test('by request sets aside what a device draws, and its class where it would draw more than that', () => {
    const asking = [powered({ run: 'A', port: 1 }, { pdPower: 5 }), powered({ run: 'B', port: 2 }, { pdPower: 40 })];
    const budget = checkSchedule({ runs: asking, switches: [stageRack()] }, { budget: { basis: 'requested' } }).switches[0]?.budget;
    // 5 W over the worst channel of a Type 2 port, 12.5 Ω at 50 V: P = V·I with I = (V - √(V² - 4PR))/2R.
    const current = (50 - Math.sqrt(2500 - 4 * 5 * 12.5)) / 25;
    expect(budget?.powered.map(({ power }) => power)).toEqual([expect.closeTo(50 * current, 9), 15.4]);
  });

  test('from supplies is an estimate, and says so', () => {
    const { switches } = checkSchedule({
      runs,
      switches: [{ switch: 'Stage rack', type: 2, ports: 24, supplies: [{ power: 150 }, { power: 150 }], systemLoad: 40 }],
    });
    expect(switches[0]?.budget).toMatchObject({ capacity: 260, capacityBasis: 'estimate' });
    expect(switches[0]?.notes.join()).toContain('estimate');
  });

  test('that is not given is not judged, and no port is denied', () => {
    const report = checkSchedule({ runs, switches: [{ switch: 'Stage rack', type: 2, ports: 24 }] });
    expect(report.switches[0]).toEqual({ switch: 'Stage rack', type: 2, ports: 24, notes: [expect.stringContaining('not judged')] });
    expect(allocations(report)).toEqual({ A: undefined, B: undefined, C: undefined, D: undefined });
  });

  test('of a run that fails its own checks does not hide that', () => {
    const failing = powered({ run: 'A' }, { poeClass: 4, installed: [piece('cat6', 400)] });
    const report = checkSchedule({ runs: [failing], switches: [stageRack({ budget: 20 })] });
    expect(report.runs[0]).toMatchObject({ outcome: 'fail', allocation: 'denied' });
  });
});

describe('a run without a place', () => {
  const cases: readonly (readonly [string, Partial<ScheduledRun>, Finding['code'], string, string])[] = [
    ['a switch that is not listed', { switch: 'Attic' } as never, 'unknown-switch', 'Switch', 'Attic'],
    ['a port beyond the switch', { port: 25 } as never, 'no-such-port', 'Port', '25'],
    ['a port that is taken', { port: 1 } as never, 'duplicate', 'Port', '1'],
  ];
  test.each(cases)('%s: is judged, left out of the budget, and found', (_what, change, code, column, received) => {
    const runs = [powered({ run: 'A' }), powered({ run: 'B', line: 7, port: 2, ...(change as object) })];
    const report = checkSchedule({ runs, switches: [stageRack()] }, { runsFile: 'runs.csv' });
    expect(report.findings).toEqual([
      expect.objectContaining({
        code,
        column,
        received,
        severity: 'error',
        file: 'runs.csv',
        line: 7,
        message: expect.stringContaining('B'),
      }),
    ]);
    expect(outcomes(report)).toEqual({ A: 'pass', B: 'pass' });
    expect(allocations(report)).toEqual({ A: 'allocated', B: undefined });
    expect(report.switches[0]?.budget?.powered.map(({ run }) => run)).toEqual(['A']);
    expect(report.totals.findings.error).toBe(1);
  });

  test('is no fault where no switches are listed at all', () => {
    const report = checkSchedule({ runs: [powered()], switches: [] });
    expect(report.findings).toEqual([]);
    expect(report.runs[0]?.notes).toHaveLength(1);
  });

  test('is reported once, although the parser has seen it too', () => {
    const text = {
      runs: 'Run,Switch,Port,PoE class,Cable,Length\nA,Foyer,1,3,cat6,20\nB,Attic,1,3,cat6,20\nC,Foyer,9,3,cat6,20\nD,Foyer,01,3,cat6,20\nD,Foyer,2,3,cat6,20\n',
      switches: 'Switch,Type,Ports,Budget\nFoyer,2,8,100\n',
    };
    const { schedule, findings } = parseSchedule(text);
    const report = checkSchedule(schedule, { findings });
    const errors = report.findings.filter(({ severity }) => severity === 'error').map(({ code, line }) => [code, line]);
    expect(errors).toEqual([
      ['unknown-switch', 3],
      ['no-such-port', 4],
      ['duplicate', 5],
      ['duplicate', 6],
    ]);
    expect(report.runs).toHaveLength(5);
  });
});

describe('figures that the arithmetic refuses', () => {
  test('cost their own row and no other', () => {
    const report = checkSchedule({
      runs: [powered({ run: 'A', line: 4 }, { installed: [piece('cat6', -3)] }), powered({ run: 'B', port: 2 })],
      switches: [],
    });
    expect(report.runs.map(({ run }) => run)).toEqual(['B']);
    expect(report.findings).toEqual([
      expect.objectContaining({ severity: 'error', file: 'runs', line: 4, message: expect.stringContaining('installed[0].length') }),
    ]);
  });

  test('cost a switch its budget and no run its verdict', () => {
    const report = checkSchedule({ runs: [powered()], switches: [stageRack({ budget: 1e9, line: 3 })] }, { switchesFile: 'switches.csv' });
    expect(report.switches[0]?.budget).toBeUndefined();
    expect(report.findings).toEqual([
      expect.objectContaining({ file: 'switches.csv', line: 3, message: expect.stringContaining('Stage rack') }),
    ]);
    expect(outcomes(report)).toEqual({ 'HP-01': 'pass' });
  });
});

describe('totals', () => {
  const report = checkSchedule({
    runs: [
      powered({ run: 'A', port: 1 }, { installed: [piece('cat6', 40), piece('cat5e', 10)], cords: [piece('cord-24', 3)] }),
      powered({ run: 'B', port: 2 }, { installed: [piece('cat6', 94)], cords: [piece('cord-24', 2)] }),
      powered({ run: 'C', port: 3 }, { poeClass: 4, installed: [piece('cat6', 400)] }),
      cueLight(),
    ],
    switches: [stageRack()],
  });

  test('add up the metres by type of cable', () => {
    expect(report.totals.cables).toEqual([
      { cable: 'Category 5e', use: 'installed', length: 10 },
      { cable: 'Category 6', use: 'installed', length: 534 },
      { cable: 'Cord, 24 AWG', use: 'cord', length: 5 },
      { cable: '18 AWG', use: 'two-wire', length: 60 },
    ]);
  });

  test('add up the heat of the runs that carry their load', () => {
    const heats = report.runs.map(({ cableHeat = 0 }) => cableHeat);
    expect(heats[2]).toBe(0);
    expect(report.totals.cableHeat).toBeCloseTo(
      heats.reduce((sum, heat) => sum + heat),
      12,
    );
  });

  test('name the run that is furthest beyond a limit, and count verdicts', () => {
    expect(report.totals.worstRun?.run).toBe('C');
    expect(report.totals.power).toEqual({ pass: 3, marginal: 0, uncertain: 0, fail: 1 });
    expect(report.totals.cabling).toEqual({ pass: 1, marginal: 0, uncertain: 0, fail: 2 });
    expect(report.totals.runs).toBe(4);
  });
});

describe('cautions', () => {
  test('always name heat, mains and the licensed practitioner', () => {
    const text = checkSchedule({ runs: [powered()], switches: [] }).cautions.join('\n');
    expect(text).toMatch(/arithmetic, not a licence/);
    expect(text).toMatch(/Heat/);
    expect(text).toMatch(/mains/);
    expect(text).not.toMatch(/60 V DC/);
  });

  test('name a supply above 60 V DC where there is one', () => {
    const text = checkSchedule({ runs: [cueLight({}, { supplyVoltage: { low: 90, high: 110 } })], switches: [] }).cautions.join('\n');
    expect(text).toMatch(/60 V DC/);
    expect(text).toMatch(/short at the far end/);
  });
});

describe('checkSchedule', () => {
  test('returns plain data and leaves its input alone', () => {
    const report = checkSchedule(frozen({ runs: [powered(), cueLight()], switches: [stageRack()] }), frozen({ findings: [] }));
    expect(JSON.parse(JSON.stringify(report))).toEqual(report);
    expect(structuredClone(report)).toEqual(report);
  });

  test('judges an empty schedule', () => {
    const report = checkSchedule({ runs: [], switches: [] });
    expect(report.totals).toMatchObject({ runs: 0, cables: [], cableHeat: 0 });
    expect(report.totals.worstRun).toBeUndefined();
  });

  test('says how it judged', () => {
    const { settings } = checkSchedule(
      { runs: [], switches: [] },
      { cabling: 'ISO/IEC 11801', marginalBelow: 0.1, budget: { policy: 'fill' } },
    );
    expect(settings).toEqual({ cabling: 'ISO/IEC 11801', marginalBelow: 0.1, budget: { basis: 'class', policy: 'fill' } });
  });

  test.each([
    ['a schedule', [undefined], 'schedule'],
    ['a list of runs', [{ runs: 'all', switches: [] }], 'schedule.runs'],
    ['a list of switches', [{ runs: [] }], 'schedule.switches'],
    ['a known cabling standard', [{ runs: [], switches: [] }, { cabling: 'none at all' }], 'options.cabling'],
    ['a known policy', [{ runs: [], switches: [] }, { budget: { policy: 'fair' } }], 'options.budget.policy'],
    ['a margin', [{ runs: [], switches: [] }, { marginalBelow: '5%' }], 'marginalBelow'],
    ['a list of findings', [{ runs: [], switches: [] }, { findings: 'none' }], 'options.findings'],
  ])('needs %s', (_what, given, parameter) => {
    expect(() => checkSchedule(...(given as Parameters<typeof checkSchedule>))).toThrow(
      expect.objectContaining({ name: 'InputError', parameter }),
    );
  });
});
