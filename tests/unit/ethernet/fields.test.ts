import { expect, test } from 'vitest';
import {
  assignedClass,
  classAssignment,
  dualSignature,
  lldpAllocation,
  pairUnbalance,
  poeClass,
  poeClassDetail,
  psePowerFor,
  pseVoltageCheck,
} from '../../../src/ethernet/index.ts';
import { as, expectInputError } from '../../helpers/expectations.ts';

const misspelt: readonly (readonly [string, (input: never) => unknown, object, string, string])[] = [
  ['psePowerFor', psePowerFor, { poeClass: 4, pdPowr: 20 }, 'pdPowr', 'pdPower'],
  ['lldpAllocation', lldpAllocation, { requested: 255, poeClass: 4, voltage: 50 }, 'voltage', 'pseVoltage'],
  ['classAssignment', classAssignment, { requestedClass: 4, pseType: 2, portLimt: 20 }, 'portLimt', 'portLimit'],
  ['dualSignature', dualSignature, { a: 5, b: 5, psetype: 4 }, 'psetype', 'pseType'],
  ['pairUnbalance', pairUnbalance, { poeClass: 4, pairs: { '1,2': [1, 1], '3,6': [1, 1] }, margin: 0.1 }, 'margin', 'marginalBelow'],
  ['pseVoltageCheck', pseVoltageCheck, { pseVoltage: 50, pseType: 2, type: 2 }, 'type', 'pseType'],
  ['assignedClass', assignedClass, { requestedClass: 8, pseType: 3, pair: 4 }, 'pair', 'one of requestedClass, pseType'],
];

test.each(misspelt)('%s refuses a misspelt key', (_name, call, input, parameter, meant) => {
  expect(expectInputError(() => call(input as never), parameter, 'unknown').expected).toBe(meant);
});

test('the options of a class are refused where they are no options', () => {
  expectInputError(() => poeClass(4, as({ type: 2 })), 'options.type', 'unknown');
  expectInputError(() => poeClassDetail(4, as({ psetype: 2 })), 'options.psetype', 'unknown');
  expect(poeClass(4, { pseType: undefined, pairs: undefined })).toEqual(poeClass(4));
});
