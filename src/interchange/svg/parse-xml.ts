import { DOMParser, type Document, type Element, type Node } from '@xmldom/xmldom';
import { type FileFault, sayText } from '../json/file-fault.ts';
import type { SvgElement } from './element.ts';
import { scanMarkup } from './scan-markup.ts';

const SVG_NAMESPACE = 'http://www.w3.org/2000/svg';
const XLINK_NAMESPACE = 'http://www.w3.org/1999/xlink';
const XINCLUDE_NAMESPACE = 'http://www.w3.org/2001/XInclude';

const ELEMENT_NODE = 1;
const TEXT_NODE = 3;
const CDATA_NODE = 4;

/** The elements of a drawing, or why the text is none. */
export type ParsedXml =
  | { readonly ok: true; readonly root: SvgElement; readonly styleSheets: boolean }
  | { readonly ok: false; readonly faults: readonly FileFault[] };

interface Complaint {
  readonly message: string;
  readonly line: number;
  readonly column: number;
}

/**
 * The elements that an SVG text holds. Strict: what is not well-formed XML is a fault with its line, as a drawing that
 * is cut off would else lose its end silently. Elements of other namespaces are dropped; nothing is fetched or run.
 *
 * @param text the whole text; a byte-order mark and blank lines in front are skipped.
 * @returns the root element (which is an `svg`), or one fault.
 * @source Extensible Markup Language (XML) 1.0, fifth edition, W3C 2008; Namespaces in XML 1.0, third edition.
 * @check tests/unit/interchange/svg-hostile.test.ts
 */
export function parseXml(text: string): ParsedXml {
  if (typeof text !== 'string') return refuse('file', 'is not a text', 'Choose an SVG drawing.');
  const body = text.replace(/^\uFEFF?\s*/, '');
  if (body === '') return refuse('file', 'is empty', 'Choose an SVG drawing.');
  const fault = scanMarkup(body);
  if (fault) return { ok: false, faults: [fault] };
  if (!body.startsWith('<')) return notSvg(`begins with ${sayText(body.slice(0, 20))}`);
  const above = text.slice(0, text.length - body.length).split('\n').length - 1;
  const parsed = parseStrictly(body);
  if ('message' in parsed) return refuseXml(parsed, above);
  const root = parsed.documentElement;
  if (!root || !isSvg(root) || localName(root) !== 'svg') return notSvg(`holds a <${root?.nodeName}>`);
  return { ok: true, root: takeElement(root, above), styleSheets: hasStyleSheet(parsed) };
}

/** The document, or the first complaint of the parser: a warning counts, since it tells of a repair by guessing. */
function parseStrictly(text: string): Document | Complaint {
  let first: Complaint | null = null;
  try {
    const parser = new DOMParser({
      locator: true,
      onError: (_level, message, context) => {
        // A letter that an encoding lost, in a name or a remark, does no harm to lines.
        if (/replacement character/.test(message)) return;
        const place = context?.locator ?? {};
        first ??= { message, line: place.lineNumber ?? 1, column: place.columnNumber ?? 1 };
      },
    });
    const document = parser.parseFromString(text, 'image/svg+xml');
    return first ?? document;
  } catch (error) {
    return first ?? { message: error instanceof Error ? error.message : String(error), line: 1, column: 1 };
  }
}

/** What the parser's complaints mean, where it says them to programmers. */
const COMPLAINTS: readonly (readonly [RegExp, string])[] = [
  [/prefix is non-null and namespace is null/, 'a prefix (the part of a name before a colon) is not declared'],
  [/tag mismatch: "([^"]*)" != "([^"]*)"/, 'the element <$1> is closed by </$2>'],
  [/unclosed xml tag|unexpected end of input/, 'the drawing ends before all its elements are closed'],
  [/entity not found:\s*(&[^;]*;)/, 'the entity $1 is not known'],
  [/attribute "([^"]*)" missed value/, 'the attribute $1 has no value'],
  [/missed quot/, 'an attribute without quotation marks'],
  [/Attribute (\S+) redefined/, 'the attribute $1 is given twice'],
  [/Only one element can be added/, 'there is a second element after the end of the drawing'],
  [/missing root element/, 'there is no element'],
  [/starting with "<!"/, 'a declaration after <! that is not known'],
];

function refuseXml({ message, line, column }: Complaint, above: number): ParsedXml {
  for (const [pattern, words] of COMPLAINTS) {
    const hit = pattern.exec(message);
    if (hit)
      return malformed(
        words.replace(/\$(\d)/g, (_, digit: string) => hit[Number(digit)] ?? ''),
        line,
        column,
      );
  }
  return malformed(message, line, column);

  function malformed(what: string, atLine: number, atColumn: number): ParsedXml {
    const path = `line ${Math.max(1, atLine) + above}, column ${Math.max(1, atColumn)}`;
    const cure = 'Save the drawing again from the program that made it; the file may have been cut off.';
    return refuse(path, `not well-formed XML: ${what.slice(0, 200)}`, cure);
  }
}

function notSvg(what: string): ParsedXml {
  return refuse('file', `is no SVG drawing: it ${what}`, 'Choose a file whose first element is <svg>.');
}

function refuse(path: string, what: string, cure: string): ParsedXml {
  return { ok: false, faults: [{ path, what, cure }] };
}

/** Elements without any namespace count too: drawings copied out of a web page have none. */
function isSvg(element: Element): boolean {
  return !element.namespaceURI || element.namespaceURI === SVG_NAMESPACE;
}

function localName(node: { localName: string | null; nodeName: string }): string {
  return node.localName ?? node.nodeName;
}

function childrenOf(node: Node): Node[] {
  const children: Node[] = [];
  for (let child = node.firstChild; child; child = child.nextSibling) children.push(child);
  return children;
}

function takeElement(element: Element, above: number): SvgElement {
  const name = localName(element);
  const nodes = childrenOf(element);
  const inner = nodes.filter((node): node is Element => node.nodeType === ELEMENT_NODE);
  return {
    name,
    attributes: takeAttributes(element),
    children: inner.flatMap((child) => takeChild(child, above)),
    text: name === 'title' ? textOf(nodes) : '',
    line: (element.lineNumber ?? 1) + above,
    column: element.columnNumber ?? 1,
  };
}

/** Nothing for an element of another namespace; an inclusion is kept by name, so that it can be told of. */
function takeChild(child: Element, above: number): SvgElement[] {
  const included = child.namespaceURI === XINCLUDE_NAMESPACE;
  if (!isSvg(child) && !included) return [];
  const taken = takeElement(child, above);
  return [included ? { ...taken, name: 'include', children: [] } : taken];
}

function takeAttributes(element: Element): Map<string, string> {
  const taken = new Map<string, string>();
  for (let i = 0; i < element.attributes.length; i++) {
    const attribute = element.attributes.item(i);
    if (!attribute) continue;
    if (!attribute.namespaceURI) taken.set(localName(attribute), attribute.value);
    if (attribute.namespaceURI === XLINK_NAMESPACE && localName(attribute) === 'href')
      taken.set('xlink:href', attribute.value);
  }
  return taken;
}

function textOf(nodes: readonly Node[]): string {
  const texts = nodes.filter(({ nodeType }) => nodeType === TEXT_NODE || nodeType === CDATA_NODE);
  return texts.map(({ nodeValue }) => nodeValue ?? '').join('');
}

function hasStyleSheet(document: Document): boolean {
  return childrenOf(document).some(({ nodeName }) => nodeName === 'xml-stylesheet');
}
