import { describe, expect, test } from 'vitest';
import { bundleRise, cable } from '../../../src/index.ts';
import {
  checkSchedule,
  type PoweredRunReport,
  parseSchedule,
  type Report,
  reportCsv,
  reportMarkdown,
  reportText,
} from '../../../src/schedule/index.ts';
import { expectPlain } from '../../helpers/expectations.ts';

const SWITCHES = 'Switch,Type,Ports,Budget\nStage rack,4,48,2000\n';
const HEAD = 'Run,Device,Switch,Port,PoE class,Cable,Length,Connections,Ambient,Bundle,Installation,Measured loop';

function checked(rows: string, head: string = HEAD): Report {
  const { schedule, findings } = parseSchedule({ runs: `${head}\n${rows}\n`, switches: SWITCHES });
  const report = checkSchedule(schedule, { findings });
  expectPlain(report);
  return report;
}
const powered = (report: Report, index = 0): PoweredRunReport => report.runs[index] as PoweredRunReport;
const errors = (report: Report) => report.findings.filter(({ severity }) => severity !== 'note').map(({ column, code }) => [column, code]);

describe('a bundle in a schedule', () => {
  const report = checked(
    [
      'CM-01,Camera,Stage rack,1,4,cat6,60 m,2,35 °C,48,open air,',
      'CM-02,Screen,Stage rack,2,8,cat5e,60 m,2,45 °C,100,closed conduit,',
      'CM-03,Camera,Stage rack,3,4,cat6,60 m,2,35 °C,,,',
      'CM-04,Camera,Stage rack,4,4,cat6,60 m,2,35 °C,,drum,',
    ].join('\n'),
  );

  test('conductors are at ambient + rise, and the run is judged there', () => {
    const run = powered(report);
    expect(errors(report)).toEqual([]);
    const current = run.pairsetCurrent as number;
    const rise = bundleRise({
      cable: cable('cat6'),
      bundle: 48,
      pairCurrent: current,
      energisedPairs: 2,
      ambient: 35,
      installation: 'open-air',
    });
    expect(Math.abs((rise.feasible ? rise.rise : Number.NaN) - (run.heat?.rise as number))).toBeLessThan(1e-8);
    expect(run.pieces[0]?.temperature).toBe(35 + (run.heat?.rise as number));
    expect(run.resistance.pairLoop).toBeCloseTo(120 * 0.0938 * (1 + 0.00393 * (15 + (run.heat?.rise as number))) + 0.8, 9);
    expect(run).toMatchObject({ outcome: 'pass', verdict: { heat: 'pass' }, heat: { cables: 48 } });
  });

  test('a bundle over its limits fails the run, and a smaller one that passes is named', () => {
    const run = powered(report, 1);
    expect(run.verdict.heat).toBe('fail');
    expect(run.outcome).toBe('fail');
    expect(run.heat?.largestBundle).toBeGreaterThan(7);
    const largest = run.heat?.largestBundle as number;
    const of = (cables: number) => powered(checked(`CM-02,Screen,Stage rack,2,8,cat5e,60 m,2,45 °C,${cables},closed conduit,`));
    expect(['pass', 'marginal']).toContain(of(largest).outcome);
    expect(['pass', 'marginal']).not.toContain(of(largest + 1).outcome);
  });

  test('a cable on its drum is uncertain and says so', () => {
    const run = powered(report, 3);
    expect(run).toMatchObject({ outcome: 'uncertain', heat: { findings: ['wound-drum'] } });
    expect(reportText(report)).toMatch(/Heat is UNCERTAIN: the cable lies wound on its drum/);
  });

  test('a run without a bundle is as it was in a file without the columns', () => {
    const plain = checked(
      'CM-03,Camera,Stage rack,3,4,cat6,60 m,2,35 °C',
      'Run,Device,Switch,Port,PoE class,Cable,Length,Connections,Ambient',
    );
    const { line: _line, ...run } = powered(report, 2);
    const { line: _other, ...same } = powered(plain);
    expect(run).toEqual(same);
    expect(Object.keys(run)).not.toContain('heat');
    for (const text of [reportText(plain), reportMarkdown(plain), reportCsv(plain)])
      expect(text).not.toMatch(/Heat of bundles|HEAT OF BUNDLES|conductor-temperature/);
  });

  test('every format shows it', () => {
    expect(reportText(report)).toMatch(/HEAT OF BUNDLES\n\n {2}- CM-01: 48 cables in open air: \d\.\d K above the air/);
    expect(reportText(report)).toMatch(/Make bundles of at most \d+ cables/);
    expect(reportMarkdown(report)).toContain('## Heat of bundles');
    const [head, ...rows] = reportCsv(report).trim().split('\r\n');
    expect(head).toContain('Bundle (cables),Installation,Bundle rise (K)');
    expect(rows[0]).toContain(',48,open-air,');
    expect(report.cautions.some((text) => text.startsWith('Heat: bundles are judged by a model'))).toBe(true);
  });

  test('what cannot be read is a finding, and open air is a default that is told', () => {
    const bad = checked(
      [
        'A,,Stage rack,1,4,cat6,60 m,2,35 °C,many,open air,',
        'B,,Stage rack,2,4,cat6,60 m,2,35 °C,12,attic,',
        'C,,Stage rack,3,4,cat6,60 m,2,35 °C,,open air,',
      ].join('\n'),
    );
    expect(errors(bad)).toEqual([
      ['Bundle', 'unreadable-value'],
      ['Installation', 'unknown-name'],
      ['Installation', 'conflicting-values'],
    ]);
    expect(powered(bad, 1).heat?.installation).toBe('open-air');
    const told = checked('A,,Stage rack,1,4,cat6,60 m,2,35 °C,12,,');
    expect(told.findings.map(({ message }) => message)).toContain('Installation is empty: open air is used');
  });
});

