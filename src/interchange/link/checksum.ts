/** CRC-32's polynomial, lowest bit first. */
const POLYNOMIAL = 0xedb88320;

/** What one byte does to the checksum. */
const TABLE = Array.from({ length: 256 }, (_, byte) => {
  let value = byte;
  for (let bit = 0; bit < 8; bit++) value = value & 1 ? (value >>> 1) ^ POLYNOMIAL : value >>> 1;
  return value >>> 0;
});

/**
 * The CRC-32 of bytes as eight hexadecimal digits: tells a changed or cut text from a whole one.
 *
 * @source RFC 1952, section 8
 * @check tests/unit/interchange/link.test.ts compares with zlib's
 */
export function checksum(bytes: Uint8Array): string {
  let value = 0xffffffff;
  for (const byte of bytes) value = TABLE[(value ^ byte) & 255] ^ (value >>> 8);
  return ((value ^ 0xffffffff) >>> 0).toString(16).padStart(8, '0');
}
