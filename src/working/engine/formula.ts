/** One formula: parsed, checked, evaluated with units, and printed with symbols or with numbers in their place. @module */
/// <reference path="./mathjs-build.d.ts" />
import type { ConstantNode, EvalFunction, FunctionNode, MathNode, OperatorNode, ParenthesisNode, SymbolNode, Unit } from 'mathjs';
import math from 'mathjs/lib/browser/math.js';
import { unitMathjs, type WorkingUnit } from './working-unit.ts';

/** A number with its unit, or a number without one, as mathjs reckons with them. */
export type Measured = Unit | number;

/** A formula that has been read. */
export interface Formula {
  readonly node: MathNode;
  readonly code: EvalFunction;
  /** Every symbol in it that is neither a function nor a number of mathematics. */
  readonly symbols: readonly string[];
  /** Whether it is a plain 0, which is nothing in any unit. */
  readonly isNothing: boolean;
  /** Whether it asks for the least or the most of several figures. */
  readonly hasExtremes: boolean;
}

/** The functions that a formula may use. */
const FUNCTIONS: readonly string[] = ['sqrt', 'min', 'max', 'abs', 'round'];

/** The extremes to the last bit: those of mathjs take figures that are 1e-12 apart, or next to nothing, as alike. */
const EXTREMES: Readonly<Record<string, (...figures: Measured[]) => Measured>> = {
  min: (...figures) => extreme(figures, (one, other) => one < other),
  max: (...figures) => extreme(figures, (one, other) => one > other),
};

function extreme(figures: readonly Measured[], isMore: (one: number, other: number) => boolean): Measured {
  return figures.reduce((best, figure) => (isMore(inUnitsOf(best, figure), inUnitsOf(best, best)) ? figure : best));
}

/** A figure as a plain number in the units of another; an error where it is of another kind. */
function inUnitsOf(other: Measured, figure: Measured): number {
  if (typeof figure === 'number' && typeof other === 'number') return figure;
  const ratio: unknown = isUnit(figure) && isUnit(other) && figure.equalBase(other) ? figure.toSI().toJSON().value : undefined;
  if (typeof ratio !== 'number') throw new Error(`${String(figure)} is not of the kind of ${String(other)}`);
  return ratio;
}

const read = new Map<string, Formula>();

/** Reads a formula, once: a working has few of them and many figures. */
export function formulaOf(text: string): Formula {
  const known = read.get(text);
  if (known !== undefined) return known;
  const node = math.parse(text);
  const symbols = new Set<string>();
  node.traverse((inner, path, parent) => {
    if (inner.type === 'SymbolNode') {
      const { name } = inner as SymbolNode;
      if (parent?.type === 'FunctionNode' && path === 'fn') {
        if (!FUNCTIONS.includes(name)) throw new Error(`a formula has no function ${name}: ${text}`);
      } else if (name !== 'pi') symbols.add(name);
    } else if (inner.type === 'OperatorNode') {
      // `1 / 2 R` is R/2 and `V / 2 R` is V/(2R): a product without its sign means whatever it likes.
      const { implicit, op } = inner as OperatorNode;
      if (implicit) throw new Error(`a product without its sign: ${text}`);
      if (!['+', '-', '*', '/', '^'].includes(op)) throw new Error(`a formula has no ${op}: ${text}`);
    } else if (!['ConstantNode', 'ParenthesisNode', 'FunctionNode'].includes(inner.type)) {
      throw new Error(`a formula has no ${inner.type}: ${text}`);
    }
  });
  const hasExtremes = Object.keys(EXTREMES).some((name) => new RegExp(`\\b${name}\\(`).test(text));
  const formula = { node, code: node.transform(withUnit).compile(), symbols: [...symbols], isNothing: isZero(node), hasExtremes };
  read.set(text, formula);
  return formula;
}

/** In the least or the greatest of several a plain 0 is nothing of their unit: `max(V, 0)` is reckoned as `max(V, 0 * V)`. */
function withUnit(node: MathNode): MathNode {
  if (node.type !== 'FunctionNode') return node;
  const { fn, args } = node as FunctionNode<SymbolNode>;
  const other = args.find((part) => !isZero(part));
  if (!['min', 'max'].includes(fn.name) || other === undefined) return node;
  return new math.FunctionNode(
    fn,
    args.map((part) => (isZero(part) ? new math.OperatorNode('*', 'multiply', [part, other]) : part)),
  );
}

function isZero(node: MathNode): boolean {
  return node.type === 'ConstantNode' && (node as ConstantNode).value === 0;
}

