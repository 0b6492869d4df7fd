// Common practice, no source: what everybody who works with sectional keying takes for granted about a family of
// sections. The demo families must show it by their geometry: every verdict below is judged from the outlines, and the
// expected table follows from the ward sites in profiles-demo/README.md, not from a run of the judge.

import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { withEntrants } from '../../src/family/entry-table.ts';
import { bandsOf, entrantsOf, type Family, openingsOf } from '../../src/family/family.ts';
import { neighboursOf, type Tiers, tiersOf } from '../../src/family/tiers.ts';
import type { Fit } from '../../src/fit/fit.ts';
import { judgeFit } from '../../src/fit/judge-fit.ts';
import { judgeTolerance } from '../../src/fit/judge-tolerance.ts';
import { prepareBlank } from '../../src/fit/prepare-blank.ts';
import { prepareOpening } from '../../src/fit/prepare-opening.ts';
import { readFamily } from '../../src/interchange/json/read.ts';
import { measureWeb } from '../../src/profile/measure-web.ts';
import type { Profile } from '../../src/profile/profile.ts';
import { largeFamily } from '../cases/large-families.ts';
import { judgeTable } from '../kit/judge-table.ts';

function demo(name: string): Family {
  const read = readFamily(readFileSync(`profiles-demo/${name}.json`, 'utf8'));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.document.family;
}

const college = demo('polderwick');
const openings = openingsOf(college);
const entrants = entrantsOf(college);

/** Every fit of a family, by the ids of entrant and opening. */
function judgeAll(family: Family): Map<string, Fit> {
  const prepared = openingsOf(family).map((opening) => ({ id: opening.id, shape: prepareOpening(opening.ring) }));
  return new Map(
    entrantsOf(family).flatMap((entrant) => {
      const blank = prepareBlank(entrant.ring);
      return prepared.map(
        ({ id, shape }) => [`${entrant.id} > ${id}`, judgeFit(shape, blank, family.runningClearance)] as const,
      );
    }),
  );
}

const fits = judgeAll(college);

function fitOf(entrant: string, opening: string): Fit {
  const found = fits.get(`${entrant} > ${opening}`);
  if (!found) throw new Error(`no such pair: ${entrant} > ${opening}`);
  return found;
}

/** Sections whose keyway an entrant enters, in chart order. */
const entered = (entrant: string) =>
  openings.filter((opening) => fitOf(entrant, opening.id).verdict === 'enters').map((opening) => opening.section);

const blanks = entrants.filter((p) => p.kind === 'blank');
const byId = (id: string): Profile => {
  const found = college.profiles.find((p) => p.id === id);
  if (!found) throw new Error(`no such profile: ${id}`);
  return found;
};

const CHART = ['Heron', 'Smew', 'Bittern', 'Ruff', 'Plover', 'Knot', 'Curlew', 'Rail', 'Avocet', 'Dunlin'];
const BASE = ['Heron', 'Bittern', 'Plover', 'Curlew', 'Avocet', 'Dunlin'];
const IN_BETWEEN: [section: string, before: string, after: string][] = [
  ['Smew', 'Heron', 'Bittern'],
  ['Ruff', 'Bittern', 'Plover'],
  ['Knot', 'Plover', 'Curlew'],
  ['Rail', 'Curlew', 'Avocet'],
];

const keyway = (section: string) => `${section.toLowerCase()}-keyway`;
const blank = (section: string) => (section === 'Heron' ? 'heron-blank-5' : `${section.toLowerCase()}-blank`);

/** Which keyways every blank must enter; all others must block it. */
const EXPECTED: Record<string, string[]> = {
  'heron-blank-5': ['Heron'],
  'heron-blank-6': ['Heron'],
  'smew-blank': ['Smew'],
  'bittern-blank': ['Bittern'],
  'ruff-blank': ['Ruff'],
  'plover-blank': ['Plover'],
  'knot-blank': ['Knot'],
  'curlew-blank': ['Curlew'],
  'rail-blank': ['Rail'],
  'avocet-blank': ['Avocet'],
  'dunlin-blank': ['Dunlin'],
  'reed-group-blank': ['Heron', 'Smew', 'Bittern'],
  'dyke-group-blank': ['Plover', 'Knot', 'Curlew'],
  'shore-group-blank': ['Rail', 'Avocet', 'Dunlin'],
  'causeway-group-blank': ['Heron', 'Smew', 'Bittern', 'Ruff', 'Plover', 'Knot', 'Curlew'],
  'polder-all-section-blank': CHART,
};

