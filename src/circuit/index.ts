/** What flows: the operating point of a load at the end of a line, and values held against limits. @module */
export type { CablingCheckName, Check, CheckName, CheckUnit, PowerCheckName, Verdict } from './check.ts';
export {
  type FeasiblePoint,
  type InfeasiblePoint,
  type Load,
  type OperatingPoint,
  type OperatingPointInput,
  operatingPoint,
} from './operating-point.ts';
export { type VoltageDropInput, voltageDrop } from './voltage-drop.ts';
