/** The edition of all tables and defaults. @module */

/**
 * Edition of the library's tables, limits and defaults, as year and month; every report of a schedule carries it.
 *
 * Two reports of the same files with the same edition rest on the same figures, whatever else the versions differ in. It moves
 * when a figure of a table, a limit or a default does.
 *
 * @example
 * DATA_EDITION; // => '2026-11'
 */
export const DATA_EDITION: string = '2026-11';
