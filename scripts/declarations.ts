/** Types of the package, one file for each module that an entry reaches. @module */
import { readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import ts from 'typescript';

/** A relative module specifier that names a TypeScript file, in any kind of import. */
const SPECIFIER = /(?<before>\bfrom\s+['"]|\bimport\(\s*['"])(?<path>\.{1,2}\/[^'"]+)\.ts(?=['"])/g;

/** The comment at the head of a module; the compiler drops it with the import it stands before. */
const HEAD = /^\/\*\*(?:[^*]|\*(?!\/))*@module\s*\*\/\n/;

/**
 * Declarations of one module; its imports name the files that stand beside it once built.
 *
 * One module is enough to go by, for every export states its type (`isolatedDeclarations`).
 *
 * @param file - How messages call it.
 * @param text - Its source.
 * @throws If a type has to be inferred.
 */
export function declarationOf(file: string, text: string): string {
  const { outputText, diagnostics = [] } = ts.transpileDeclaration(text, {
    fileName: file,
    reportDiagnostics: true,
    compilerOptions: { target: ts.ScriptTarget.ES2022, module: ts.ModuleKind.NodeNext },
  });
  const [first] = diagnostics;
  if (first !== undefined) throw new Error(`${file}: ${ts.flattenDiagnosticMessageText(first.messageText, ' ')}`);
  const head = HEAD.exec(text)?.[0] ?? '';
  return `${outputText.startsWith(head) ? '' : head}${outputText.replaceAll(SPECIFIER, '$<before>$<path>.js')}`;
}

/**
 * Declarations of the entries and of all they name.
 *
 * @param folder - Absolute path of the sources.
 * @param entries - Paths below it, without extension, as in `cable/index`.
 * @returns Text by path without extension.
 */
export function declarationsOf(folder: string, entries: readonly string[]): Map<string, string> {
  const found = new Map<string, string>();
  const open = [...entries];
  for (let path = open.pop(); path !== undefined; path = open.pop()) {
    if (found.has(path)) continue;
    const text = declarationOf(`${path}.ts`, readFileSync(join(folder, `${path}.ts`), 'utf8'));
    found.set(path, text);
    for (const { fileName } of ts.preProcessFile(text).importedFiles) {
      if (fileName.startsWith('.')) open.push(posix.join(posix.dirname(path), fileName.slice(0, -'.js'.length)));
    }
  }
  return found;
}
