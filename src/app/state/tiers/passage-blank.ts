import { type Family, openingsOf } from '../../../family/family.ts';
import { readingText, type Units } from '../../../family/length-text.ts';
import type { Ring } from '../../../geom/ring.ts';
import { makeDrawn, type Vertex } from '../../../geom/vertex.ts';
import type { Passage, PassageBlank } from '../../../passage/passage.ts';
import { withArcs } from '../../../profile/find-arcs.ts';
import type { Doors } from '../doors.ts';
import { withProfile } from '../draw/change-profile.ts';
import { freshName } from '../draw/made-section.ts';
import { commitFamily } from '../edit-document.ts';
import type { Session } from '../session.ts';
import { showAdded } from '../show-added.ts';
import { namesText } from './passage-words.ts';

/** Chords become arcs where those are off by no more than this, nanometres, and the blank still enters. */
const ARCS_WITHIN = 300;

/**
 * Adds the widest blank to the family, as one step of undo, picks it, and offers to look at it in Draw or on the Wall.
 *
 * @returns null where it was added, else why not, in words.
 * @check tests/unit/app/passage-blank.test.ts
 */
export function makePassageBlank(session: Session, family: Family, passage: Passage, units: Units): string | null {
  const { documents, doors } = session;
  const { document } = documents.getState();
  const { blank } = passage;
  if (!document || !blank) return null;
  const name = freshName(family.profiles, blankName(family, passage));
  const shape = blank.milled ? { milled: blank.milled.blade } : { drawn: verticesOf(blank, family, passage, doors) };
  const added = doors.addSection(document.file, { kind: 'blank', name }, shape);
  const note = noteOf(family, passage, units);
  const file = withProfile(added.file, added.id, (entry) => ({ ...entry, note }));
  const faults = commitFamily(documents, doors, file);
  if (faults) return `${faults[0].what}. ${faults[0].cure}`;
  showAdded(session, {
    notice: 'passage-blank',
    blankId: added.id,
    title: `${name} was added`,
    words: 'It is picked now. Undo takes it out again.',
    views: ['draw', 'wall'],
  });
  return null;
}

/** Says what it passes by their number: sections joined in a name would read as one section. */
function blankName(family: Family, { members }: Passage): string {
  const all = members.length === openingsOf(family).length && members.length > 1;
  if (all) return 'Passage blank, all keyways';
  if (members.length > 1) return `Passage blank, ${members.length} keyways`;
  const only = family.profiles.find(({ id }) => id === members[0]?.id);
  return `Passage blank of ${only?.name ?? 'one keyway'}`;
}

function noteOf(family: Family, { members, clearance, blank }: Passage, units: Units): string {
  const what = blank?.milled ? 'A blank milled by a straight cutter' : 'The widest blank';
  const names = members.map(({ id }) => family.profiles.find((profile) => profile.id === id)?.name ?? id);
  return `${what} that enters ${namesText(names, 12)} with ${readingText(clearance, units)} all round.`;
}

/** The outline with arcs for chords where the blank then still enters all that it entered; else with its chords. */
function verticesOf(blank: PassageBlank, family: Family, passage: Passage, doors: Doors): readonly Vertex[] {
  const made = makeDrawn(withArcs(blank.ring, ARCS_WITHIN));
  return made.ok && stillEnters(made.ring, family, passage, doors) ? made.drawn : blank.ring;
}

function stillEnters(ring: Ring, family: Family, { entries, clearance }: Passage, doors: Doors): boolean {
  const conditions = { runningClearance: clearance, tiltLimit: 0, wear: 0 };
  const rings = new Map(openingsOf(family).map((opening) => [opening.id, opening.ring]));
  return entries.every(({ id, fit }) => {
    const opening = rings.get(id);
    return !opening || fit.verdict !== 'enters' || doors.judgeNow(opening, ring, conditions).verdict === 'enters';
  });
}
