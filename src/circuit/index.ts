/** What flows: the operating point of a load at the end of a line, and values held against limits. @module */
export { type FarEndFault, type FarEndFaultInput, farEndFaultCurrent } from './far-end-fault.ts';
export { type Loadability, type LoadabilityInput, loadability } from './loadability.ts';
export type { NetworkInput, NetworkSection, NetworkSupply, NetworkTap, NodeName } from './network-problem.ts';
export {
  type FeasiblePoint,
  type InfeasiblePoint,
  type Load,
  type OperatingPoint,
  type OperatingPointInput,
  operatingPoint,
} from './operating-point.ts';
export { type SheddingTap, type ShedTaps, type ShedTapsInput, shedTaps } from './shed-taps.ts';
export { type Network, type NetworkCollapse, type NetworkSolution, solveNetwork } from './solve-network.ts';
export { maximumTaps, type TapCount, type TapCountInput } from './tap-count.ts';
export { type VoltageDropInput, voltageDrop } from './voltage-drop.ts';
