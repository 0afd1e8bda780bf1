/** What a run is: named cables, and the three loops of a run made of them. @module */
export { type Cable, type CableUse, cable } from './cable.ts';
export type { CableName } from './cables.ts';
export { type Loop, type RunResistance, type RunResistanceInput, runResistance, type Segment } from './run-resistance.ts';
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
