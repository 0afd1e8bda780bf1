/** The bibliography: who says so, where, and how sure that is. @module */
export { DATA_EDITION } from './data-edition.ts';
export { source, sourceKeys } from './source.ts';
export type { Source, SourceKey, SourceStatus } from './sources.ts';
