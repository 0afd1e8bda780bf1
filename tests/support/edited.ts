/** The library as it would be with a few lines more: compiled and run, without a file being written. @module */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join, relative } from 'node:path';
import { Script } from 'node:vm';
import { build } from 'esbuild';
import ts from 'typescript';
import { ROOT } from './files.ts';
import { compilerOptions } from './type-check.ts';

/** Lines to be added to a file below `src`, in front of a text that stands there once; of a new file the whole text. */
export interface Edit {
  readonly file: string;
  /** Absent for a new file. */
  readonly before?: string;
  readonly lines: string;
  /** What a new file has before them. */
  readonly head?: string;
}

/** The edited files by their whole paths. */
function editedTexts(edits: readonly Edit[]): Map<string, string> {
  const texts = new Map<string, string>();
  for (const { file, before, lines, head = '' } of edits) {
    const path = join(ROOT, 'src', file);
    if (before === undefined) {
      texts.set(path, head + lines);
      continue;
    }
    const [first = '', ...rest] = (texts.get(path) ?? readFileSync(path, 'utf8')).split(before);
    if (rest.length !== 1) throw new Error(`src/${file} has "${before}" ${rest.length} times, not once`);
    texts.set(path, `${first}${lines}${before}${rest[0]}`);
  }
  return texts;
}

/**
 * Runs a module on the edited library.
 *
 * @param edits - What is added.
 * @param code - The module, with paths from the root, as in `export { cable } from './src/index.ts';`.
 * @returns What it exports.
 */
export async function edited(edits: readonly Edit[], code: string): Promise<Record<string, unknown>> {
  const texts = editedTexts(edits);
  const { outputFiles } = await build({
    stdin: { contents: code, resolveDir: ROOT, sourcefile: 'edited.ts', loader: 'ts' },
    plugins: [
      {
        name: 'edits',
        setup({ onResolve, onLoad }) {
          onResolve({ filter: /\.ts$/ }, ({ path, resolveDir }) => {
            const file = join(resolveDir, path);
            return texts.has(file) ? { path: file, namespace: 'edited' } : undefined;
          });
          onLoad({ filter: /./, namespace: 'edited' }, ({ path }) => ({
            contents: texts.get(path) ?? '',
            loader: 'ts',
            resolveDir: dirname(path),
          }));
        },
      },
    ],
    bundle: true,
    format: 'cjs',
    platform: 'node',
    packages: 'external',
    write: false,
    logLevel: 'silent',
  });
  const made = { exports: {} as Record<string, unknown> };
  const run = new Script(`(module, exports, require) => { ${outputFiles[0]?.text ?? ''}\n}`).runInThisContext() as (
    ...args: unknown[]
  ) => void;
  run(made, made.exports, createRequire(join(ROOT, 'package.json')));
  return made.exports;
}

/**
 * What the compiler says of the edited library, one line for each error.
 *
 * @param edits - What is added.
 * @param from - The files to start from, below `src`: everything they import is compiled.
 */
export function compileErrors(edits: readonly Edit[], from: readonly string[] = ['cli.ts']): string[] {
  const texts = editedTexts(edits);
  const options = compilerOptions();
  const host = ts.createCompilerHost(options);
  const { getSourceFile, fileExists, readFile } = host;
  host.getSourceFile = (path, ...rest) => {
    const text = texts.get(path);
    return text === undefined ? getSourceFile.call(host, path, ...rest) : ts.createSourceFile(path, text, ts.ScriptTarget.ES2022, true);
  };
  host.fileExists = (path) => texts.has(path) || fileExists.call(host, path);
  host.readFile = (path) => texts.get(path) ?? readFile.call(host, path);
  const program = ts.createProgram(
    from.map((file) => join(ROOT, 'src', file)),
    options,
    host,
  );
  return ts.getPreEmitDiagnostics(program).map(({ file, messageText }) => {
    const where = file === undefined ? '' : relative(join(ROOT, 'src'), file.fileName);
    return `${where}: ${ts.flattenDiagnosticMessageText(messageText, ' ')}`;
  });
}
