/**
 * Every row of `ieee-802.3-power.csv` held against the library: class powers, voltages, resistances, currents, signalling, LLDP, RFC 3621.
 *
 * The file holds what was read of IEEE 802.3 clauses 33, 79 and 145, each row with where it was read (white papers, datasheets, YANG and
 * MIB modules, reflector mail; the standard itself was not at hand), and the arithmetic that follows from those rows. Clause 104 is left
 * out. Tolerances are half of the last digit that is printed.
 */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { unbalance } from '../../src/cable/index.ts';
import {
  assignedClass,
  type ClassAssignment,
  type ClassAssignmentInput,
  classAssignment,
  type DualSignatureClassNumber,
  dualSignature,
  dualSignatureClass,
  LLDP_CODES,
  LLDP_FIELDS,
  lldpAllocation,
  lldpWatts,
  POE_SIGNALLING,
  poeClassDetail,
  psePowerFor,
  pseType,
  type RFC_3621,
  RFC_3621_FACTS,
  rfc3621Classification,
  rfc3621Name,
} from '../../src/ethernet/index.ts';
import { cable, operatingPoint, type PoeClassNumber, type PseType, poeClass, powerAtPd, runResistance } from '../../src/index.ts';
import { milliwatts } from '../../src/quantity/index.ts';
import { source } from '../../src/sources/index.ts';
import { as, expectInputError, expectPrinted } from '../helpers/expectations.ts';
import { ROOT } from '../support/files.ts';

interface Row {
  readonly id: string;
  readonly type: string;
  readonly class: string;
  readonly value: string;
  readonly unit: string;
  readonly source: string;
  readonly status: string;
}

