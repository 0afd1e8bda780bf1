/** Node voltages of a network, pass by pass: each tap of constant power is put as the tangent to its P/V. @module */

/** What hangs from a node. @internal */
export interface NodeLoad {
  /** [W] */
  readonly power: number;
  /** [A] */
  readonly current: number;
  /** [S] */
  readonly conductance: number;
}

/** A network by the symbols of its nodes. @internal */
export interface NetworkFigures {
  /** Voltages that are held. [V] */
  readonly held: ReadonlyMap<string, number>;
  /** Sections that feed a node each, from the supplies outwards. [Ω] */
  readonly branches: readonly { readonly from: string; readonly node: string; readonly resistance: number; readonly load: NodeLoad }[];
  /** Sections that close rings, between two symbols. [Ω] */
  readonly rings: readonly { readonly from: string; readonly to: string; readonly resistance: number }[];
}

/** Voltages by symbol, of every pass. @internal */
export interface Passes {
  readonly feasible: boolean;
  readonly passes: readonly ReadonlyMap<string, number>[];
}

/** A load as `drawn + slope * V`. */
interface LinearLoad {
  readonly drawn: number;
  readonly slope: number;
}

/** Far from collapse every pass doubles the digits; close to it, it only halves the error. */
const MOST = 100;

/**
 * The voltages from those without constant powers down to where each power is drawn.
 *
 * Every pass lands on or above the stable solution, so voltages fall from pass to pass; one that rises, a voltage that is not
 * above 0, or a state that is not stable, shows that there is no solution.
 * @internal
 */
export function networkPasses(network: NetworkFigures, factor = 1): Passes {
  const passes: ReadonlyMap<string, number>[] = [];
  const loads = network.branches.map(({ load: { power, current, conductance } }) => ({
    power: power * factor,
    current: current * factor,
    conductance: conductance * factor,
  }));
  const hasPower = loads.some(({ power }) => power > 0);
  let last = linearVoltages(
    network,
    loads.map(({ current, conductance }) => ({ drawn: current, slope: conductance })),
  );
  let step = Number.POSITIVE_INFINITY;
  while (passes.length < MOST) {
    if (last === undefined || last.some((voltage) => voltage < 0 || (hasPower && voltage === 0))) return { feasible: false, passes };
    const now: readonly number[] = last;
    passes.push(new Map(network.branches.map(({ node }, index) => [node, now[index] as number])));
    if (!hasPower) return { feasible: true, passes };
    const next = linearVoltages(
      network,
      loads.map(({ power, current, conductance }, index) => {
        const voltage = now[index] as number;
        return { drawn: current + (2 * power) / voltage, slope: conductance - power / voltage ** 2 };
      }),
    );
    if (next === undefined) return { feasible: false, passes };
    const falls = next.map((voltage, index) => (now[index] as number) - voltage);
    const scale = Math.max(...now);
    const change = Math.max(...falls.map(Math.abs));
    if (change <= 1e-15 * scale) return { feasible: true, passes };
    // The last digits go to and fro; while steps are still large, a rise or a step that grew is the way out.
    if (change >= step && step < 1e-7 * scale) return { feasible: true, passes };
    if (falls.some((fall) => fall < -1e-9 * scale)) return { feasible: false, passes };
    step = change;
    last = next;
  }
  return { feasible: false, passes };
}

/** The largest share of all loads that is carried, by halving. @internal */
export function mostCarried(network: NetworkFigures): number {
  let low = 0;
  let high = 1;
  for (let middle = 0.5; middle > low && middle < high; middle = low + (high - low) / 2) {
    if (networkPasses(network, middle).feasible) low = middle;
    else high = middle;
  }
  return low;
}

