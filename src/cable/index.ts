/** What a run is: named cables, and the three loops of a run made of them. @module */
export { type Cable, type CableUse, cable } from './cable.ts';
export type { CableName } from './cables.ts';
export { type Loop, type RunResistance, type RunResistanceInput, runResistance, type Segment } from './run-resistance.ts';
