import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { planned } from '../../kit/four-site-blades.ts';
import { hearCommand } from '../../kit/hearing-shell.ts';

const COLLEGE = JSON.parse(readFileSync('profiles-demo/polderwick.json', 'utf8'));
const few = (...names: string[]) =>
  JSON.stringify({
    ...COLLEGE,
    claims: [],
    names: [],
    plan: undefined,
    lesson: undefined,
    profiles: COLLEGE.profiles.filter(({ id }: { id: string }) => names.some((name) => id.startsWith(name))),
  });

const mm = (nm: number) => nm / 1e6;

/** Heron, Bittern and Polder by plain blades with four places for a groove; lengths of the core written as in a file. */
const marsh = (...left: string[]) =>
  JSON.stringify({
    ...{
      format: 'sectionary-family',
      version: 1,
      name: 'Marsh',
      units: 'mm',
      runningClearance: 0.04,
      tolerance: 0.015,
    },
    profiles: PLAIN.profiles
      .filter(({ id }) => !left.includes(id))
      .map(({ id, kind, milled }) => ({
        ...{ id: NAMED[id], name: NAMED[id], kind },
        milled: milled && {
          ...{ thickness: mm(milled.thickness), height: mm(milled.height), backRadius: mm(milled.backRadius) },
          grooves: milled.grooves.map(({ side, bottom, width, depth }) => ({
            ...{ side, bottom: mm(bottom), width: mm(width), depth: mm(depth) },
          })),
        },
      })),
  });

const PLAIN = planned([
  [1, 1, 0, 0],
  [0, 0, 1, 1],
]);

const NAMED: Readonly<Record<string, string>> = {
  ...{ k0: 'heron-keyway', b0: 'heron-blank', k1: 'bittern-keyway', b1: 'bittern-blank', all: 'polder-blank' },
};

function run(line: string, text: string) {
  return hearCommand(line.split(' '), text);
}

const LONG = 120_000;

test(
  'grow says how many more, proposes the next ones between two openings, and ends with the cautions',
  async () => {
    const text = marsh();
    const { code, out } = await run('grow family.json --between heron-keyway,bittern-keyway', text);
    expect(code).toBe(0);
    expect(out).toMatch(
      /^Room for \d+ sections more \(proved the most over these sites\), each entered by polder-blank\n/,
    );
    expect(out).toMatch(/ {2}1\. wards (left|right) \d\.\d\d-\d\.\d\d/);
    expect(out).toMatch(
      /guard margin \d+(\.\d)? um \(.+ into .+, the same for \d+ other pairs?\), smallest clearance 4\d(\.\d)? um/,
    );
    expect(out).toMatch(/1 of the first neighbour, 1 of the second/);
    expect(out).toMatch(/no security boundary/);
  },
  LONG,
);

test(
  'grow --json has the wards of every opening and outlines of the proposals',
  async () => {
    const { code, out } = await run('grow family.json --json', marsh());
    expect(code).toBe(0);
    const told = JSON.parse(out);
    expect(told.allSectionBlanks).toEqual(['polder-blank']);
    expect(told.provedOverTheseSites).toBe(true);
    expect(Object.keys(told.wards)).toEqual(['heron-keyway', 'bittern-keyway']);
    expect(told.sites).toHaveLength(told.wards['heron-keyway'].length);
    expect(told.proposals[0].openingMm.length).toBeGreaterThan(8);
  },
  LONG,
);

test(
  'without an all-section blank it is said, and --passage goes on',
  async () => {
    const text = marsh('all');
    expect((await run('grow family.json', text)).out).toMatch(/^No blank enters every opening. With --passage/);
    expect((await run('grow family.json --passage', text)).out).toMatch(/entered by the widest blank that passes all/);
  },
  LONG,
);

test(
  'wrong words are told with what to write',
  async () => {
    const text = few('heron', 'bittern', 'polder');
    const fault = async (line: string) => {
      const { code, err } = await run(line, text);
      expect(code).toBe(2);
      return err;
    };
    expect(await fault('grow family.json --between heron-keyway')).toMatch(/needs the ids of two openings/);
    expect(await fault('grow family.json --between heron-keyway,none')).toMatch(/no opening with the id "none"/);
    expect(await fault('grow family.json --allow none')).toMatch(/no blank with the id "none"/);
    expect(await fault('grow family.json --allow heron-blank-5')).toMatch(/which is no group blank/);
  },
  LONG,
);

test(
  'passage --milled tells the grooves and what the cutter costs; its numbers go with it only',
  async () => {
    const text = few('heron', 'smew', 'avocet');
    const { code, out } = await run(
      'passage family.json --openings heron-keyway,smew-keyway --milled --step-um 100',
      text,
    );
    expect(code).toBe(0);
    expect(out).toMatch(/milled from a plain blade, \d\.\d\d mm2 \(\d+\.\d %\) less than the widest/);
    expect(out).toMatch(/(left|right) groove at \d\.\d{3}-\d\.\d{3} mm, 0\.\d00 mm deep/);
    expect((await run('passage family.json --step-um 100', text)).err).toMatch(/goes with --milled/);
    expect((await run('passage family.json --milled --step-um 0', text)).err).toMatch(/from 1 to 1000/);
    const json = JSON.parse((await run('passage family.json --milled --json', text)).out);
    expect(json.blank.milled.grooves.length).toBeGreaterThan(0);
  },
  LONG,
);
