import type { TextMeasure } from '../lettering/text-measure.ts';

/**
 * The same measure, quicker: a sheet is laid out several times before its size is settled, with the same words each time.
 * Widths grow with the size of the type, so each text is measured once.
 *
 * @check tests/unit/publish/page-parts.test.ts
 */
export function rememberedWidths(measure: TextMeasure): TextMeasure {
  const known = [new Map<string, number>(), new Map<string, number>()];
  return {
    width: (text, size, bold = false) => {
      const widths = known[bold ? 1 : 0];
      let width = widths.get(text);
      if (width === undefined) {
        width = measure.width(text, 1, bold);
        widths.set(text, width);
      }
      return width * size;
    },
    missing: (text) => measure.missing(text),
  };
}
