import { expect, test } from 'vitest';
import { Autosave } from '../../../src/app/keep/autosave.ts';
import { turn } from './fake-doors.ts';

/** Writes that end when the test says so. */
function heldWrites() {
  const done: string[] = [];
  const running: (() => void)[] = [];
  const write = (name: string) => () =>
    new Promise<void>((resolve) => {
      done.push(name);
      running.push(resolve);
    });
  const finish = async () => {
    running.shift()?.();
    await turn();
  };
  return { done, write, finish };
}

test('the first is written at once, and of those that come meanwhile the latest only', async () => {
  const { done, write, finish } = heldWrites();
  const autosave = new Autosave(async () => {});
  autosave.request(write('one'));
  await turn();
  for (const name of ['two', 'three', 'four']) autosave.request(write(name));
  expect(done).toEqual(['one']);
  await finish();
  expect(done).toEqual(['one', 'four']);
  let settled = false;
  autosave.settled().then(() => {
    settled = true;
  });
  await turn();
  expect(settled).toBe(false);
  await finish();
  expect(settled).toBe(true);
  autosave.request(write('five'));
  await turn();
  expect(done).toEqual(['one', 'four', 'five']);
});

test('what changes together is written once', async () => {
  const { done, write } = heldWrites();
  const autosave = new Autosave(async () => {});
  for (const name of ['one', 'two', 'three']) autosave.request(write(name));
  await turn();
  expect(done).toEqual(['three']);
});

test('writes that take the window’s time leave it a pause, never more than a quarter of a second', async () => {
  const pauses: number[] = [];
  const autosave = new Autosave(async (ms) => void pauses.push(ms));
  const busy = async (ms: number) => {
    const until = performance.now() + ms;
    while (performance.now() < until);
  };
  autosave.request(async () => {
    autosave.request(() => busy(0));
    await busy(30);
  });
  await autosave.settled();
  autosave.request(async () => {
    autosave.request(() => busy(0));
    await busy(200);
  });
  await autosave.settled();
  expect(pauses[0]).toBeGreaterThanOrEqual(120);
  expect(pauses.slice(1)).toEqual([250]);
  expect(pauses[0]).toBeLessThanOrEqual(250);
});
