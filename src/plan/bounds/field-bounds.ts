/** The least and most of every number in a result, over the corners of its input. @module */
import { type FoundRange, pathOf } from './ranges.ts';

/** Numbers of a result by their path. @internal */
export type Leaves = ReadonlyMap<string, number>;

/** Every number in a result, by path, all but those under some keys. @internal */
export function leavesOf(result: unknown, except: readonly string[] = []): Leaves {
  const found = new Map<string, number>();
  const visit = (part: unknown, path: string): void => {
    if (typeof part === 'number') found.set(path, part);
    else if (typeof part === 'object' && part !== null) {
      for (const [key, inner] of Object.entries(part)) if (!except.includes(key)) visit(inner, pathOf(path, key, part));
    }
  };
  visit(result, '');
  return found;
}

/** Least and most of one number of a result, and the corners (by index) that give them; none for a peak inside. @internal */
export interface FieldBounds {
  low: number;
  high: number;
  lowAt: number | undefined;
  highAt: number | undefined;
}

/** Bounds of the numbers that every corner has. @internal */
export function fieldBounds(corners: readonly Leaves[]): Map<string, FieldBounds> {
  const bounds = new Map<string, FieldBounds>();
  const [first, ...rest] = corners;
  for (const [path, value] of first ?? []) {
    if (rest.every((leaves) => leaves.has(path))) bounds.set(path, { low: value, high: value, lowAt: 0, highAt: 0 });
  }
  for (const [i, leaves] of corners.entries()) {
    for (const [path, field] of bounds) {
      const value = leaves.get(path) as number;
      if (value < field.low) Object.assign(field, { low: value, lowAt: i });
      if (value > field.high) Object.assign(field, { high: value, highAt: i });
    }
  }
  return bounds;
}

/**
 * The two powers of an operating point that peak inside a range: they are monotone in everything else.
 *
 * A resistance load behind R dissipates most, and heats its line most, where the two are equal: V²/4R of the smaller.
 * A current load takes most at half the supply voltage: V²/4R.
 * @internal
 */
export function addPeaks(bounds: Map<string, FieldBounds>, corners: readonly Leaves[], ranges: readonly FoundRange[]): void {
  for (const path of bounds.keys()) {
    if (!path.endsWith('lineLoss')) continue;
    const at = path.slice(0, -'lineLoss'.length);
    const everywhere = (name: string): number[] => corners.map((leaves) => leaves.get(at + name) ?? 0);
    const [current, drop, supply, load] = ['current', 'voltageDrop', 'supplyPower', 'loadVoltage'].map(everywhere) as [
      number[],
      number[],
      number[],
      number[],
    ];
    // A corner without a current says nothing of the supply or the line; another of the same ends does.
    const live = current.flatMap((amperes, i) => (amperes > 0 ? [i] : []));
    if (live.length === 0) continue;
    const V = Math.max(...live.map((i) => (supply[i] as number) / (current[i] as number)));
    const line = live.map((i) => (drop[i] as number) / (current[i] as number));
    const [least, most] = [Math.min(...line), Math.max(...line)];
    const peak = (name: 'lineLoss' | 'loadPower', resistance: number): void => {
      const field = bounds.get(at + name);
      const power = (V * V) / (4 * resistance);
      if (field !== undefined && power > field.high) Object.assign(field, { high: power, highAt: undefined });
    };
    const currentRange = ranges.find((range) => range.path === 'load.current');
    if (currentRange !== undefined) {
      const half = V / (2 * least);
      if (currentRange.low < half && half < currentRange.high) peak('loadPower', least);
      continue;
    }
    if (ranges.some((range) => range.path === 'load.power')) continue;
    const loads = live.map((i) => (load[i] as number) / (current[i] as number));
    const loadRange = ranges.find((range) => range.path === 'load.resistance');
    // Without a range the load is one resistance, or not a resistance at all: then it differs from corner to corner.
    const [low, high] = loadRange === undefined ? [Math.min(...loads), Math.max(...loads)] : [loadRange.low, loadRange.high];
    if (loadRange === undefined && high - low > 1e-9 * high) continue;
    if (least < low && low < most) peak('lineLoss', low);
    if (low < least && least < high) peak('loadPower', least);
  }
}
