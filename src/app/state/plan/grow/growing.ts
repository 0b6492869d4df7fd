import { type Family, openingsOf } from '../../../../family/family.ts';
import type { Fit } from '../../../../fit/fit.ts';
import type { FamilyFile } from '../../../../interchange/json/schema.ts';
import { foldName } from '../../../../names/fold-name.ts';
import { FreshNames } from '../../../../names/fresh-name.ts';
import { misleadingNames } from '../../../../names/misleading.ts';
import { registerOf } from '../../../../names/register.ts';
import type { GrownSection, GrowProposal, GrowReport } from '../../../../plan/grow.ts';
import type { GrowInput } from '../../../../plan/grow-family.ts';
import type { Profile } from '../../../../profile/profile.ts';
import { withProfile } from '../../draw/change-profile.ts';
import { commitFamily } from '../../edit-document.ts';
import type { Session } from '../../session.ts';
import { showAdded } from '../../show-added.ts';
import { type AddedSection, grownInPlan, isPlannedFile } from './grown-in-plan.ts';

/** A name for a new section that nothing has, nor anything that looks alike. */
export function proposedName(family: Family): string {
  return new FreshNames(registerOf(family)).word();
}

/**
 * What speaks against a name for a new section: none typed, one in use, one that looks like another, one that would mislead.
 *
 * @returns a sentence, or the empty text where nothing does.
 * @check tests/unit/app/growing.test.ts
 */
export function nameTrouble(family: Family, name: string, { keyway, blank }: GrowProposal): string {
  const text = name.trim();
  if (text === '') return 'Type a name for the new section.';
  const register = registerOf(family);
  if (register.senses.some((sense) => foldName(sense.text) === foldName(text))) return `“${text}” is taken.`;
  if (new FreshNames(register).firstOf([text]) === null) return `“${text}” looks like a name that is taken.`;
  const trial: Family = {
    ...family,
    profiles: [
      ...family.profiles,
      profileOf(NEW_KEYWAY, 'opening', text, keyway),
      profileOf(NEW_BLANK, 'blank', text, blank),
    ],
  };
  const found = misleadingNames({
    family: trial,
    register: registerOf(trial),
    fitOf: (entrant, opening) => ({
      ...NO_FIT,
      verdict: entrant === NEW_BLANK && opening === NEW_KEYWAY ? 'enters' : 'blocked',
    }),
    reason: () => '',
    length: () => '',
  }).find(({ texts }) => texts.some((one) => one.includes(text)));
  return found ? `“${text}” would mislead: ${found.words}` : '';
}

const [NEW_KEYWAY, NEW_BLANK] = ['\u0000new keyway', '\u0000new blank'];

const AT_ORIGIN = { x: 0, y: 0, tilt: 0 };
const NO_FIT: Fit = {
  verdict: 'blocked',
  clearance: 0,
  accuracy: 0,
  placement: AT_ORIGIN,
  play: { lateral: 0, vertical: 0 },
  seated: AT_ORIGIN,
};

function profileOf(id: string, kind: Profile['kind'], section: string, { ring }: GrownSection): Profile {
  return { id, kind, section, name: kindName(section, kind), ring };
}

function kindName(section: string, kind: Profile['kind']): string {
  return `${section} ${kind === 'opening' ? 'keyway' : 'blank'}`;
}

/** What was asked and found, and which of the proposals is added. */
export interface Growth {
  readonly input: GrowInput;
  readonly report: GrowReport;
  readonly proposal: GrowProposal;
}

/**
 * Adds a proposed section to the family, keyway and blank, with the blank that enters all where there was none, as one step
 * of undo, and picks its blank.
 *
 * @returns null where it was added, else why not, in words.
 * @check tests/unit/app/growing.test.ts
 */
export function addGrown(session: Session, family: Family, growth: Growth, name: string): string | null {
  const { documents, doors } = session;
  const { document } = documents.getState();
  if (!document) return null;
  const section = name.trim();
  const trouble = nameTrouble(family, section, growth.proposal);
  if (trouble) return trouble;
  const added = withSection(document.file, family, growth, section, session);
  const { file, blankId } = grownInPlan(doors.access, added, family, growth);
  const faults = commitFamily(documents, doors, file);
  if (faults) return `${faults[0].what}. ${faults[0].cure}`;
  showAdded(session, {
    notice: 'grown-section',
    blankId,
    title: `${section} was added, keyway and blank`,
    words: `Its blank is picked now.${inPlanWords(document.file)} Undo takes both out again.`,
    views: ['wall', 'draw'],
  });
  return null;
}

function inPlanWords(before: FamilyFile): string {
  if (!isPlannedFile(before)) return '';
  const room = (before.plan?.reserve ?? 0) > 0 ? ' and takes one of the sections that room was kept for' : '';
  return ` It is an area of its own in Plan${room}.`;
}

function withSection(
  start: FamilyFile,
  family: Family,
  { input, report, proposal }: Growth,
  section: string,
  { doors }: Session,
): AddedSection {
  const { between } = input;
  const lastKeyway = openingsOf(family).at(-1)?.id;
  const keyway = doors.addSection(
    start,
    { kind: 'opening', name: kindName(section, 'opening'), section, afterId: between?.[0] ?? lastKeyway },
    shapeOf(proposal.keyway),
  );
  const before = between && family.profiles.find(({ id }) => id === between[0])?.section;
  const neighbour = family.profiles.findLast((profile) => profile.kind === 'blank' && profile.section === before);
  const blank = doors.addSection(
    keyway.file,
    {
      kind: 'blank',
      name: kindName(section, 'blank'),
      section,
      ...(neighbour && before ? { afterId: neighbour.id } : {}),
    },
    shapeOf(proposal.blank),
  );
  const note = noteOf(family, between);
  const noted = withProfile(blank.file, keyway.id, (entry) => ({
    ...entry,
    ...(between && { inBetween: true }),
    note,
  }));
  const added = { section, keywayId: keyway.id, blankId: blank.id };
  if (!report.newTop) return { ...added, file: noted };
  const name = new FreshNames(registerOf(family)).firstOf(['All-section blank', 'All-section blank, second']);
  const top = doors.addSection(
    noted,
    { kind: 'blank', name: name ?? 'Blank that enters all keyways' },
    { drawn: report.newTop },
  );
  return { ...added, file: top.file };
}

function noteOf(family: Family, between: GrowInput['between']): string {
  if (!between) return 'Added later.';
  const [first, second] = between.map((id) => {
    const profile = family.profiles.find((one) => one.id === id);
    return profile?.section ?? profile?.name ?? id;
  });
  return `Squeezed in later between ${first} and ${second}.`;
}

function shapeOf({ ring, milled }: GrownSection) {
  return milled ? { milled } : { drawn: ring };
}
