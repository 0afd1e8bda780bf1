/** What each port of a switch is set aside, and which ports get it. @module */
import type { PoeClass, PoeClassNumber } from '../../ethernet/index.ts';
import { loopThatPowerSees } from '../../ethernet/power-at-pd.ts';
import type { BudgetBasis, BudgetPort, SwitchBudgetInput } from '../../plan/index.ts';
import { checked, drawOf, psePowerLimitOf } from '../../plan/switch/port-demand.ts';
import type { FigureSources, Figures } from '../engine/sheet.ts';

/** How a port comes to what it is set aside. */
export type PortCase =
  // The power of the class bounds it, or stands in for it.
  | 'class bounds'
  | 'measured'
  | 'drawn'
  | 'run'
  | 'carried'
  | 'not carried'
  | 'by flow'
  | 'over its class'
  | 'no request'
  // The budget adds whole nanowatts, rounded up.
  | 'rounded up'
  | 'whole';

/** A port, and whether it is powered. */
export interface AdmittedPort {
  readonly port: number;
  readonly grantedClass: PoeClassNumber;
  /** Taken, or wanted, at the port. [W] */
  readonly power: number;
  readonly isPowered: boolean;
  /** Whether the power is that of its draw. */
  readonly isFlow: boolean;
  readonly cases: readonly PortCase[];
  readonly values: Figures;
  readonly sources: FigureSources;
  /** What the result of the core calls it. */
  readonly core: string;
}

const RANK = { critical: 0, high: 1, low: 2 } as const;

/** Whole nanowatts, which never understate what is drawn, or overstate what there is. */
const up = (watts: number): number => Math.ceil(Number((watts * 1e9).toPrecision(15)));
const down = (watts: number): number => Math.floor(Number((watts * 1e9).toPrecision(15)));

/** Every port, by priority and then by number, in which order they are powered as long as there is room. */
export function admittedPorts(input: SwitchBudgetInput, capacity: number): readonly AdmittedPort[] {
  const { basis, policy = 'strict', reserve = 0, portLimit, groups = [] } = input;
  const cards = new Map(groups.map(({ group, limit }) => [group, { left: down(limit), isFull: false }]));
  const ofSwitch = { left: down(capacity) - Math.round(down(capacity) * reserve), isFull: false };
  const wanted = input.ports
    .map((entry) => ({ entry, ...checked(entry, 'ports', portLimit) }))
    .sort((a, b) => RANK[a.priority] - RANK[b.priority] || a.entry.port - b.entry.port);

  const ports = wanted.map(({ entry, limits, grantedClass, anyClass }) => {
    const demand = demandOf(entry, basis, limits);
    const { limit = portLimit, measured, group, port } = entry;
    const needed = up(demand.power);
    const isWithin = (limit === undefined || needed <= down(limit)) && (anyClass || (basis === 'measured' && measured !== undefined));
    const card = group === undefined ? undefined : cards.get(group);
    const isAsked = isWithin && !demand.cases.includes('not carried') && !ofSwitch.isFull;
    const noRoom = [card, ofSwitch].find((room) => room !== undefined && (room.isFull || room.left < needed));
    const isPowered = isAsked && noRoom === undefined;
    // Under the strict policy nothing follows what found no room.
    if (isAsked && noRoom !== undefined && policy === 'strict') noRoom.isFull = true;
    if (isPowered) for (const room of [card, ofSwitch]) if (room !== undefined) room.left -= needed;
    return { port, grantedClass, isPowered, ...demand };
  });
  const powered = ports.filter(({ isPowered }) => isPowered);
  const denied = ports.filter(({ isPowered }) => !isPowered).reverse();
  return ports.map((port) => ({
    ...port,
    core: port.isPowered ? `powered[${powered.indexOf(port)}]` : `denied[${denied.indexOf(port)}]`,
  }));
}

/** What a port takes on a basis, by which case, from which figures. */
function demandOf(
  entry: BudgetPort,
  basis: BudgetBasis,
  limits: PoeClass,
): Pick<AdmittedPort, 'power' | 'isFlow' | 'cases' | 'values' | 'sources'> {
  const { psePower: B, pseVoltageMin, channelResistance, pairs } = limits;
  const { measured, requested, pseVoltage, resistance } = entry;
  const p = drawOf(entry, basis, limits);
  const own = basis === 'calculated';
  const V = own ? (pseVoltage ?? pseVoltageMin) : pseVoltageMin;
  const R = own && resistance !== undefined ? loopThatPowerSees(resistance, pairs) : channelResistance;
  const found = {
    values: { 'B_#': B, 'M_#': measured ?? 0, 'p_#': p, 'V_#': V, 'R_#': R },
    sources: {
      'V_#': own && pseVoltage !== undefined ? undefined : ('ieee-802.3-pse-voltage' as const),
      'R_#': own && resistance !== undefined ? undefined : ('ieee-802.3-channel' as const),
    },
    isFlow: false,
  };
  const rounding = (power: number): PortCase => (Math.round(power * 1e9) / 1e9 === power ? 'whole' : 'rounded up');
  if (basis === 'class') return { ...found, power: B, cases: [] };
  if (basis === 'measured' && measured !== undefined) return { ...found, power: measured, cases: ['measured', rounding(measured)] };
  if (basis === 'measured') return { ...found, power: B, cases: ['class bounds', 'no request'] };
  if (basis === 'requested' && requested === undefined) return { ...found, power: B, cases: ['class bounds', 'drawn', 'no request'] };
  const D = V * V - 4 * p * R;
  if (D < 0) return { ...found, power: B, cases: ['class bounds', 'drawn', 'run', 'not carried'] };
  const S = (V * 2 * p) / (V + Math.sqrt(D));
  // Over the printed power by the rounding of the standard alone, it is the printed power that is set aside.
  const isOver = !(S < B) && (!own || !(S > psePowerLimitOf(p, limits)));
  const cases: readonly PortCase[] = ['class bounds', 'drawn', 'run', 'carried'];
  return isOver
    ? { ...found, power: B, cases: [...cases, 'over its class'] }
    : { ...found, power: S, isFlow: true, cases: [...cases, 'by flow', rounding(S)] };
}
