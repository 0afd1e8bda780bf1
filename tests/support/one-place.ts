/** Where facts stand in the sources: names as literals, numbers, constants and the defaults of keys. @module */
import ts from 'typescript';

/** A literal, and where it stands. */
export interface Place {
  /** Path below `src`. */
  readonly file: string;
  readonly line: number;
  /** What is said of it there: the key it is the value of, `.name` of what it is compared with, `case`, the function whose list it stands in; empty if nothing is. */
  readonly role: string;
}

type Texts = Readonly<Record<string, string>>;

/** Every text in quotes, the keys of objects among them, and where it stands; specifiers of imports are none. */
export function stringPlaces(texts: Texts): ReadonlyMap<string, readonly Place[]> {
  return gather(texts, (node) => (ts.isStringLiteralLike(node) ? node.text : undefined));
}

/** Every number written out, and where it stands. */
export function numberPlaces(texts: Texts): ReadonlyMap<number, readonly Place[]> {
  return gather(texts, (node) => (ts.isNumericLiteral(node) ? Number(node.text) : undefined));
}

/** Constants that are one number, as `EXTRA_LOW = 60`, and where each is declared. */
export function constantPlaces(texts: Texts): ReadonlyMap<string, readonly Place[]> {
  return gather(texts, (node) => {
    if (!ts.isVariableDeclaration(node) || !ts.isIdentifier(node.name) || !/^[A-Z][A-Z0-9_]*$/.test(node.name.text)) return undefined;
    const value = numberOf(node.initializer);
    return value === undefined ? undefined : `${node.name.text} = ${value}`;
  });
}

/** Numbers other than 0 and 1 that are taken where a key is left out, as `temperature = 20`; those of fields too. */
export function defaultPlaces(texts: Texts): ReadonlyMap<string, readonly Place[]> {
  return gather(texts, (node) => {
    const [key, value] = defaultIn(node);
    return key === undefined || value === undefined || value === 0 || value === 1 ? undefined : `${key} = ${value}`;
  });
}

/** The key and the number of `{ key = 1 }`, `key ?? 1` and `key: { default: 1 }`. */
function defaultIn(node: ts.Node): readonly [key?: string | undefined, value?: number | undefined] {
  if (ts.isBindingElement(node)) return [(node.propertyName ?? node.name).getText(), numberOf(node.initializer)];
  if (ts.isBinaryExpression(node) && node.operatorToken.kind === ts.SyntaxKind.QuestionQuestionToken) {
    return [lastName(node.left), numberOf(node.right)];
  }
  if (!ts.isPropertyAssignment(node) || node.name.getText() !== 'default') return [];
  const field = node.parent.parent;
  const named = ts.isPropertyAssignment(field) ? field.name.getText() : ts.isVariableDeclaration(field) ? field.name.getText() : undefined;
  return [named, numberOf(node.initializer)];
}

/** Files in which something stands, each once. */
export function filesOf(places: readonly Place[] = []): string[] {
  return [...new Set(places.map(({ file }) => file))].sort();
}

/** What stands in more than one file, as a sentence each. */
export function standingTwice(found: ReadonlyMap<string | number, readonly Place[]>): string[] {
  return [...found].flatMap(([fact, places]) => {
    const files = filesOf(places);
    return files.length > 1 ? [`${fact} stands in ${places.map(({ file, line }) => `${file}:${line}`).join(', ')}`] : [];
  });
}

function gather<Fact>(texts: Texts, factOf: (node: ts.Node) => Fact | undefined): Map<Fact, Place[]> {
  const found = new Map<Fact, Place[]>();
  for (const [file, text] of Object.entries(texts)) {
    const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
    const visit = (node: ts.Node): void => {
      if (ts.isImportDeclaration(node) || ts.isExportDeclaration(node)) return;
      const fact = factOf(node);
      if (fact !== undefined) {
        const line = source.getLineAndCharacterOfPosition(node.getStart(source)).line + 1;
        found.set(fact, [...(found.get(fact) ?? []), { file, line, role: roleOf(node) }]);
      }
      ts.forEachChild(node, visit);
    };
    visit(source);
  }
  return found;
}

function roleOf(node: ts.Node): string {
  const { parent } = node;
  if (ts.isPropertyAssignment(parent) && parent.initializer === node) return parent.name.getText();
  if (ts.isCaseClause(parent)) return 'case';
  if (ts.isArrayLiteralExpression(parent) && ts.isCallExpression(parent.parent)) return parent.parent.expression.getText();
  if (!ts.isBinaryExpression(parent)) return '';
  return lastName(parent.left === node ? parent.right : parent.left) ?? '';
}

/** `name` of `check.name` and of `name`. */
function lastName(node: ts.Expression): string | undefined {
  if (ts.isPropertyAccessExpression(node)) return node.name.text;
  return ts.isIdentifier(node) ? node.text : undefined;
}

function numberOf(node: ts.Expression | undefined): number | undefined {
  if (node === undefined) return undefined;
  if (ts.isPrefixUnaryExpression(node)) {
    const value = numberOf(node.operand);
    return value === undefined || node.operator !== ts.SyntaxKind.MinusToken ? value : -value;
  }
  return ts.isNumericLiteral(node) ? Number(node.text) : undefined;
}