describe('readings in a schedule', () => {
  test('the highest pair is what power sees, warm, with cords and without more connections', () => {
    const report = checked(
      'CM-01,Camera,Stage rack,1,4,cat6,60 m,2,35 °C,9.1 + 9.3 + 9.2 + 9.25,2 m cord-24',
      'Run,Device,Switch,Port,PoE class,Cable,Length,Connections,Ambient,Measured loop (ohm),Cords',
    );
    expect(errors(report)).toEqual([]);
    const run = powered(report);
    expect(run.resistance.pairLoop).toBeCloseTo(9.3 * (1 + 0.00393 * 15) + 4 * 0.14, 9);
    expect(run.at20.pairLoop).toBeCloseTo(9.3 + 4 * 0.14, 9);
    expect(run.connections).toBe(2);
    expect(run.measured).toMatchObject({ status: 'consistent', distance: 0 });
    expect(run.measured?.readings.map(({ ohms }) => ohms)).toEqual([9.1, 9.3, 9.2, 9.25]);
    // What was expected stays what the cable says.
    expect(run.meterReading.maximum).toBeCloseTo(120 * 0.0938 * (1 + 0.00393 * 15) + 0.8 + 4 * 0.14, 9);
    expect(reportText(report)).toMatch(/MEASURED BESIDE EXPECTED[\s\S]*consistent\s+with\s+the\s+run\s+as\s+described/);
  });

  test('a reading that the run as described could not give says what could', () => {
    const report = checked('CM-01,Camera,Stage rack,1,4,cat6,60 m,2,20 °C,,,14.4 ohm');
    const { measured } = powered(report);
    expect(measured?.status).toBe('inconsistent');
    expect(measured?.expected.high).toBeCloseTo(120 * 0.0938 + 0.8, 9);
    expect(measured?.distance).toBeCloseTo(14.4 - 120 * 0.0938 - 0.8, 9);
    expect(measured?.consistentWith).toContain('longer');
    expect(reportText(report, { width: 400 })).toMatch(/NOT as described, by .* consistent with a longer cable, or/);
    expect(reportMarkdown(report)).toContain('## Measured beside expected');
    expect(reportCsv(report)).toContain(',inconsistent,');
  });

  test('more than four readings, a two-wire run and no length are findings', () => {
    const report = checked(
      ['A,,Stage rack,1,4,cat6,60 m,2,20 °C,,,1 ohm + 2 ohm + 3 ohm + 4 ohm + 5 ohm', 'B,,Stage rack,2,4,cat6,0 m,2,20 °C,,,3 ohm'].join(
        '\n',
      ),
    );
    expect(errors(report)).toContainEqual(['Measured loop', 'value-out-of-range']);
    expect(errors(report)).toContainEqual(['Measured loop', 'conflicting-values']);
    const twoWire = checked('L,18 AWG,20 m,20 °C,12,3 ohm,21 V to 27 V,6 W', 'Run,Cable,Length,Ambient,Bundle,Measured loop,Supply,Load');
    expect(errors(twoWire)).toContainEqual(['Bundle', 'conflicting-values']);
    expect(errors(twoWire)).toContainEqual(['Measured loop', 'conflicting-values']);
  });

  test('measured and bundled at once: the measured loop is what warms', () => {
    const [cool, warm] = ['', '48'].map((bundle) =>
      powered(checked(`A,,Stage rack,1,8,cat6,60 m,2,35 °C,${bundle},${bundle && 'open air'},9.3 ohm`)),
    );
    expect(warm?.resistance.pairLoop).toBeCloseTo(9.3 * (1 + 0.00393 * (15 + (warm?.heat?.rise as number))), 9);
    expect(warm?.resistance.pairLoop).toBeGreaterThan(cool?.resistance.pairLoop as number);
  });
});
