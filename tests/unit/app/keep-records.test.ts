import { beforeEach, describe, expect, test } from 'vitest';
import { familyLabel } from '../../../src/app/keep/family-label.ts';
import {
  copySnapshots,
  listSnapshots,
  removeSnapshot,
  renameSnapshot,
  takeSnapshot,
} from '../../../src/app/keep/snapshots.ts';
import {
  claimWork,
  listWorks,
  type NewHead,
  readBodies,
  removeWork,
  writeWork,
} from '../../../src/app/keep/work-records.ts';
import { SAMPLE_FAMILIES } from '../../../src/app/state/sample-families.ts';
import type { FamilyFile } from '../../../src/interchange/json/schema.ts';
import { FakeShelf } from './fake-keep.ts';

const FILE = JSON.parse(SAMPLE_FAMILIES[1].text) as FamilyFile;

let shelf = new FakeShelf();

beforeEach(() => {
  shelf = new FakeShelf();
});

function head(keptAt: number, fields: Partial<NewHead> = {}): NewHead {
  const none = { edited: true, desk: null, fileName: 'a.json' };
  return { ...familyLabel(FILE), ...none, id: 'w', writer: 'me', keptAt, ...fields };
}

const bodies = async () => {
  const [work] = await listWorks(shelf);
  return readBodies(shelf, work);
};

describe('the records of a work', () => {
  test('are two bodies that take turns, and a head that points to the later', async () => {
    for (let i = 1; i <= 5; i++) expect(await writeWork(shelf, head(i), `body ${i}`)).toBe(true);
    expect(await bodies()).toEqual(['body 5', 'body 4']);
    expect(shelf.records.size).toBe(3);
  });

  test('tell the family without opening it', async () => {
    await writeWork(shelf, head(1), 'body');
    expect(await listWorks(shelf)).toMatchObject([{ name: FILE.name, sections: 4, profiles: FILE.profiles.length }]);
  });

  test('of another writer are left alone, unless the work is claimed; then the other one is refused', async () => {
    await writeWork(shelf, head(1), 'mine');
    expect(await writeWork(shelf, head(2, { writer: 'other' }), 'theirs')).toBe(false);
    expect(await bodies()).toEqual(['mine']);
    expect(shelf.records.size).toBe(2);
    expect(await claimWork(shelf, 'w', 'other')).toMatchObject({ writer: 'other', keptAt: 1 });
    for (const name of ['a', 'b', 'c']) expect(await writeWork(shelf, head(3, { writer: 'other' }), name)).toBe(true);
    expect(await writeWork(shelf, head(4), 'too late')).toBe(false);
    expect(await bodies()).toEqual(['c', 'b']);
    expect(shelf.records.size).toBe(3);
    expect(await claimWork(shelf, 'nowhere', 'me')).toBeNull();
  });

  test('are removed together and put back together', async () => {
    await writeWork(shelf, head(1), 'body 1');
    await writeWork(shelf, head(1, { id: 'w2' }), 'other work');
    await takeSnapshot(shelf, 'w', { id: 's', title: 'Before', takenAt: 5, file: FILE });
    const before = new Map(shelf.records);
    const putBack = await removeWork(shelf, 'w');
    expect([...shelf.records.keys()].filter((key) => !key.includes('w2'))).toEqual([]);
    await putBack();
    expect(new Map([...shelf.records].sort())).toEqual(new Map([...before].sort()));
  });

  test('that are none are passed over', async () => {
    await writeWork(shelf, head(1), 'body');
    for (const [key, value] of [
      ['head/x', 7],
      ['head/y', null],
      ['head/z', { version: 2 }],
      ['else', 'text'],
    ] as const)
      shelf.records.set(key, value);
    expect(await listWorks(shelf)).toHaveLength(1);
  });
});

describe('snapshots', () => {
  const take = (id: string, takenAt: number) =>
    takeSnapshot(shelf, 'w', { id, title: `Named ${id}`, takenAt, file: FILE });
  const titles = async (work = 'w') => (await listSnapshots(shelf, work)).map(({ title }) => title);

  test('are listed by work, the latest first, with the family to the letter', async () => {
    await take('a', 1);
    await take('b', 2);
    expect([await titles(), await titles('other')]).toEqual([['Named b', 'Named a'], []]);
    expect((await listSnapshots(shelf, 'w'))[0].file).toEqual(FILE);
  });

  test('are renamed, deleted, put back, copied', async () => {
    await take('a', 1);
    await renameSnapshot(shelf, 'w', 'a', 'Other name');
    expect(await titles()).toEqual(['Other name']);
    await copySnapshots(shelf, 'w', 'copy');
    const putBack = await removeSnapshot(shelf, 'w', 'a');
    expect([await titles(), await titles('copy')]).toEqual([[], ['Other name']]);
    await putBack();
    expect(await titles()).toEqual(['Other name']);
  });

  test('that do not fit on a full disk are not there', async () => {
    shelf.trouble = new DOMException('full', 'QuotaExceededError');
    await expect(take('a', 1)).rejects.toThrow('full');
    expect(await titles()).toEqual([]);
  });
});
