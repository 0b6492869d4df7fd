import type { Typeface } from '../../lettering/typeface.ts';
import type { Palette } from '../../publish/inks.ts';
import type { Page } from '../../publish/page.ts';
import { escapeXml } from '../svg/escape-xml.ts';
import { faceRules, pageMarkup } from '../svg/write-page.ts';
import { SLIDES_SCRIPT, SLIDES_SCRIPT_HASH } from './slides-script.ts';
import { slidesStyle } from './slides-style.ts';

/** What a file of slides says of itself, and how it is drawn. */
export interface SlidesWriting {
  readonly title: string;
  /** Language of its words, as in `en-GB`. */
  readonly language: string;
  readonly palette: Palette;
  readonly typeface: Typeface;
}

/**
 * What the file may do: show itself. Its one script by its hash, its styles, the typeface inside it; nothing from anywhere
 * else, nothing to anywhere else.
 */
const POLICY = [
  "default-src 'none'",
  `script-src 'sha256-${SLIDES_SCRIPT_HASH}'`,
  "style-src 'unsafe-inline'",
  'font-src data:',
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/**
 * Pages of one size as a file of slides that runs by itself, from a disk and without a network: keys, clicks, touch, a
 * clicker; one slide a page when printed; without its script all slides below each other.
 *
 * @param pages at least one; what `told` says is read to whoever cannot see them.
 * @returns the text of the file, which asks for nothing.
 * @source HTML Living Standard, WHATWG; Content Security Policy Level 3, W3C, for the hash of a script.
 * @check tests/browser/slides-file.test.ts, tests/unit/interchange/html-slides.test.ts
 */
export function writeSlides(pages: readonly Page[], { title, language, palette, typeface }: SlidesWriting): string {
  const { width, height } = pages[0] ?? { width: 320, height: 180 };
  return [
    '<!doctype html>',
    `<html lang="${escapeXml(language)}">`,
    '<head>',
    '<meta charset="utf-8">',
    `<meta http-equiv="Content-Security-Policy" content="${POLICY}">`,
    '<meta name="viewport" content="width=device-width, initial-scale=1">',
    '<meta name="referrer" content="no-referrer">',
    `<title>${escapeXml(title)}</title>`,
    `<style>${faceRules(pages, typeface)}${slidesStyle({ width, height })}</style>`,
    '</head>',
    '<body>',
    `<main aria-label="${escapeXml(title)}">`,
    ...pages.map((page, i) => slideMarkup(page, i, pages.length, palette)),
    '</main>',
    BAR,
    `<script>${SLIDES_SCRIPT}</script>`,
    '</body>',
    '</html>',
    '',
  ].join('\n');
}

/** One slide: its picture, and what it says as text. */
function slideMarkup(page: Page, index: number, of: number, palette: Palette): string {
  const { title, width, height, told } = page;
  const lines = (told ?? [title]).filter((line, i) => i > 0 || line !== title);
  return [
    `<section class="slide" id="slide-${index + 1}" data-title="${escapeXml(title)}" aria-roledescription="slide" aria-label="${index + 1} of ${of}">`,
    `<div class="unseen"><h2>${escapeXml(title)}</h2>${lines.map((line) => `<p>${escapeXml(line)}</p>`).join('')}</div>`,
    `<svg viewBox="0 0 ${width} ${height}" aria-hidden="true" focusable="false" xml:space="preserve">`,
    pageMarkup(page, { palette, idPrefix: `s${index + 1}-` }),
    '</svg>',
    '</section>',
  ].join('\n');
}

/** The keys at the foot, shown when the pointer moves or a key has the focus. */
const BAR = [
  '<nav id="bar" aria-label="Turn the slides" hidden>',
  '<button type="button" id="back">Back</button>',
  '<span id="number"></span>',
  '<button type="button" id="next">Next</button>',
  '<button type="button" id="full">Full screen</button>',
  '</nav>',
  '<p id="told" class="unseen" role="status"></p>',
].join('\n');
