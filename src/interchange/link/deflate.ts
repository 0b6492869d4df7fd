// The one file that imports fflate.
import { deflateSync, Inflate, strFromU8, strToU8, zipSync } from 'fflate';

/** Compressed bytes are fed in pieces: deflate swells a piece at most about a thousandfold, so each may be looked at. */
const PIECE = 1024;

/** UTF-8 bytes of a text. */
export function bytesOf(text: string): Uint8Array {
  return strToU8(text);
}

/** The text of UTF-8 bytes. */
export function textOfBytes(bytes: Uint8Array): string {
  return strFromU8(bytes);
}

/** Deflated bytes, as small as the method makes them. */
export function deflateBytes(bytes: Uint8Array): Uint8Array {
  return deflateSync(bytes, { level: 9 });
}

/**
 * Files in one ZIP archive, in the order given.
 *
 * @param files by name; no two alike.
 * @param date when they were made; the earliest that the format knows where not given, so that the same files are the same bytes.
 * @check tests/unit/app/publish-files.test.ts
 */
export function zipFiles(files: Readonly<Record<string, Uint8Array>>, date = new Date(1980, 0, 1)): Uint8Array {
  return zipSync({ ...files }, { level: 6, mtime: date });
}

/**
 * The bytes that were deflated: "damaged" where these are no deflated bytes or stop too early, "too-large" where more
 * than `most` come out; then nothing is unpacked any further.
 *
 * @check tests/unit/interchange/link.test.ts
 */
export function inflateBytes(packed: Uint8Array, most: number): Uint8Array | 'damaged' | 'too-large' {
  const pieces: Uint8Array[] = [];
  let length = 0;
  let ended = false;
  const stream = new Inflate((piece, final) => {
    pieces.push(piece);
    length += piece.length;
    ended ||= final;
  });
  try {
    for (let at = 0; at < packed.length && length <= most; at += PIECE)
      stream.push(packed.subarray(at, at + PIECE), at + PIECE >= packed.length);
  } catch {
    return 'damaged';
  }
  if (length > most) return 'too-large';
  return ended ? joined(pieces, length) : 'damaged';
}

function joined(pieces: readonly Uint8Array[], length: number): Uint8Array {
  const whole = new Uint8Array(length);
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
