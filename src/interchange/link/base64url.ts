const SIGNS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';

const VALUES = new Map([...SIGNS].map((sign, value) => [sign, value]));

/**
 * Bytes as text that an address carries unescaped: base64url without padding.
 *
 * @source RFC 4648, section 5
 * @check tests/unit/interchange/link.test.ts compares with Node's own
 */
export function toBase64url(bytes: Uint8Array): string {
  const parts: string[] = [];
  for (let i = 0; i < bytes.length; i += 3) {
    const group = (bytes[i] << 16) | ((bytes[i + 1] ?? 0) << 8) | (bytes[i + 2] ?? 0);
    const signs = [18, 12, 6, 0].map((shift) => SIGNS[(group >> shift) & 63]).join('');
    parts.push(signs.slice(0, Math.min(4, bytes.length - i + 1)));
  }
  return parts.join('');
}

/** The bytes of a base64url text; null where it has a sign that is none of its 64, or a length that cannot be. */
export function fromBase64url(text: string): Uint8Array | null {
  if (text.length % 4 === 1) return null;
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  let held = 0;
  let bits = 0;
  let at = 0;
  for (const sign of text) {
    const value = VALUES.get(sign);
    if (value === undefined) return null;
    held = ((held << 6) | value) & 0xfffff;
    bits += 6;
    if (bits < 8) continue;
    bits -= 8;
    bytes[at++] = (held >> bits) & 255;
  }
  return bytes;
}
