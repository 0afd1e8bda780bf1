/**
 * What arrives at the far end of a copper run: resistance, voltage, power, budget and maximum length.
 *
 * SI units throughout, as flavoured plain numbers; wrong inputs throw an {@link InputError}, a physical "no" is a result.
 * @module
 */
export * from './cable/index.ts';
export * from './circuit/index.ts';
export * from './conductor/index.ts';
export * from './ethernet/index.ts';
export * from './limits/index.ts';
export * from './plan/index.ts';
export * from './quantity/index.ts';
export * from './sources/index.ts';