describe('trade facts, shown by the demo campus (common practice, no source)', () => {
  test('the chart has its ten sections in order, and every keyway its blank', () => {
    expect(openings.map((p) => p.section)).toEqual(CHART);
    expect(blanks.map((p) => p.id)).toEqual(Object.keys(EXPECTED));
  });

  test.each(BASE)('the %s blank, a base blank, enters its own keyway and no other base keyway', (section) => {
    expect(entered(blank(section)).filter((s) => s && BASE.includes(s))).toEqual([section]);
    for (const other of BASE.filter((s) => s !== section))
      expect(fitOf(blank(section), keyway(other)).verdict, other).toBe('blocked');
  });

  test.each(IN_BETWEEN)('%s, squeezed in, is kept apart from %s and %s both ways', (section, before, after) => {
    expect(fitOf(blank(section), keyway(section)).verdict).toBe('enters');
    for (const neighbour of [before, after]) {
      expect(fitOf(blank(section), keyway(neighbour)).verdict).toBe('blocked');
      expect(fitOf(blank(neighbour), keyway(section)).verdict).toBe('blocked');
    }
  });

  test('the first group blank enters base, in-between, base in a row and not the next in-between', () => {
    expect(entered('reed-group-blank')).toEqual(['Heron', 'Smew', 'Bittern']);
    expect(fitOf('reed-group-blank', 'ruff-keyway').verdict).toBe('blocked');
  });

  test('a group blank of a higher level enters all that the groups below it enter, and more', () => {
    const above = entered('causeway-group-blank');
    const below = [...entered('reed-group-blank'), ...entered('dyke-group-blank')];
    expect(below.every((section) => above.includes(section))).toBe(true);
    expect(above.length).toBeGreaterThan(below.length);
    expect(above).not.toContain('Rail');
  });

  test('the all-section blank enters every keyway, and no other blank does', () => {
    expect(entered('polder-all-section-blank')).toEqual(CHART);
    expect(blanks.filter((p) => entered(p.id).length === CHART.length)).toHaveLength(1);
  });

  test('the all-section blank has the thinnest web of all blanks', () => {
    const webs = blanks.map((p) => [p.id, measureWeb(p.ring).thickness] as const).sort((a, b) => a[1] - b[1]);
    expect(webs[0][0]).toBe('polder-all-section-blank');
    expect(webs[1][1] - webs[0][1]).toBeGreaterThan(100_000);
  });

  test('two blanks that differ only in length have the same verdicts', () => {
    expect([byId('heron-blank-5').chambers, byId('heron-blank-6').chambers]).toEqual([5, 6]);
    for (const { id } of openings) expect(fitOf('heron-blank-5', id)).toEqual(fitOf('heron-blank-6', id));
  });

  test.each(blanks.map((p) => p.id))(
    '%s: the whole row is as the ward sites say, with room to spare either way',
    (id) => {
      for (const opening of openings) {
        const { verdict, clearance } = fitOf(id, opening.id);
        const wanted = EXPECTED[id].includes(opening.section ?? '');
        expect(verdict, opening.id).toBe(wanted ? 'enters' : 'blocked');
        if (wanted) expect(clearance, opening.id).toBeGreaterThan(college.runningClearance + 2_000);
        else expect(clearance, opening.id).toBeLessThan(-200_000);
      }
    },
  );

  // The gap that each keyway was drawn with round its own blank, profiles-demo/README.md.
  const DRAWN_UM: [string, number][] = CHART.map((section, i) => [
    section,
    [55, 48, 60, 45, 52, 43, 58, 46, 50, 64][i],
  ]);
  test.each(DRAWN_UM)('the %s blank has the gap its keyway was drawn with, %i um', (section, um) => {
    const { clearance } = fitOf(blank(section), keyway(section));
    expect(clearance / 1000).toBeLessThanOrEqual(um + 0.1);
    expect(clearance / 1000).toBeGreaterThan(um - 1);
  });

  test('every wanted blank keeps at least the running clearance also in the group: one margin for each keyway', () => {
    for (const opening of openings) {
      const margins = blanks
        .filter((p) => EXPECTED[p.id].includes(opening.section ?? ''))
        .map((p) => fitOf(p.id, opening.id).clearance);
      expect(Math.max(...margins) - Math.min(...margins), opening.id).toBeLessThan(200);
    }
  });

  // Gap against the sum of both tolerances, by the sizes in profiles-demo/README.md.
  const threeWay = (entrant: Profile, opening: Profile) =>
    judgeTolerance(
      prepareOpening(opening.ring),
      [entrant.ring],
      fitOf(entrant.id, opening.id),
      bandsOf(college, entrant, opening),
    );
  const DEPENDS = new Set(['ruff-blank > ruff-keyway', 'causeway-group-blank > ruff-keyway']);
  test.each(blanks.map((p) => p.id))(
    '%s: all parts within tolerance go in where the blank should and stay out elsewhere, but for Ruff',
    (id) => {
      for (const opening of openings) {
        const wanted = EXPECTED[id].includes(opening.section ?? '') ? 'always' : 'never';
        const expected = DEPENDS.has(`${id} > ${opening.id}`) ? 'depends' : wanted;
        expect(threeWay(byId(id), opening), opening.id).toBe(expected);
      }
    },
  );

  test('the middle strip depends on the parts in the one keyway where it is tight', () => {
    const strip = byId('strip-131');
    const found = openings.filter((opening) => threeWay(strip, opening) === 'depends').map((p) => p.section);
    expect(found).toEqual(['Dunlin']);
    expect(fitOf('strip-131', 'dunlin-keyway').verdict).toBe('tight');
  });

  test('of the strips the thin one enters every keyway, the middle one some, the thick one none', () => {
    const verdicts = (id: string) => openings.map((opening) => fitOf(id, opening.id).verdict);
    expect(new Set(verdicts('strip-055'))).toEqual(new Set(['enters']));
    expect(new Set(verdicts('strip-131'))).toEqual(new Set(['enters', 'tight', 'blocked']));
    expect(new Set(verdicts('strip-175'))).toEqual(new Set(['blocked']));
  });

  test('the nose feeler is stopped by the left ward of Heron and Smew and by nothing else', () => {
    const stopped = openings.filter((opening) => fitOf('nose-feeler', opening.id).verdict === 'blocked');
    expect(stopped.map((opening) => opening.section)).toEqual(['Heron', 'Smew']);
  });
});

