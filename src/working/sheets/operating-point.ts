/** Where a load settles at the end of a resistive line. @module */
import { givens } from '../rows.ts';
import { type OperatingPointInput, operatingPoint } from '../../circuit/operating-point.ts';
import type { Sheet } from '../sheet.ts';
import { currentSteps, dropStep, loadGivens, loadReading, POWER, pointSlips, powerSteps, voltageSteps } from './point-steps.ts';
import { loadKeys } from './shared.ts';

export const operatingPointSheet: Sheet<OperatingPointInput> = {
  title: 'Where a load settles at the end of a line',
  core: 'operatingPoint',
  keys: ['supplyVoltage', 'resistance', ...loadKeys],
  givens: [
    ...givens([
      ['V', 'V', 'voltage at the supply', 'supplyVoltage'],
      ['R', 'Ω', 'resistance of the line, out and back', 'resistance'],
    ]),
    ...loadGivens,
  ],
  steps: [...currentSteps, dropStep, ...powerSteps, ...voltageSteps],
  assumptions: ['Direct current, steady state.'],
  validity: 'Any resistive line.',
  cautions: [],
  slips: pointSlips,
  guard: operatingPoint,
  read: ({ supplyVoltage, resistance, load }) => {
    const { values, cases } = loadReading(load);
    return {
      values: { ...values, V: supplyVoltage, R: resistance },
      cases,
      assumptions: cases.includes(POWER) ? ['A load of constant power has two roots; it settles at the one with the higher voltage.'] : [],
    };
  },
};

