// A blank 2 x 6 mm in a keyway 2.1 x 6.6 mm keeps 0.050 mm; with its upper right corner pulled out by d, 0.050 - d / 2.
import type { Page } from 'playwright-core';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { graveAxeFindings } from '../kit/axe.ts';
import { type OpenedApp, openApp } from '../kit/open-app.ts';
import { takeScreenshots } from '../kit/screenshots.ts';
import { chooseCorner, kept, marginIs, moveCornerTo, notKept, openMenu, openPlain, stripKey } from './keep-page.ts';

let app: OpenedApp;
let first: Page;
let second: Page;

/** The first tab has the plain family with its corner at 2.01; the second opens the same. */
beforeEach(async () => {
  app = await openApp();
  first = app.page;
  await openPlain(first);
  await moveCornerTo(first, '2.01');
  await kept(first);
  second = await app.anotherTab('#compare');
  await marginIs(second, '+0.045');
  await notKept(second, 'elsewhere');
});

afterEach(async () => {
  expect(app.problems).toEqual([]);
  await app.close();
});

const notice = (page: Page, name: string) => page.getByRole('alert', { name });

test('the second tab is told, overwrites nothing, and can keep a copy of its own', async () => {
  await notice(second, 'This family is open in another tab').waitFor();
  expect(await graveAxeFindings(second)).toEqual([]);
  await takeScreenshots(second, 'keep-elsewhere');
  await chooseCorner(second);
  await moveCornerTo(second, '2.03');
  await marginIs(second, '+0.035');
  await moveCornerTo(first, '2.02');
  await kept(first);
  await second.getByRole('button', { name: 'Keep as a copy' }).click();
  await kept(second);
  await openMenu(first, /^Recent families/);
  await first.getByRole('listitem').filter({ hasText: 'open in another tab' }).waitFor();
  await expect.poll(() => first.getByRole('button', { name: 'Open Plain' }).count()).toBe(2);
  await takeScreenshots(first, 'keep-recent');
  await first.keyboard.press('Escape');
  await second.reload();
  await marginIs(second, '+0.035');
  await first.reload();
  await marginIs(first, '+0.040');
  await kept(first);
});

test('the second tab takes over where the first has come to, and the first is told and keeps no more', async () => {
  await moveCornerTo(first, '2.02');
  await kept(first);
  await second.getByRole('button', { name: 'Take over here' }).click();
  await kept(second);
  await marginIs(second, '+0.040');
  await notKept(first, 'taken');
  await notice(first, 'Another tab has taken this family over').waitFor();
  await takeScreenshots(first, 'keep-taken');
  await moveCornerTo(first, '2.09');
  await stripKey(second, 'Undo').click();
  await marginIs(second, '+0.045');
  await kept(second);
  await second.reload();
  await marginIs(second, '+0.045');
  await kept(second);
});

test('when the first tab is closed, the second keeps the family; nobody has to ask', async () => {
  await moveCornerTo(first, '2.02');
  await kept(first);
  await first.close();
  await kept(second);
  await marginIs(second, '+0.040');
  await chooseCorner(second);
  await moveCornerTo(second, '2.03');
  await kept(second);
  await second.reload();
  await marginIs(second, '+0.035');
});
