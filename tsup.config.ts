import { defineConfig, type Options } from 'tsup';

// One build for all entries: a split CommonJS build shares its chunks, so every entry throws the same InputError.
const config: Options = {
  entry: { index: 'src/index.ts', schedule: 'src/schedule/index.ts', cli: 'src/cli.ts' },
  format: ['esm', 'cjs'],
  dts: { entry: { index: 'src/index.ts', schedule: 'src/schedule/index.ts' } },
  target: 'es2022',
  platform: 'neutral',
  external: [/^node:/, 'zod', /^csv-parse/],
  splitting: true,
  treeshake: false,
  clean: true,
  sourcemap: false,
};

const exported: ReturnType<typeof defineConfig> = defineConfig(config);
export default exported;
