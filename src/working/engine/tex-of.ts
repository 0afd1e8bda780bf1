/** Symbols in LaTeX. @module */

const GREEK = ['alpha', 'beta', 'epsilon', 'lambda', 'mu', 'nu', 'rho', 'sigma', 'tau', 'theta', 'kappa'];
const OPERATORS = ['max', 'min', 'lim'];

/** `P_PSE` is `P_{\mathrm{PSE}}`, `r20_#` is `r_{20,#}`, `Ra_#` is `R_{a,#}`, `rho` is `\rho`. */
export function texOf(symbol: string): string {
  const [head = '', ...rest] = symbol.split('_');
  const [, stem = head, digits = ''] = /^(\D+)(\d*)$/.exec(head) ?? [];
  const greek = GREEK.find((name) => stem.startsWith(name) && stem.length - name.length < 2);
  const letter = greek ?? stem.slice(0, /^[A-Za-z][a-z]$/.test(stem) ? 1 : undefined);
  const subs = [digits, stem.slice(letter.length), ...rest]
    .filter((part) => part !== '')
    .map((part) => (OPERATORS.includes(part) ? `\\${part}` : /^[A-Za-z]{2,}\d*$/.test(part) ? `\\mathrm{${part}}` : part));
  const base = greek === undefined ? letter : `\\${greek}`;
  return subs.length === 0 ? base : `${base}_{${subs.join(',')}}`;
}
