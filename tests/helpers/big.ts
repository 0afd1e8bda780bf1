/** mathjs at 64 digits, fed with the exact binary value of each double: an oracle that owes nothing to the library. @module */
import { all, type BigNumber, create, type FactoryFunctionMap, type MathJsInstance } from 'mathjs';
import { dyadic, ulp } from './exact.ts';

/** mathjs with 64 significant digits. */
export const math: MathJsInstance = create(all as FactoryFunctionMap, { number: 'BigNumber', precision: 64 });

const powersOfTwo = new Map<number, BigNumber>();

function powerOfTwo(exponent: number): BigNumber {
  let power = powersOfTwo.get(exponent);
  if (power === undefined) {
    power = math.bignumber(2).pow(exponent);
    powersOfTwo.set(exponent, power);
  }
  return power;
}

/** The double itself. `bignumber(0.1)` would be the decimal 0.1, which is another number. */
export function big(value: number): BigNumber {
  const { mantissa, exponent } = dyadic(value);
  return math.bignumber(mantissa.toString()).times(powerOfTwo(exponent));
}

/** How far a double is from the exact value, in units of the last place of the exact value. */
export function errorInUlp(actual: number, exact: BigNumber): number {
  if (exact.isZero()) return actual === 0 ? 0 : Number.POSITIVE_INFINITY;
  return big(actual).minus(exact).abs().div(ulp(exact.toNumber())).toNumber();
}
