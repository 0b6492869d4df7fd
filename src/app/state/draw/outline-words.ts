import type { OutlineFault } from '../../../geom/check-outline.ts';

/** An outline's fault in words, with its vertices and edges counted from 1, as the table of vertices counts them. */
export function faultText(message: string): string {
  return message.replace(/\b(vertex|edge) (\d+)/g, (_, kind: string, n: string) => `${kind} ${Number(n) + 1}`);
}

/** Why an outline was not taken, as a whole sentence or two. */
export function refusalText(fault: Pick<OutlineFault, 'message'> | null): string {
  return `Not taken: ${faultText(fault?.message ?? 'it is not a sound outline')}. The last sound outline stays.`;
}
