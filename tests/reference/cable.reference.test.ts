/** Category cables and cords against the standards' limits, read in secondary copies or remembered as noted. */
import { expect, test } from 'vitest';
import { cable } from '../../src/cable/cable.ts';
import { runResistance } from '../../src/cable/run-resistance.ts';
import { expectPrinted, rows } from '../helpers/expectations.ts';

// Most resistance of one conductor at 20 °C, ohm/100 m, and the gauge the trade makes it of.
// ANSI/TIA-568.2-D horizontal cable: 9.38 (three weak secondary copies agree); 24 AWG for 5e, 23 AWG for 6 and 6A (makers' data, read).
// ANSI/TIA-568.2-D cord cable: 14.0 for 24 and 26 AWG (memory). 28 AWG: 23.20 (USB 2.0 stranded maximum, read), in place of the annex.
const LIMITS = `
  cat5e    24  9.38
  cat6     23  9.38
  cat6a    23  9.38
  cord-24  24  14.0
  cord-26  26  14.0
  cord-28  28  23.20
`;

test.each(rows(LIMITS))('%s is %s AWG and at most %s ohm/100 m', (name, gauge, printed) => {
  const made = cable(name as 'cat5e');
  expect(made.gauge).toBe(Number(gauge));
  expectPrinted(made.maximumResistancePerMetre * 100, printed as string);
});

test('23 and 24 AWG solid copper is 6.68 and 8.42 ohm/100 m (1/58 ohm mm²/m)', () => {
  expectPrinted(cable('cat6').nominalResistancePerMetre * 100, '6.68');
  expectPrinted(cable('cat5e').nominalResistancePerMetre * 100, '8.42');
});

test('stranded cords are within the USB 2.0 maxima of their gauge: 9.09, 14.60, 23.20 ohm/100 m (read)', () => {
  expect(cable('cord-24').nominalResistancePerMetre * 100).toBeLessThan(9.09);
  expect(cable('cord-26').nominalResistancePerMetre * 100).toBeLessThan(14.6);
  expect(cable('cord-28').nominalResistancePerMetre * 100).toBeLessThan(23.2);
});

test('IEEE 802.3 loops: 12.5 ohm for a pairset where a meter shorting one pair reads 25 (802.3cq text; ISO/IEC 11801 Class D from memory)', () => {
  // A channel at its 25 ohm limit, whatever makes it so.
  const { pairLoop, twoPair, fourPair } = runResistance({ segments: [], connections: 1, connectionResistance: 12.5 });
  expect([pairLoop, twoPair, fourPair]).toEqual([25, 12.5, 6.25]);
});

test('a full channel keeps the 25 ohm of ANSI/TIA-568.2-D (read) and its link the 21 ohm of ISO/IEC 11801-1 (memory)', () => {
  const installed = { cable: cable('cat5e'), length: 90 };
  const channel = runResistance({ segments: [installed, { cable: cable('cord-26'), length: 10 }], connections: 4 });
  expect(channel.length).toBe(100);
  expectPrinted(channel.pairLoop, '21.3');
  expect(channel.pairLoop).toBeLessThan(25);
  expectPrinted(runResistance({ segments: [installed], connections: 3 }).pairLoop, '18.1');
});

test('60 °C takes 15.7 % more than 20 °C (1 + 0.00393 · 40)', () => {
  const at = (temperature: number): number => runResistance({ segments: [{ cable: cable('cat6a'), length: 100, temperature }] }).twoPair;
  expectPrinted(at(60) / at(20), '1.157');
  expectPrinted(at(75) / at(20), '1.216');
});
