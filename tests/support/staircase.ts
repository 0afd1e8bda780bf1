/** The staircase rule: imports only go down, and only the upper rooms may enter a package. @module */
import { posix } from 'node:path';
import ts from 'typescript';

/** The rooms from the bottom up; a single file is a room of its own. */
export const ROOMS: readonly string[] = [
  'sources',
  'quantity',
  'limits',
  'conductor',
  'cable',
  'circuit',
  'ethernet',
  'plan',
  'words',
  'pages',
  'schedule',
  'working',
  'index.ts',
  'cli.ts',
];

/** Packages that a room may import; a room that is not named here may import none. */
const PACKAGES: Readonly<Record<string, readonly string[]>> = { working: ['mathjs'] };

interface Import {
  readonly specifier: string;
  readonly typeOnly: boolean;
  readonly line: number;
}

/**
 * Every breach of the rule in a set of source files.
 *
 * @param files - Text by path below `src`, as in `quantity/units.ts`.
 * @returns One sentence for each breach, with file and line.
 */
export function breaches(files: Readonly<Record<string, string>>): string[] {
  const found: string[] = [];
  const graph = new Map<string, string[]>();
  for (const [file, text] of Object.entries(files)) {
    const room = roomOf(file);
    if (!ROOMS.includes(room)) found.push(`${file} belongs to no room`);
    const targets: string[] = [];
    for (const item of importsOf(file, text)) {
      const target = targetOf(file, item.specifier);
      const breach = target === undefined ? outsideBreach(room, item.specifier) : insideBreach(room, target, item, files);
      if (breach !== undefined) found.push(`${file}:${item.line} ${breach}`);
      if (target !== undefined && Object.hasOwn(files, target)) targets.push(target);
    }
    graph.set(file, targets);
  }
  const cycles = cyclesOf(graph);
  return [...found, ...(cycles.length > 0 ? cycles : cyclesOf(byFolder(graph)))];
}

/** The same with each folder inside a room taken as one file: a folder and a file beside it do not import each other either. */
function byFolder(graph: ReadonlyMap<string, readonly string[]>): Map<string, string[]> {
  const folderOf = (file: string): string => (file.split('/').length > 2 ? `${posix.dirname(file)}/` : file);
  const folders = new Map<string, string[]>();
  for (const [file, targets] of graph) {
    const from = folderOf(file);
    const to = targets.map(folderOf).filter((target) => target !== from);
    folders.set(from, [...(folders.get(from) ?? []), ...to]);
  }
  return folders;
}

/** The first folder of a path, or the file itself where there is no folder. */
function roomOf(file: string): string {
  return file.split('/')[0] as string;
}

/** The path below `src` of a relative import; nothing for a package. */
function targetOf(file: string, specifier: string): string | undefined {
  return specifier.startsWith('.') ? posix.join(posix.dirname(file), specifier) : undefined;
}

function insideBreach(room: string, target: string, item: Import, files: Readonly<Record<string, string>>): string | undefined {
  if (room === 'cli.ts' && target === '../package.json') return undefined;
  if (!Object.hasOwn(files, target)) return `imports ${target}, which does not exist`;
  const to = roomOf(target);
  if (to === room) return undefined;
  // The bibliography stands at the bottom, yet throws the one error: it may look up into quantity, and nowhere else.
  if (room === 'sources') return to === 'quantity' ? undefined : `imports ${target}, which is higher`;
  // Fields carry the keys of sources.
  if (room === 'quantity')
    return to === 'sources' && item.typeOnly ? undefined : `imports ${target}: quantity imports nothing but source keys`;
  if (ROOMS.indexOf(to) > ROOMS.indexOf(room)) return `imports ${target}, which is higher`;
  if (to === 'sources' && !item.typeOnly && ROOMS.indexOf(room) <= ROOMS.indexOf('plan')) {
    return `imports ${target} at run time: the core knows sources by their keys alone`;
  }
  if (room === 'index.ts' && (to === 'schedule' || to === 'working')) return `imports ${target}: the root entry ends at plan`;
  if (room === 'working' && to === 'schedule') return `imports ${target}: working stands on plan`;
  return undefined;
}

function outsideBreach(room: string, specifier: string): string | undefined {
  if (specifier.startsWith('node:')) return room === 'cli.ts' ? undefined : `imports ${specifier}: only cli.ts may`;
  const allowed = Object.hasOwn(PACKAGES, room) ? (PACKAGES[room] as readonly string[]) : [];
  if (allowed.some((name) => specifier === name || specifier.startsWith(`${name}/`))) return undefined;
  return `imports the package ${specifier}`;
}

/** Everything a file imports or re-exports, in any of the ways the language has. */
function importsOf(file: string, text: string): Import[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
  const found: Import[] = [];
  const add = (specifier: ts.Node | undefined, typeOnly: boolean): void => {
    if (specifier === undefined) return;
    const line = source.getLineAndCharacterOfPosition(specifier.getStart(source)).line + 1;
    // A computed path cannot be checked, so it is shown as the package it might be.
    found.push({ specifier: ts.isStringLiteralLike(specifier) ? specifier.text : specifier.getText(source), typeOnly, line });
  };
  const visit = (node: ts.Node): void => {
    if (ts.isImportDeclaration(node)) add(node.moduleSpecifier, node.importClause?.phaseModifier === ts.SyntaxKind.TypeKeyword);
    else if (ts.isExportDeclaration(node)) add(node.moduleSpecifier, node.isTypeOnly);
    else if (ts.isImportEqualsDeclaration(node) && ts.isExternalModuleReference(node.moduleReference)) {
      add(node.moduleReference.expression, node.isTypeOnly);
    } else if (ts.isImportTypeNode(node)) add(ts.isLiteralTypeNode(node.argument) ? node.argument.literal : node.argument, true);
    else if (ts.isCallExpression(node)) {
      const dynamic = node.expression.kind === ts.SyntaxKind.ImportKeyword;
      const required = ts.isIdentifier(node.expression) && node.expression.text === 'require';
      if (dynamic || required) add(node.arguments[0], false);
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** Each import cycle once, as `a.ts -> b.ts -> a.ts`; types count, for a reader walks those too. */
function cyclesOf(graph: ReadonlyMap<string, readonly string[]>): string[] {
  const cycles: string[] = [];
  const done = new Set<string>();
  const walk = (file: string, path: readonly string[]): void => {
    const start = path.indexOf(file);
    if (start >= 0) {
      cycles.push(`cycle: ${[...path.slice(start), file].join(' -> ')}`);
      return;
    }
    if (done.has(file)) return;
    for (const next of graph.get(file) ?? []) walk(next, [...path, file]);
    done.add(file);
  };
  for (const file of graph.keys()) walk(file, []);
  return cycles;
}
