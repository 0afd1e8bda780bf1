/** Finding the examples in docstrings and pages, and running them. @module */
import { transform } from 'esbuild';
import ts from 'typescript';

/** A piece of TypeScript that the documentation shows. */
export interface Example {
  /** File and line, as in `src/conductor/awg.ts:33`. */
  readonly at: string;
  /** What the docstring says beside `@example`, or an empty text. */
  readonly title: string;
  readonly code: string;
}

/** A place in an example where a value is promised: `expr; // => literal`. */
export interface Promised {
  readonly actual: unknown;
  /** The literal as it stands in the comment. */
  readonly literal: string;
}

/** The words of one docstring: its summary and its tags, each with the line it stands on. */
export interface Docstring {
  readonly summary: string;
  readonly tags: readonly { readonly name: string; readonly text: string; readonly line: number }[];
}

/** Reads the docstrings that stand before a node, nearest last. */
export function docstringsOf(node: ts.Node): Docstring[] {
  const source = node.getSourceFile();
  return ts
    .getJSDocCommentsAndTags(node)
    .filter((doc) => ts.isJSDoc(doc) && doc.parent === node)
    .map((doc) => readDocstring(doc.getText(source), source.getLineAndCharacterOfPosition(doc.getStart(source)).line + 1));
}

/** Reads a comment from `/**` to its end. */
export function readDocstring(comment: string, firstLine: number): Docstring {
  const lines = comment
    .replace(/^\/\*\*/, '')
    .replace(/\s*\*\/$/, '')
    .split('\n')
    .map((line, index) => (index === 0 ? line.trim() : line.replace(/^\s*\* ?/, '')));
  const summary: string[] = [];
  const tags: { name: string; lines: string[]; line: number }[] = [];
  for (const [index, line] of lines.entries()) {
    // A tag that ends a one-line docstring, as in `What it is. @internal`, counts as well.
    const tag = /^(?<before>[^@]*[\s.])?@(?<name>[a-z]+)(?:\s(?<text>.*))?$/i.exec(line);
    const starts = tag?.groups !== undefined && (index === 0 || line.startsWith('@'));
    if (starts) {
      if (tag.groups?.['before']) summary.push(tag.groups['before'].trim());
      tags.push({ name: tag.groups?.['name'] ?? '', lines: [tag.groups?.['text'] ?? ''], line: firstLine + index });
    } else (tags.at(-1)?.lines ?? summary).push(line);
  }
  return {
    summary: summary.join('\n').trim(),
    tags: tags.map(({ name, lines: text, line }) => ({ name, text: text.join('\n').trimEnd(), line })),
  };
}

