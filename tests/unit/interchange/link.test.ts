// Outside truth: zlib, through Node, unpacks what we pack, packs what we unpack, and says the CRC-32; Node's own
// base64url is compared with ours.

import { Buffer } from 'node:buffer';
import { readFileSync } from 'node:fs';
import { crc32, deflateRawSync, inflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readFamily } from '../../../src/interchange/json/read.ts';
import { writeFamily } from '../../../src/interchange/json/write.ts';
import { fromBase64url, toBase64url } from '../../../src/interchange/link/base64url.ts';
import { checksum } from '../../../src/interchange/link/checksum.ts';
import { MAX_LINK_CHARACTERS } from '../../../src/interchange/link/link-form.ts';
import { readLink } from '../../../src/interchange/link/read.ts';
import { writeLink } from '../../../src/interchange/link/write.ts';

const demo = readFamily(readFileSync(new URL('../../../profiles-demo/polderwick.json', import.meta.url), 'utf8'));
if (!demo.ok) throw new Error('the demo must be readable');
const DEMO = writeFamily(demo.document.file);

function linkOf(text: string): string {
  const written = writeLink(text);
  if (!written.ok) throw new Error('too long');
  return written.fragment;
}

function faultOf(fragment: string): string {
  const read = readLink(fragment);
  return read.ok ? 'no fault' : `${read.faults[0].what} / ${read.faults[0].cure}`;
}

/** A link as another program would make it. */
function forged(bytes: Buffer, sum = crc32(bytes).toString(16).padStart(8, '0'), version = 1): string {
  return `#family=${version}.${sum}.${deflateRawSync(bytes, { level: 9 }).toString('base64url')}`;
}

describe('a link', () => {
  test('carries the demo family there and back, to the byte', () => {
    expect(readLink(linkOf(DEMO))).toEqual({ ok: true, text: DEMO });
    expect(readLink(linkOf(DEMO).slice(1))).toEqual({ ok: true, text: DEMO });
  });

  test('has only signs that no program escapes, and is far shorter than the text', () => {
    expect(linkOf(DEMO)).toMatch(/^#family=1\.[0-9a-f]{8}\.[A-Za-z0-9_-]+$/);
    expect(linkOf(DEMO).length).toBeLessThan(DEMO.length / 3);
  });

  test('is read by zlib, and reads what zlib packs', () => {
    const [, sum, data] = linkOf(DEMO).split('.');
    const unpacked = inflateRawSync(Buffer.from(data, 'base64url'));
    expect(unpacked.toString('utf8')).toBe(DEMO);
    expect(Number.parseInt(sum, 16)).toBe(crc32(unpacked));
    expect(readLink(forged(Buffer.from(DEMO)))).toEqual({ ok: true, text: DEMO });
  });

  test('carries any text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 200 }), (text) => {
        fc.pre(text !== '');
        expect(readLink(linkOf(text))).toEqual({ ok: true, text });
      }),
    );
  });

  test('with a sign changed, lost or added anywhere is refused', () => {
    const link = linkOf(DEMO);
    const start = '#family='.length;
    fc.assert(
      fc.property(fc.integer({ min: start, max: link.length - 1 }), fc.nat(2), fc.nat(63), (at, how, sign) => {
        const other = toBase64url(Uint8Array.of(sign << 2))[0];
        fc.pre(how !== 0 || other !== link[at]);
        const insert = how === 1 ? '' : other;
        const bad = link.slice(0, at) + insert + link.slice(how === 2 ? at : at + 1);
        fc.pre(bad !== link);
        const read = readLink(bad);
        // A last sign may differ in bits that carry nothing; then the text is still the whole one.
        if (read.ok) expect(read.text).toBe(DEMO);
        else expect(read.faults).toHaveLength(1);
      }),
      { numRuns: 400 },
    );
  });

  test('cut off anywhere is refused as damaged', () => {
    const link = linkOf(DEMO);
    for (const length of [8, 9, 12, 19, 20, 200, link.length - 2, link.length - 1])
      expect(faultOf(link.slice(0, length))).toMatch(/^is damaged: part of it was cut off or changed/);
  });

  test('of a newer version says so, and an unknown one is damaged', () => {
    expect(faultOf(forged(Buffer.from(DEMO), undefined, 2))).toMatch(
      /^is of version 2; this program reads versions up to 1/,
    );
    expect(faultOf(forged(Buffer.from(DEMO), undefined, 0))).toMatch(/^is damaged/);
    expect(faultOf('#family=one.two.three')).toMatch(/^is damaged/);
    expect(faultOf('#wall')).toMatch(/^is no link to a family/);
  });

  test('that swells without end is refused before it has swollen', () => {
    const bomb = forged(Buffer.alloc(40_000_000, 'a'));
    expect(bomb.length).toBeLessThan(MAX_LINK_CHARACTERS);
    const before = process.memoryUsage().arrayBuffers;
    expect(faultOf(bomb)).toMatch(/^unpacks to more than 4000000 bytes/);
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(30_000_000);
  });

  test('longer than the limit is neither written nor read', () => {
    let state = 1;
    const noise = Array.from({ length: 60_000 }, () => {
      state = (state * 48_271) % 2_147_483_647;
      return String.fromCharCode(33 + (state % 90));
    }).join('');
    const written = writeLink(noise);
    expect(written).toMatchObject({ ok: false, most: MAX_LINK_CHARACTERS });
    expect(!written.ok && written.length).toBeGreaterThan(MAX_LINK_CHARACTERS);
    expect(writeLink('x'.repeat(5_000_000))).toEqual({ ok: false, length: null, most: MAX_LINK_CHARACTERS });
    expect(faultOf(forged(Buffer.from(noise)))).toMatch(/^has \d+ characters, more than 60000/);
  });
});

test('base64url and the checksum agree with others', () => {
  // "123456789" is the standard check of a CRC: CBF43926 for CRC-32.
  expect(checksum(Buffer.from('123456789'))).toBe('cbf43926');
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 100 }), (bytes) => {
      const text = Buffer.from(bytes).toString('base64url');
      expect(toBase64url(bytes)).toBe(text);
      expect(fromBase64url(text)).toEqual(bytes);
      expect(Number.parseInt(checksum(bytes), 16)).toBe(crc32(bytes));
    }),
  );
  expect(fromBase64url('a+b/')).toBeNull();
  expect(fromBase64url('abcde')).toBeNull();
});
