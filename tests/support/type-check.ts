/** Type checking pieces of code that stand in no file. @module */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { ROOT } from './files.ts';

/** The project's own compiler settings, in which a documented example has to compile. */
export function compilerOptions(): ts.CompilerOptions {
  const { config } = ts.readConfigFile(join(ROOT, 'tsconfig.json'), (path) => readFileSync(path, 'utf8'));
  return ts.parseJsonConfigFileContent(config, ts.sys, ROOT).options;
}

/**
 * Compiles texts as if they were modules in the root folder of the project.
 *
 * @param texts - Code by a name that says where it comes from.
 * @param paths - What a bare import stands for, as file below the root.
 * @returns One line for each error: the name, the line within the text, the message.
 */
export function typeErrors(texts: Readonly<Record<string, string>>, paths: Readonly<Record<string, string>> = {}): string[] {
  const options: ts.CompilerOptions = {
    ...compilerOptions(),
    // Examples import types and values in one breath, and export nothing.
    verbatimModuleSyntax: false,
    isolatedDeclarations: false,
    declaration: false,
    paths: Object.fromEntries(Object.entries(paths).map(([name, file]) => [name, [join(ROOT, file)]])),
  };
  const virtual = new Map(Object.entries(texts).map(([name, text], index) => [join(ROOT, `example-${index}.mts`), { name, text }]));
  const host = ts.createCompilerHost(options);
  const { getSourceFile, fileExists, readFile } = host;
  host.getSourceFile = (path, ...rest) => {
    const found = virtual.get(path);
    return found ? ts.createSourceFile(path, found.text, ts.ScriptTarget.ES2022, true) : getSourceFile.call(host, path, ...rest);
  };
  host.fileExists = (path) => virtual.has(path) || fileExists.call(host, path);
  host.readFile = (path) => virtual.get(path)?.text ?? readFile.call(host, path);
  const program = ts.createProgram([...virtual.keys()], options, host);
  return [...virtual].flatMap(([path, { name }]) => {
    const file = program.getSourceFile(path);
    return [...program.getSyntacticDiagnostics(file), ...program.getSemanticDiagnostics(file)].map(({ messageText, start = 0 }) => {
      const line = file === undefined ? 0 : file.getLineAndCharacterOfPosition(start).line + 1;
      return `${name}, line ${line}: ${ts.flattenDiagnosticMessageText(messageText, ' ')}`;
    });
  });
}
