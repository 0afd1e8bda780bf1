/** `powerAtPd` with its checks against the same arithmetic written inline, building the same objects. @module */

import { CLASS_TABLE, type ClassRow, type PoeClassNumber } from '../../src/ethernet/class-table.ts';
import type { PoeClass } from '../../src/ethernet/poe-class.ts';
import type { PowerAtPd, PowerAtPdInput } from '../../src/ethernet/power-at-pd.ts';
import type { Check } from '../../src/limits/check.ts';
import type { Verdict } from '../../src/limits/verdict.ts';
import { differenceOfProducts } from '../../src/quantity/exact.ts';
import { builtCore, compare, print, requireAlike, stream } from './measure.mts';

const { powerAtPd } = await builtCore();
const VOLTAGES: readonly number[] = [44, 50, 50, 52];
const PAIRSETS: readonly number[] = [20, 12.5, 12.5, 12.5];

function verdictOf(margin: number, limit: number): Verdict {
  if (!(margin >= 0)) return 'fail';
  return margin < 0.05 * limit ? 'marginal' : 'pass';
}

/** A result while it is being put together: pieced together by spreads it would take several times as long. */
type Draft<T> = { -readonly [K in keyof T]: T[K] };

/** A device that draws all that its class allows, on a line that carries it: no guard, the same numbers, the same objects. */
function inline(input: PowerAtPdInput): PowerAtPd {
  const row = CLASS_TABLE[input.poeClass] as ClassRow;
  const resistance = input.resistance as number;
  const V = VOLTAGES[row.type - 1] as number;
  const P = row.pdPower;
  const psePowerLimit = row.psePowerLimit ?? row.psePower;
  const limits: Draft<PoeClass> = {
    poeClass: input.poeClass,
    type: row.type,
    pairs: row.pairs,
    psePower: row.psePower,
    psePowerLimit,
    pdPower: P,
    pseVoltageMin: V,
    pseVoltageMax: 57,
    pdVoltageMin: row.pdVoltageMin,
    pdVoltageLimit: row.pdVoltageMin,
    channelResistance: (PAIRSETS[row.type - 1] as number) / (row.pairs / 2),
    source: 'ieee-802.3-class',
  };
  if (row.pdPowerLater !== undefined) limits.pdPowerLater = row.pdPowerLater;

  const fourPR = 4 * P * resistance;
  const discriminant = fourPR > 0.25 * V * V ? differenceOfProducts(V, V, 4 * P, resistance) : V * V - fourPR;
  const twice = V + Math.sqrt(discriminant);
  const current = (2 * P) / twice;
  const drop = current * resistance;
  const operating = {
    feasible: true as const,
    current,
    loadVoltage: twice / 2,
    loadPower: P,
    voltageDrop: drop,
    dropFraction: drop / V,
    lineLoss: drop * current,
    supplyPower: V * current,
    efficiency: twice / (2 * V),
  };

  const checks: Check[] = [
    {
      name: 'pd-power',
      aspect: 'power',
      value: P,
      limit: P,
      unit: 'W',
      margin: 0,
      marginFraction: 0,
      verdict: 'pass',
      source: 'ieee-802.3-class',
    },
  ];
  const most = (V * V) / (4 * resistance);
  checks.push(check('collapse', P, most, 'W', most - P, (V * V) / (4 * P), 'collapse'));
  let pse: Draft<Check>;
  if (psePowerLimit >= 2 * P)
    pse = check(
      'pse-power',
      operating.supplyPower,
      psePowerLimit,
      'W',
      psePowerLimit - operating.supplyPower,
      undefined,
      'ieee-802.3-class',
    );
  else {
    const voltsPerWatt = V / psePowerLimit;
    const loop = (psePowerLimit - P) * voltsPerWatt * voltsPerWatt;
    pse = check('pse-power', operating.supplyPower, psePowerLimit, 'W', psePowerLimit - operating.supplyPower, loop, 'ieee-802.3-class');
  }
  if (psePowerLimit !== row.psePower) pse.published = row.psePower;
  checks.push(pse);
  const U = row.pdVoltageMin;
  checks.push(check('pd-voltage', operating.loadVoltage, U, 'V', operating.loadVoltage - U, ((V - U) * U) / P, 'ieee-802.3-pd-voltage'));

  let verdict: Verdict = 'pass';
  for (const each of checks) {
    if (each.verdict === 'fail') verdict = 'fail';
    else if (each.verdict === 'marginal' && verdict === 'pass') verdict = 'marginal';
  }
  const pairsetCurrent = current / (row.pairs / 2);
  const sourced = row.psePower / V;
  const available = 2 * row.psePower * resistance > V * V ? most : row.psePower - sourced * sourced * resistance;
  return {
    available,
    allowed: P,
    limits,
    pseVoltage: V,
    resistance,
    checks,
    feasible: true,
    operating,
    totalCurrent: current,
    pairsetCurrent,
    conductorCurrent: pairsetCurrent / 2,
    verdict,
  };

  function check(
    name: Check['name'],
    value: number,
    limit: number,
    unit: 'W' | 'V',
    margin: number,
    loop: number | undefined,
    source: Check['source'],
  ): Draft<Check> {
    const made: Draft<Check> = {
      name,
      aspect: 'power',
      value,
      limit,
      unit,
      margin,
      marginFraction: margin / limit,
      verdict: verdictOf(margin, limit),
      source,
    };
    if (loop !== undefined) made.loop = { limit: loop, margin: loop - resistance };
    return made;
  }
}

// Every class on half to nine tenths of its worst channel, so that no comparison hangs on the last digit.
const next = stream(2);
const inputs: PowerAtPdInput[] = Array.from({ length: 900 }, (_, index) => {
  const poeClass = (index % 9) as PoeClassNumber;
  const row = CLASS_TABLE[poeClass] as ClassRow;
  return { poeClass, resistance: ((PAIRSETS[row.type - 1] as number) / (row.pairs / 2)) * (0.5 + 0.4 * next()) };
});
for (const input of inputs) requireAlike(powerAtPd(input), inline(input));

const REPEATS = 40;
const kept: PowerAtPd[] = inputs.map((input) => inline(input));
function runLibrary(): number {
  for (let repeat = 0; repeat < REPEATS; repeat++) {
    for (let index = 0; index < inputs.length; index++) kept[index] = powerAtPd(inputs[index] as PowerAtPdInput);
  }
  return kept.length;
}
function runInline(): number {
  for (let repeat = 0; repeat < REPEATS; repeat++) {
    for (let index = 0; index < inputs.length; index++) kept[index] = inline(inputs[index] as PowerAtPdInput);
  }
  return kept.length;
}

const { ratio, first, second } = compare(runLibrary, runInline, REPEATS * inputs.length, 41);
print(
  'powerAtPd with its checks over inline arithmetic',
  ratio,
  'x',
  1.2,
  `${first.median.toFixed(0)} against ${second.median.toFixed(0)} ns`,
);
