// Outside truth: WCAG 2.2, success criteria 1.4.3 (text, 4.5) and 1.4.11 (graphics, 3); relative luminance as defined
// there, with the threshold 0.04045.
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { inkColour } from '../../../src/publish/inks.ts';

const TOKENS = readFileSync(new URL('../../../src/app/styles/tokens.css', import.meta.url), 'utf8');

function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5]
    .map((i) => Number.parseInt(hex.slice(i, i + 2), 16) / 255)
    .map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a: string, b: string): number {
  const [low, high] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (high + 0.05) / (low + 0.05);
}

/** The colours of one theme's block in the style sheet. */
function palette(theme: 'light' | 'dark'): Record<string, string> {
  const from = TOKENS.indexOf(`[data-theme='${theme}']`);
  const block = TOKENS.slice(from, TOKENS.indexOf('}', from));
  return Object.fromEntries([...block.matchAll(/--([\w-]+): (#[0-9a-f]{6});/g)].map((m) => [m[1], m[2]]));
}

const TEXT: [string, string[]][] = [
  ['ink', ['paper', 'paper-lit', 'paper-shade', 'plug', 'face']],
  ['ink-soft', ['paper', 'paper-lit', 'paper-shade']],
  ['engraved', ['face', 'face-lit']],
  ['enters', ['paper', 'paper-lit', 'face', 'face-lit']],
  ['tight', ['paper', 'paper-lit', 'face', 'face-lit']],
  ['blocked', ['paper', 'paper-lit', 'face', 'face-lit']],
  ['on-pick', ['pick']],
];

const GRAPHICS: [string, string[]][] = [
  ['void-edge', ['plug']],
  ['plug-edge', ['plug', 'face']],
  ['brass', ['void']],
  ['steel', ['void']],
  ['brass-edge', ['brass', 'steel']],
  ['clash', ['clash-ground']],
  ['clash-edge', ['clash-ground', 'plug']],
  ['rule-strong', ['paper', 'paper-lit']],
  ['focus', ['paper', 'paper-lit', 'face', 'plug']],
];

test('the formula gives the published corner values', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 9);
  expect(contrast('#767676', '#ffffff')).toBeGreaterThan(4.5);
  expect(contrast('#777777', '#ffffff')).toBeLessThan(4.5);
});

for (const theme of ['light', 'dark'] as const) {
  const colours = palette(theme);
  const tooFaint = (pairs: [string, string[]][], least: number) =>
    pairs.flatMap(([front, grounds]) =>
      grounds
        .map((ground) => ({ pair: `${front} on ${ground}`, ratio: contrast(colours[front], colours[ground]) }))
        .filter(({ ratio }) => !(ratio >= least)),
    );

  test(`on the ${theme} sheet text has a contrast of 4.5 and graphics of 3`, () => {
    expect(tooFaint(TEXT, 4.5)).toEqual([]);
    expect(tooFaint(GRAPHICS, 3)).toEqual([]);
  });

  test(`on the ${theme} sheet the three verdicts differ from the metal in grey as well`, () => {
    for (const verdict of ['enters', 'tight', 'blocked']) {
      expect(contrast(colours[verdict], colours.plug)).toBeGreaterThan(3);
    }
  });
}

test('paper has the colours that a class saw on the screen, and they stay apart in grey', () => {
  const screen = palette('light');
  const paper = (['plug', 'blade', 'enters', 'tight', 'blocked', 'overlap', 'tool'] as const).map((ink) =>
    inkColour(ink, 'colour'),
  );
  const { plug, brass, enters, tight, blocked, clash, steel } = screen;
  expect(paper).toEqual([plug, brass, enters, tight, blocked, clash, steel]);
  // What lies beside each other: blade on plug, blade and verdicts on white, hatching on white.
  for (const part of [paper[1], paper[6]]) expect(contrast(part, paper[0])).toBeGreaterThan(1.5);
  for (const verdict of paper.slice(2, 5)) expect(contrast(verdict, '#ffffff')).toBeGreaterThan(4.5);
  for (const part of [paper[1], paper[5], paper[6]]) expect(contrast(part, '#ffffff')).toBeGreaterThan(1.8);
  for (const ink of ['plug', 'blade', 'tool'] as const)
    expect(contrast(inkColour(ink, 'grey'), '#ffffff')).toBeGreaterThan(1.4);
  expect(contrast(inkColour('tool', 'grey'), inkColour('blade', 'grey'))).toBeGreaterThan(1.4);
  expect(contrast(inkColour('tool', 'grey'), inkColour('plug', 'grey'))).toBeGreaterThan(1.4);
});
