import type { FileFault } from '../json/file-fault.ts';
import { fromBase64url } from './base64url.ts';
import { checksum } from './checksum.ts';
import { inflateBytes, textOfBytes } from './deflate.ts';
import { LINK_MARK, LINK_VERSION, MAX_LINK_BYTES, MAX_LINK_CHARACTERS } from './link-form.ts';

/** The text of a family file that a link carries, or why there is none. */
export type LinkRead =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly faults: readonly FileFault[] };

/**
 * Reads the fragment of an address as a link to a family. Never throws.
 *
 * @param fragment with or without its `#`.
 * @returns the text to the byte as it was written; nothing of it where any sign of the link was changed or lost.
 * @check tests/unit/interchange/link.test.ts
 */
export function readLink(fragment: string): LinkRead {
  const marked = fragment.startsWith('#') ? fragment : `#${fragment}`;
  if (!marked.startsWith(LINK_MARK)) return refuse('is no link to a family', 'Copy the whole link.');
  if (marked.length > MAX_LINK_CHARACTERS)
    return refuse(
      `has ${marked.length} characters, more than ${MAX_LINK_CHARACTERS}`,
      'Ask for the family as a file instead.',
    );
  const form = /^(\d+)\.([0-9a-f]{8})\.([\w-]+)$/.exec(marked.slice(LINK_MARK.length));
  if (form && Number(form[1]) > LINK_VERSION)
    return refuse(
      `is of version ${Number(form[1])}; this program reads versions up to ${LINK_VERSION}`,
      'Open it with a newer version of the program, or ask for the family as a file.',
    );
  if (!form || Number(form[1]) !== LINK_VERSION) return damaged();
  return unpack(form[3], form[2]);
}

function unpack(data: string, expected: string): LinkRead {
  const packed = fromBase64url(data);
  const bytes = packed ? inflateBytes(packed, MAX_LINK_BYTES) : 'damaged';
  if (bytes === 'too-large')
    return refuse(
      `unpacks to more than ${MAX_LINK_BYTES} bytes`,
      'No family is passed on like this: do not use this link.',
    );
  if (bytes === 'damaged' || checksum(bytes) !== expected) return damaged();
  return { ok: true, text: textOfBytes(bytes) };
}

function damaged(): LinkRead {
  return refuse(
    'is damaged: part of it was cut off or changed on the way',
    'Copy the whole link again, or ask for the family as a file.',
  );
}

function refuse(what: string, cure: string): LinkRead {
  return { ok: false, faults: [{ path: 'link', what, cure }] };
}
