/** What a checked schedule says, as plain data: unrounded, JSON-safe, the same for every format. @module */
import type { ExplanationName } from '../cable/field/explanations.ts';
import type { Installation } from '../cable/heat/bundle-rise.ts';
import type { RunPair } from '../cable/unbalance.ts';
import type { PoeClassNumber, PseType } from '../ethernet/class-table.ts';
import type { Check } from '../limits/check.ts';
import type { Verdict } from '../limits/verdict.ts';
import type { CablingStandard } from '../plan/cabling-rules.ts';
import type { BundleFinding } from '../plan/heat/check-bundle.ts';
import type { PoweredRun } from '../plan/powered-run.ts';
import type { Remedy } from '../plan/remedy.ts';
import type { BudgetedPort, PortPriority, SwitchBudget } from '../plan/switch/switch-budget.ts';
import type { TwoWireRun } from '../plan/two-wire-run.ts';
import type { Celsius, Kelvins, Metres, Ohms, Volts, Watts } from '../quantity/units.ts';
import type { Finding, FindingSeverity } from './finding.ts';
import type { UnreadCell } from './schedule.ts';

/** What becomes of a run: its worst verdict, or `denied` where it would not fail but its switch has no power left for it. */
export type RunOutcome = Verdict | 'denied';

/** One piece of a run. */
export interface ReportedPiece {
  /** How the trade calls it, as in `Category 6` or `18 AWG stranded`. */
  readonly cable: string;
  readonly use: 'installed' | 'cord' | 'two-wire';
  /** One way. [m] */
  readonly length: Metres;
  /** [°C] */
  readonly temperature: Celsius;
}

/** What the row of a schedule adds to its judged run. */
export interface RowFacts {
  readonly run: string;
  /** What is at its far end. */
  readonly device?: string;
  /** Line of the file it was read from, from 1. */
  readonly line?: number;
  readonly outcome: RunOutcome;
  /** Lowest and highest voltage at the near end; the same where only one counts. [V] */
  readonly supplyVoltage: { readonly low: Volts; readonly high: Volts };
  readonly pieces: readonly ReportedPiece[];
  /** Plugs, jacks and joints along the run. */
  readonly connections: number;
  /** Heat in the cable, at whichever end of the supply range it is greater; absent where the line does not carry the load. [W] */
  readonly cableHeat?: Watts;
  /** Absent where no bundle is stated; its checks and its verdict stand with the others. */
  readonly heat?: ReportedHeat;
  /** Absent where nothing was measured. */
  readonly measured?: ReportedMeasurement;
  /** Single changes, any one of which makes a failing run pass. */
  readonly remedies: readonly Remedy[];
  /** What was taken for granted, in words. */
  readonly notes: readonly string[];
  /** Cells that could not be read: the verdicts they bear on are at best `uncertain`. Absent where there are none. */
  readonly unread?: readonly UnreadCell[];
}

/** What the bundle of a run does to it. */
export interface ReportedHeat {
  readonly cables: number;
  readonly installation: Installation;
  /** Of the installed piece that rises most, above its air; absent where it has no steady figure. [K] */
  readonly rise?: Kelvins;
  /** Of the hottest conductors; absent where they have no steady figure. [°C] */
  readonly temperature?: Celsius;
  readonly findings: readonly BundleFinding[];
  /** The most cables with which the run passes power, cabling and heat, where as it is it does not. */
  readonly largestBundle?: number;
}

/** What was measured, beside what was expected. */
export interface ReportedMeasurement {
  /** What was read on each pair. [Ω] */
  readonly readings: readonly { readonly pair: RunPair; readonly ohms: Ohms }[];
  /** Of the installed cable as described, from 20 °C to its ambient. [Ω] */
  readonly expected: { readonly low: Ohms; readonly high: Ohms };
  /** Whether the run as described could read so: consistent is not proved. */
  readonly status: 'consistent' | 'inconsistent';
  /** By how much every reading misses. [Ω] */
  readonly distance: Ohms;
  /** What could be so instead, each on its own. */
  readonly consistentWith: readonly ExplanationName[];
}

/** A run to a powered device, judged. Its loops are those of the highest pair as measured, where anything was. */
export interface PoweredRunReport extends PoweredRun, RowFacts {
  readonly switch: string;
  readonly port: number;
  readonly priority: PortPriority;
  /** Whether the switch's budget has power for it; absent where the port is in no budget. */
  readonly allocation?: 'allocated' | 'denied';
  readonly poeClass: PoeClassNumber;
}

/** A two-wire DC run, judged. */
export interface TwoWireRunReport extends TwoWireRun, RowFacts {}

/** One run, judged. */
export type RunReport = PoweredRunReport | TwoWireRunReport;

/** A port of a switch's budget, with what is plugged into it. */
export interface ReportedPort extends BudgetedPort {
  readonly run: string;
  readonly device?: string;
}

/** A switch's budget, with the runs on its ports. */
export interface ReportedBudget extends Omit<SwitchBudget, 'powered' | 'denied'> {
  /** By priority, then port number. */
  readonly powered: readonly ReportedPort[];
  /** In the order in which they are shed. */
  readonly denied: readonly ReportedPort[];
}

/** One switch, judged. */
export interface SwitchReport {
  readonly switch: string;
  readonly type: PseType;
  readonly ports: number;
  readonly line?: number;
  /** Absent where neither a budget nor supplies are given, or they make no sense. */
  readonly budget?: ReportedBudget;
  readonly notes: readonly string[];
}

/** Sums over the whole schedule. */
export interface ReportTotals {
  readonly runs: number;
  readonly outcomes: Readonly<Record<RunOutcome, number>>;
  readonly power: Readonly<Record<Verdict, number>>;
  readonly cabling: Readonly<Record<Verdict, number>>;
  /** By type of cable, installed, cords and two-wire apart. [m] */
  readonly cables: readonly { readonly cable: string; readonly use: ReportedPiece['use']; readonly length: Metres }[];
  /** The run closest to a limit, or furthest beyond one. */
  readonly worstRun?: { readonly run: string; readonly line?: number; readonly check: Check };
  /** Heat in all cables together, every device that its line can carry at full load, denied ports included. [W] */
  readonly cableHeat: Watts;
  readonly findings: Readonly<Record<FindingSeverity, number>>;
}

/** How a schedule was judged. */
export interface ReportSettings {
  readonly cabling: CablingStandard;
  /** A margin under this fraction of the limit is marginal. */
  readonly marginalBelow: number;
  readonly budget: { readonly basis: 'class' | 'requested'; readonly policy: 'strict' | 'fill' };
}

/** A schedule, judged: every run, every switch, the sums, and everything that was wrong, doubtful or assumed. */
export interface Report {
  /** Name of the schedule file, or `runs`. */
  readonly file: string;
  readonly settings: ReportSettings;
  /** Edition of the figures of all tables, as in `2026-11`. */
  readonly dataEdition: string;
  readonly runs: readonly RunReport[];
  readonly switches: readonly SwitchReport[];
  readonly totals: ReportTotals;
  readonly findings: readonly Finding[];
  /** What the reader must know before acting on it. */
  readonly cautions: readonly string[];
}
