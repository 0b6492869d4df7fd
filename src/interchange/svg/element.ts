/** An element of a drawing, freed of its XML: names of the SVG namespace only, in document order. */
export interface SvgElement {
  /** Local name, such as `path`. */
  readonly name: string;
  /** By local name; `xlink:href` for the one name from another namespace that matters. */
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: readonly SvgElement[];
  /** The characters directly inside; kept for `title` only, else empty. */
  readonly text: string;
  /** Where its tag begins, both counted from 1. */
  readonly line: number;
  readonly column: number;
}

/** Longest label, in characters. */
const MOST_LABEL = 120;

const NO_STYLE: ReadonlyMap<string, string> = new Map();

/** The place of an element, or of one of its attributes, the way a person finds it again. */
export function sayPlace(element: SvgElement, attribute?: string): string {
  const id = element.attributes.get('id');
  const named = id ? `<${element.name} id="${shorten(id, 40)}">` : `<${element.name}>`;
  const place = `line ${element.line}, column ${element.column}, ${named}`;
  return attribute ? `${place}, attribute ${attribute}` : place;
}

/** What an element calls itself: its title, which is for people, else its id, else nothing. */
export function ownLabel(element: SvgElement): string {
  const title = element.children.find(({ name }) => name === 'title');
  const words = title?.text.replace(/\s+/g, ' ').trim();
  return shorten(words || (element.attributes.get('id')?.trim() ?? ''), MOST_LABEL);
}

/** The declarations of an element's `style` attribute by property; the style sheets of the drawing are not asked. */
export function ownStyle(element: SvgElement): ReadonlyMap<string, string> {
  const style = element.attributes.get('style');
  if (style === undefined) return NO_STYLE;
  const pairs = withoutComments(style)
    .split(';')
    .flatMap((declaration): [string, string][] => {
      const colon = declaration.indexOf(':');
      if (colon < 0) return [];
      const value = declaration.slice(colon + 1).replace(/!\s*important\s*$/i, '');
      return [[declaration.slice(0, colon).trim().toLowerCase(), value.trim().toLowerCase()]];
    });
  return new Map(pairs);
}

/** One pass: a pattern would start over at each comment that is not closed. */
function withoutComments(style: string): string {
  let kept = '';
  let from = 0;
  for (let open = style.indexOf('/*'); open >= 0; open = style.indexOf('/*', from)) {
    kept += style.slice(from, open);
    const close = style.indexOf('*/', open + 2);
    if (close < 0) return kept;
    from = close + 2;
  }
  return kept + style.slice(from);
}

function shorten(text: string, most: number): string {
  return text.length > most ? `${text.slice(0, most - 1)}…` : text;
}
