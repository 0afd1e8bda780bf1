/** What the entries of the package export, as the compiler sees it. @module */
import { join } from 'node:path';
import ts from 'typescript';
import { ENTRIES } from '../../scripts/entries.ts';
import { ROOT } from './files.ts';
import { compilerOptions } from './type-check.ts';

/** One exported name. */
export interface Exported {
  readonly name: string;
  /** Where it is declared, re-exports followed. */
  readonly declaration: ts.Declaration;
  /** Whether anything of it is left at run time. */
  readonly isValue: boolean;
}

let program: ts.Program | undefined;

/** The program of all entries, built once. */
export function publicProgram(): ts.Program {
  program ??= ts.createProgram(
    ENTRIES.map(({ source }) => join(ROOT, source)),
    compilerOptions(),
  );
  return program;
}

/** Every name that an entry exports, in alphabetical order. */
export function exportsOf(file: string): Exported[] {
  const checker = publicProgram().getTypeChecker();
  const source = publicProgram().getSourceFile(join(ROOT, file));
  const module = source === undefined ? undefined : checker.getSymbolAtLocation(source);
  if (module === undefined) throw new Error(`${file} is not a module`);
  return checker
    .getExportsOfModule(module)
    .map((symbol) => {
      const target = symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
      const declaration = target.declarations?.[0];
      if (declaration === undefined) throw new Error(`${file} exports ${symbol.name}, which is declared nowhere`);
      return { name: symbol.name, declaration, isValue: (target.flags & ts.SymbolFlags.Value) !== 0 };
    })
    .sort((a, b) => (a.name < b.name ? -1 : 1));
}

/** Every entry as a program has it once imported, by the name it is imported by. */
export async function importedEntries(): Promise<Record<string, Record<string, unknown>>> {
  const modules = ENTRIES.map(async ({ name, source }) => [name, await import(join(ROOT, source))] as const);
  return Object.fromEntries(await Promise.all(modules));
}
