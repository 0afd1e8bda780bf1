/** Every sheet by its name: a new sheet is a file, a line in the type, and a line in the list. @module */
import type {
  AmpacityInput,
  BundleRiseInput,
  ExpectedReadingInput,
  FilmCoefficientInput,
  FromMeasurementInput,
  LoadedVoltageInput,
  RunResistanceInput,
  UnbalanceInput,
} from '../../cable/index.ts';
import type { FarEndFaultInput, NetworkInput, OperatingPointInput, VoltageDropInput } from '../../circuit/index.ts';
import type { LineAtTemperature, LoopResistanceInput, UniformWireInput } from '../../conductor/index.ts';
import type { PairUnbalanceInput, PowerAtPdInput, PsePowerForInput } from '../../ethernet/index.ts';
import type { LeastPermittedDropInput, LowestSupplyVoltageInput, MaximumRunInput, SwitchBudgetInput } from '../../plan/index.ts';
import { type BookSheet, sheetOf } from '../engine/rows.ts';
import type { Sheet } from '../engine/sheet.ts';
import { type BoundsWorkingInput, boundsSheet } from './bounds.ts';
import { ampacitySheet, type RemotePoweringInput, remotePoweringSheet } from './bundle-load.ts';
import { bundleRiseSheet } from './bundle-rise.ts';
import {
  type AwgWorkingInput,
  awgSheet,
  loopResistanceSheet,
  type ResistancePerMetreInput,
  resistanceAtTemperatureSheet,
  resistancePerMetreSheet,
  uniformWireSheet,
} from './conductors.ts';
import { expectedReadingSheet, loadedVoltageSheet } from './field.ts';
import { filmCoefficientSheet } from './film.ts';
import { type HighestLoadInput, highestLoadSheet } from './highest-load.ts';
import { type HighestTemperatureInput, highestTemperatureSheet } from './highest-temperature.ts';
import { farEndFaultCurrentSheet, leastPermittedDropSheet, voltageDropSheet } from './line.ts';
import { type MostPowerInput, mostPowerSheet, operatingPointSheet } from './load.ts';
import { lowestSupplyVoltageSheet } from './lowest-supply-voltage.ts';
import { maximumRunSheet } from './maximum-run.ts';
import { fromMeasurementSheet } from './measurement.ts';
import { solveNetworkSheet } from './network.ts';
import { powerAtPdSheet, psePowerForSheet } from './powered.ts';
import { runResistanceSheet } from './runs.ts';
import { type SmallestConductorInput, smallestConductorSheet } from './smallest-conductor.ts';
import { switchBudgetSheet } from './switch-budget.ts';
import { pairUnbalanceSheet, unbalanceSheet } from './unbalance.ts';

/** What each calculation takes: the input of the core function of that name. */
export interface WorkingInputs {
  /** Diameter, area and resistance of an AWG conductor. */
  readonly awg: AwgWorkingInput;
  /** `R = ρ L / A`, for whichever of the four is asked. */
  readonly uniformWire: UniformWireInput;
  /** One metre of one conductor, hot or cold. */
  readonly resistancePerMetre: ResistancePerMetreInput;
  /** A resistance brought from one temperature to another. */
  readonly resistanceAtTemperature: LineAtTemperature;
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
const book: { readonly [Name in WorkingName]: BookSheet<WorkingInputs[Name]> } = {
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

/** The sheets, by name, as the engine reads them. */
export const sheets: { readonly [Name in WorkingName]: Sheet<WorkingInputs[Name]> } = Object.fromEntries(
  Object.entries(book).map(([name, sheet]) => [name, sheetOf(sheet as BookSheet<never>)]),
) as never;
