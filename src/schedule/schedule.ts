/** A cable schedule as plain data: what was read, ready to be checked. @module */
import type { Installation } from '../cable/heat/bundle-rise.ts';
import type { RunPair } from '../cable/unbalance.ts';
import type { PseType } from '../ethernet/class-table.ts';
import type { PoweredFacts as PoweredRunInput } from '../plan/powered-input.ts';
import type { PortPriority, PowerSupply } from '../plan/switch/switch-budget.ts';
import type { TwoWireRunInput } from '../plan/two-wire-input.ts';
import type { Ohms, Volts, Watts } from '../quantity/units.ts';

/** What is being put together. @internal */
export type Draft<T> = { -readonly [K in keyof T]: T[K] };

/** A cell about a run that could not be read; the run is judged without it, and so cannot plainly pass. */
export interface UnreadCell {
  /** Title of its column, as in `Minimum voltage`. */
  readonly column: string;
  /** In words, as in `Minimum voltage could not be read: "46 V?"`. */
  readonly words: string;
  /** The verdicts that could be worse if it were known. */
  readonly bearsOn: readonly ('power' | 'cabling' | 'heat')[];
}

interface ScheduledRunCommon {
  /** The run's own name, as the drawings call it. */
  readonly run: string;
  /** What is at its far end. */
  readonly device?: string;
  /** Line of the file it was read from, or row of the data, from 1; absent where it came from neither. */
  readonly line?: number;
  /** Cells that could not be read and were replaced by a default; absent where there are none. */
  readonly unread?: readonly UnreadCell[];
}

/** A run to a powered device on a switch port. */
export interface ScheduledPoweredRun extends ScheduledRunCommon {
  readonly kind: 'powered';
  readonly switch: string;
  readonly port: number;
  readonly priority: PortPriority;
  /** The run itself; type and voltage of the port come from the switch. */
  readonly input: Omit<PoweredRunInput, 'pseType' | 'pseVoltage' | 'cabling' | 'marginalBelow'>;
  /** The bundle that its installed cable lies in, all cables loaded alike; its temperatures are then those of the air. */
  readonly bundle?: { readonly cables: number; readonly installation: Installation };
  /** What a meter read on shorted pairs of the installed cable, its connections included and without cords. [Ω] */
  readonly measured?: Readonly<Partial<Record<RunPair, Ohms>>>;
}

/** A two-wire DC run from a supply of its own. */
export interface ScheduledTwoWireRun extends ScheduledRunCommon {
  readonly kind: 'two-wire';
  readonly input: Omit<TwoWireRunInput, 'marginalBelow'>;
  /** Cores of a four-pair cable that are joined for each way, where its conductor is made of such. */
  readonly cores?: number;
}

/** One run of a schedule. */
export type ScheduledRun = ScheduledPoweredRun | ScheduledTwoWireRun;

/** One switch of a schedule. */
export interface ScheduledSwitch {
  readonly switch: string;
  /** Type of its ports. */
  readonly type: PseType;
  /** How many ports it has. */
  readonly ports: number;
  /** Published power budget; absent where `supplies` are given. [W] */
  readonly budget?: Watts;
  /** Its supplies, where no budget is published. */
  readonly supplies?: readonly PowerSupply[];
  /** What the switch itself takes. [W] */
  readonly systemLoad?: Watts;
  /** Lowest voltage at its ports, where its data sheet states one. [V] */
  readonly minimumVoltage?: Volts;
  readonly line?: number;
}

/** A schedule: every run that could be read, and the switches that feed them. */
export interface Schedule {
  readonly runs: readonly ScheduledRun[];
  readonly switches: readonly ScheduledSwitch[];
}