/** Every `@example` of a source file; the words on the line of the tag are its title. */
export function examplesInSource(file: string, text: string): Example[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
  const found: Example[] = [];
  const visit = (node: ts.Node): void => {
    for (const { tags } of docstringsOf(node)) {
      for (const { name, text: body, line } of tags) {
        if (name !== 'example') continue;
        const [title = '', ...code] = body.split('\n');
        found.push({ at: `${file}:${line}`, title: title.trim(), code: code.join('\n').trim() });
      }
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** Every fenced block of a Markdown page that is marked `ts`. */
export function examplesInPage(file: string, text: string): Example[] {
  const found: Example[] = [];
  let open: { fence: string; language: string; line: number; code: string[] } | undefined;
  for (const [index, line] of text.split(/\r?\n/).entries()) {
    const fence = /^\s*(?<marks>`{3,}|~{3,})\s*(?<language>\S*)/.exec(line)?.groups;
    if (open === undefined) {
      if (fence) open = { fence: fence['marks'] ?? '', language: fence['language'] ?? '', line: index + 1, code: [] };
    } else if (fence && fence['language'] === '' && fence['marks']?.startsWith(open.fence)) {
      if (open.language === 'ts') found.push({ at: `${file}:${open.line}`, title: '', code: open.code.join('\n') });
      open = undefined;
    } else open.code.push(line);
  }
  return found;
}

/**
 * Runs an example and collects what it promises.
 *
 * @param code - TypeScript statements. A statement followed by `// => literal`, at its end or on the next lines,
 *   promises the value of an expression, of what `console.log` was handed, or of the one constant it declares.
 * @param scope - Names that the code may use without importing them.
 * @param modules - What an `import` of each name gives; every other import is handed to the platform.
 */
export async function runExample(
  code: string,
  scope: Readonly<Record<string, unknown>>,
  modules: Readonly<Record<string, unknown>> = {},
): Promise<Promised[]> {
  const promised: Promised[] = [];
  const keep = (actual: unknown, literal: string): void => {
    // Copied at once: later lines of the example must not change what was promised here.
    promised.push({ actual: structuredCloneIfData(actual), literal });
  };
  const load = async (name: string): Promise<unknown> => (Object.hasOwn(modules, name) ? modules[name] : import(name));
  const { code: script } = await transform(instrument(code), { loader: 'ts', target: 'es2022' });
  const names = Object.keys(scope);
  const AsyncFunction = (async () => {}).constructor as FunctionConstructor;
  // The body is a block of its own, so that an example may name a constant like an export.
  const run = new AsyncFunction('__keep', '__load', ...names, `"use strict"; {\n${script}\n}`);
  await run(keep, load, ...names.map((name) => scope[name]));
  return promised;
}

/** The value of the literal in a promise. */
export function literalValue(literal: string): unknown {
  return new Function(`"use strict"; return (${literal}\n);`)();
}

/** Rewrites promises into calls of `__keep` and imports into calls of `__load`. */
function instrument(code: string): string {
  const source = ts.createSourceFile('example.ts', code, ts.ScriptTarget.ES2022, true);
  const edits: { start: number; end: number; text: string }[] = [];
  for (const statement of source.statements) {
    if (ts.isImportDeclaration(statement)) {
      edits.push({ start: statement.getStart(), end: statement.end, text: importAsCall(statement) });
      continue;
    }
    const literal = promiseAfter(code, statement.end);
    if (literal === undefined) continue;
    const shown = JSON.stringify(literal);
    if (ts.isExpressionStatement(statement)) {
      const { expression } = statement;
      const logged = ts.isCallExpression(expression) && expression.expression.getText() === 'console.log';
      if (logged && expression.arguments.length !== 1) throw new Error(`a promise needs one argument: ${statement.getText()}`);
      const value = logged ? (expression.arguments[0] as ts.Expression) : expression;
      edits.push({ start: statement.getStart(), end: statement.end, text: `__keep(${value.getText()}, ${shown});` });
    } else if (ts.isVariableStatement(statement)) {
      const [declaration, second] = statement.declarationList.declarations;
      if (declaration === undefined || second !== undefined || !ts.isIdentifier(declaration.name)) {
        throw new Error(`a promise needs one name: ${statement.getText()}`);
      }
      edits.push({ start: statement.end, end: statement.end, text: ` __keep(${declaration.name.text}, ${shown});` });
    } else throw new Error(`a promise needs an expression or a constant: ${statement.getText()}`);
  }
  const promises = code.split('\n').filter((line) => line.includes('// =>')).length;
  const kept = edits.filter(({ text }) => text.includes('__keep(')).length;
  if (promises !== kept) throw new Error(`${promises - kept} of the promises in this example stand where nothing keeps them:\n${code}`);
  return edits.reduceRight((text, edit) => text.slice(0, edit.start) + edit.text + text.slice(edit.end), code);
}

/** The literal of `// => literal` that follows a statement, with the comment lines, indented by three or more, that continue it. */
function promiseAfter(code: string, end: number): string | undefined {
  const promise = /^[ \t]*(?:\r?\n[ \t]*)?\/\/ =>(?<literal>.*(?:\r?\n[ \t]*\/\/ {3,}.*)*)/.exec(code.slice(end))?.groups?.['literal'];
  return promise?.replace(/\r?\n[ \t]*\/\//g, '\n').trim();
}

function importAsCall(statement: ts.ImportDeclaration): string {
  const name = statement.moduleSpecifier.getText();
  const clause = statement.importClause;
  if (clause === undefined) return `await __load(${name});`;
  if (clause.phaseModifier === ts.SyntaxKind.TypeKeyword) return '';
  const parts: string[] = clause.name === undefined ? [] : [`default: ${clause.name.text}`];
  const bindings = clause.namedBindings;
  if (bindings !== undefined && ts.isNamespaceImport(bindings)) return `const ${bindings.name.text} = await __load(${name});`;
  for (const element of bindings?.elements ?? []) {
    if (!element.isTypeOnly) parts.push(element.propertyName ? `${element.propertyName.text}: ${element.name.text}` : element.name.text);
  }
  return `const { ${parts.join(', ')} } = await __load(${name});`;
}

function structuredCloneIfData(value: unknown): unknown {
  try {
    return structuredClone(value);
  } catch {
    return value;
  }
}
