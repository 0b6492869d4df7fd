import type { GroupMark, Mark, Page, Stroke, TextMark } from '../../publish/page.ts';

/** Marks that are read as one thing, in the words of tagged PDF. */
export interface ReadMarks {
  readonly kind: 'read';
  readonly tag: 'H1' | 'H2' | 'H3' | 'P' | 'Figure' | 'TH' | 'TD';
  /** What a head of a table stands for. */
  readonly scope?: 'Row' | 'Column';
  /** What a picture shows. */
  readonly alt?: string;
  readonly marks: readonly Mark[];
}

/** Marks that are not read: rules, grounds, and signs beside a word that says the same. */
export interface UnreadMarks {
  readonly kind: 'unread';
  readonly marks: readonly Mark[];
}

/** Things that belong together. */
export interface PartsTogether {
  readonly kind: 'together';
  readonly tag: 'Sect' | 'Table' | 'TR';
  readonly title?: string;
  readonly parts: readonly PagePart[];
}

/** Things of which only what lies inside an area is drawn. */
export interface ClippedParts {
  readonly kind: 'clipped';
  readonly clip: readonly Stroke[];
  readonly parts: readonly PagePart[];
}

/** A part of a page as it is read. */
export type PagePart = ReadMarks | UnreadMarks | PartsTogether | ClippedParts;

/**
 * A page as it is read aloud: headings, paragraphs, pictures with what they show, tables; its first heading leads. Every
 * mark is in it once, in the order in which it is drawn but for that heading.
 *
 * @source ISO 32000-1:2008, 14.8 (standard structure types), from memory.
 * @check tests/unit/interchange/page-structure.test.ts, tests/outside/pdf-pages.test.ts
 */
export function pageStructure({ title, marks }: Pick<Page, 'title' | 'marks'>): PartsTogether {
  const parts = partsOf(marks);
  const isHead = (part: PagePart) => part.kind === 'read' && part.tag === 'H1';
  const head = parts.findIndex(isHead);
  const ordered = head < 0 ? parts : [parts[head], ...parts.toSpliced(head, 1)];
  return { kind: 'together', tag: 'Sect', title, parts: ordered };
}

function partsOf(marks: readonly Mark[]): PagePart[] {
  const parts: PagePart[] = [];
  for (const part of marks.flatMap(partsOfMark)) {
    const last = parts.at(-1);
    const joined = last && joinedParts(last, part);
    if (joined) parts[parts.length - 1] = joined;
    else parts.push(part);
  }
  return withoutTwins(parts);
}

function partsOfMark(mark: Mark): PagePart[] {
  if (mark.kind === 'path') return [{ kind: 'unread', marks: [mark] }];
  if (mark.kind === 'text') return [{ kind: 'read', tag: mark.heading ? `H${mark.heading}` : 'P', marks: [mark] }];
  return partsOfGroup(mark);
}

function partsOfGroup(group: GroupMark): PagePart[] {
  const { label, part, clip, marks } = group;
  if (part === 'row') return [{ kind: 'together', tag: 'Table', parts: [rowOf(marks)] }];
  // The words of a cell are read as one; more tags would take most of a large table's file.
  if (part) return [{ kind: 'read', tag: part === 'head' ? 'TH' : 'TD', marks }];
  // What holds pictures that are told is told by them and by its words.
  if (label !== undefined && !marks.some(holdsLabel))
    return [{ kind: 'read', tag: 'Figure', alt: label, marks: [group] }];
  const parts = partsOf(marks);
  if (!clip) return parts;
  return parts.every(({ kind }) => kind === 'unread')
    ? [{ kind: 'unread', marks: [group] }]
    : [{ kind: 'clipped', clip, parts }];
}

function holdsLabel(mark: Mark): boolean {
  return mark.kind === 'group' && (mark.label !== undefined || mark.marks.some(holdsLabel));
}

/** A row; heads are of columns where the row has nothing else, of the row where it has. */
function rowOf(marks: readonly Mark[]): PartsTogether {
  const parts = marks.flatMap(partsOfMark);
  const scope = parts.some((part) => part.kind === 'read' && part.tag === 'TD') ? 'Row' : 'Column';
  const cells = parts.map((part) => (part.kind === 'read' && part.tag === 'TH' ? ({ ...part, scope } as const) : part));
  return { kind: 'together', tag: 'TR', parts: cells };
}

/** Lines of one paragraph, rows of one table, and what is not read, in one; null where the two stay apart. */
function joinedParts(a: PagePart, b: PagePart): PagePart | null {
  if (a.kind === 'unread' && b.kind === 'unread') return { ...a, marks: [...a.marks, ...b.marks] };
  if (a.kind === 'together' && b.kind === 'together')
    return a.tag === 'Table' && b.tag === 'Table' ? { ...a, parts: [...a.parts, ...b.parts] } : null;
  if (a.kind !== 'read' || b.kind !== 'read' || a.tag !== b.tag) return null;
  const [line, next] = [a.marks[a.marks.length - 1], b.marks[0]];
  const isOne = line.kind === 'text' && next.kind === 'text' && isNextLine(line, next);
  return isOne ? { ...a, marks: [...a.marks, ...b.marks] } : null;
}

/** Greatest distance of two lines of one paragraph, in heights of the em. */
const NEXT_LINE = 1.5;

function isNextLine(line: TextMark, next: TextMark): boolean {
  const down = next.spot[1] - line.spot[1];
  const same = (['size', 'bold', 'align', 'ink', 'turned'] as const).every((look) => line[look] === next[look]);
  return same && line.spot[0] === next.spot[0] && down > 0 && down <= NEXT_LINE * line.size;
}

/** A sign whose word stands behind it is not read as well. */
function withoutTwins(parts: readonly PagePart[]): PagePart[] {
  return parts.map((part, i) => {
    const next = parts[i + 1];
    if (part.kind !== 'read' || part.alt === undefined || next?.kind !== 'read') return part;
    const isTwin = next.marks.length === 1 && next.marks[0].kind === 'text' && next.marks[0].text === part.alt;
    return isTwin ? { kind: 'unread', marks: part.marks } : part;
  });
}
