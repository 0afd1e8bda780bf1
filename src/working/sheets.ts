/** Every sheet by its name: a new sheet is a file, a line in the type, and a line in the list. @module */

import type { ExpectedReadingInput } from '../cable/field/expected-reading.ts';
import type { FromMeasurementInput } from '../cable/field/from-measurement.ts';
import type { LoadedVoltageInput } from '../cable/field/loaded-voltage.ts';
import type { AmpacityInput } from '../cable/heat/ampacity.ts';
import type { BundleRiseInput } from '../cable/heat/bundle-rise.ts';
import type { FilmCoefficientInput } from '../cable/heat/film-coefficient.ts';
import type { RunResistanceInput } from '../cable/run-resistance.ts';
import type { UnbalanceInput } from '../cable/unbalance.ts';
import type { FarEndFaultInput } from '../circuit/far-end-fault.ts';
import type { NetworkInput } from '../circuit/network-problem.ts';
import type { OperatingPointInput } from '../circuit/operating-point.ts';
import type { VoltageDropInput } from '../circuit/voltage-drop.ts';
import type { LoopResistanceInput } from '../conductor/loop-resistance.ts';
import type { UniformWireInput } from '../conductor/uniform-wire.ts';
import type { PairUnbalanceInput } from '../ethernet/pair-unbalance.ts';
import type { PowerAtPdInput } from '../ethernet/power-at-pd.ts';
import type { PsePowerForInput } from '../ethernet/pse-power-for.ts';
import type { LeastPermittedDropInput } from '../plan/least-permitted-drop.ts';
import type { LowestSupplyVoltageInput } from '../plan/lowest-supply-voltage.ts';
import type { MaximumRunInput } from '../plan/maximum-run.ts';
import type { SwitchBudgetInput } from '../plan/switch/switch-budget.ts';
import type { Sheet } from './sheet.ts';
import { ampacitySheet } from './sheets/ampacity.ts';
import { type AwgWorkingInput, awgSheet } from './sheets/awg.ts';
import { boundsSheet } from './sheets/bounds.ts';
import type { BoundsWorkingInput } from './sheets/bounds-reading.ts';
import { bundleRiseSheet } from './sheets/bundle-rise.ts';
import { expectedReadingSheet } from './sheets/expected-reading.ts';
import { farEndFaultCurrentSheet } from './sheets/far-end-fault-current.ts';
import { filmCoefficientSheet } from './sheets/film-coefficient.ts';
import { fromMeasurementSheet } from './sheets/from-measurement.ts';
import { type HighestLoadInput, highestLoadSheet } from './sheets/highest-load.ts';
import { type HighestTemperatureInput, highestTemperatureSheet } from './sheets/highest-temperature.ts';
import { leastPermittedDropSheet } from './sheets/least-permitted-drop.ts';
import { loadedVoltageSheet } from './sheets/loaded-voltage.ts';
import { loopResistanceSheet } from './sheets/loop-resistance.ts';
import { lowestSupplyVoltageSheet } from './sheets/lowest-supply-voltage.ts';
import { maximumRunSheet } from './sheets/maximum-run.ts';
import { type MostPowerInput, mostPowerSheet } from './sheets/most-power.ts';
import { operatingPointSheet } from './sheets/operating-point.ts';
import { pairUnbalanceSheet } from './sheets/pair-unbalance.ts';
import { powerAtPdSheet } from './sheets/power-at-pd.ts';
import { psePowerForSheet } from './sheets/pse-power-for.ts';
import { type RemotePoweringInput, remotePoweringSheet } from './sheets/remote-powering.ts';
import { type ResistanceAtTemperatureInput, resistanceAtTemperatureSheet } from './sheets/resistance-at-temperature.ts';
import { type ResistancePerMetreInput, resistancePerMetreSheet } from './sheets/resistance-per-metre.ts';
import { runResistanceSheet } from './sheets/run-resistance.ts';
import { type SmallestConductorInput, smallestConductorSheet } from './sheets/smallest-conductor.ts';
import { solveNetworkSheet } from './sheets/solve-network.ts';
import { switchBudgetSheet } from './sheets/switch-budget.ts';
import { unbalanceSheet } from './sheets/unbalance.ts';
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
  /** What a meter should show on a pair. */
  readonly expectedReading: ExpectedReadingInput;
  /** From readings to loops and a length. */
  readonly fromMeasurement: FromMeasurementInput;
  /** How unlike conductors and pairs are. */
  readonly unbalance: UnbalanceInput;
  /** A load at the end of a line. */
  readonly operatingPoint: OperatingPointInput;
  /** The most power of a line, and the two roots. */
  readonly mostPower: MostPowerInput;
  /** The drop along a two-wire circuit. */
  readonly voltageDrop: VoltageDropInput;
  /** A small network of taps. */
  readonly solveNetwork: NetworkInput;
  /** Source and line from two readings at the far end. */
  readonly loadedVoltage: LoadedVoltageInput;
  /** A short at the far end, against what opens the protective device. */
  readonly farEndFaultCurrent: FarEndFaultInput;
  /** The drop that must be permitted. */
  readonly leastPermittedDrop: LeastPermittedDropInput;
  /** Power at a powered device. */
  readonly powerAtPd: PowerAtPdInput;
  /** Power that a port must source. */
  readonly psePowerFor: PsePowerForInput;
  /** The current of each pair and each conductor. */
  readonly pairUnbalance: PairUnbalanceInput;
  /** The longest run by every limit. */
  readonly maximumRun: MaximumRunInput;
  /** A line known between limits. */
  readonly bounds: BoundsWorkingInput;
  /** What a code allows each conductor of a bundle. */
  readonly ampacity: AmpacityInput;
  /** How a warm cylinder sheds heat to still air. */
  readonly filmCoefficient: FilmCoefficientInput;
  /** How hot the middle of a bundle gets. */
  readonly bundleRise: BundleRiseInput;
  /** The mean current of the conductors of a bundle. */
  readonly remotePowering: RemotePoweringInput;
  /** The budget of a switch, by class or by draw. */
  readonly switchBudget: SwitchBudgetInput;
  /** The lowest supply voltage by every limit. */
  readonly lowestSupplyVoltage: LowestSupplyVoltageInput;
  /** The highest load by every limit. */
  readonly highestLoad: HighestLoadInput;
  /** The highest temperature by every limit. */
  readonly highestTemperature: HighestTemperatureInput;
  /** The smallest of the conductors, or cables, at hand. */
  readonly smallestConductor: SmallestConductorInput;
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
  expectedReading: expectedReadingSheet,
  fromMeasurement: fromMeasurementSheet,
  unbalance: unbalanceSheet,
  operatingPoint: operatingPointSheet,
  mostPower: mostPowerSheet,
  voltageDrop: voltageDropSheet,
  solveNetwork: solveNetworkSheet,
  loadedVoltage: loadedVoltageSheet,
  farEndFaultCurrent: farEndFaultCurrentSheet,
  leastPermittedDrop: leastPermittedDropSheet,
  powerAtPd: powerAtPdSheet,
  psePowerFor: psePowerForSheet,
  pairUnbalance: pairUnbalanceSheet,
  maximumRun: maximumRunSheet,
  bounds: boundsSheet,
  lowestSupplyVoltage: lowestSupplyVoltageSheet,
  highestLoad: highestLoadSheet,
  highestTemperature: highestTemperatureSheet,
  smallestConductor: smallestConductorSheet,
  switchBudget: switchBudgetSheet,
  ampacity: ampacitySheet,
  filmCoefficient: filmCoefficientSheet,
  bundleRise: bundleRiseSheet,
  remotePowering: remotePoweringSheet,
};