/** A plain number as mathjs is to reckon with it. */
export function measured(value: number, unit: WorkingUnit): Measured {
  return unit === '1' ? value : math.unit(value, unitMathjs(unit));
}

const units = new Map<WorkingUnit, Unit>();

/** A unit, read once: reading its name takes longer than reckoning with it. */
function unitOf(unit: WorkingUnit): Unit {
  const known = units.get(unit) ?? math.unit(unitMathjs(unit));
  units.set(unit, known);
  return known;
}

/**
 * The value of a formula as a plain number in a unit: `(formula) to unit`.
 *
 * The unit is applied to the result and not written into the formula, where a given named V would stand in for the volt.
 * Anything that is not of the declared kind (a current meant as a resistance, the root of a negative number) is an error.
 */
export function evaluateTo(formula: Formula, scope: Readonly<Record<string, Measured>>, unit: WorkingUnit): number {
  for (const symbol of formula.symbols) {
    if (!Object.hasOwn(scope, symbol)) throw new Error(`${symbol} is neither given nor a step before: ${formula.node.toString()}`);
  }
  if (formula.isNothing) return 0;
  const value: unknown = formula.code.evaluate(formula.hasExtremes ? { ...scope, ...EXTREMES } : scope);
  const number = unit === '1' ? value : isUnit(value) ? value.to(unitOf(unit)).toNumeric(unitMathjs(unit)) : undefined;
  if (typeof number !== 'number' || !Number.isFinite(number)) {
    throw new Error(`${formula.node.toString()} is no number of ${unit === '1' ? 'no unit' : unit}, but ${String(value)}`);
  }
  return number + 0; // no -0
}

function isUnit(value: unknown): value is Unit {
  return math.isUnit(value);
}

/** How the parts of a formula are written. */
export interface Notation {
  /** A symbol, or the figure that stands in its place. */
  readonly symbol: (name: string) => string;
  /** Whether what stands for the symbol needs brackets where it is divided by or raised to a power. */
  readonly isCompound: (name: string) => boolean;
  readonly tex: boolean;
}

/** Writes a formula from its parse tree: symbols are replaced as nodes, so `1 / R` can never become `1 / 12.5 ohm`. */
export function written(node: MathNode, notation: Notation): string {
  const { tex } = notation;
  const inner = (part: MathNode): string => written(part, notation);
  switch (node.type) {
    case 'ConstantNode':
      return String((node as ConstantNode).value);
    case 'SymbolNode': {
      const { name } = node as SymbolNode;
      return name === 'pi' ? (tex ? '\\pi' : 'pi') : notation.symbol(name);
    }
    case 'ParenthesisNode':
      return bracketed(inner((node as ParenthesisNode).content), tex);
    case 'FunctionNode': {
      const { fn, args } = node as FunctionNode<SymbolNode>;
      const list = args.map((part) => inner(bare(part))).join(', ');
      if (!tex) return `${fn.name}(${list})`;
      if (fn.name === 'sqrt') return `\\sqrt{${list}}`;
      return `${['min', 'max'].includes(fn.name) ? `\\${fn.name}` : `\\operatorname{${fn.name}}`}${bracketed(list, true)}`;
    }
    default:
      return operation(node as OperatorNode, notation);
  }
}

function operation({ op, args }: OperatorNode, notation: Notation): string {
  const { tex } = notation;
  const [left, right] = args as MathNode[];
  if (left === undefined) return '';
  if (right === undefined) return `${op}${compound(left, notation)}`;
  if (op === '^') return `${compound(left, notation)}^${tex ? `{${written(bare(right), notation)}}` : compound(right, notation)}`;
  if (op === '/' && tex) return `\\frac{${written(bare(left), notation)}}{${written(bare(right), notation)}}`;
  const sign = op === '*' ? (tex ? ' \\cdot ' : ' * ') : ` ${op} `;
  return `${written(left, notation)}${sign}${op === '/' ? compound(right, notation) : written(right, notation)}`;
}

function compound(node: MathNode, notation: Notation): string {
  const text = written(node, notation);
  return node.type === 'SymbolNode' && notation.isCompound((node as SymbolNode).name) ? bracketed(text, notation.tex) : text;
}

function bare(node: MathNode): MathNode {
  return node.type === 'ParenthesisNode' ? (node as ParenthesisNode).content : node;
}

function bracketed(text: string, tex: boolean): string {
  return tex ? `\\left(${text}\\right)` : `(${text})`;
}
