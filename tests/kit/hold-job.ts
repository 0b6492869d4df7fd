import type { Page } from 'playwright-core';

/**
 * Keeps the next job of this name, of those that have a thread of their own, from its thread: it is on its way until it
 * is stopped, however quick the machine is. The one after it runs.
 */
export function holdJob(page: Page, name: string): Promise<void> {
  return page.evaluate((held) => {
    const RealWorker = window.Worker;
    window.Worker = class extends RealWorker {
      override postMessage(message: { readonly name?: string }) {
        if (message.name !== held) return super.postMessage(message);
        window.Worker = RealWorker;
      }
    };
  }, name);
}