/** Voltages at the ends of the branches for linear loads; nothing where the state is not stable. */
function linearVoltages(network: NetworkFigures, loads: readonly LinearLoad[]): readonly number[] | undefined {
  const { held, branches, rings } = network;
  const place = new Map(branches.map(({ node }, index) => [node, index]));
  // From the ends inwards: what a branch and all beyond it draw, as seen from its start, is `drawn + slope * V` again.
  const slopes = loads.map(({ slope }) => slope);
  const seen: number[] = [];
  for (let index = branches.length - 1; index >= 0; index--) {
    const { from, resistance } = branches[index] as (typeof branches)[number];
    const pivot = 1 + resistance * (slopes[index] as number);
    if (pivot === 0 || (pivot < 0 && rings.length === 0)) return undefined;
    seen[index] = pivot;
    const up = place.get(from);
    if (up !== undefined) slopes[up] = (slopes[up] as number) + (slopes[index] as number) / pivot;
  }
  const voltagesFor = (drawn: readonly number[], volts: (symbol: string) => number): number[] => {
    const total = [...drawn];
    for (let index = branches.length - 1; index >= 0; index--) {
      const up = place.get(branches[index]?.from ?? '');
      if (up !== undefined) total[up] = (total[up] as number) + (total[index] as number) / (seen[index] as number);
    }
    const found: number[] = [];
    for (const [index, { from, resistance }] of branches.entries()) {
      const start = place.has(from) ? (found[place.get(from) as number] as number) : volts(from);
      found[index] = start - (resistance * ((total[index] as number) + (slopes[index] as number) * start)) / (seen[index] as number);
    }
    return found;
  };

  const heldVolts = (symbol: string): number => held.get(symbol) as number;
  const drawn = loads.map((load) => load.drawn);
  const open = voltagesFor(drawn, heldVolts);
  if (rings.length === 0) return open;
  // What one ampere through each ring section does to every node, the supplies at rest.
  const at = (found: readonly number[], symbol: string, volts: (symbol: string) => number): number =>
    place.has(symbol) ? (found[place.get(symbol) as number] as number) : volts(symbol);
  const rest = (): number => 0;
  const responses = rings.map(({ from, to }) => {
    const unit = branches.map(({ node }) => Number(node === from) - Number(node === to));
    return voltagesFor(unit, rest);
  });
  const matrix = rings.map(({ from, to, resistance }, row) =>
    responses.map((response, column) => at(response, to, rest) - at(response, from, rest) + (row === column ? resistance : 0)),
  );
  const currents = eliminated(
    matrix,
    rings.map(({ from, to }) => at(open, from, heldVolts) - at(open, to, heldVolts)),
  );
  // A tree that would not be stable alone may be held up by its rings: by just as many as it lacks.
  if (currents === undefined || currents.negative !== seen.filter((pivot) => pivot < 0).length) return undefined;
  const round = branches.map(({ node }, index) =>
    rings.reduce(
      (sum, { from, to }, ring) => sum + (currents.found[ring] as number) * (Number(node === from) - Number(node === to)),
      drawn[index] as number,
    ),
  );
  return voltagesFor(round, heldVolts);
}

/** Symmetric equations by elimination, and how many of the pivots are under 0; nothing where one is 0. */
function eliminated(
  matrix: readonly (readonly number[])[],
  right: readonly number[],
): { readonly found: readonly number[]; readonly negative: number } | undefined {
  const rows = matrix.map((row, index) => [...row, right[index] as number]);
  let negative = 0;
  for (const [at, row] of rows.entries()) {
    const pivot = row[at] as number;
    if (!(Math.abs(pivot) > 0)) return undefined;
    if (pivot < 0) negative++;
    for (const below of rows.slice(at + 1)) {
      const share = (below[at] as number) / pivot;
      for (let column = at; column < row.length; column++) below[column] = (below[column] as number) - share * (row[column] as number);
    }
  }
  const found: number[] = [];
  for (let at = rows.length - 1; at >= 0; at--) {
    const row = rows[at] as number[];
    let left = row[rows.length] as number;
    for (let column = at + 1; column < rows.length; column++) left -= (row[column] as number) * (found[column] as number);
    found[at] = left / (row[at] as number);
  }
  return { found, negative };
}
