/** A page as plain data, and its writers: text, Markdown, LaTeX. @module */
export { InputError, type InputErrorCode, type InputErrorJson, isInputError } from '../quantity/input-error.ts';
export type {
  Block,
  Formula,
  Group,
  Heading,
  List,
  Maths,
  Note,
  Page,
  PageCell,
  PageColumn,
  Paragraph,
  Preformatted,
  Relation,
  Step,
  Table,
  Terms,
  Words,
} from './page.ts';
export { pageLatex } from './page-latex.ts';
export { pageMarkdown } from './page-markdown.ts';
export { type PageTextOptions, pageText } from './page-text.ts';
