/** A page with one block of each kind, its words given. @module */
import type { Block, Page } from '../../../src/pages/page.ts';

export const OHM = { text: 'R = rho * L / A', latex: 'R = \\frac{\\rho \\cdot L}{A}' } as const;

/** One block of each kind, every word of which is the given one. */
export function everyBlock(word: string): Page {
  const blocks = {
    heading: { kind: 'heading', level: 3, text: word },
    paragraph: { kind: 'paragraph', lead: 'Result', text: [word, ': ', OHM], loud: true, indent: 2, hang: 2 },
    note: { kind: 'note', text: word, lead: 'from' },
    list: { kind: 'list', items: [word, [OHM, ': ', word]] },
    terms: { kind: 'terms', items: [{ term: word, text: word }] },
    table: {
      kind: 'table',
      columns: [{ head: word }, { head: OHM.text, unit: word, align: 'right' }, { head: 'Verdict', loud: true }],
      rows: [
        [word, '1.5', 'FAIL'],
        ['b', [OHM], 'pass'],
      ],
    },
    formula: {
      kind: 'formula',
      symbol: { text: 'R', latex: 'R' },
      text: [
        { sign: '=', text: 'rho * L / A' },
        { sign: '≈', text: '2.6 Ω' },
      ],
      latex: [
        { sign: '=', text: '\\frac{\\rho \\cdot L}{A}' },
        { sign: '\\approx', text: '2.6\\,\\Omega' },
      ],
    },
    preformatted: { kind: 'preformatted', lines: [word] },
    step: { kind: 'step', number: 1, title: word, blocks: [{ kind: 'note', text: word }] },
    group: { kind: 'group', blocks: [{ kind: 'paragraph', text: word }] },
  } as const satisfies { readonly [K in Block['kind']]: Extract<Block, { readonly kind: K }> };
  return Object.values(blocks);
}
