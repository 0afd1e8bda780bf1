/** What a run is: named cables and data sheets, and the three loops of a run made of them. @module */

export type { BoundedFigure, Interval } from '../quantity/interval.ts';
export {
  assessCableData,
  type CableData,
  type CableDataAssessment,
  type CableDataCode,
  type CableDataFinding,
} from './assess-cable-data.ts';
export { type Cable, type CableOptions, cable } from './cable.ts';
export { type CableCoresInput, cableCores } from './cable-cores.ts';
export type { CableLimit, CableStandard, CableUse } from './cable-limit.ts';
export { type CableCategory, type CableName, cableNames } from './cables.ts';
export { type CablingFigure, cablingFigure } from './cabling-figure.ts';
export type { CablingFigureName } from './cabling-figures-table.ts';
export { type CableSheet, defineCable } from './define-cable.ts';
export { type DeratedLength, type DeratedLengthInput, deratedLength, type SourcedLength } from './derated-length.ts';
export type { Ambiguity } from './field/ambiguities.ts';
export { type ExpectedLoop, type ExpectedReading, type ExpectedReadingInput, expectedReading } from './field/expected-reading.ts';
export type { Explanation, ExplanationName } from './field/explanations.ts';
export {
  type FromMeasurement,
  type FromMeasurementInput,
  fromMeasurement,
  type LengthOfCandidate,
  type MeasuredLoops,
  type MeasuredScope,
  type PairReading,
  type ReadingsByPair,
} from './field/from-measurement.ts';
export { type LoadedVoltage, type LoadedVoltageInput, loadedVoltage, type MeterAccuracy } from './field/loaded-voltage.ts';
export type { FieldCheck } from './field/reading-checks.ts';
export { type Ampacity, type AmpacityCode, type AmpacityInput, ampacity } from './heat/ampacity.ts';
export {
  type BundleRise,
  type BundleRiseInput,
  bundleRise,
  type Installation,
  type OwnInstallation,
  type SettledBundle,
  type UnsettledBundle,
} from './heat/bundle-rise.ts';
export { type FilmCoefficientInput, filmCoefficient } from './heat/film-coefficient.ts';
export { type RemotePowering, remotePowering } from './heat/remote-powering.ts';
export { type InsertionLossInput, insertionLossFactor } from './insertion-loss.ts';
export type { CableOrName, RunInput, RunPiece, Segment } from './read-cable.ts';
export { type CableBasis, type Loop, type RunResistance, type RunResistanceInput, runResistance } from './run-resistance.ts';
export { type StrandedLeadInput, strandedLead } from './stranded-lead.ts';
export {
  type Screen,
  type ScreenReturn,
  type TwoCoreCable,
  type TwoCoreCableInput,
  type TwoCoreUse,
  twoCoreCable,
} from './two-core-cable.ts';
export {
  type ConductorsByPair,
  type ResistanceUnbalance,
  type RunPair,
  type RunUnbalance,
  type UnbalancedPairsInput,
  type UnbalanceInput,
  type UnbalanceLimits,
  unbalance,
  unbalancedPairs,
} from './unbalance.ts';
