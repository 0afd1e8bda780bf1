/** What is wrong with the tables of a source file: they are plain literals and arrow functions, keys once, sources known. @module */
import ts from 'typescript';

/** A table that stands at the top of a module. */
export interface Table {
  readonly name: string;
  readonly isExported: boolean;
  readonly literal: ts.Expression;
}

/** The object and array literals that are bound to an upper-case constant at the top of a file; what is marked as pure is a value, not a table. */
export function tablesIn(file: string, text: string): Table[] {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
  const found: Table[] = [];
  for (const statement of source.statements) {
    if (!ts.isVariableStatement(statement)) continue;
    const isExported = (ts.getModifiers(statement) ?? []).some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);
    for (const { name, initializer } of statement.declarationList.declarations) {
      if (initializer === undefined || !ts.isIdentifier(name) || !/^[A-Z][A-Z0-9_]*$/.test(name.text)) continue;
      const literal = bare(initializer);
      const isPure = initializer.getFullText().trimStart().startsWith('/* @__PURE__ */');
      const isTable =
        ts.isObjectLiteralExpression(literal) || ts.isArrayLiteralExpression(literal) || (ts.isCallExpression(literal) && !isPure);
      if (isTable) found.push({ name: name.text, isExported, literal });
    }
  }
  return found;
}

/**
 * Everything that a bundler or a reader would stumble over in the tables of one file.
 *
 * @param file - Path, for the messages.
 * @param text - The source.
 * @param sourceKeys - The keys of the bibliography.
 * @returns One sentence for each fault.
 */
export function tableFaults(file: string, text: string, sourceKeys: readonly string[]): string[] {
  const faults: string[] = [];
  for (const { name, literal } of tablesIn(file, text)) {
    const at = `${file}: ${name}`;
    const visit = (node: ts.Expression): void => {
      const expression = bare(node);
      if (ts.isObjectLiteralExpression(expression)) visitObject(expression);
      else if (ts.isArrayLiteralExpression(expression)) for (const element of expression.elements) visit(element);
      else if (!isLiteral(expression))
        faults.push(`${at} holds ${ts.SyntaxKind[expression.kind]} ${expression.getText()}, which is no literal`);
    };
    const visitObject = (object: ts.ObjectLiteralExpression): void => {
      const seen = new Set<string>();
      for (const property of object.properties) {
        if (!ts.isPropertyAssignment(property) || ts.isComputedPropertyName(property.name)) {
          faults.push(`${at} holds ${property.getText()}, which is no plain property`);
          continue;
        }
        const key = property.name.text;
        if (seen.has(key)) faults.push(`${at} has ${key} twice`);
        seen.add(key);
        const value = bare(property.initializer);
        if (key === 'source' && ts.isStringLiteral(value) && !sourceKeys.includes(value.text)) {
          faults.push(`${at} cites ${value.text}, which is not in the bibliography`);
        }
        visit(property.initializer);
      }
    };
    visit(literal);
  }
  return faults;
}

/** The strings of a file that are keys of the bibliography. */
export function sourcesCited(file: string, text: string, sourceKeys: readonly string[]): string[] {
  const cited = new Set<string>();
  const visit = (node: ts.Node): void => {
    if (ts.isStringLiteral(node) && sourceKeys.includes(node.text)) cited.add(node.text);
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true));
  return [...cited];
}

/** An expression without `as const`, `satisfies` and parentheses. */
function bare(node: ts.Expression): ts.Expression {
  return ts.isAsExpression(node) || ts.isSatisfiesExpression(node) || ts.isParenthesizedExpression(node) ? bare(node.expression) : node;
}

function isLiteral(node: ts.Expression): boolean {
  if (ts.isPrefixUnaryExpression(node)) return node.operator === ts.SyntaxKind.MinusToken && ts.isNumericLiteral(node.operand);
  return (
    ts.isArrowFunction(node) ||
    ts.isStringLiteral(node) ||
    ts.isNumericLiteral(node) ||
    ts.isNoSubstitutionTemplateLiteral(node) ||
    [ts.SyntaxKind.NullKeyword, ts.SyntaxKind.TrueKeyword, ts.SyntaxKind.FalseKeyword].includes(node.kind)
  );
}
