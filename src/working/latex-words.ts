/** Words between the formulas of a page. @module */

/** With a capital. @internal */
export function sentence(text: string): string {
  return `${text[0]?.toUpperCase() ?? ''}${text.slice(1)}`;
}

/** For a cell of a Markdown table. @internal */
export function cell(text: string): string {
  return text.replaceAll('|', '\\|');
}

const SIGNS: Readonly<Record<string, string>> = {
  '%': '\\%',
  '&': '\\&',
  '#': '\\#',
  _: '\\_',
  Ω: '$\\Omega$',
  '°': '$^{\\circ}$',
  '²': '$^{2}$',
  '·': '$\\cdot$',
  π: '$\\pi$',
  ρ: '$\\rho$',
  α: '$\\alpha$',
  '±': '$\\pm$',
  '’': "'",
};

/** Words for LaTeX, with its own signs written out. @internal */
export function plain(text: string): string {
  return text.replaceAll(/[%&#_Ω°²·πρα±’]/g, (sign) => SIGNS[sign] ?? sign);
}
