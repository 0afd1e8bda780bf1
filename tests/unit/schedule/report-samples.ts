/** Reports with something of everything, for the tests of the formats. @module */
import { awg } from '../../../src/conductor/awg.ts';
import { checkSchedule } from '../../../src/schedule/check-schedule.ts';
import type { Finding } from '../../../src/schedule/finding.ts';
import type { Report } from '../../../src/schedule/report.ts';
import { cueLight, piece, powered, stageRack } from './check-samples.ts';

const NOTE: Omit<Finding, 'line'> = {
  code: 'default-applied',
  severity: 'note',
  file: 'runs',
  column: 'Ambient',
  received: '',
  allowed: 'a temperature',
  message: 'Ambient is empty: 20 °C is used',
};

/** One run of each outcome, a switch of each kind, and findings of each severity. */
export function everything(name = 'Help point'): Report {
  return checkSchedule(
    {
      runs: [
        powered({ run: 'OK', device: name, line: 2, port: 1, priority: 'critical' }),
        powered({ run: 'LONG', device: name, line: 3, port: 2, priority: 'high' }, { installed: [piece('cat6', 94)] }),
        powered({ run: 'SHED', device: name, line: 4, port: 3 }, { poeClass: 4 }),
        powered({ run: 'NEAR', device: name, line: 5, port: 4, priority: 'high' }, { installed: [piece('cat6', 88)] }),
        powered(
          { run: 'BARE', device: name, line: 6, port: 5, priority: 'high' },
          {
            installed: [piece('cat5e', 85)],
            maximumResistance: { ohms: 13, loop: 'unstated' },
          },
        ),
        powered({ run: 'DARK', device: name, line: 7, switch: 'Grid', port: 1 }, { poeClass: 4, installed: [piece('cat6', 400)] }),
        powered({ run: 'WEAK', device: name, line: 8, switch: 'Grid', port: 2 }, { poeClass: 8 }),
        cueLight({ run: 'CUE', device: name, line: 9 }, { conductor: awg(22), length: 90 }),
        cueLight({ run: 'ONE', device: name, line: 10 }, { supplyVoltage: 24 }),
      ],
      switches: [
        stageRack({ budget: 65 }),
        { switch: 'Grid', type: 3, ports: 8, supplies: [{ power: 200 }], line: 3 },
        { switch: 'Spare', type: 1, ports: 4, line: 4 },
      ],
    },
    {
      findings: [
        { ...NOTE, line: 2 },
        { ...NOTE, line: 3 },
        {
          code: 'unreadable-value',
          severity: 'error',
          file: 'runs',
          line: 11,
          column: 'Length',
          received: 'far',
          allowed: 'a length',
          message: 'run GONE: Length "far" cannot be read',
        },
        {
          code: 'unknown-column',
          severity: 'warning',
          file: 'switches',
          column: 'Colour',
          received: 'Colour',
          allowed: '',
          message: 'the column Colour is not known',
        },
      ],
    },
  );
}
