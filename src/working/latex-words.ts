/** Words between the formulas of a page. @module */

/** With a capital. @internal */
export function sentence(text: string): string {
  return `${text[0]?.toUpperCase() ?? ''}${text.slice(1)}`;
}

/** Words within Markdown: a sign of the caller's neither ends a cell nor begins a formula. @internal */
export function cell(text: string): string {
  return text.replaceAll(/[|$]/g, '\\$&');
}

const SIGNS: Readonly<Record<string, string>> = {
  '\\': '\\textbackslash{}',
  '{': '\\{',
  '}': '\\}',
  $: '\\$',
  '%': '\\%',
  '&': '\\&',
  '#': '\\#',
  _: '\\_',
  '^': '\\textasciicircum{}',
  '~': '\\textasciitilde{}',
  Ω: '$\\Omega$',
  '°': '$^{\\circ}$',
  '²': '$^{2}$',
  '³': '$^{3}$',
  '⁴': '$^{4}$',
  '√': '$\\surd$',
  '½': '$\\frac{1}{2}$',
  '·': '$\\cdot$',
  '±': '$\\pm$',
  π: '$\\pi$',
  ρ: '$\\rho$',
  α: '$\\alpha$',
  '’': "'",
  '“': '``',
  '”': "''",
};

/** Words for LaTeX, with its own signs written out; a label of the caller's may hold any of them. @internal */
export function plain(text: string): string {
  return text.replaceAll(/[^\w\s]|_/gu, (sign) => SIGNS[sign] ?? sign);
}