describe('the family of the first lesson (common practice, no source)', () => {
  const lesson = demo('first-lesson');
  const judged = judgeAll(lesson);
  const row = (id: string) => openingsOf(lesson).map((opening) => judged.get(`${id} > ${opening.id}`)?.verdict);

  test('three sections that keep each other out, a group blank for two, a strip for all', () => {
    expect(openingsOf(lesson).map((p) => p.section)).toEqual(['Heron', 'Bittern', 'Plover']);
    expect(row('heron-blank')).toEqual(['enters', 'blocked', 'blocked']);
    expect(row('bittern-blank')).toEqual(['blocked', 'enters', 'blocked']);
    expect(row('plover-blank')).toEqual(['blocked', 'blocked', 'enters']);
    expect(row('reed-group-blank')).toEqual(['enters', 'enters', 'blocked']);
    expect(row('strip-06')).toEqual(['enters', 'enters', 'enters']);
  });
});

/** The blanks of a family in tiers, tools left out, judged from the outlines. */
function blankTiers(family: Family): Tiers {
  const blanksOnly = new Set(entrantsOf(family).flatMap(({ id, kind }) => (kind === 'blank' ? [id] : [])));
  return tiersOf(withEntrants(judgeTable(family), (id) => blanksOnly.has(id)));
}

