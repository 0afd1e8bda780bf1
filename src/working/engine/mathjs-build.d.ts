/** The single-file build of mathjs, which loads in a tenth of the time of its package index. @module */
declare module 'mathjs/lib/browser/math.js' {
  import type { MathJsInstance } from 'mathjs';

  const math: MathJsInstance;
  export = math;
}
