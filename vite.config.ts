import { createHash } from 'node:crypto';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import react from '@vitejs/plugin-react';
import type { HtmlTagDescriptor, Plugin } from 'vite';
import { defineConfig } from 'vitest/config';
import { SlowFirst } from './tests/kit/slow-first.ts';

/**
 * What the built page may load and do. It stands in the page itself, so that it holds wherever the files are served;
 * the dev server is left out, because its hot-reload preamble is an inline script.
 */
const CONTENT_SECURITY_POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "worker-src 'self'",
  "connect-src 'self'",
  "img-src 'self' blob: data:",
  "font-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

function contentSecurityPolicy(): Plugin {
  const tag: HtmlTagDescriptor = {
    tag: 'meta',
    attrs: { 'http-equiv': 'Content-Security-Policy', content: CONTENT_SECURITY_POLICY },
    injectTo: 'head-prepend',
  };
  return { name: 'content-security-policy', apply: 'build', transformIndexHtml: () => [tag] };
}

const OFFLINE = join(import.meta.dirname, 'src', 'app', 'offline');

/** What an installed app is called and drawn with; addresses are relative, so that it works under any path. */
const MANIFEST = {
  name: 'Sectionary',
  short_name: 'Sectionary',
  description: 'Which blank enters which keyway, why, and by how much.',
  start_url: './',
  scope: './',
  display: 'standalone',
  background_color: '#f3eddf',
  theme_color: '#182030',
  icons: [
    { src: 'icons/icon-192.png', sizes: '192x192', type: 'image/png', purpose: 'any' },
    { src: 'icons/icon-512.png', sizes: '512x512', type: 'image/png', purpose: 'any' },
    { src: 'icons/icon-whole-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
  ],
};

/**
 * Makes the built page installable and able to open without a network: a manifest, icons, and a worker that knows all
 * files of its build under a hash of them.
 */
function offline(): Plugin {
  const worker = 'offline-worker.js';
  const link = (rel: string, href: string): HtmlTagDescriptor => ({
    tag: 'link',
    attrs: { rel, href },
    injectTo: 'head',
  });
  return {
    name: 'offline',
    apply: (config, { command }) => command === 'build' && !config.build?.ssr,
    buildStart() {
      this.emitFile({ type: 'chunk', id: join(OFFLINE, 'offline-worker.ts'), fileName: worker });
      this.emitFile({ type: 'asset', fileName: 'manifest.webmanifest', source: JSON.stringify(MANIFEST, null, 2) });
      for (const name of readdirSync(join(OFFLINE, 'icons')))
        this.emitFile({ type: 'asset', fileName: `icons/${name}`, source: readFileSync(join(OFFLINE, 'icons', name)) });
    },
    transformIndexHtml: {
      order: 'post',
      handler: () => [link('manifest', './manifest.webmanifest'), link('apple-touch-icon', './icons/icon-192.png')],
    },
    generateBundle: {
      order: 'post',
      handler(_options, bundle) {
        const files = Object.keys(bundle)
          .filter((name) => name !== worker && !name.endsWith('.map'))
          .sort();
        const hash = createHash('sha256');
        for (const name of files) {
          const file = bundle[name];
          hash.update(name).update(file.type === 'chunk' ? file.code : file.source);
        }
        const chunk = bundle[worker];
        if (chunk?.type !== 'chunk' || !chunk.code.includes(OFFLINE_BUILD)) throw new Error('The worker has no list.');
        const list = JSON.stringify({ hash: hash.digest('hex').slice(0, 16), files });
        chunk.code = chunk.code.replace(OFFLINE_BUILD, () => list);
      },
    },
  };
}

/** Where the list of files goes in the worker. */
const OFFLINE_BUILD = '__OFFLINE_BUILD__';

/**
 * Only the single-threaded build of the exact solver is shipped: the other one needs shared memory, which a page that
 * is served without further headers does not have, and is as large again.
 */
function oneSolver(): Plugin {
  return {
    name: 'one-solver',
    apply: 'build',
    enforce: 'pre',
    resolveId(source, importer, options) {
      if (source !== './clingo-mt.js' || !importer?.includes('clingo-wasm')) return null;
      return this.resolve('./clingo.js', importer, { ...options, skipSelf: true });
    },
  };
}

const testFolder = (name: string) => ({
  extends: true as const,
  // A busy machine must not fail a correct answer. Pure modules keep nothing between files, so they are loaded once a worker.
  test: {
    isolate: false,
    name,
    include: [`tests/${name}/**/*.test.{ts,tsx}`],
    environment: 'node',
    testTimeout: 120_000,
    // As much for what a file loads before its tests: the typeface took 12 s beside other work.
    hookTimeout: 120_000,
  },
});

export default defineConfig({
  // Relative addresses: the built folder works under any path of any server.
  base: './',
  plugins: [react(), contentSecurityPolicy(), offline(), oneSolver()],
  worker: { format: 'es', plugins: () => [oneSolver()] },
  // Their thread and their wasm are found beside their own files, also by the dev server.
  optimizeDeps: { exclude: ['clingo-wasm', 'manifold-3d'] },
  build: {
    target: 'es2023',
    // Nothing becomes a data: address: fonts and workers must come from 'self'.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    chunkSizeWarningLimit: 900,
  },
  server: { host: '127.0.0.1', port: 5198 },
  preview: { host: '127.0.0.1', port: 5199, strictPort: true },
  test: {
    passWithNoTests: false,
    // Two files at a time also on two cores, where the default is one: tests wait for a browser or a file half of the time.
    maxWorkers: 2,
    sequence: { sequencer: SlowFirst },
    projects: [
      testFolder('house'),
      testFolder('unit'),
      testFolder('laws'),
      testFolder('outside'),
      testFolder('golden'),
      {
        extends: true,
        test: {
          name: 'browser',
          include: ['tests/browser/**/*.test.ts'],
          environment: 'node',
          globalSetup: ['tests/kit/serve-app.ts'],
          // One browser serves all files of a lane, each in windows of its own.
          isolate: false,
          setupFiles: ['tests/kit/close-windows.ts'],
          // Many steps on a busy machine take their time; a step that waits in vain ends a test much sooner.
          testTimeout: 240_000,
          hookTimeout: 120_000,
          // As patient as the driver's own waiting: a page on a busy machine takes its time.
          expect: { poll: { timeout: 60_000 } },
        },
      },
    ],
  },
});
