import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Family } from '../../../src/family/family.ts';
import type { Verdict } from '../../../src/fit/fit.ts';
import { readFamily } from '../../../src/interchange/json/read.ts';
import { loadTypeface, type Typeface } from '../../../src/lettering/typeface.ts';
import type { Page } from '../../../src/publish/page.ts';
import { frameFor } from '../../../src/publish/page-frame.ts';
import { PAPER_NAMES } from '../../../src/publish/paper.ts';
import type { SheetGround } from '../../../src/publish/sheet-ground.ts';
import type { SheetOrder } from '../../../src/publish/sheet-order.ts';
import { layOutSheet } from '../../../src/publish/sheets.ts';
import { filled, rectangle } from '../../../src/publish/strokes.ts';
import { demoFamily } from '../../kit/demo-family.ts';
import { generatedGround, LONG, UNBROKEN } from '../../kit/generated-ground.ts';
import { pageFaults } from '../../kit/laid-out.ts';
import { toldGround } from '../../kit/told-ground.ts';

let typeface: Typeface;
beforeAll(async () => {
  typeface = await loadTypeface();
});

const generated = (openings: number, blanks: number, rename?: (name: string, i: number) => string): SheetGround =>
  generatedGround(typeface, openings, blanks, rename);

function fromFile(name: string): Family {
  const read = readFamily(readFileSync(`profiles-demo/${name}.json`, 'utf8'));
  if (!read.ok) throw new Error(`${name} is not sound`);
  return read.document.family;
}

function byPlace(e: number, o: number): Verdict {
  if (e === o) return 'enters';
  return e > 8 && o < 4 ? 'tight' : 'blocked';
}

/** One keyway and the blanks for it; nothing that it could be told from. */
function oneSection(): SheetGround {
  const { family } = generated(3, 5);
  const profiles = family.profiles.filter(({ kind, section }) => section === 'Heron' || kind === 'tool');
  return toldGround({ ...family, profiles }, () => 'enters', typeface);
}

/** Much of everything on one card: a plan with every area of a large family. */
function planned(ground: SheetGround): SheetGround {
  const { plan } = demoFamily();
  if (!plan) throw new Error('The demo family has no plan.');
  const areas = ground.family.profiles
    .filter(({ kind }) => kind === 'opening')
    .map(({ id, name, section }) => ({ id, name: `Door ${LONG} ${name}`, section }));
  const holders = [
    { id: 'all', name: `Keeper ${LONG}`, enters: areas.map(({ id }) => id) },
    { id: 'few', name: UNBROKEN, enters: areas.slice(0, 2).map(({ id }) => id) },
  ];
  return { ...ground, family: { ...ground.family, plan: { ...plan, areas, holders } } };
}

/** A paper as it is held. */
type HeldPaper = readonly [paper: (typeof PAPER_NAMES)[number], turned: 'portrait' | 'landscape'];

const EVERY: readonly HeldPaper[] = PAPER_NAMES.flatMap((paper) => [
  [paper, 'portrait'] as const,
  [paper, 'landscape'] as const,
]);

/** For all other families than the demo. */
const SOME: readonly HeldPaper[] = [
  ['A4', 'portrait'],
  ['A3', 'landscape'],
  ['Letter', 'landscape'],
  ['A1', 'landscape'],
];

const FAMILIES: Readonly<Record<string, () => SheetGround>> = {
  'three sections': () => toldGround(fromFile('first-lesson'), byPlace, typeface),
  'the demo family': () => toldGround(demoFamily(), byPlace, typeface),
  'a plan and nothing drawn': () => toldGround(fromFile('polderwick-plan'), byPlace, typeface),
  'one section': oneSection,
  '40 sections': () => generated(40, 60),
  '64 sections': () => generated(64, 80),
  'long names': () => generated(12, 20, (name, i) => (i % 3 === 0 ? `${name} ${UNBROKEN}` : `${name} ${LONG}`)),
  'long names of many doors': () => planned(generated(20, 26)),
};

const LARGE = ['40 sections', '64 sections', 'long names', 'long names of many doors'];

const usual = { palette: 'colour', units: 'mm', date: 'Thursday, 26 November 2026' } as const;

function ordersFor(ground: SheetGround, paper: HeldPaper[0], turned: HeldPaper[1], isLarge: boolean): SheetOrder[] {
  const any = { ...usual, paper, turned };
  const holder = ground.family.plan?.holders[0]?.id;
  const { openings, profiles } = ground.fits;
  const inBetween = openings.filter((_, i) => i % 3 === 1);
  const all: SheetOrder[] = [{ sheet: 'card', ...any }];
  const drawn: SheetOrder[] = [
    { sheet: 'chart', ...any },
    { sheet: 'chart', ...any, onePage: true, inBetween },
    { sheet: 'scale', ...any },
    { sheet: 'card', ...any, of: holder ?? profiles[profiles.length - 1] },
  ];
  const more: SheetOrder[] = [
    { sheet: 'chart', ...any, inBetween, blanksOnly: true },
    { sheet: 'scale', ...any, enlarge: 50, units: 'in' },
    { sheet: 'scale', ...any, enlarge: 4, all: true },
  ];
  if (openings.length === 0) return all;
  return isLarge ? drawn : [...drawn, ...more, ...all];
}

test('the rules for pages can fail: words over words, over a picture, and over the margin', () => {
  const word = { kind: 'text', spot: [20, 30], text: 'Heron', size: 4 } as const;
  const picture = { kind: 'group', label: 'a picture', marks: [filled([rectangle(18, 26, 6, 6)], 'blade')] } as const;
  const page = (marks: Page['marks']) => pageFaults({ title: 'Page', width: 100, height: 100, marks }, 10, typeface);
  expect(page([word])).toEqual([]);
  expect(page([word, { ...word, spot: [22, 31] }])).toHaveLength(1);
  expect(page([word, picture])).toHaveLength(1);
  expect(page([{ ...word, spot: [95, 30] }])).toHaveLength(1);
  expect(page([{ ...word, spot: [20, 11] }])).toHaveLength(1);
});

describe('every page keeps within its margins, and nothing stands over anything else', () => {
  for (const [name, make] of Object.entries(FAMILIES))
    test(name, () => {
      const ground = make();
      const faults: string[] = [];
      const isLarge = LARGE.includes(name);
      for (const [paper, turned] of name === 'the demo family' ? EVERY : SOME)
        for (const order of ordersFor(ground, paper, turned, isLarge)) {
          const pages = layOutSheet(ground, order);
          const { margin } = frameFor(order, '', '');
          const what = `${JSON.stringify({ ...order, palette: undefined, date: undefined })}: `;
          if (pages.length === 0) faults.push(`${what}no page`);
          for (const page of pages) faults.push(...pageFaults(page, margin, typeface).map((fault) => what + fault));
        }
      expect(faults.slice(0, 12)).toEqual([]);
    });
});
