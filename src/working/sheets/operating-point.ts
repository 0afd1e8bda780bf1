/** Where a load settles at the end of a resistive line. @module */
import { type OperatingPointInput, operatingPoint } from '../../circuit/operating-point.ts';
import type { Sheet } from '../sheet.ts';
import { currentSteps, dropStep, loadGivens, loadReading, POWER, pointSlips, powerSteps, voltageSteps } from './point-steps.ts';
import { loadKeys } from './shared.ts';

export const operatingPointSheet: Sheet<OperatingPointInput> = {
  title: 'Where a load settles at the end of a line',
  core: 'operatingPoint',
  keys: ['supplyVoltage', 'resistance', ...loadKeys],
  givens: [
    { symbol: 'V', meaning: 'voltage at the supply', unit: 'V', latex: 'V', core: 'supplyVoltage' },
    { symbol: 'R', meaning: 'resistance of the line, out and back', unit: 'Ω', latex: 'R', core: 'resistance' },
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
