/** The results of the core with every step shown, evaluated by mathjs with units; homework looked at. @module */

export { work } from './command.ts';
export { type AnswerReview, type FoundSlip, type ReviewOptions, reviewAnswer } from './review-answer.ts';
export type { AwgWorkingInput } from './sheets/awg.ts';
export type { BoundsWorkingInput } from './sheets/bounds-reading.ts';
export type { HighestLoadInput } from './sheets/highest-load.ts';
export type { HighestTemperatureInput } from './sheets/highest-temperature.ts';
export type { MostPowerInput } from './sheets/most-power.ts';
export type { RemotePoweringInput } from './sheets/remote-powering.ts';
export type { ResistanceAtTemperatureInput } from './sheets/resistance-at-temperature.ts';
export type { ResistancePerMetreInput } from './sheets/resistance-per-metre.ts';
export type { SmallestConductorInput } from './sheets/smallest-conductor.ts';
export type { WorkingInputs, WorkingName } from './sheets.ts';
export { showWorking } from './show-working.ts';
export type { SlipName } from './slip-words.ts';
export type { Working, WorkingCell, WorkingColumn, WorkingGiven, WorkingResult, WorkingStep, WorkingTable } from './working.ts';
export { workingLatex, workingMarkdown } from './working-latex.ts';
export { workingText } from './working-text.ts';
export type { WorkingUnit } from './working-unit.ts';
