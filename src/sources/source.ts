/** Resolving a source key to its citation. @module */
import { InputError } from '../quantity/input-error.ts';
import { SOURCES, type Source, type SourceKey } from './sources.ts';

/**
 * The citation behind a source key, as carried by tables, checks and limits.
 *
 * @param key - A key such as `'iec-60028'`.
 * @returns Title, edition or clause, status and, where there is one, the doubt.
 * @throws {@link InputError} If the key is not in the registry.
 * @example
 * source('iso-11801-permanent-link-loop').status; // => 'memory'
 */
export function source(key: SourceKey): Source {
  if (typeof key !== 'string' || !Object.hasOwn(SOURCES, key)) {
    throw new InputError('unknown', 'key', 'the key of a source', key);
  }
  return { ...SOURCES[key] };
}

/**
 * Every key of the bibliography, in the order of the registry.
 *
 * @returns The keys.
 * @example
 * sourceKeys().includes('iec-60028'); // => true
 */
export function sourceKeys(): SourceKey[] {
  return Object.keys(SOURCES) as SourceKey[];
}
