import { createHash } from 'node:crypto';
import { beforeAll, describe, expect, it } from 'vitest';
import { SLIDES_SCRIPT, SLIDES_SCRIPT_HASH } from '../../../src/interchange/html/slides-script.ts';
import { writeSlides } from '../../../src/interchange/html/write-slides.ts';
import { loadTypeface, type Typeface } from '../../../src/lettering/typeface.ts';
import type { Page } from '../../../src/publish/page.ts';

let typeface: Typeface;
beforeAll(async () => {
  typeface = await loadTypeface();
});

const page = (title: string, told?: readonly string[]): Page => ({
  ...{ title, width: 320, height: 180 },
  marks: [
    { kind: 'text', spot: [10, 20], text: title, size: 8 },
    {
      kind: 'group',
      clip: [
        {
          closed: true,
          spots: [
            [0, 0],
            [9, 0],
            [9, 9],
          ],
        },
      ],
      marks: [],
    },
  ],
  ...(told && { told }),
});

const write = (pages: readonly Page[], title = 'Lesson') =>
  writeSlides(pages, { title, language: 'en-GB', palette: 'colour', typeface });

describe('slides in one file', () => {
  it('lets its own script run by its hash (SHA-256 by Node), and no other', () => {
    const file = write([page('One')]);
    const scripts = [...file.matchAll(/<script[^>]*>([\s\S]*?)<\/script>/g)].map(([, text]) => text);
    expect(scripts).toEqual([SLIDES_SCRIPT]);
    expect(createHash('sha256').update(SLIDES_SCRIPT).digest('base64')).toBe(SLIDES_SCRIPT_HASH);
    expect(file).toContain(`script-src 'sha256-${SLIDES_SCRIPT_HASH}'`);
    expect(file).toContain("default-src 'none'");
  });

  it('asks for nothing: no address but data and its own clips', () => {
    const file = write([page('One'), page('Two')]);
    const addresses = [...file.matchAll(/(?:src|href|url)\s*[=(]\s*["']?([^"')\s]{1,40})/g)].map(
      ([, address]) => address,
    );
    expect(addresses.filter((address) => !/^(data:|#s[12]-)/.test(address))).toEqual([]);
    expect(addresses.some((address) => address.startsWith('data:'))).toBe(true);
    expect(file).not.toMatch(/https?:/);
  });

  it('keeps names that look like markup as words', () => {
    const file = write([page('</svg><script>alert(1)</script> & "x"', ['</svg>', 'a < b'])], '</title><script>');
    expect(file.match(/<script/g)).toHaveLength(1);
    expect(file).toContain('&lt;/title&gt;&lt;script&gt;');
    expect(file).toContain('<p>a &lt; b</p>');
  });

  it('tells each slide once, title first, with ids of its own', () => {
    const file = write([page('One', ['One', 'It goes in.']), page('Two')]);
    expect(file).toContain('<h2>One</h2><p>It goes in.</p></div>');
    expect(file).toContain('<h2>Two</h2></div>');
    const ids = [...file.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });
});
