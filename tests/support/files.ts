/** Reading the project's own files. @module */
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The root folder of the project. */
export const ROOT: string = fileURLToPath(new URL('../..', import.meta.url));

/** Paths, with `/`, of all files below a folder that end in `extension`, relative to that folder. */
export function filesBelow(folder: string, extension: string): string[] {
  const start = join(ROOT, folder);
  return readdirSync(start, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith(extension))
    .map((entry) => relative(start, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .sort();
}

/** Text of all files below `src` by their path, as in `quantity/units.ts`. */
export function sourceTexts(): Record<string, string> {
  return Object.fromEntries(filesBelow('src', '.ts').map((file) => [file, readFileSync(join(ROOT, 'src', file), 'utf8')]));
}
