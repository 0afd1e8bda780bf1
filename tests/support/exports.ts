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

/** Declarations of all types that stand in the signatures of others, at any depth; what the bodies of functions use is no part of it. */
export function typesNamedBy(declarations: readonly ts.Declaration[]): ReadonlySet<ts.Declaration> {
  const checker = publicProgram().getTypeChecker();
  const found = new Set<ts.Declaration>();
  const add = (name: ts.Node): void => {
    const symbol = checker.getSymbolAtLocation(name);
    const target = symbol !== undefined && symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
    for (const declaration of target?.declarations ?? []) {
      if (!ts.isInterfaceDeclaration(declaration) && !ts.isTypeAliasDeclaration(declaration)) continue;
      if (found.has(declaration) || !declaration.getSourceFile().fileName.startsWith(join(ROOT, 'src'))) continue;
      found.add(declaration);
      visit(declaration);
    }
  };
  const visit = (node: ts.Node): void => {
    if (ts.isBlock(node)) return;
    if (ts.isVariableDeclaration(node)) {
      // Its value is a matter of the inside.
      if (node.type !== undefined) visit(node.type);
      return;
    }
    if (ts.isTypeReferenceNode(node)) add(node.typeName);
    if (ts.isExpressionWithTypeArguments(node)) add(node.expression);
    ts.forEachChild(node, visit);
  };
  for (const declaration of declarations) visit(declaration);
  return found;
}
