// The archive is read back by the record layout of APPNOTE.TXT 6.3 (PKWARE, ZIP File Format Specification), 4.3.7 and 4.3.12.
import { inflateRawSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { bytesOf, zipFiles } from '../../../src/interchange/link/deflate.ts';

/** The files of an archive by its central directory, unpacked by zlib. */
function unzip(archive: Uint8Array): Map<string, string> {
  const bytes = Buffer.from(archive);
  const end = bytes.lastIndexOf(Buffer.from([0x50, 0x4b, 5, 6]));
  const files = new Map<string, string>();
  let at = bytes.readUInt32LE(end + 16);
  for (let i = 0; i < bytes.readUInt16LE(end + 10); i++) {
    expect(bytes.readUInt32LE(at)).toBe(0x02014b50);
    const [nameLength, extra, comment] = [28, 30, 32].map((offset) => bytes.readUInt16LE(at + offset));
    const name = bytes.toString('utf8', at + 46, at + 46 + nameLength);
    const local = bytes.readUInt32LE(at + 42);
    const start = local + 30 + bytes.readUInt16LE(local + 26) + bytes.readUInt16LE(local + 28);
    const packed = bytes.subarray(start, start + bytes.readUInt32LE(at + 20));
    const isStored = bytes.readUInt16LE(at + 10) === 0;
    files.set(name, (isStored ? packed : inflateRawSync(packed)).toString('utf8'));
    at += 46 + nameLength + extra + comment;
  }
  return files;
}

test('files of an archive come out as they went in, under their names', () => {
  const texts = { 'Chart 1.svg': '<svg/>', 'Chart 2 – Größe.svg': 'x'.repeat(5000) };
  const archive = zipFiles(Object.fromEntries(Object.entries(texts).map(([name, text]) => [name, bytesOf(text)])));
  expect(Object.fromEntries(unzip(archive))).toEqual(texts);
  expect(archive.length).toBeLessThan(1000);
});

test('the same files are the same bytes', () => {
  const once = zipFiles({ a: bytesOf('one') });
  expect(zipFiles({ a: bytesOf('one') })).toEqual(once);
});
