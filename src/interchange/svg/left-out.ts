import { addNote, type DrawingNotes, leftOut } from './drawing-notes.ts';
import { type SvgElement, sayPlace } from './element.ts';

/** Elements that show something which is no outline: what one and several are called, and what to do instead. */
const SHOWN: Readonly<Record<string, readonly [one: string, many: string, cure: string]>> = {
  text: ['text', 'texts', 'Turn text into paths in the drawing program, where it is part of a section.'],
  image: ['picture', 'pictures', 'Trace the picture as an underlay instead.'],
  foreignObject: ['foreign object', 'foreign objects', 'Draw what it shows with paths.'],
  video: ['video', 'videos', 'Draw the section with paths.'],
  audio: ['sound', 'sounds', 'Nothing needs to be done.'],
  canvas: ['canvas', 'canvases', 'Draw the section with paths.'],
  iframe: ['frame', 'frames', 'Draw the section with paths.'],
  include: ['inclusion of another file', 'inclusions of other files', 'Put what it fetches into the drawing itself.'],
};

const ANIMATED = new Set(['animate', 'animateColor', 'animateMotion', 'animateTransform', 'set', 'discard', 'mpath']);

/** Elements that describe or prepare, and are drawn by nobody where they stand. */
const SILENT = new Set([
  ...[
    'title',
    'desc',
    'metadata',
    'defs',
    'symbol',
    'clipPath',
    'mask',
    'marker',
    'pattern',
    'filter',
    'view',
    'style',
  ],
  ...[
    'script',
    'linearGradient',
    'radialGradient',
    'meshgradient',
    'hatch',
    'hatchpath',
    'solidcolor',
    'stop',
    'cursor',
  ],
  ...['font', 'font-face', 'glyph', 'missing-glyph', 'color-profile', 'altGlyphDef'],
]);

/** Notes an element that is no shape and holds none, where somebody might miss it. */
export function noteLeftOut(notes: DrawingNotes, element: SvgElement): void {
  const { name } = element;
  if (SILENT.has(name)) return;
  const place = sayPlace(element);
  if (ANIMATED.has(name)) {
    const cure = 'The shapes are taken as they are before they move.';
    addNote(notes, 'animation', place, leftOut('animation', 'animations'), cure);
    return;
  }
  const known = Object.hasOwn(SHOWN, name) ? SHOWN[name] : null;
  const [one, many, cure] = known ?? [
    `element <${name}>, which SVG does not know,`,
    `elements <${name}>, which SVG does not know,`,
    'Draw what it shows with paths.',
  ];
  addNote(notes, name, place, leftOut(one, many), cure);
}

/** Notes what never runs or counts wherever it stands: scripts, event handlers, style sheets, inclusions. */
export function noteNeverRun(notes: DrawingNotes, element: SvgElement): void {
  const place = sayPlace(element);
  if (element.name === 'script')
    addNote(notes, 'script', place, leftOut('script', 'scripts'), 'Nothing of a drawing is ever run.');
  if (element.name === 'style') noteStyleSheet(notes, place);
  for (const name of element.attributes.keys())
    if (/^on[a-z]/i.test(name))
      addNote(notes, 'handler', place, leftOut('event handler', 'event handlers'), 'Nothing of a drawing is ever run.');
  for (const child of element.children) noteNeverRun(notes, child);
}

/** Notes that the drawing has rules of style which are not followed. */
export function noteStyleSheet(notes: DrawingNotes, place: string): void {
  const what = leftOut('style sheet', 'style sheets');
  const cure = 'What it hides is shown here; check that no hidden line is taken.';
  addNote(notes, 'style sheet', place, what, cure);
}
