/** Titles and sentences for checks, verdicts, units, remedies, findings and errors. @module */
export { InputError, type InputErrorCode, type InputErrorJson, isInputError } from '../quantity/input-error.ts';
export { checkTitle, describeCheck, type RunFacts, type WordedCheck } from './check-words.ts';
export { DECIDING_WORDS, type DecidingWords } from './deciding-words.ts';
export { ERROR_WORDS } from './error-words.ts';
export { FINDING_WORDS, type FindingCode } from './finding-words.ts';
export { BUNDLE_WORDS, EXPLANATION_WORDS } from './heat-words.ts';
export { describeRemedy, REMEDY_WORDS } from './remedy-words.ts';
export { UNIT_WORDS, type UnitWords } from './unit-words.ts';
export { VERDICT_WORDS } from './verdict-words.ts';