const INVENTED: [string, Family][] = [
  ['Polderwick College', college],
  ['8 keyways, 14 blanks', largeFamily(8, 14).family],
  ['20 keyways, 40 blanks in two lengths', largeFamily(20, 40, { seed: 2, lengths: 4 }).family],
  ['35 keyways, 60 blanks', largeFamily(35, 60, { seed: 3 }).family],
  ['60 keyways, 120 blanks', largeFamily(60, 120, { seed: 4 }).family],
];

describe.each(INVENTED)('tiers as the trade knows them (common practice, no source): %s', (_, family) => {
  const tiers = blankTiers(family);
  const { nodes, covers } = tiers;
  const neighbours = neighboursOf(tiers);
  const keyways = openingsOf(family);
  const nodeOf = (id: string) => nodes.find(({ entrants }) => entrants.includes(id));
  /** The own blank of a keyway's section, where the family has it. */
  const ownBlank = ({ section }: Profile) =>
    entrantsOf(family).find((p) => p.kind === 'blank' && section !== undefined && p.section === section);

  test('each base blank enters the keyway of its own section and keeps out of all others', () => {
    const owned = keyways.flatMap((opening) => {
      const own = ownBlank(opening);
      return own ? [{ opening, own }] : [];
    });
    expect(owned.length).toBeGreaterThan(4);
    for (const { opening, own } of owned)
      expect(nodeOf(own.id)).toMatchObject({ openings: [opening.id], rank: 'base', tier: 0 });
  });

  test('a section is distinct from the ones before and after it in the chart, both ways', () => {
    for (const [i, opening] of keyways.entries()) {
      for (const next of keyways.slice(i + 1, i + 2)) {
        const [own, other] = [ownBlank(opening), ownBlank(next)];
        if (own) expect(nodeOf(own.id)?.openings).not.toContain(next.id);
        if (other) expect(nodeOf(other.id)?.openings).not.toContain(opening.id);
      }
    }
  });

  test('tiers nest: who stands above enters all that those below it enter, and more', () => {
    expect(covers.length).toBeGreaterThan(nodes.length / 2);
    for (const [lower, upper] of covers) {
      expect(nodes[upper].openings).toEqual(expect.arrayContaining([...nodes[lower].openings]));
      expect(nodes[upper].openings.length).toBeGreaterThan(nodes[lower].openings.length);
      expect(nodes[upper].tier).toBeGreaterThan(nodes[lower].tier);
    }
  });

  test('one blank stands at the top, enters all, and everything else leads up to it', () => {
    const top = nodes.filter(({ rank }) => rank === 'all');
    expect(top).toHaveLength(1);
    expect(top[0].openings).toEqual(keyways.map(({ id }) => id));
    expect(nodes.filter(({ tier }) => tier >= top[0].tier)).toEqual(top);
    for (const [i, { rank }] of nodes.entries()) expect(neighbours[i].above.length > 0).toBe(rank !== 'all');
  });

  test('blanks of one section in two lengths stand in one node', () => {
    const sections = new Map<string, string[]>();
    for (const { kind, section, id } of family.profiles)
      if (kind === 'blank' && section) sections.set(section, [...(sections.get(section) ?? []), id]);
    for (const ids of sections.values()) expect(new Set(ids.map((id) => nodeOf(id)?.id)).size).toBe(1);
  });

  test('the blank at the top has the most grooves, and none of the others has all of them', () => {
    const grooves = (id: string) => family.profiles.find((p) => p.id === id)?.milled?.grooves.length ?? 0;
    const top = nodes.find(({ rank }) => rank === 'all')?.id ?? '';
    for (const { id } of nodes) if (id !== top) expect(grooves(id)).toBeLessThan(grooves(top));
  });
});

describe('what a tools row shows beside the blanks (common practice, no source)', () => {
  test('a thin strip stands with the all-section blank, a thick one enters nothing and stands apart', () => {
    const { nodes, covers } = tiersOf(judgeTable(college));
    const withStrip = nodes.find(({ entrants }) => entrants.includes('strip-055'));
    expect(withStrip).toMatchObject({ id: 'polder-all-section-blank', rank: 'all' });
    const thick = nodes.findIndex(({ id }) => id === 'strip-175');
    expect(nodes[thick]).toMatchObject({ rank: 'nothing', openings: [] });
    expect(covers.some((line) => line.includes(thick))).toBe(false);
  });
});
