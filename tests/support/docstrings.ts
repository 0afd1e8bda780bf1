/** What is missing from the docstring of a public name. @module */
import ts from 'typescript';
import { type Docstring, docstringsOf } from './examples.ts';

/** The unit that each flavour of number is in. */
const UNITS: Readonly<Record<string, string>> = {
  Metres: 'm',
  Millimetres: 'mm',
  SquareMillimetres: 'mm²',
  Ohms: 'Ω',
  OhmsPerMetre: 'Ω/m',
  Volts: 'V',
  Amperes: 'A',
  Watts: 'W',
  Celsius: '°C',
  Kelvins: 'K',
};

/** Words that say what a number without a unit is. */
const WORD_FOR_A_PURE_NUMBER = /\b(?:class|type|gauge|size|number|count|fraction|ratio|factor|pairs|line|column)\b/i;

/**
 * Everything that a reader would miss beside one exported name.
 *
 * @param name - The exported name.
 * @param declaration - Where it is declared.
 * @returns One sentence for each thing that is missing.
 */
export function missingWords(name: string, declaration: ts.Declaration): string[] {
  if (ts.isInterfaceDeclaration(declaration) || ts.isTypeAliasDeclaration(declaration)) {
    return [...missingSummary(name, docstringOf(declaration)), ...missingUnits(name, declaration)];
  }
  // A constant is documented at its statement, a function at itself.
  const docstring = docstringOf(ts.isVariableDeclaration(declaration) ? declaration.parent.parent : declaration);
  const missing = missingSummary(name, docstring);
  if (!docstring?.tags.some((tag) => tag.name === 'example')) missing.push(`${name} has no @example`);
  if (ts.isFunctionDeclaration(declaration) && docstring !== undefined) missing.push(...missingParameters(name, declaration, docstring));
  return missing;
}

function docstringOf(node: ts.Node): Docstring | undefined {
  return docstringsOf(node).at(-1);
}

function missingSummary(name: string, docstring: Docstring | undefined): string[] {
  return docstring === undefined || docstring.summary === '' ? [`${name} has no summary`] : [];
}

function missingParameters(name: string, declaration: ts.FunctionDeclaration, { tags }: Docstring): string[] {
  const missing: string[] = [];
  const described = tags.filter((tag) => tag.name === 'param');
  const names = declaration.parameters.map((parameter) => parameter.name.getText());
  const told = described.map(({ text }) => text.split(/\s/)[0] ?? '');
  if (told.join() !== names.join()) missing.push(`${name} takes (${names.join(', ')}) and tells of (${told.join(', ')})`);
  for (const parameter of declaration.parameters) {
    const text = described.find((tag) => tag.text.split(/\s/)[0] === parameter.name.getText())?.text ?? '';
    const units = flavoursIn(parameter.type);
    for (const unit of units) if (!text.includes(`[${unit}]`)) missing.push(`${name}: @param ${parameter.name.getText()} lacks [${unit}]`);
    if (units.length === 0 && isNumber(parameter.type) && !/\[[^\]]+\]/.test(text) && !WORD_FOR_A_PURE_NUMBER.test(text)) {
      missing.push(`${name}: @param ${parameter.name.getText()} says no unit, nor what kind of number it is`);
    }
  }
  const returns = tags.find((tag) => tag.name === 'returns')?.text ?? '';
  if (returns === '') missing.push(`${name} has no @returns`);
  for (const unit of flavoursIn(declaration.type)) if (!returns.includes(`[${unit}]`)) missing.push(`${name}: @returns lacks [${unit}]`);
  return missing;
}

/** Fields of a flavour where neither their own comment nor that of what holds them says the unit. */
function missingUnits(name: string, declaration: ts.Node): string[] {
  const missing: string[] = [];
  const visit = (node: ts.Node, above: string): void => {
    const words = `${above} ${docstringOf(node)?.summary ?? ''}`;
    if (ts.isPropertySignature(node)) {
      for (const unit of flavoursIn(node.type)) {
        if (!words.includes(`[${unit}]`)) missing.push(`${name}.${node.name.getText()} lacks [${unit}]`);
      }
    }
    ts.forEachChild(node, (child) => visit(child, words));
  };
  visit(declaration, '');
  return missing;
}

/** Units of the flavours that a type is made of; an inner object type answers for itself. */
function flavoursIn(type: ts.TypeNode | undefined): string[] {
  if (type === undefined) return [];
  if (ts.isTypeReferenceNode(type)) {
    const flavour = type.typeName.getText();
    if (Object.hasOwn(UNITS, flavour)) return [UNITS[flavour] as string];
    return (type.typeArguments ?? []).flatMap((argument) => flavoursIn(argument));
  }
  if (ts.isUnionTypeNode(type)) return type.types.flatMap((part) => flavoursIn(part));
  if (ts.isArrayTypeNode(type)) return flavoursIn(type.elementType);
  if (ts.isTypeOperatorNode(type) || ts.isParenthesizedTypeNode(type)) return flavoursIn(type.type);
  return [];
}

function isNumber(type: ts.TypeNode | undefined): boolean {
  if (type === undefined) return false;
  return type.kind === ts.SyntaxKind.NumberKeyword || (ts.isUnionTypeNode(type) && type.types.some((part) => isNumber(part)));
}
