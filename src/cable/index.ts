/** What a run is: named cables and data sheets, and the three loops of a run made of them. @module */
export {
  assessCableData,
  type CableData,
  type CableDataAssessment,
  type CableDataCode,
  type CableDataFinding,
} from './assess-cable-data.ts';
export { type Cable, type CableOptions, cable } from './cable.ts';
export { cableCores } from './cable-cores.ts';
export type { CableLimit, CableStandard, CableUse } from './cable-limit.ts';
export type { CableName } from './cables.ts';
export { type CablingFigure, cablingFigure } from './cabling-figure.ts';
export type { CablingFigureName } from './cabling-figures-table.ts';
export { type CableSheet, defineCable } from './define-cable.ts';
export { type DeratedLength, type DeratedLengthInput, deratedLength } from './derated-length.ts';
export { type InsertionLossInput, insertionLossFactor } from './insertion-loss.ts';
export { type Loop, type RunResistance, type RunResistanceInput, runResistance, type Segment } from './run-resistance.ts';
export { strandedLead } from './stranded-lead.ts';
export { type ScreenReturn, type TwoCoreCable, type TwoCoreCableInput, type TwoCoreUse, twoCoreCable } from './two-core-cable.ts';
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
