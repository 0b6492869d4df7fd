import { toBase64url } from './base64url.ts';
import { checksum } from './checksum.ts';
import { bytesOf, deflateBytes } from './deflate.ts';
import { LINK_MARK, LINK_VERSION, MAX_LINK_BYTES, MAX_LINK_CHARACTERS } from './link-form.ts';

/** A fragment that carries a family, or how long it would be (null where it was not even worth packing). */
export type LinkWrite =
  | { readonly ok: true; readonly fragment: string }
  | { readonly ok: false; readonly length: number | null; readonly most: number };

/**
 * The fragment that carries the text of a family file, `#family=...`.
 *
 * @param text as `writeFamily` gives it.
 * @returns not ok where the fragment would be longer than {@link MAX_LINK_CHARACTERS}.
 * @check tests/unit/interchange/link.test.ts
 */
export function writeLink(text: string): LinkWrite {
  const most = MAX_LINK_CHARACTERS;
  const bytes = bytesOf(text);
  if (bytes.length > MAX_LINK_BYTES) return { ok: false, length: null, most };
  const fragment = `${LINK_MARK}${LINK_VERSION}.${checksum(bytes)}.${toBase64url(deflateBytes(bytes))}`;
  return fragment.length > most ? { ok: false, length: fragment.length, most } : { ok: true, fragment };
}
