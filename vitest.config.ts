import { defineConfig, type ViteUserConfig } from 'vitest/config';

const config: ViteUserConfig = {
  test: {
    include: ['tests/**/*.test.ts'],
    // Worker processes, not threads: some oracles hold WebAssembly memory that only the end of a process gives back.
    pool: 'forks',
    maxWorkers: 2,
    // A hang ends; a busy machine does not fail a test that is only slow.
    testTimeout: 300_000,
    hookTimeout: 300_000,
    coverage: {
      provider: 'v8',
      include: ['src/**/*.ts'],
      reporter: ['text', 'html'],
      // What was reached is told even where a test failed.
      reportOnFailure: true,
    },
  },
};

const exported: ViteUserConfig = defineConfig(config);
export default exported;
