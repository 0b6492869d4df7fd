import type { FileFault } from '../../../interchange/json/file-fault.ts';
import type { MergeChoice, MergePlan } from '../../../interchange/json/merge-families.ts';
import type { FamilyDocument } from '../../../interchange/json/read.ts';
import type { Placing } from '../../../interchange/place-loop.ts';
import type { DrawnLoop } from '../../../interchange/take-outline.ts';
import type { DrawingInput, DrawingLoops } from '../../../jobs/read-drawing.ts';
import type { ProfileKind } from '../../../profile/profile.ts';
import { makeStore, type Store } from '../store.ts';

/** What is to become of one loop of a drawing. */
export interface LoopChoice {
  readonly ticked: boolean;
  readonly kind: ProfileKind;
  readonly name: string;
  /** Empty: it belongs to no section. */
  readonly section: string;
  /** Whether the outline with fewer corners is taken, where there is one. */
  readonly lighter: boolean;
}

/** A drawing that was read and is looked at before its outlines are taken. */
export interface DrawingImport {
  readonly stage: 'drawing';
  readonly name: string;
  readonly input: DrawingInput;
  readonly drawing: DrawingLoops;
  readonly choices: readonly LoopChoice[];
  readonly placing: Omit<Placing, 'lighter'>;
  /** The loop that is pointed at; its height may be typed to set the scale. */
  readonly pointed: number;
  /** Whether it is being read anew with another scale. */
  readonly rereading: boolean;
  /** The profile whose outline the one ticked loop is to replace; null where sections are added. */
  readonly replacing: string | null;
  /** Why it could not be added, or not be read with another scale. */
  readonly faults: readonly FileFault[];
}

/** Another family, while one is open: to be opened in its place, or its sections to be added. */
export interface FamilyImport {
  readonly stage: 'family';
  readonly name: string;
  readonly from: FamilyDocument;
  readonly plan: MergePlan;
  readonly choices: ReadonlyMap<string, MergeChoice>;
  /** Whether its sections are to be added, so that each is asked about. */
  readonly merging: boolean;
  readonly faults: readonly FileFault[];
}

/** What is coming in: nothing, a file that is being read, a drawing or a family that is asked about. */
export type ImportStage =
  | { readonly stage: 'none' }
  | { readonly stage: 'reading'; readonly name: string }
  | DrawingImport
  | FamilyImport;

/** What is coming in, and how many files wait behind it. */
export interface ImportState {
  readonly now: ImportStage;
  readonly waiting: number;
}

/** A store with nothing coming in. */
export function makeImportStore(): Store<ImportState> {
  return makeStore<ImportState>({ now: { stage: 'none' }, waiting: 0 });
}

/** A drawing as it is first shown: sound loops that lie in no other are ticked, names are taken from it. */
export function beginDrawing(name: string, input: DrawingInput, drawing: DrawingLoops): DrawingImport {
  const ticks = usualTicks(drawing.loops);
  const choices = drawing.loops.map((loop, i): LoopChoice => {
    return {
      ticked: ticks[i],
      ...readLabel(plainLabel(loop.label)),
      name: nameOf(drawing.loops, i, name),
      lighter: true,
    };
  });
  return {
    stage: 'drawing',
    name,
    input,
    drawing,
    choices,
    placing: { seenFrom: 'bow', quarters: 0, place: 'origin' },
    pointed: Math.max(0, ticks.indexOf(true)),
    rereading: false,
    replacing: null,
    faults: [],
  };
}

/** The same drawing read with another scale; choices are kept where it has the same loops. */
export function withScale(before: DrawingImport, input: DrawingInput, drawing: DrawingLoops): DrawingImport {
  const fresh = beginDrawing(before.name, input, drawing);
  const same = drawing.loops.length === before.drawing.loops.length;
  const choices = fresh.choices.map((choice, i) => {
    if (!same) return choice;
    const kept = before.choices[i];
    const wasSound = before.drawing.loops[i].fault === null;
    const ticked = wasSound ? kept.ticked && isSound(drawing.loops[i]) : choice.ticked;
    return { ...kept, ticked };
  });
  const { placing, replacing } = before;
  return { ...fresh, choices, placing, replacing, pointed: same ? before.pointed : fresh.pointed };
}

/** Whether a loop may be taken as an outline at all. */
export function isSound({ fault }: DrawnLoop): boolean {
  return fault === null;
}

/** The numbers of the loops that are taken. */
export function tickedLoops({ drawing, choices }: DrawingImport): number[] {
  return drawing.loops.flatMap((loop, i) => (choices[i].ticked && isSound(loop) ? [i] : []));
}

/** Whether what is ticked can be taken: something, each with a name; one loop where it replaces an outline. */
export function isReady(now: DrawingImport): boolean {
  const ticked = tickedLoops(now);
  if (now.rereading || ticked.length === 0) return false;
  return now.replacing === null ? ticked.every((i) => now.choices[i].name.trim() !== '') : ticked.length === 1;
}

