import react from '@vitejs/plugin-react';
import type { HtmlTagDescriptor, Plugin } from 'vite';
import { defineConfig } from 'vitest/config';

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

const testFolder = (name: string) => ({
  extends: true as const,
  // A busy machine must not fail a correct answer.
  test: { name, include: [`tests/${name}/**/*.test.{ts,tsx}`], environment: 'node', testTimeout: 60_000 },
});

export default defineConfig({
  // Relative addresses: the built folder works under any path of any server.
  base: './',
  plugins: [react(), contentSecurityPolicy()],
  worker: { format: 'es' },
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
          fileParallelism: false,
          testTimeout: 60_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});
