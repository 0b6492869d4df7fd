import { type Plugin, preview } from 'vite';
import type {} from 'vitest';
import type { TestProject } from 'vitest/node';
import { buildOnce } from './build-once.mjs';

declare module 'vitest' {
  export interface ProvidedContext {
    /** Address of the built app's page. */
    appUrl: string;
  }
}

/** Sends files as they lie: to deflate two megabytes anew for each of three hundred openings is work for nothing. */
const sendPlain: Plugin = {
  name: 'send-plain',
  configurePreviewServer({ middlewares }) {
    middlewares.use((request, _response, next) => {
      delete request.headers['accept-encoding'];
      next();
    });
  },
};

/** Builds the app as `npm start` does and serves it on a free port for the length of the browser tests. */
export default async function serveApp(project: TestProject): Promise<() => Promise<void>> {
  const outDir = buildOnce('app');
  const server = await preview({
    logLevel: 'warn',
    plugins: [sendPlain],
    build: { outDir },
    preview: { host: '127.0.0.1', port: 0, strictPort: false },
  });
  const address = server.httpServer.address();
  if (!address || typeof address === 'string') throw new Error('The preview server has no port.');
  project.provide('appUrl', `http://127.0.0.1:${address.port}/`);
  return () => server.close();
}
