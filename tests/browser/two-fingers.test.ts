import { expect, test } from 'vitest';
import { openApp } from '../kit/open-app.ts';
import { drawing, verdict } from './compare-page.ts';
import { onSheet, openInDraw, savedOutline } from './draw-page.ts';

const SQUARE = {
  name: 'Touch',
  runningClearance: 0.04,
  profiles: [
    {
      id: 'plate',
      kind: 'blank',
      name: 'Plate',
      outline: [
        [0, 0],
        [2, 0],
        [2, 8],
        [0, 8],
      ],
    },
    {
      id: 'slot',
      kind: 'opening',
      name: 'Slot',
      outline: [
        [0, 0],
        [4, 0],
        [4, 9],
        [0, 9],
      ],
    },
  ],
};

interface Place {
  readonly x: number;
  readonly y: number;
}

/** One and a half times as far from each other, and moved besides. */
const spread = ({ x, y }: Place): Place => ({ x: x * 1.5 - 300, y: y * 1.5 - 150 });

const near = ({ x, y }: Place) => ({ x: Math.round(x / 2), y: Math.round(y / 2) });

test('a second finger neither leads nor ends what the first one moves; two that come down move and zoom the sheet', async () => {
  const app = await openApp({ context: { hasTouch: true } });
  await openInDraw(app.page, SQUARE, 'Blanks and tools', 'Plate');
  const touch = await app.page.context().newCDPSession(app.page);
  const point = async (id: number, x: number, y: number) => ({ id, ...(await onSheet(app.page, x, y)) });
  const send = async (type: 'touchStart' | 'touchMove' | 'touchEnd', ...touchPoints: ({ id: number } & Place)[]) =>
    touch.send('Input.dispatchTouchEvent', { type, touchPoints });
  await send('touchStart', await point(1, 2, 8));
  await send('touchMove', await point(1, 2.2, 8.1));
  const held = await point(1, 2.5, 8.2);
  await send('touchMove', held);
  await send('touchStart', held, await point(2, 0.5, 3));
  await send('touchMove', held, await point(2, 0.2, 2));
  await send('touchEnd', await point(2, 0.2, 2));
  await send('touchMove', await point(1, 3, 8.5));
  await send('touchEnd');
  expect(await savedOutline(app.page, 'plate')).toEqual([
    [0, 0],
    [2, 0],
    [3, 8.5],
    [0, 8],
  ]);

  // Two fingers that come down move the sheet and zoom it, though the first one came down on a corner; what lay under
  // them stays there. One that stays down goes on moving it.
  const [corner, inside] = [await onSheet(app.page, 0, 8), await onSheet(app.page, 1, 5)];
  const pinch = async (first: Place, second: Place) => {
    await send('touchStart', { id: 1, ...first });
    await send('touchStart', { id: 1, ...first }, { id: 2, ...second });
    await send('touchMove', { id: 1, ...spread(first) }, { id: 2, ...spread(second) });
  };
  await pinch(corner, inside);
  await expect.poll(async () => near(await onSheet(app.page, 0, 8))).toEqual(near(spread(corner)));
  expect(near(await onSheet(app.page, 1, 5))).toEqual(near(spread(inside)));
  const left = spread(inside);
  await send('touchEnd', { id: 1, ...spread(corner) });
  await send('touchMove', { id: 2, x: left.x + 60, y: left.y + 40 });
  await expect.poll(async () => near(await onSheet(app.page, 1, 5))).toEqual(near({ x: left.x + 60, y: left.y + 40 }));
  await send('touchEnd');
  expect((await savedOutline(app.page, 'plate')).at(-1)).toEqual([0, 8]);

  await app.page.getByRole('button', { name: 'Compare', exact: true }).click();
  await app.page.locator('[data-drawing="compare"][data-sheet] canvas').first().waitFor({ state: 'attached' });
  const before = await verdict(app.page);
  const scale = async () => Number((await drawing(app.page).getAttribute('data-sheet'))?.split(' ')[0]);
  const fitted = await scale();
  const box = await drawing(app.page).boundingBox();
  if (!box) throw new Error('The drawing has no box.');
  const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  await pinch({ x: middle.x - 10, y: middle.y - 60 }, { x: middle.x + 10, y: middle.y + 60 });
  await expect.poll(async () => (await scale()) / fitted).toBeCloseTo(1.5, 2);
  await send('touchEnd');
  // The blank that the first finger came down on lies where it lay.
  expect(await verdict(app.page)).toBe(before);
  expect(app.problems).toEqual([]);
  await app.close();
});
