/** A page as plain data: what a report or a worked example says, before it is text, Markdown or LaTeX. @module */

/** A formula or a figure within a sentence, written both ways; neither is escaped. */
export interface Maths {
  readonly text: string;
  readonly latex: string;
}

/** A sentence, or its parts in order. Every sign in a string stands for itself. */
export type Words = string | readonly (string | Maths)[];

/** A title. Level 1 and 2: a report and its sections. 3: a worked example. 4: a word above what it names. */
export interface Heading {
  readonly kind: 'heading';
  readonly level: 1 | 2 | 3 | 4;
  readonly text: Words;
}

/** A sentence or several. */
export interface Paragraph {
  readonly kind: 'paragraph';
  readonly text: Words;
  /** A word in front that says what follows, as in `Result`. */
  readonly lead?: string;
  /** Whether all of it is set in bold type, where there is such. */
  readonly strong?: true;
  /** Whether verdict words in capitals are coloured on a terminal. */
  readonly loud?: true;
  /** Blanks before each line of text. */
  readonly indent?: number;
  /** Further blanks before each line but the first. */
  readonly hang?: number;
}

/** Small print, such as where a rule comes from. */
export interface Note {
  readonly kind: 'note';
  readonly text: Words;
  /** A word in front in plain text, where nothing else marks it, as in `from`. */
  readonly lead?: string;
}

/** Items without an order. */
export interface List {
  readonly kind: 'list';
  readonly items: readonly Words[];
  /** Whether verdict words in capitals are coloured on a terminal. */
  readonly loud?: true;
}

/** Terms, each with what it means. */
export interface Terms {
  readonly kind: 'terms';
  readonly items: readonly { readonly term: Words; readonly text: Words }[];
  /** Titles of the two columns, for a Markdown table; a list if absent. */
  readonly heads?: readonly [string, string];
}

/** A column of a table. */
export interface PageColumn {
  /** Title of the column. */
  readonly head: Words;
  /** Unit of its figures, under or behind the title. */
  readonly unit?: Words;
  /** `left` if absent; figures stand at the right. */
  readonly align?: 'left' | 'right';
  /** Columns of plain text that it takes; longer words are cut. `rest`: all that the others leave. As wide as its cells if absent. */
  readonly width?: number | 'rest';
  /** Blanks of plain text before it; 2 if neither this nor a width is given, else 0. */
  readonly gap?: number;
  /** Whether its cells are verdicts, coloured on a terminal. */
  readonly loud?: true;
}

/** What stands in a cell. A line feed in a string begins another line of the cell. */
export type PageCell = Words;

/** Rows and columns. */
export interface Table {
  readonly kind: 'table';
  readonly columns: readonly PageColumn[];
  /** A cell for each column. */
  readonly rows: readonly (readonly PageCell[])[];
  /** Whether plain text leaves out the titles of the columns. */
  readonly bare?: true;
  /** Blanks before each line of text. */
  readonly indent?: number;
}

/** One line of a formula: its sign, and what stands behind the sign. */
export interface Relation {
  readonly sign: string;
  readonly text: string;
}

/** A formula over several lines: symbol = formula = figures = result. */
export interface Formula {
  readonly kind: 'formula';
  readonly symbol: Maths;
  /** In plain text. */
  readonly text: readonly Relation[];
  /** In LaTeX; signs such as `=` and `\approx`. */
  readonly latex: readonly Relation[];
}

/** Lines that stay as they are. */
export interface Preformatted {
  readonly kind: 'preformatted';
  readonly lines: readonly string[];
}

/** A numbered step: what it is, and what belongs to it. */
export interface Step {
  readonly kind: 'step';
  readonly number: number;
  readonly title: Words;
  readonly blocks: Page;
}

/** Blocks that belong together: no blank line between them in plain text. */
export interface Group {
  readonly kind: 'group';
  readonly blocks: Page;
}

/** One thing on a page. */
export type Block = Heading | Paragraph | Note | List | Terms | Table | Formula | Preformatted | Step | Group;

/** A page: its blocks from top to bottom. */
export type Page = readonly Block[];
