/** What a wire is: gauge, area, metal and temperature to ohms per metre. @module */
export { type AwgFamily, type AwgOptions, type AwgSize, awg, type CorrectableAwgOptions } from './awg.ts';
export { awgFromArea, awgFromDiameter, type GaugeOfWire } from './awg-from-size.ts';
export type { Conductor, CorrectableConductor, ResistanceBasis, Stranding } from './conductor.ts';
export {
  type ConductorFromResistanceInput,
  type CorrectableResistanceInput,
  conductorFromResistance,
} from './conductor-from-resistance.ts';
export { type LoopResistanceInput, loopResistance } from './loop-resistance.ts';
export {
  type ConductorMaterial,
  type CorrectableMaterial,
  type MaterialInput,
  type MaterialName,
  material,
  materialNames,
} from './material.ts';
export { type MetricOptions, metric } from './metric.ts';
export { type NecTable8Input, necTable8 } from './nec-table-8.ts';
export { parallelConductors } from './parallel-conductors.ts';
export { resistancePerMetre } from './resistance-per-metre.ts';
export { type CorrectableStrandInput, type StrandConstructionInput, strandConstruction } from './strand-construction.ts';
export {
  type LineAtResistance,
  type LineAtTemperature,
  type ResistanceAtTemperature,
  resistanceAtTemperature,
  type TemperatureCoefficientInput,
  type TemperatureLine,
  type TwoReadings,
  temperatureCoefficientAt,
  temperatureCoefficientFrom,
  temperatureFromResistance,
  type ZeroResistanceInput,
  zeroResistanceTemperature,
} from './temperature-coefficient.ts';
export { type Allowance, type AllowanceInput, diameterAllowance, toMaximum, toNominal } from './to-maximum.ts';
export { type UniformWire, type UniformWireInput, uniformWire } from './uniform-wire.ts';
