/** Decisions: is this run good, how far could it go, what would put it right, and who gets power. @module */
export { type Bounded, type BoundedCheck, type Bounds, bounds } from './bounds/bounds.ts';
export type { Corner, Range, Ranged } from './bounds/ranges.ts';
export type { CablingStandard } from './cabling-rules.ts';
export { type CordAllowance, type CordAllowanceInput, cordAllowance } from './cord-allowance.ts';
export type { ResistanceLimit } from './device-resistance.ts';
export { type BundleRemedies, bundleRemedies } from './heat/bundle-remedies.ts';
export { type BundleFinding, type BundleLimits, type CheckBundleInput, type CheckedBundle, checkBundle } from './heat/check-bundle.ts';
export { type WarmPiece, type WarmRun, type WarmRunInput, warmRun } from './heat/warm-run.ts';
export { type HighestLoad, highestLoad, type LoadKind, type TwoWireHighestLoadInput } from './highest-load.ts';
export { type HighestTemperature, highestTemperature } from './highest-temperature.ts';
export type { Doubt, DoubtCode, JudgedRun, RunVerdict } from './judged-run.ts';
export { type LeastPermittedDrop, type LeastPermittedDropInput, leastPermittedDrop } from './least-permitted-drop.ts';
export { type LowestSupplyVoltage, type LowestSupplyVoltageInput, lowestSupplyVoltage } from './lowest-supply-voltage.ts';
export type { MaximumPoweredRunInput } from './maximum-powered-run.ts';
export { type MaximumRunInput, maximumRun } from './maximum-run.ts';
export type { PoweredCircuit, PoweredRunInput } from './powered-input.ts';
export { checkPoweredRun, type PoweredRun } from './powered-run.ts';
export { type RemedyOptions, remedies } from './remedies.ts';
export type { Remedy, RemedyName, RemedyStep } from './remedy.ts';
export type { MaximumRun, RunLimit } from './run-limit.ts';
export {
  type CandidateVerdict,
  type SmallestCableInput,
  type SmallestConductor,
  type SmallestTwoWireInput,
  smallestConductor,
} from './smallest-conductor.ts';
export type { Answered, UnknownLimit, Unsolvable } from './solve-unknown.ts';
export { type BatteryAutonomy, type BatteryAutonomyInput, batteryAutonomy } from './switch/battery-autonomy.ts';
export {
  type BudgetChange,
  type BudgetStep,
  type BudgetSteps,
  type BudgetStepsInput,
  budgetSteps,
  type SupplyLoss,
  supplyLoss,
} from './switch/budget-steps.ts';
export type { SupplyCount } from './switch/capacity.ts';
export type { PortFlow } from './switch/port-demand.ts';
export { type AddedDevice, type RoomForMore, type RoomForMoreInput, roomForMore } from './switch/room-for-more.ts';
export {
  type BudgetBasis,
  type BudgetedPort,
  type BudgetPort,
  type DeniedBy,
  type GroupBudget,
  type PortGroup,
  type PortPriority,
  type PowerSupply,
  type SwitchBudget,
  type SwitchBudgetInput,
  switchBudget,
} from './switch/switch-budget.ts';
export type { SwitchBudgetCommon } from './switch/switch-input.ts';
export { type PortHeat, type PowerFigure, type SwitchMains, type SwitchMainsInput, switchMains } from './switch/switch-mains.ts';
export type {
  PermittedDrop,
  SupplyVoltage,
  TwoWireCircuit,
  TwoWireRunInput,
  UnequalTwoWireCircuit,
  UnequalTwoWireRunInput,
} from './two-wire-input.ts';
export { checkTwoWireRun, type TwoWireRun } from './two-wire-run.ts';
