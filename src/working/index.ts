/** The results of the core with every step shown, evaluated by mathjs with units; homework looked at. @module */

export type { LineAtTemperature as ResistanceAtTemperatureInput } from '../conductor/index.ts';
export type { BoundsWorkingInput } from './book/bounds.ts';
export type { RemotePoweringInput } from './book/bundle-load.ts';
export type { AwgWorkingInput, ResistancePerMetreInput } from './book/conductors.ts';
export type { HighestLoadInput } from './book/highest-load.ts';
export type { HighestTemperatureInput } from './book/highest-temperature.ts';
export type { MostPowerInput } from './book/load.ts';
export type { WorkingInputs, WorkingName } from './book/sheets.ts';
export type { SmallestConductorInput } from './book/smallest-conductor.ts';
export { work } from './command.ts';
export type { SlipName } from './engine/slip-words.ts';
export type { Working, WorkingCell, WorkingColumn, WorkingGiven, WorkingResult, WorkingStep, WorkingTable } from './engine/working.ts';
export type { WorkingUnit } from './engine/working-unit.ts';
export { type AnswerReview, type FoundSlip, type ReviewOptions, reviewAnswer } from './review-answer.ts';
export { showWorking } from './show-working.ts';
export { workingLatex, workingMarkdown, workingPage, workingText } from './working-page.ts';