/** Cells of one line; quoted cells hold commas and no quotes. */
function cells(line: string): string[] {
  return [...line.matchAll(/("(?<quoted>[^"]*)"|(?<plain>[^,]*))(,|$)/g)]
    .slice(0, -1)
    .map(({ groups }) => groups?.['quoted'] ?? groups?.['plain'] ?? '');
}

const [header = '', ...lines] = readFileSync(join(ROOT, 'tests/reference/ieee-802.3-power.csv'), 'utf8').trim().split('\n');
const names = header.split(',');
const ROWS: readonly Row[] = lines.map((line) => {
  const values = cells(`${line},`);
  if (values.length !== names.length) throw new Error(`${values.length} cells in ${line}`);
  return Object.fromEntries(names.map((name, index) => [name, values[index]])) as unknown as Row;
});

const numberOf = (id: string): number => Number(id.at(-1));
const printedRange = (value: string): number[] => value.replace(/^>/, '').split('-').map(Number);
const { detection, classification, maintainPower, autoclass, peak } = POE_SIGNALLING;
const types = (row: Row): PseType[] => row.type.split(',').map((type) => Number(type) as PseType);

type Held = (row: Row) => void;

/** A class power of the port: the same on every type that the row names. */
const psePower: Held = (row) => {
  for (const type of types(row)) expectPrinted(poeClass(numberOf(row.id) as PoeClassNumber, { pseType: type }).psePower, row.value);
};
const pdPower: Held = (row) => {
  const number = numberOf(row.id) as PoeClassNumber;
  const limits = poeClass(number);
  expectPrinted(limits.pdPowerLater ?? limits.pdPower, row.value);
};
const scaled =
  (values: readonly number[], perUnit: number): Held =>
  (row) => {
    const printed = row.value.split('-');
    expect(printed).toHaveLength(values.length);
    for (const [index, text] of printed.entries()) expectPrinted((values[index] as number) * perUnit, text);
  };
const one =
  (value: number, perUnit: number = 1): Held =>
  (row) =>
    expectPrinted(value * perUnit, row.value);
const every =
  (value: (type: PseType) => number): Held =>
  (row) => {
    for (const type of types(row)) expectPrinted(value(type), row.value);
  };
const enumerated =
  (name: keyof typeof LLDP_FIELDS, named: readonly string[]): Held =>
  (row) => {
    const numbers = row.value.split(';').map((part) => Number.parseInt(part, 10));
    const field: Readonly<Record<string, number>> = LLDP_FIELDS[name];
    expect(Object.keys(field)).toEqual(named);
    expect(Object.values(field)).toEqual(numbers);
  };
const granted = (input: ClassAssignmentInput): Extract<ClassAssignment, { granted: PoeClassNumber }> => {
  const answer = classAssignment(input);
  if (answer.granted === null) throw new Error(answer.statement);
  return answer;
};
const mib =
  (object: keyof typeof RFC_3621, name: string): Held =>
  (row) =>
    expect(rfc3621Name({ object, value: Number(row.value) })).toBe(name);

/** The worst case of a class: what its printed power leaves at the device, and what the printed device power takes. */
const arithmetic =
  (number: PoeClassNumber, later: boolean = false): Held =>
  (row) => {
    const { channelResistance, pdPowerLater, pdPower: printed } = poeClass(number);
    expectPrinted(powerAtPd({ poeClass: number, resistance: channelResistance }).available, row.value);
    const { average } = psePowerFor({ poeClass: number, pdPower: later ? pdPowerLater : printed });
    if (!average.feasible) expect.fail('not feasible');
    expectPrinted(average.psePower, INVERSE[row.id] as string);
  };
const pairsetArithmetic =
  (number: DualSignatureClassNumber): Held =>
  (row) => {
    const { availableAtWorst, pdPower: power, pseVoltageMin, channelResistance } = dualSignatureClass(number);
    expectPrinted(availableAtWorst, row.value);
    const point = operatingPoint({ supplyVoltage: pseVoltageMin, resistance: channelResistance, load: { power } });
    if (!point.feasible) expect.fail('not feasible');
    expectPrinted(point.supplyPower, INVERSE[row.id] as string);
  };

/** PSE power for the printed PD power, W: V(V - sqrt(V² - 4RP))/2R on the same rows, computed apart to four places. */
const INVERSE: Readonly<Record<string, string>> = {
  chk_c0: '15.4000',
  chk_c1: '4.0058',
  chk_c2: '6.9956',
  chk_c3: '15.4000',
  chk_c3b: '15.4734',
  chk_c4: '30.0000',
  chk_c5: '45.0807',
  chk_c6: '60.0000',
  chk_c7: '75.0024',
  chk_c8: '90.0381',
  chk_ds1: '3.9167',
  chk_ds2: '6.7155',
  chk_ds3: '13.9767',
  chk_ds4: '30.0000',
  chk_ds5: '44.9335',
};

/** A switch chip's table: power of a class and the extra it may add, mW. It keeps whole watts, and stays under the interface's limit. */
const chip =
  (number: PoeClassNumber): Held =>
  ({ value }) => {
    const [base = 0, extra = 0] = value.split('+').map((mW) => milliwatts(Number(mW)));
    expect(base).toBe(Math.floor(poeClass(number).psePower));
    expect(base + extra).toBeLessThanOrEqual(pseType(4).interfacePowerMax as number);
  };

const HELD: Readonly<Record<string, Held>> = {
  pse_w_c0: psePower,
  pse_w_c1: psePower,
  pse_w_c2: psePower,
  pse_w_c3: psePower,
  pse_w_c4: psePower,
  pse_w_c5: psePower,
  pse_w_c6: psePower,
  pse_w_c7: psePower,
  pse_w_c8: psePower,
  // Class power is an average and the peak is apart: in classes 1 and 2 the device's peak is above the port's class power.
  pse_w_c0_avg: () =>
    expect(
      [1, 2, 3, 4].filter((number) => poeClassDetail(number as PoeClassNumber).pdPeakPower > poeClass(number as PoeClassNumber).psePower),
    ).toEqual([1, 2]),
  pd_w_c1: pdPower,
  pd_w_c2: pdPower,
  pd_w_c3: pdPower,
  pd_w_c4: pdPower,
  pd_w_c5: pdPower,
  pd_w_c6: pdPower,
  pd_w_c7: pdPower,
  pd_w_c8: pdPower,
  pd_w_c3_af: one(poeClass(3).pdPower),
  pd_w_c0_af: one(poeClass(0).pdPower),
  pd_w_c0_at: one(poeClass(0).pdPowerLater as number),
  pd_w_min: one(pseType(1).pseVoltageMin * maintainPower.type1And2.current),
  pd_w_c4_floor: scaled([poeClass(3).pdPower, poeClass(4).pdPower], 1),
  ds_indep: () => {
    const { a, b } = dualSignature({ a: 1, b: 4 });
    expect([a, b]).toEqual([dualSignatureClass(1), dualSignatureClass(4)]);
  },
  ds_class_set: ({ value }) => {
    for (const number of value.split(',')) expect(() => dualSignatureClass(Number(number) as DualSignatureClassNumber)).not.toThrow();
    for (const number of [0, 6])
      expectInputError(() => dualSignatureClass(as<DualSignatureClassNumber>(number)), 'dualSignatureClass', 'range');
  },
  ss_class_set: () => {
    const classes = Object.keys(LLDP_FIELDS.powerClassExt).filter((name) => name.startsWith('class'));
    expect(classes).toEqual(['class1', 'class2', 'class3', 'class4', 'class5', 'class6', 'class7', 'class8']);
  },
  type1_pse_w: one(pseType(1).psePowerTwoPair),
  type2_pse_w: one(pseType(2).psePowerTwoPair),
  type3_pse_w_4p: one(pseType(3).psePowerFourPair as number),
  type3_pse_w_2p: one(pseType(3).psePowerTwoPair),
  type4_pse_w: one(pseType(4).psePowerFourPair as number),
  pi_max_w: one(pseType(4).interfacePowerMax as number),
  pi_max_a: one(pseType(4).totalCurrent),
  af_date: ({ value }) => expect(pseType(1)).toMatchObject({ amendment: '802.3af', approved: value }),
  at_date: ({ value }) => expect(pseType(2)).toMatchObject({ amendment: '802.3at', approved: value }),
  bt_date: (row) => {
    for (const type of types(row)) expect(pseType(type)).toMatchObject({ amendment: '802.3bt', approved: row.value, clause: 145 });
  },
  vpse_min_t1: every((type) => pseType(type).pseVoltageMin),
  vpse_min_t2: every((type) => pseType(type).pseVoltageMin),
  vpse_min_t3: every((type) => pseType(type).pseVoltageMin),
  vpse_min_t4: every((type) => pseType(type).pseVoltageMin),
  vpse_max: every((type) => pseType(type).pseVoltageMax),
  vpd_min_t1: (row) => {
    for (const number of [0, 1, 2, 3] as const) expectPrinted(poeClass(number).pdVoltageMin, row.value);
  },
  vpd_min_t2: one(poeClass(4).pdVoltageMin),
  vpd_min_t4: one(poeClass(8).pdVoltageMin),
  vpd_max: every((type) => pseType(type).pdVoltageMax),
  vpd_overload_t1: one(pseType(1).pdVoltageMinOverload as number),
  vpd_on: every((type) => pseType(type).pdTurnOnVoltage),
  vpd_off: every((type) => pseType(type).pdTurnOffVoltage),
  r_t1: every((type) => pseType(type).pairsetResistance),
  r_t2: every((type) => pseType(type).pairsetResistance),
  r_t3_2p: every((type) => pseType(type).pairsetResistance),
  r_t4_2p: every((type) => pseType(type).pairsetResistance),
  r_4p: (row) => {
    for (const number of [5, 6, 7, 8] as const) expectPrinted(poeClass(number).channelResistance, row.value);
    for (const type of types(row)) expectPrinted(pseType(type).channelResistance, row.value);
  },
  // A pair's two conductors count in parallel: out r/2, back r/2.
  r_def_cq: () => {
    const { pairLoop, twoPair } = runResistance({ segments: [{ cable: cable('cat5e'), length: 50 }] });
    expect(twoPair).toBe(pairLoop / 4 + pairLoop / 4);
  },
  // Voltages stand between a positive and a negative conductor at the interface.
  v_def_cq: () => {
    const { operating, pseVoltage } = powerAtPd({ poeClass: 4, resistance: 12.5 });
    if (!operating.feasible) expect.fail('not feasible');
    expect(pseVoltage - operating.loadVoltage).toBeCloseTo(operating.current * 12.5, 12);
  },
  r_cabling_t1: ({ value }) => expect(pseType(1).cabling).toContain(value.slice(0, 'ISO/IEC 11801 Class C'.length)),
  r_cabling_t2: ({ value }) => expect(pseType(2).cabling).toContain(value.slice(0, 'ISO/IEC 11801 Class D'.length)),
  // 100 m of Category 5e keep the pairset of every type from 2 up.
  r_cabling_tsb: () => {
    const { twoPair } = runResistance({ segments: [{ cable: cable('cat5e'), length: 100 }] });
    for (const type of [2, 3, 4] as const) expect(twoPair).toBeLessThan(pseType(type).pairsetResistance);
  },
  i_t1: every((type) => pseType(type).pairsetCurrent),
  i_t2: every((type) => pseType(type).pairsetCurrent),
  i_t3: every((type) => pseType(type).pairsetCurrent),
  i_t4: every((type) => pseType(type).pairsetCurrent),
  i_cond_iso_4p: one(POE_SIGNALLING.conductorCurrent.fourPairs),
  i_inrush_rule: one(granted({ requestedClass: 4, pseType: 2 }).startUpPower),
  pd_peak_duty: one(peak.duty, 100),
  det_pd: scaled(detection.deviceResistance, 1e-3),
  det_pd_alt: scaled(detection.deviceResistanceOlder, 1e-3),
  det_v_pse: scaled(detection.portVoltage, 1),
  det_v_pd: scaled(detection.deviceVoltage, 1),
  mark_r: ({ value }) => expectPrinted(detection.markResistanceBelow / 1000, value.slice(1)),
  cls_i_0: scaled(classification.deviceCurrent[0], 1e3),
  cls_i_1: scaled(classification.deviceCurrent[1], 1e3),
  cls_i_2: scaled(classification.deviceCurrent[2], 1e3),
  cls_i_3: scaled(classification.deviceCurrent[3], 1e3),
  cls_i_4: scaled(classification.deviceCurrent[4], 1e3),
  cls_i_pse_0: scaled(classification.portCurrent[0], 1e3),
  cls_i_pse_1: scaled(classification.portCurrent[1], 1e3),
  cls_i_pse_2: scaled(classification.portCurrent[2], 1e3),
  cls_i_pse_3: scaled(classification.portCurrent[3], 1e3),
  cls_i_pse_4: scaled(classification.portCurrent[4], 1e3),
  cls_seq_c5: ({ value }) => expect(classification.signatures[5].join(' then ')).toBe(value),
  cls_seq_c6: ({ value }) => expect(classification.signatures[6].join(' then ')).toBe(value),
  cls_seq_c7: ({ value }) => expect(classification.signatures[7].join(' then ')).toBe(value),
  cls_seq_c8: ({ value }) => expect(classification.signatures[8].join(' then ')).toBe(value),
  cls_v_pd: scaled(classification.deviceVoltage, 1),
  cls_v_pse: scaled(classification.portVoltage, 1),
  cls_type1_on_c4: (row) => {
    const settled = granted({ requestedClass: 4, pseType: 1 });
    expect(settled).toMatchObject({ granted: 0, demoted: true });
    expectPrinted(settled.pdPower, row.value);
  },
  cls_demote: ({ value }) => expect(`requested 8, assigned ${assignedClass({ requestedClass: 8, pseType: 3 })}`).toBe(value),
  mps_t12_i: one(maintainPower.type1And2.current, 1e3),
  mps_t12_t: ({ value }) =>
    expect(`${maintainPower.type1And2.on * 1e3} ms on in every ${maintainPower.type1And2.every * 1e3} ms`).toBe(value),
  mps_ac: ({ value }) =>
    expect(`<${maintainPower.acResistanceBelow / 1e3} kohm in parallel with ${(maintainPower.acCapacitance * 1e6).toFixed(2)} uF`).toBe(
      value,
    ),
  mps_bt_i_58: one(maintainPower.type3And4.currentClasses5To8, 1e3),
  mps_pse_bt: ({ value }) => {
    const { on, every: window } = maintainPower.portType3And4;
    expect(`${on * 1e3} ms in every ${window.map((seconds) => seconds * 1e3).join('-')} ms`).toBe(value);
  },
  mps_pse_12: ({ value }) => {
    const { on, every: window } = maintainPower.portType1And2;
    expect(`${on * 1e3} ms in every ${window.map((seconds) => seconds * 1e3).join('-')} ms`).toBe(value);
  },
  mps_pse_imin1: scaled([0, maintainPower.portGoneBelow], 1e3),
  mps_pse_imin2: ({ value }) =>
    expect(printedRange(value)).toEqual([maintainPower.portGoneBelow * 1e3, maintainPower.portEitherBelow * 1e3]),
  ac_window: scaled(autoclass.window, 1),
  ac_avg: scaled(autoclass.average, 1e3),
  ac_limit: () => expect(autoclass.holdsUntilLldp).toBe(true),
  ac_optional: () => expect(autoclass.optional).toBe(true),
  lldp_res: one(LLDP_CODES.resolution),
  // Requested power is what the device takes in, not what the port puts out.
  lldp_meaning: () => {
    const { pdPower: atDevice, psePower: atPort = 0 } = lldpAllocation({ requested: 255, poeClass: 4 });
    expect(atDevice).toBe(25.5);
    expect(atPort).toBeGreaterThan(atDevice);
  },
  lldp_len_at: one(LLDP_CODES.lengthType2),
  lldp_len_bt: one(LLDP_CODES.lengthType3And4),
  lldp_cls_field: () =>
    expect(Object.entries(LLDP_FIELDS.powerClass)).toEqual([0, 1, 2, 3, 4].map((number) => [`class${number}`, number + 1])),
  lldp_cls_ext: () =>
    expect(Object.entries(LLDP_FIELDS.powerClassExt)).toEqual([
      ...[1, 2, 3, 4, 5, 6, 7, 8].map((number) => [`class${number}`, number]),
      ['dual-signature', 15],
    ]),
  lldp_cls_ab: () =>
    expect(Object.entries(LLDP_FIELDS.powerClassAB)).toEqual([
      ...[1, 2, 3, 4, 5].map((number) => [`class${number}`, number]),
      ['single-signature or 2-pair', 7],
    ]),
  lldp_pairs: enumerated('pairs', ['signal', 'spare']),
  lldp_pairs_ext: enumerated('pairsExt', ['ignore', 'Alternative A', 'Alternative B', 'both']),
  lldp_type: enumerated('powerType', ['Type 2 PSE', 'Type 2 PD', 'Type 1 PSE', 'Type 1 PD']),
  lldp_type_ext: enumerated('powerTypeExt', [
    'Type 3 PSE',
    'Type 4 PSE',
    'Type 3 single-signature PD',
    'Type 3 dual-signature PD',
    'Type 4 single-signature PD',
    'Type 4 dual-signature PD',
  ]),
  lldp_src_pd: enumerated('powerSourcePd', ['unknown', 'PSE', 'local', 'PSE and local']),
  lldp_src_pse: enumerated('powerSourcePse', ['unknown', 'primary', 'backup']),
  lldp_prio: enumerated('priority', ['unknown', 'critical', 'high', 'low']),
  lldp_psestat: enumerated('psePoweringStatus', ['ignore', '2-pair', '4-pair single-signature', '4-pair dual-signature']),
  lldp_pdstat: enumerated('pdPoweredStatus', ['ignore', 'single-signature', '2-pair dual-signature', '4-pair dual-signature']),
  lldp_down: ({ value }) => expect(LLDP_CODES.powerDownRequest).toBe(Number(value)),
  // A 15.4 W port advertises 130: 13.0 W at the device.
  lldp_med_ex: ({ value }) => expect(lldpWatts(Number(value))).toBe(poeClass(3).pdPowerLater),
  mib_cls_1: mib('pethPsePortPowerClassifications', 'class0'),
  mib_cls_2: mib('pethPsePortPowerClassifications', 'class1'),
  mib_cls_3: mib('pethPsePortPowerClassifications', 'class2'),
  mib_cls_4: mib('pethPsePortPowerClassifications', 'class3'),
  mib_cls_5: mib('pethPsePortPowerClassifications', 'class4'),
  mib_det_1: mib('pethPsePortDetectionStatus', 'disabled'),
  mib_det_2: mib('pethPsePortDetectionStatus', 'searching'),
  mib_det_3: mib('pethPsePortDetectionStatus', 'deliveringPower'),
  mib_det_4: mib('pethPsePortDetectionStatus', 'fault'),
  mib_det_5: mib('pethPsePortDetectionStatus', 'test'),
  mib_det_6: mib('pethPsePortDetectionStatus', 'otherFault'),
  mib_prio_1: mib('pethPsePortPowerPriority', 'critical'),
  mib_prio_2: mib('pethPsePortPowerPriority', 'high'),
  mib_prio_3: mib('pethPsePortPowerPriority', 'low'),
  mib_pairs_1: mib('pethPsePortPowerPairs', 'signal'),
  mib_pairs_2: mib('pethPsePortPowerPairs', 'spare'),
  mib_oper_1: mib('pethMainPseOperStatus', 'on'),
  mib_oper_2: mib('pethMainPseOperStatus', 'off'),
  mib_oper_3: mib('pethMainPseOperStatus', 'faulty'),
  mib_main_power: ({ value }) => expect(RFC_3621_FACTS.pethMainPsePower.join('..')).toBe(value),
  mib_main_cons: ({ unit }) => expect(RFC_3621_FACTS.pethMainPseConsumptionPower).toBe(unit),
  mib_main_thr: ({ value }) => expect(RFC_3621_FACTS.pethMainPseUsageThreshold.join('..')).toBe(value),
  mib_oid: ({ value }) => expect(RFC_3621_FACTS.oid).toBe(value),
  // The YANG module of 2019 numbers classes as the MIB does, from 1, and goes further.
  yang19_cls: ({ value }) => {
    expect(value).toContain('class0=1');
    for (const number of [0, 1, 2, 3, 4] as const) expect(rfc3621Classification(number)).toBe(number + 1);
    for (const number of [5, 6, 7, 8] as const) expectInputError(() => rfc3621Classification(number), 'poeClass', 'range');
  },
  yang25_cls: () => {
    for (let number = 0; number <= 8; number++) expect(poeClass(number as PoeClassNumber).poeClass).toBe(number);
    expectInputError(() => poeClass(as<PoeClassNumber>(9)), 'poeClass', 'range');
  },
  yang25_actual: () => expect(milliwatts(25500)).toBe(25.5),
  // The YANG modules count from 0 in another order: the values on the wire are others.
  yang_lldp_enum: () => {
    const onTheWire = LLDP_FIELDS.psePoweringStatus;
    expect([onTheWire['4-pair dual-signature'], onTheWire['4-pair single-signature'], onTheWire['2-pair']]).not.toEqual([0, 1, 2]);
    expect(onTheWire['2-pair']).toBe(1);
  },
  ethtool_actual: ({ value }) => expect([value, milliwatts(1)]).toEqual(['mW', 0.001]),
  lx_pw_c3: chip(3),
  lx_pw_c4: chip(4),
  lx_pw_c6: chip(6),
  lx_pw_c8: chip(8),
  pin_a: ({ value }) => expect(POE_SIGNALLING.alternatives.A.join(' and ')).toBe(value),
  pin_b: ({ value }) => expect(POE_SIGNALLING.alternatives.B.join(' and ')).toBe(value),
  pairset: ({ value }) =>
    expect(
      Object.keys(POE_SIGNALLING.alternatives)
        .map((name) => `Alt ${name}`)
        .join(' or '),
    ).toBe(value),
  // The book: a branch that is 6 % larger is 3 % of unbalance.
  unb_def: () => expectPrinted((unbalance({ pairs: { '1,2': [1, 1.06] } }).pairs[0]?.fraction as number) * 100, '3'),
  we_af_i: (row) => {
    const { operating } = powerAtPd({ poeClass: 3, resistance: 20 });
    if (!operating.feasible) expect.fail('not feasible');
    expectPrinted(operating.current * 1000, row.value);
    expectPrinted(operating.voltageDrop, '7');
  },
  we_af_57: (row) => {
    const point = operatingPoint({ supplyVoltage: 57, resistance: 0, load: { current: pseType(1).pairsetCurrent } });
    if (!point.feasible) expect.fail('not feasible');
    expectPrinted(point.loadPower, row.value);
  },
  // Printed 300 mA for 298 mA: two digits.
  we_af_mid: (row) => {
    const point = operatingPoint({ supplyVoltage: 43.5, resistance: 0, load: { power: 12.95 } });
    if (!point.feasible) expect.fail('not feasible');
    expectPrinted(point.current * 100, String(Number(row.value) / 10));
  },
  we_342: one(pseType(2).pseVoltageMax * pseType(2).pairsetCurrent),
  chk_c0: arithmetic(0),
  chk_c1: arithmetic(1),
  chk_c2: arithmetic(2),
  chk_c3: arithmetic(3),
  chk_c3b: arithmetic(3, true),
  chk_c4: arithmetic(4),
  chk_c5: arithmetic(5),
  chk_c6: arithmetic(6),
  chk_c7: arithmetic(7),
  chk_c8: arithmetic(8),
  chk_ds1: pairsetArithmetic(1),
  chk_ds2: pairsetArithmetic(2),
  chk_ds3: pairsetArithmetic(3),
  chk_ds4: pairsetArithmetic(4),
  chk_ds5: pairsetArithmetic(5),
};

test('every row is held, and names where it was read', () => {
  expect(Object.keys(HELD)).toEqual(ROWS.map(({ id }) => id));
  for (const row of ROWS) expect(row.source, row.id).not.toBe('');
  expect(new Set(ROWS.map(({ status }) => status))).toEqual(new Set(['read', 'derived']));
});

describe('rows of the standard', () => {
  test.each(ROWS.map((row) => [row.id, row.value, row.source, row] as const))('%s: %s (%s)', (id, _value, _source, row) => {
    expect.hasAssertions();
    (HELD[id] as Held)(row);
  });
});

// From memory, not read: dual-signature powers, peaks, LLDP limits, unbalanced currents, off voltage. Held so that none moves unnoticed.
describe('rows from memory are marked as such', () => {
  test('dual-signature powers per pairset', () => {
    const classes = ([1, 2, 3, 4, 5] as const).map((number) => dualSignatureClass(number));
    expect(classes.map((row) => [row.psePower, row.pdPower, row.lldpLimit])).toEqual([
      [4, 3.84, 39],
      [7, 6.49, 65],
      [15.4, 13, 130],
      [30, 25.5, 255],
      [45, 35.6, 356],
    ]);
    for (const row of classes) expect(source(row.source).status).toBe('memory');
  });

  test('peaks of the device, LLDP limits and unbalanced currents', () => {
    const details = ([0, 1, 2, 3, 4, 5, 6, 7, 8] as const).map((number) => poeClassDetail(number));
    expect(details.map(({ pdPeakPower }) => pdPeakPower)).toEqual([14.4, 5, 8.36, 14.4, 28.3, 42, 53.5, 65.1, 74.9]);
    expect(details.map(({ lldpLimit }) => lldpLimit)).toEqual([130, 39, 65, 130, 255, 400, 510, 620, 713]);
    expect(details.slice(5).map(({ pairsetCurrentUnbalanced }) => pairsetCurrentUnbalanced)).toEqual([0.55, 0.682, 0.781, 0.932]);
    for (const { sources } of details) {
      expect(source(sources.pdPeakPower).status).toBe('memory');
      expect(source(sources.lldpLimit).status).toBe('memory');
    }
  });

  test('least device voltages of classes 5 to 7, and the voltage of a port that is off', () => {
    expect(([5, 6, 7] as const).map((number) => poeClass(number).pdVoltageMin)).toEqual([44.3, 42.5, 42.9]);
    expect(pseType(1).pseOffVoltageMax).toBe(2.8);
    expect(source('ieee-802.3-pd-voltage').status).toBe('memory');
  });
});
