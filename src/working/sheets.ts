/** Every sheet by its name: a new sheet is a file, a line in the type, and a line in the list. @module */
import type { RunResistanceInput } from '../cable/run-resistance.ts';
import type { FarEndFaultInput } from '../circuit/far-end-fault.ts';
import type { OperatingPointInput } from '../circuit/operating-point.ts';
import type { VoltageDropInput } from '../circuit/voltage-drop.ts';
import type { LoopResistanceInput } from '../conductor/loop-resistance.ts';
import type { UniformWireInput } from '../conductor/uniform-wire.ts';
import type { PowerAtPdInput } from '../ethernet/power-at-pd.ts';
import type { PsePowerForInput } from '../ethernet/pse-power-for.ts';
import type { LeastPermittedDropInput } from '../plan/least-permitted-drop.ts';
import type { LowestSupplyVoltageInput } from '../plan/lowest-supply-voltage.ts';
import type { MaximumRunInput } from '../plan/maximum-run.ts';
import type { Sheet } from './sheet.ts';
import { type AwgWorkingInput, awgSheet } from './sheets/awg.ts';
import { farEndFaultCurrentSheet } from './sheets/far-end-fault-current.ts';
import { type HighestLoadInput, highestLoadSheet } from './sheets/highest-load.ts';
import { type HighestTemperatureInput, highestTemperatureSheet } from './sheets/highest-temperature.ts';
import { leastPermittedDropSheet } from './sheets/least-permitted-drop.ts';
import { loopResistanceSheet } from './sheets/loop-resistance.ts';
import { lowestSupplyVoltageSheet } from './sheets/lowest-supply-voltage.ts';
import { maximumRunSheet } from './sheets/maximum-run.ts';
import { type MostPowerInput, mostPowerSheet } from './sheets/most-power.ts';
import { operatingPointSheet } from './sheets/operating-point.ts';
import { powerAtPdSheet } from './sheets/power-at-pd.ts';
import { psePowerForSheet } from './sheets/pse-power-for.ts';
import { type ResistanceAtTemperatureInput, resistanceAtTemperatureSheet } from './sheets/resistance-at-temperature.ts';
import { type ResistancePerMetreInput, resistancePerMetreSheet } from './sheets/resistance-per-metre.ts';
import { runResistanceSheet } from './sheets/run-resistance.ts';
import { type SmallestConductorInput, smallestConductorSheet } from './sheets/smallest-conductor.ts';
import { type ClassBudgetInput, switchBudgetSheet } from './sheets/switch-budget.ts';
import { uniformWireSheet } from './sheets/uniform-wire.ts';
import { voltageDropSheet } from './sheets/voltage-drop.ts';

/** What each calculation takes: the input of the core function of that name. */
export interface WorkingInputs {
  /** Diameter, area and resistance of an AWG conductor. */
  readonly awg: AwgWorkingInput;
  /** `R = ρ L / A`, for whichever of the four is asked. */
  readonly uniformWire: UniformWireInput;
  /** One metre of one conductor, hot or cold. */
  readonly resistancePerMetre: ResistancePerMetreInput;
  /** A resistance brought from one temperature to another. */
  readonly resistanceAtTemperature: ResistanceAtTemperatureInput;
  /** Two equal conductors in series. */
  readonly loopResistance: LoopResistanceInput;
  /** A run of several pieces, as its three loops. */
  readonly runResistance: RunResistanceInput;
  /** A load at the end of a line. */
  readonly operatingPoint: OperatingPointInput;
  /** The most power of a line, and the two roots. */
  readonly mostPower: MostPowerInput;
  /** The drop along a two-wire circuit. */
  readonly voltageDrop: VoltageDropInput;
  /** A short at the far end, against what opens the protective device. */
  readonly farEndFaultCurrent: FarEndFaultInput;
  /** The drop that must be permitted. */
  readonly leastPermittedDrop: LeastPermittedDropInput;
  /** Power at a powered device. */
  readonly powerAtPd: PowerAtPdInput;
  /** Power that a port must source. */
  readonly psePowerFor: PsePowerForInput;
  /** The longest run by every limit. */
  readonly maximumRun: MaximumRunInput;
  /** The lowest supply voltage by every limit. */
  readonly lowestSupplyVoltage: LowestSupplyVoltageInput;
  /** The highest load by every limit. */
  readonly highestLoad: HighestLoadInput;
  /** The highest temperature by every limit. */
  readonly highestTemperature: HighestTemperatureInput;
  /** The smallest of the conductors, or cables, at hand. */
  readonly smallestConductor: SmallestConductorInput;
  /** The budget of a switch by class. */
  readonly switchBudget: ClassBudgetInput;
}

/** The name of a calculation that can be shown. */
export type WorkingName = keyof WorkingInputs;

/** The sheets, in the order of a course. */
export const sheets: { readonly [Name in WorkingName]: Sheet<WorkingInputs[Name]> } = {
  awg: awgSheet,
  uniformWire: uniformWireSheet,
  resistancePerMetre: resistancePerMetreSheet,
  resistanceAtTemperature: resistanceAtTemperatureSheet,
  loopResistance: loopResistanceSheet,
  runResistance: runResistanceSheet,
  operatingPoint: operatingPointSheet,
  mostPower: mostPowerSheet,
  voltageDrop: voltageDropSheet,
  farEndFaultCurrent: farEndFaultCurrentSheet,
  leastPermittedDrop: leastPermittedDropSheet,
  powerAtPd: powerAtPdSheet,
  psePowerFor: psePowerForSheet,
  maximumRun: maximumRunSheet,
  lowestSupplyVoltage: lowestSupplyVoltageSheet,
  highestLoad: highestLoadSheet,
  highestTemperature: highestTemperatureSheet,
  smallestConductor: smallestConductorSheet,
  switchBudget: switchBudgetSheet,
};
