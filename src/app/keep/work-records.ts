import type { Vertex } from '../../geom/vertex.ts';
import type { PenTarget } from '../state/draw/draw-state.ts';
import type { PickedPart } from '../state/selection-state.ts';
import type { KeepShelf } from './shelf.ts';

/** What lay open beside the family: what was picked, and what the pen had begun. */
export interface Desk {
  readonly entrantId: string | null;
  readonly openingId: string | null;
  readonly part: PickedPart;
  readonly pen: readonly Vertex[] | null;
  /** What the outline that the pen has begun is for. */
  readonly penFor: PenTarget | null;
}

/** What is told of a family without opening it. */
export interface FamilyLabel {
  readonly name: string;
  readonly sections: number;
  readonly profiles: number;
}

/** The head of a kept work: whose it is, and which of its bodies holds. Small, and written after the body. */
export interface WorkHead extends FamilyLabel {
  readonly version: 1;
  readonly id: string;
  /** The window that may write it; another one's write is not taken. */
  readonly writer: string;
  /** The body that holds, and the one before it, in case the first cannot be read. */
  readonly body: string;
  readonly older: string | null;
  readonly fileName: string;
  /** Milliseconds since 1970. */
  readonly keptAt: number;
  readonly edited: boolean;
  readonly desk: Desk | null;
}

const HEAD = 'head/';

/** The key of a work's head. */
const headKey = (id: string): string => HEAD + id;

/** Every key of a work begins with one of these. */
const prefixes = (id: string): string[] => [`body/${id}/`, `snapshot/${id}/`];

/** The heads of all kept works, the latest first; what is no head is passed over. */
export async function listWorks(shelf: KeepShelf): Promise<WorkHead[]> {
  const heads = (await shelf.keys()).filter((key) => key.startsWith(HEAD));
  const found = (await shelf.getMany(heads)).filter(isHead);
  return found.sort((a, b) => b.keptAt - a.keptAt);
}

/** The head of one work; null where there is none. */
async function readHead(shelf: KeepShelf, id: string): Promise<WorkHead | null> {
  const head = await shelf.get(headKey(id));
  return isHead(head) ? head : null;
}

/** The bodies of a work, the one that holds first; what cannot be read is undefined. */
export async function readBodies(shelf: KeepShelf, head: WorkHead): Promise<unknown[]> {
  const keys = head.older === null ? [head.body] : [head.body, head.older];
  return Promise.all(keys.map((key) => shelf.get(key).catch(() => undefined)));
}

/** What is written of a work, but for the names of its records. */
export type NewHead = Omit<WorkHead, 'version' | 'body' | 'older'>;

/**
 * Writes a work: first its body as a new record, then the head that points there. Until the head is written the body
 * before it holds, so that neither a crash nor a full disk in between loses anything.
 *
 * @returns false where another window has taken the work over; then nothing of it is changed.
 * @throws what the shelf throws, such as a full disk.
 * @check tests/unit/app/keep-records.test.ts
 */
export async function writeWork(shelf: KeepShelf, head: NewHead, work: unknown): Promise<boolean> {
  const { id, writer } = head;
  const before = await readHead(shelf, id);
  if (before && before.writer !== writer) return false;
  const [even, odd] = [`body/${id}/${writer}-0`, `body/${id}/${writer}-1`];
  const body = before?.body === even ? odd : even;
  await shelf.set(body, work);
  const ours = await changeHead(shelf, id, writer, (old) => ({
    ...head,
    version: 1,
    body,
    older: old?.body ?? null,
  }));
  const left = ours ? before?.older : body;
  if (left && left !== body && left !== before?.body) await shelf.remove([left]);
  else if (!ours) await shelf.remove([body]);
  return ours;
}

/** Changes the head of a work that is this writer's; returns whether it was. */
export async function changeHead(
  shelf: KeepShelf,
  id: string,
  writer: string,
  change: (old: WorkHead | null) => WorkHead | null,
): Promise<boolean> {
  let ours = false;
  await shelf.update(headKey(id), (old) => {
    const head = isHead(old) ? old : null;
    ours = head === null || head.writer === writer;
    return ours ? (change(head) ?? old) : old;
  });
  return ours;
}

/** Makes a window the one that may write a work from now on; null where there is no such work. */
export async function claimWork(shelf: KeepShelf, id: string, writer: string): Promise<WorkHead | null> {
  let claimed: WorkHead | null = null;
  if (!(await readHead(shelf, id))) return null;
  await shelf.update(headKey(id), (old) => {
    claimed = isHead(old) ? { ...old, writer } : null;
    return claimed ?? old;
  });
  return claimed;
}

/** Removes a work with its snapshots; returns what puts all of it back. */
export async function removeWork(shelf: KeepShelf, id: string): Promise<() => Promise<void>> {
  const [first, ...rest] = prefixes(id);
  const keys = (await shelf.keys()).filter((key) => [first, ...rest].some((prefix) => key.startsWith(prefix)));
  // The head goes first and comes back last: a head always has its body.
  const all = [headKey(id), ...keys];
  const records = await shelf.getMany(all);
  await shelf.remove(all);
  return async () => {
    for (const i of [...all.keys()].reverse()) await shelf.set(all[i], records[i]);
  };
}

function isHead(value: unknown): value is WorkHead {
  if (typeof value !== 'object' || value === null) return false;
  const { version, id, writer, body, older, name, fileName, keptAt } = value as Record<string, unknown>;
  const texts = [id, writer, body, name, fileName].every((text) => typeof text === 'string');
  return version === 1 && texts && (older === null || typeof older === 'string') && typeof keptAt === 'number';
}
