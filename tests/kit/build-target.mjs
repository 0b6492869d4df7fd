// Builds one thing into one folder: node tests/kit/build-target.mjs app|cli|bench FOLDER
// Runs as a process of its own with NODE_ENV=production, so that no test runner's environment leaks into the build.

import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'vite';
import { PROJECT_ROOT } from './install-when-needed.mjs';

const BENCH_FOLDER = join(PROJECT_ROOT, 'tests', 'bench');

/** @param {string | string[]} entry @param {true | undefined} noExternal */
function nodeProgram(entry, noExternal) {
  return {
    build: { ssr: true, target: 'node20', minify: false, rolldownOptions: { input: entry } },
    // The exact solver starts a thread from a file of its own, and solids are made by a wasm file beside its library: both
    // stay where they are installed.
    ssr: { noExternal, external: ['clingo-wasm', 'manifold-3d'], target: /** @type {const} */ ('node') },
  };
}

/** @type {Record<string, () => import('vite').InlineConfig>} */
const RECIPES = {
  app: () => ({}),
  // The command line carries its libraries with it: it starts in a fifth of the time.
  cli: () => nodeProgram(join(PROJECT_ROOT, 'src', 'cli', 'main.ts'), true),
  // Benches load the engines they compare with from node_modules, as anybody else would.
  bench: () => {
    const entries = readdirSync(BENCH_FOLDER).filter((name) => name.endsWith('.bench.ts'));
    return nodeProgram(
      entries.map((name) => join(BENCH_FOLDER, name)),
      undefined,
    );
  },
};

const [target = '', outDir = ''] = process.argv.slice(2);
const recipe = RECIPES[target];
if (!recipe || !outDir) throw new Error(`Usage: build-target.mjs ${Object.keys(RECIPES).join('|')} FOLDER`);
const { build: options, ...rest } = recipe();
await build({
  root: PROJECT_ROOT,
  mode: 'production',
  logLevel: 'warn',
  ...rest,
  build: { ...options, outDir, emptyOutDir: true },
});
