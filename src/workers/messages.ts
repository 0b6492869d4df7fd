import type { JobName } from '../jobs/catalogue.ts';

/** From the page to a worker. */
export type ToWorker = { kind: 'run'; id: number; name: JobName; input: unknown } | { kind: 'cancel'; id: number };

/** From a worker to the page. */
export type FromWorker =
  | { kind: 'progress'; id: number; done: number; total: number }
  | { kind: 'part'; id: number; value: unknown }
  | { kind: 'result'; id: number; output: unknown }
  | { kind: 'failed'; id: number; message: string; cancelled: boolean };
