/** What a wire is: gauge, area, metal and temperature to ohms per metre. @module */
export { type AwgOptions, type AwgSize, awg } from './awg.ts';
export type { Conductor, ResistanceBasis, Stranding } from './conductor.ts';
export { type ConductorFromResistanceInput, conductorFromResistance } from './conductor-from-resistance.ts';
export { type LoopResistanceInput, loopResistance } from './loop-resistance.ts';
export type { MaterialName } from './materials.ts';
export { resistancePerMetre } from './resistance-per-metre.ts';
export { toMaximum } from './to-maximum.ts';
