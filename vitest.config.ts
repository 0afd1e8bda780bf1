import { defineConfig, type ViteUserConfig } from 'vitest/config';

const config: ViteUserConfig = {
  test: {
    include: ['tests/**/*.test.ts'],
    // Worker processes, not threads: some oracles hold WebAssembly memory that only the end of a process gives back.
    pool: 'forks',
    maxWorkers: 2,
    testTimeout: 60_000,
    coverage: {
      provider: 'v8',
      include: ['src/**/*.ts'],
      reporter: ['text', 'html'],
    },
  },
};

const exported: ViteUserConfig = defineConfig(config);
export default exported;