/** Which loops are ticked at first. A loop with a gap never is: closing it is the user's word. */
function usualTicks(loops: readonly DrawnLoop[]): boolean[] {
  const frames = loops.map((loop, i) => isFrame(loop, loops.filter(({ inside }) => inside === i).length));
  const lies = (loop: DrawnLoop): boolean => {
    if (loop.inside === null) return false;
    return !frames[loop.inside] || lies(loops[loop.inside]);
  };
  return loops.map((loop, i) => isSound(loop) && loop.gaps.length === 0 && !frames[i] && !lies(loop));
}

/** Taller or wider than any blade, nanometres. */
const FRAME_SIZE = 20e6;

/** A border round a drawing, or round several sections, is no section itself. */
function isFrame({ width, height }: DrawnLoop, held: number): boolean {
  return held > 1 || (held === 1 && Math.max(width, height) > FRAME_SIZE);
}

const KIND_WORDS: readonly (readonly [RegExp, ProfileKind])[] = [
  [/\s*[-_]?\b(keyway|opening)s?\b/i, 'opening'],
  [/\s*[-_]?\b(tool|strip)s?\b/i, 'tool'],
  [/\s*[-_]?\b(blank|blade|key)s?\b/i, 'blank'],
];

/** What a label says of its loop: "Heron keyway" is an opening of the section Heron. */
function readLabel(label: string): Pick<LoopChoice, 'kind' | 'section'> {
  const found = KIND_WORDS.find(([word]) => word.test(label));
  if (!found) return { kind: 'blank', section: '' };
  const rest = label.replace(found[0], '').trim();
  return { kind: found[1], section: found[1] === 'tool' || !/^\p{L}[\p{L} ]*$/u.test(rest) ? '' : rest };
}

/** A label as a person would write it: an id such as heron-blank becomes Heron blank. */
function plainLabel(label: string): string {
  const trimmed = label.trim();
  if (!/^[a-z][a-z0-9]*([-_][a-z0-9]+)*$/.test(trimmed)) return trimmed;
  return (trimmed[0].toUpperCase() + trimmed.slice(1)).replace(/[-_]/g, ' ');
}

/** What a loop is called at first: its label, else the file's name; with a number where others are called the same. */
function nameOf(loops: readonly DrawnLoop[], i: number, fileName: string): string {
  const label = plainLabel(loops[i].label);
  const alike = loops.flatMap((loop, k) => (plainLabel(loop.label) === label ? [k] : []));
  const stem = (label || fileName.replace(/\.[a-z0-9]{1,5}$/i, '').trim() || 'Section').slice(0, 190);
  return alike.length === 1 ? stem : `${stem} ${alike.indexOf(i) + 1}`;
}

/** A unit that a drawing may be in. */
export interface DrawingUnit {
  readonly name: string;
  /** Nanometres in one of it. */
  readonly nm: number;
}

/** The units that drawings are made in, the likeliest first. */
export const DRAWING_UNITS: readonly DrawingUnit[] = [
  { name: 'millimetres', nm: 1e6 },
  { name: 'inches', nm: 25.4e6 },
  { name: 'pixels, 96 to the inch', nm: 25.4e6 / 96 },
  { name: 'points, 72 to the inch', nm: 25.4e6 / 72 },
  { name: 'thousandths of an inch', nm: 25.4e3 },
  { name: 'micrometres', nm: 1e3 },
  { name: 'centimetres', nm: 1e7 },
  { name: 'metres', nm: 1e9 },
];

/** A blade or keyway is between these heights as a rule, nanometres; common practice, no source. */
const USUAL_HEIGHT = { least: 5e6, most: 12e6 };

/** Sizes beyond these make a wrong scale likely, nanometres. */
const DOUBTFUL_HEIGHT = { least: 2.5e6, most: 20e6 };

/** A scale at which the drawing's sections would have the size of a blade. */
export interface LikelyScale extends DrawingUnit {
  /** The height of the middle loop at that scale, nanometres. */
  readonly height: number;
}

/** The units at which the loop of middle height would be as tall as a blade; none where it is about as tall already. */
export function likelyScales({ loops, nmPerUnit }: DrawingLoops): LikelyScale[] {
  // The longer side: a section may be drawn lying down.
  const heights = loops.map(({ width, height }) => Math.max(width, height)).sort((a, b) => a - b);
  const middle = heights[Math.floor(heights.length / 2)] ?? 0;
  if (middle >= DOUBTFUL_HEIGHT.least && middle <= DOUBTFUL_HEIGHT.most) return [];
  return DRAWING_UNITS.map((unit) => ({ ...unit, height: Math.round((middle / nmPerUnit) * unit.nm) })).filter(
    ({ height }) => height >= USUAL_HEIGHT.least && height <= USUAL_HEIGHT.most,
  );
}
