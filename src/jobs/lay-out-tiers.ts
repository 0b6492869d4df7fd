import { type Diagram, type DiagramInput, layOutDiagram } from '../order/lay-out-diagram.ts';
import { type Job, JobCancelled } from './job.ts';

/** What is laid out, and where everything stands. */
export type { Diagram, DiagramInput };

/** The tier diagram of a family, in pixels; see {@link layOutDiagram}. */
export const layOutTiers: Job<DiagramInput, Diagram> = async (input, context) => {
  context.progress(0, 1);
  await context.pause();
  if (context.cancelled()) throw new JobCancelled();
  return layOutDiagram(input);
};
