/** How the fragment of a link to a family begins. */
export const LINK_MARK = '#family=';

/** The version of the link that is written, and the newest that is read. */
export const LINK_VERSION = 1;

/** Longest fragment that is written or read, in characters. */
export const MAX_LINK_CHARACTERS = 60_000;

/** Most bytes of text that a link may hold: no family that is written into one comes near. */
export const MAX_LINK_BYTES = 4_000_000;

/** Whether the fragment of an address is meant as a link to a family, sound or not. */
export function isLink(fragment: string): boolean {
  return fragment.startsWith(LINK_MARK);
}
