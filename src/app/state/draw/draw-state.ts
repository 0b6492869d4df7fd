import type { Point } from '../../../geom/point.ts';
import type { Vertex } from '../../../geom/vertex.ts';
import type { FamilyDocument } from '../../../interchange/json/read.ts';
import { millVertices } from '../../../profile/mill-outline.ts';
import type { Milled, Profile, ProfileKind } from '../../../profile/profile.ts';
import { makeStore, type Store } from '../store.ts';

/** The two ways to describe a profile in the Draw view: by its vertices, or by the way it is milled. */
export const DRAW_FORMS = ['outline', 'mill'] as const;

/** See {@link DRAW_FORMS}. */
export type DrawForm = (typeof DRAW_FORMS)[number];

/** What the pointer does on the sheet of the Draw view: it chooses and drags, or it sets vertices of a new outline. */
export type DrawTool = 'choose' | 'pen';

/** An outline that was wanted and is not sound: it is shown where it fails and never taken. */
export interface Refused {
  readonly vertices: readonly Vertex[];
  /** Places where it crosses or touches itself, nanometres; empty where the fault has no place. */
  readonly at: readonly Point[];
  /** Why, in words. */
  readonly words: string;
}

/** An edit of the outline under way. */
export interface OutlineEdit {
  readonly id: string;
  /**
   * `hand` while a pointer or a field has hold of it, `nudges` while key presses follow each other closely, `preview`
   * while an operation shows what it would come to.
   */
  readonly kind: 'hand' | 'nudges' | 'preview';
  /** The outline as it was when the edit began: each wanted one is made of this. */
  readonly base: readonly Vertex[];
  /** The vertices that were chosen then. */
  readonly chosen: readonly number[];
  /** The document as this edit left it last; another one means that the edit was ended from elsewhere. */
  readonly document: FamilyDocument;
}

/** What a new profile is called and what it is. */
export interface NewHead {
  readonly kind: ProfileKind;
  readonly name: string;
  readonly section?: string;
  /** The profile that it comes after in the chart; at the end where absent. */
  readonly afterId?: string;
}

/** What becomes of the pen's outline once it is closed: the outline of a profile, or a profile of its own. */
export type PenTarget = { readonly id: string } | { readonly head: NewHead };

/** What the pen had begun and was thrown away: it can be brought back as long as nothing else is done to the family. */
export interface DiscardedPen {
  readonly pen: readonly Vertex[] | null;
  readonly penFor: PenTarget | null;
  readonly document: FamilyDocument | null;
}

/** To what a place on the sheet is drawn. */
export interface SnapSettings {
  readonly grid: boolean;
  /** Nanometres from line to line; null for the step that goes with the units. */
  readonly step: number | null;
  /** Vertices of this outline and of the ghosts. */
  readonly vertices: boolean;
  /** Edges of the ghosts and of this outline. */
  readonly edges: boolean;
  /** Horizontally and vertically in line with neighbours and with where it was. */
  readonly axes: boolean;
}

/** What the Draw view knows beside the family: which form is shown, what is chosen, what the pen has begun. */
export interface DrawState {
  readonly form: DrawForm;
  readonly tool: DrawTool;
  /** Numbers of the chosen vertices of the edited outline, ascending; those it no longer has count for nothing. */
  readonly chosen: readonly number[];
  readonly edit: OutlineEdit | null;
  /** The outline last wanted and refused, until the next action; null where all was taken. */
  readonly refused: Refused | null;
  /** Vertices set by the pen so far; null while no outline is begun. Kept over a reload. */
  readonly pen: readonly Vertex[] | null;
  readonly penFor: PenTarget | null;
  readonly discarded: DiscardedPen | null;
  /** Whether the counterpart of the pair lies under the edited outline. */
  readonly counterpart: boolean;
  /** Further profiles that lie under the edited one as ghosts, by id. */
  readonly ghosts: readonly string[];
  readonly snap: SnapSettings;
}

/** What a family begins with: nothing chosen, held, refused or begun. */
export const NOTHING_BEGUN = {
  tool: 'choose',
  chosen: [],
  edit: null,
  refused: null,
  pen: null,
  penFor: null,
  discarded: null,
  ghosts: [],
} as const satisfies Partial<DrawState>;

const NOTHING: DrawState = {
  ...NOTHING_BEGUN,
  form: 'outline',
  counterpart: true,
  snap: { grid: true, step: null, vertices: true, edges: false, axes: true },
};

/** A store in which nothing is chosen or begun. */
export function makeDrawStore(): Store<DrawState> {
  return makeStore(NOTHING);
}

/** Vertices of milled descriptions, which are values: the same one is asked for at every drawing. */
const milledVertices = new WeakMap<Milled, readonly Vertex[]>();

/** The vertices that the Draw view edits: as drawn, or for a milled profile its corners, the roundings as arcs. */
export function editedVertices({ drawn, milled, ring }: Profile): readonly Vertex[] {
  if (drawn || !milled) return drawn ?? ring;
  const known = milledVertices.get(milled) ?? millVertices(milled);
  milledVertices.set(milled, known);
  return known;
}

/** The chosen vertices that the outline has. */
export function chosenIn({ chosen }: Pick<DrawState, 'chosen'>, count: number): readonly number[] {
  return chosen.every((i) => i < count) ? chosen : chosen.filter((i) => i < count);
}

/** What the profile is called and is that the pen is to make; null where it gives one that is there another outline. */
export function newHeadOf({ penFor }: Pick<DrawState, 'penFor'>): NewHead | null {
  return penFor && 'head' in penFor ? penFor.head : null;
}

/** What is made while the pen is in hand for a section that is not there yet; null else. */
export function headInHand(state: Pick<DrawState, 'tool' | 'penFor'>): NewHead | null {
  return state.tool === 'pen' ? newHeadOf(state) : null;
}
