import { expect, test } from 'vitest';
import { makeFamilySettings } from '../../../src/app/state/plan/family-settings.ts';
import { makeSession } from '../../../src/app/state/session.ts';
import { fakeDoors } from './fake-doors.ts';

const session = () => makeSession(fakeDoors().doors, null);

test('each family of each window has settings of its own, and begins with the usual ones', () => {
  const { storeOf, settingsOf, change } = makeFamilySettings({ material: 'brass', torque: 2.5 });
  const [one, other] = [session(), session()];
  change(one, 'Polderwick', { torque: 3 });
  change(one, 'Polderwick', { material: 'steel' });
  const all = storeOf(one).getState();
  expect(settingsOf(all, 'Polderwick')).toEqual({ material: 'steel', torque: 3 });
  // No name of a family is taken for what every object has.
  for (const name of ['Dunmere', 'constructor'])
    expect(settingsOf(all, name)).toEqual({ material: 'brass', torque: 2.5 });
  expect(settingsOf(storeOf(other).getState(), 'Polderwick').torque).toBe(2.5);
});
