import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { hearCommand } from '../../kit/hearing-shell.ts';

const COLLEGE = readFileSync('profiles-demo/polderwick.json', 'utf8');

function run(line: string, text = COLLEGE) {
  return hearCommand(line.split(' '), text);
}

test('passage tells the widest blank, and for every opening what it loses or how it fares', async () => {
  const { code, out } = await run('passage family.json --openings heron-keyway,smew-keyway,bittern-keyway');
  expect(code).toBe(0);
  expect(out).toMatch(
    /^The widest blank that passes 3 of 10 openings with 40 um all round:\n {2}2\.\d{3} x 8\.\d{3} mm/,
  );
  expect(out).toMatch(/Heron keyway +enters +loses \d\.\d\d mm2 \(\d+ %\), most (left|right) at/);
  expect(out).toMatch(/Dunlin keyway +blocked +\(not chosen\)/);
});

test('passage --json has sizes, moves, losses and an outline', async () => {
  const { code, out } = await run('passage family.json --json --openings heron-keyway,heron-keyway');
  const told = JSON.parse(out);
  expect(code).toBe(0);
  expect(told.sure.kind).toBe('best');
  expect(told.openings).toHaveLength(1);
  expect(told.openings[0]).toMatchObject({ opening: 'heron-keyway', lossShare: expect.any(Number) });
  expect(told.entries).toHaveLength(10);
  expect(told.entries[0]).toMatchObject({ opening: 'heron-keyway', chosen: true, verdict: 'enters' });
  expect(told.blank.outlineMm.length).toBeGreaterThan(10);
});

test('passage says what is wrong with its words, and what a family without openings has', async () => {
  const wrong = await run('passage family.json --openings heron-keyway,nobody');
  expect(wrong.code).toBe(2);
  expect(wrong.err).toContain(
    'family.json: there is no opening with the id "nobody"; it has heron-keyway, smew-keyway',
  );
  const empty = await run('passage family.json --openings ,');
  expect(empty.err).toContain('--openings needs ids of openings parted by commas');
  const family = JSON.parse(COLLEGE);
  const blanks = family.profiles.filter(({ kind }: { kind: string }) => kind !== 'opening');
  const none = await run('passage family.json', JSON.stringify({ ...family, profiles: blanks }));
  expect([none.code, none.out]).toEqual([2, '']);
  expect(none.err).toContain('family.json: has no openings, so there is nothing to pass.');
});
