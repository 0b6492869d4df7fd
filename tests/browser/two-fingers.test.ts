import { expect, test } from 'vitest';
import { openApp } from '../kit/open-app.ts';
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
  ],
};

test('a second finger neither leads nor ends what the first one holds', async () => {
  const app = await openApp({ context: { hasTouch: true } });
  await openInDraw(app.page, SQUARE, 'Blanks and tools', 'Plate');
  const touch = await app.page.context().newCDPSession(app.page);
  const point = async (id: number, x: number, y: number) => ({ id, ...(await onSheet(app.page, x, y)) });
  const send = async (type: 'touchStart' | 'touchMove' | 'touchEnd', ...touchPoints: { x: number; y: number }[]) =>
    touch.send('Input.dispatchTouchEvent', { type, touchPoints });
  await send('touchStart', await point(1, 2, 8));
  await send('touchMove', await point(1, 2.2, 8.1));
  const held = await point(1, 2.5, 8.2);
  await send('touchMove', held);
  await send('touchStart', held, await point(2, 0.5, 3));
  await send('touchMove', held, await point(2, 0.2, 2));
  // A point that is left out is lifted.
  await send('touchMove', held);
  await send('touchMove', await point(1, 3, 8.5));
  await send('touchEnd');
  expect(await savedOutline(app.page, 'plate')).toEqual([
    [0, 0],
    [2, 0],
    [3, 8.5],
    [0, 8],
  ]);
  expect(app.problems).toEqual([]);
  await app.close();
});
