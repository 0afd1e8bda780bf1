/** IEEE 802.3 power: types and classes, and what arrives at a powered device. @module */
export type { PoeClassNumber, PseType } from './class-table.ts';
export { assignedClass, type PoeClass, type PoeClassOptions, poeClass } from './poe-class.ts';
export { type PowerAtPd, type PowerAtPdInput, powerAtPd } from './power-at-pd.ts';
