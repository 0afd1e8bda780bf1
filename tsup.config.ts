import { defineConfig, type Options } from 'tsup';

const library = { index: 'src/index.ts', pages: 'src/pages/index.ts', schedule: 'src/schedule/index.ts', working: 'src/working/index.ts' };

const shared: Options = {
  target: 'es2022',
  platform: 'neutral',
  external: [/^node:/, 'zod', /^mathjs/],
  // Entries of one format share their chunks, so every entry throws the same InputError.
  splitting: true,
  treeshake: false,
  sourcemap: false,
  silent: true,
};

// The two run side by side, so neither may clean the folder: `npm run build` does, before.
const config: Options[] = [
  { ...shared, format: 'esm', entry: { ...library, cli: 'src/cli.ts' }, dts: { entry: library } },
  { ...shared, format: 'cjs', entry: library, dts: { entry: library } },
];

const exported: ReturnType<typeof defineConfig> = defineConfig(config);
export default exported;
