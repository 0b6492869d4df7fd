/** Longest name of a layer. */
const MOST_LETTERS = 255;

/**
 * A name that a layer may have: without the signs that DXF keeps for itself and without control characters.
 *
 * @returns an empty text where nothing is left; `0` is another layer's name and gets a word before it.
 * @source DXF reference, "Symbol table names": not < > / \ " : ; ? * | = , and the back quote; 255 letters (from memory).
 * @check tests/unit/interchange/dxf-write.test.ts
 */
export function layerName(name: string): string {
  const plain = name
    .replace(/[<>/\\":;?*|=,`]/g, '-')
    .replace(/\p{C}/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  return (plain === '0' ? 'Layer 0' : plain).slice(0, MOST_LETTERS).trim();
}
