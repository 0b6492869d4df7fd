import { expect, test } from 'vitest';
import { openText } from '../../../src/app/state/document-state.ts';
import { blockBuildingOf } from '../../../src/app/state/publish/block-building.ts';
import { readNumber, readSetting, settingText } from '../../../src/app/state/publish/block-length.ts';
import { blockSetup, makeBlockSettingsStore } from '../../../src/app/state/publish/block-settings.ts';
import { blockLookOf, pickPart } from '../../../src/app/state/publish/block-state.ts';
import { SAMPLE_FAMILIES } from '../../../src/app/state/sample-families.ts';
import { makeSession } from '../../../src/app/state/session.ts';
import { setupFaults, usualSetup } from '../../../src/print3d/display-setup.ts';
import { fakeDoors } from './fake-doors.ts';

function shelfWith(text: string | null) {
  const kept = new Map<string, string>(text === null ? [] : [['sectionary-display-block', text]]);
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
    kept,
  };
}

function opened() {
  const fake = fakeDoors();
  const session = makeSession(fake.doors, null);
  openText(session.documents, fake.doors, SAMPLE_FAMILIES[1].text, 'first.json');
  const family = session.documents.getState().document?.family;
  if (!family) throw new Error('not sound');
  return { ...fake, session, family };
}

test('settings are kept in the browser, and what is unsound there is left out', () => {
  const shelf = shelfWith(null);
  const store = makeBlockSettingsStore(shelf);
  store.setState({ gap: 0.3, bed: [180, 180], letters: false });
  expect(makeBlockSettingsStore(shelf).getState()).toEqual({ gap: 0.3, bed: [180, 180], letters: false });
  store.setState({}, true);
  expect(makeBlockSettingsStore(shelf).getState()).toEqual({});
  const odd = shelfWith(
    JSON.stringify({ scale: 0.1, gap: '0.2', bed: [200], tip: 'round', wall: 4, board: 1, nozzle: null }),
  );
  expect(makeBlockSettingsStore(odd).getState()).toEqual({ wall: 4 });
  expect(makeBlockSettingsStore(shelfWith('{')).getState()).toEqual({});
});

test('a setup is as usual but for what is set and chosen; sections that are gone are left out', () => {
  const { family } = opened();
  const usual = usualSetup(family);
  const nothing = { openings: null, blanks: null, columns: null };
  expect(blockSetup(family, {}, nothing)).toEqual(usual);
  const [first] = usual.openings;
  const one = blockSetup(family, { scale: 3 }, { ...nothing, openings: [first, 'gone'] });
  expect(one).toMatchObject({ scale: 3, openings: [first], blanks: usual.blanks });
  expect(setupFaults(family, one)).toEqual([]);
  const none = blockSetup(family, {}, { ...nothing, openings: [], blanks: [] });
  expect(setupFaults(family, none).map(({ setting }) => setting)).toEqual(['openings']);
});

test('typed lengths are read in the unit of the window or their own, within their range, or told what is wrong', () => {
  const range = { words: 'nozzle', least: 0.1, most: 2 };
  expect(readSetting('0,4', 'mm', range)).toEqual({ ok: true, value: 0.4 });
  expect(readSetting(' 0.02 ', 'in', range)).toEqual({ ok: true, value: 0.508 });
  expect(readSetting('0.4 mm', 'in', range)).toEqual({ ok: true, value: 0.4 });
  expect(readSetting('16 thou', 'mm', range)).toEqual({ ok: true, value: 0.4064 });
  expect(readSetting('3', 'mm', range)).toEqual({ ok: false, words: 'Out of range: 0.1 to 2 mm.' });
  for (const text of ['', 'wide', '-1', '1e3', '0x2'])
    expect(readSetting(text, 'mm', range)).toEqual({ ok: false, words: 'Not a length: type 0.1 or more.' });
  expect(readNumber('4,5', { words: 'scale', least: 1, most: 12 })).toEqual({ ok: true, value: 4.5 });
  expect(readNumber('40', { words: 'scale', least: 1, most: 12 })).toEqual({
    ok: false,
    words: 'Out of range: 1 to 12.',
  });
  expect(readNumber('', { words: 'scale', least: 1, most: 12 }).ok).toBe(false);
  // Written and read again a length is the same to a hundredth of a millimetre.
  const back = readSetting(settingText(0.2, 'in'), 'in', range);
  expect(back.ok && back.value).toBeCloseTo(0.2, 2);
});

test('one set is built at a time; what was built before is there at once, and another family begins anew', () => {
  const { session, family, displays, doors } = opened();
  const building = blockBuildingOf(session);
  const setup = usualSetup(family);
  building.ask({ family, setup });
  building.ask({ family, setup: { ...setup } });
  expect(displays).toHaveLength(1);
  building.ask({ family, setup: { ...setup, gap: 0.3 } });
  expect(displays).toHaveLength(2);
  blockLookOf(session).setState({ openings: [], picked: 'Block', inserted: 3 });
  openText(session.documents, doors, SAMPLE_FAMILIES[1].text, 'first.json');
  expect(blockLookOf(session).getState()).toMatchObject({ openings: null, picked: null, inserted: null });
});

test('a part on another bed than the one that is looked at brings its own into sight', () => {
  expect(pickPart({ name: 'Board', bed: 1 }, 0)).toEqual({ picked: 'Board', bed: 1 });
  expect(pickPart({ name: 'Board', bed: 1 }, null)).toEqual({ picked: 'Board', bed: null });
});
