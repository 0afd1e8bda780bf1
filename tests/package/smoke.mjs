// Imports and requires every entry of the built package and asks one question; run by .ci/run on each version of Node.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const require = createRequire(import.meta.url);
const manifest = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'));
const entries = Object.keys(manifest.exports)
  .filter((path) => !path.endsWith('.json'))
  .map((path) => `farend${path.slice(1)}`);

for (const name of entries) {
  const imported = await import(name);
  const required = require(name);
  const names = Object.keys(imported).filter((key) => key !== 'default' && key !== 'module.exports' && key !== '__esModule');
  assert.ok(names.length > 0, `${name} exports something`);
  for (const key of names) assert.equal(typeof required[key], typeof imported[key], `${key} of ${name}`);
}
const { awg, isInputError } = require('farend');
assert.equal(awg(24).name, '24 AWG');
assert.throws(
  () => awg(41),
  (error) => isInputError(error),
);
console.log(`node ${process.version}: ${entries.length} entries`);
