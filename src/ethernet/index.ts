/** IEEE 802.3 power: types and classes, what arrives at a powered device, what a port must source, LLDP. @module */
export { type AssignedClassInput, assignedClass } from './assigned-class.ts';
export { type ClassAssignment, type ClassAssignmentInput, classAssignment } from './class-assignment.ts';
export { type PoeClassDetail, poeClassDetail } from './class-detail.ts';
export type { PoeClassNumber, PseType } from './class-table.ts';
export {
  type DualSignature,
  type DualSignatureClass,
  type DualSignatureClassNumber,
  type DualSignatureInput,
  type DualSignatureOptions,
  dualSignature,
  dualSignatureClass,
} from './dual-signature.ts';
export { type LldpAllocation, type LldpAllocationInput, lldpAllocation, lldpClassLimit, lldpValue, lldpWatts } from './lldp.ts';
export { LLDP_CODES, LLDP_FIELDS, type LldpField, type LldpFieldName, type LldpFieldNameInput, lldpFieldName } from './lldp-fields.ts';
export { type PairCurrent, type PairResistance, type PairUnbalance, type PairUnbalanceInput, pairUnbalance } from './pair-unbalance.ts';
export { type PoeClass, type PoeClassOptions, poeClass } from './poe-class.ts';
export type { PortCurrents } from './port-currents.ts';
export { type PowerAtPd, type PowerAtPdInput, powerAtPd } from './power-at-pd.ts';
export { powerStatement } from './power-statement.ts';
export { type PortDemand, type PsePowerFor, type PsePowerForInput, psePowerFor } from './pse-power-for.ts';
export { type PseTypeFacts, pseType } from './pse-type.ts';
export { type PortVoltage, type PseVoltageCheckInput, pseVoltageCheck } from './pse-voltage.ts';
export {
  RFC_3621,
  RFC_3621_FACTS,
  type Rfc3621Name,
  type Rfc3621NameInput,
  type Rfc3621Object,
  rfc3621Class,
  rfc3621Classification,
  rfc3621Name,
} from './rfc3621.ts';
export { POE_SIGNALLING } from './signalling.ts';
