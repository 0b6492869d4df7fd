import { keepOf } from '../../../src/app/keep/keep-state.ts';
import { commitFamily } from '../../../src/app/state/edit-document.ts';
import { noticesOf } from '../../../src/app/state/notices-state.ts';
import { type FakeBrowser, type FakeWindow, quiet } from './fake-keep.ts';

/** The file's value of the family that a window shows. */
export const fileOf = ({ session }: FakeWindow) => session.documents.getState().document?.file;
export const nameIn = (window: FakeWindow) => fileOf(window)?.name;
export const statusOf = ({ session }: FakeWindow) => keepOf(session).getState().status;
/** Titles of the notices that a window shows. */
export const noticesIn = ({ session }: FakeWindow) =>
  noticesOf(session)
    .getState()
    .map(({ title }) => title);

/** Gives the open family another name: an edit. */
export async function rename({ session }: FakeWindow, name: string): Promise<void> {
  const { document } = session.documents.getState();
  if (document) commitFamily(session.documents, session.doors, { ...document.file, name });
  await quiet();
}

/** Presses a key of the notices. */
export async function press({ session }: FakeWindow, label: string): Promise<void> {
  const keys = noticesOf(session)
    .getState()
    .flatMap(({ keys }) => keys);
  keys.find((key) => key.label === label)?.press();
  await quiet();
}

/** A window whose tab was closed, or whose browser crashed: its rights are free. */
export const closeWindow = async (browser: FakeBrowser, { session }: FakeWindow) => {
  const { workId } = keepOf(session).getState();
  if (workId) browser.free(workId);
  await quiet();
};

/** Lets the windows have what they politely wait for. */
export async function comeToRest(...windows: FakeWindow[]): Promise<void> {
  for (const window of windows) {
    window.calm();
    await quiet();
  }
}
