import type { Family } from '../../../family/family.ts';
import type { Fit } from '../../../fit/fit.ts';
import { makeRing, type Ring } from '../../../geom/ring.ts';
import { makeDrawn, type Vertex } from '../../../geom/vertex.ts';
import { type Candidate, type Identification, profilesAmong } from '../../../identify/identify.ts';
import { USUAL_ERROR } from '../../../identify/judge-likeness.ts';
import { poseOutline } from '../../../identify/outline-pose.ts';
import { JobCancelled } from '../../../jobs/job.ts';
import { packOutline } from '../../../jobs/packed-outline.ts';
import { standOnOrigin } from '../../../profile/move-outline.ts';
import type { Profile, ProfileKind } from '../../../profile/profile.ts';
import { conditionsFor } from '../conditions-state.ts';
import type { JobOnItsWay } from '../doors.ts';
import { addSection, type EditAnswer } from '../draw/section-editing.ts';
import { pickedLoop } from '../draw/tracing.ts';
import { underlayOf } from '../draw/underlay-state.ts';
import { pickProfile } from '../selection-state.ts';
import type { Session } from '../session.ts';
import { troubleText } from '../trouble-text.ts';
import { type IdentifyState, NO_UNKNOWN, type UnknownSource } from './identify-state.ts';

/** An outline as it is brought, sound or not. */
export interface BroughtOutline {
  readonly name: string;
  readonly kind: ProfileKind;
  readonly vertices: readonly Vertex[];
  readonly source: UnknownSource;
  readonly profileId?: string;
}

/**
 * Shows the Identify sheet with an unknown outline, to be compared at once.
 *
 * @returns what is wrong with the outline, in words; null where it was taken.
 */
export function bringUnknown(session: Session, brought: BroughtOutline): string | null {
  const made = makeDrawn(brought.vertices);
  if (!made.ok) return `The outline ${made.fault.message}.`;
  const { name, kind, source, profileId = null } = brought;
  stopIdentifying(session);
  session.identify.setState({
    ...NO_UNKNOWN,
    unknown: { name, kind, source, profileId, vertices: made.drawn, ring: made.ring },
    among: kind === 'opening' ? 'openings' : 'entrants',
    error: source === 'family' ? USUAL_ERROR.family : USUAL_ERROR.outside,
  });
  session.names.setState({ sheet: 'identify' });
  session.selection.setState({ view: 'names' });
  return null;
}

/** Shows the Identify sheet with a profile of the family, to be compared with all others. */
export function identifyProfile(session: Session, profile: Profile): string | null {
  const { id: profileId, name, kind } = profile;
  return bringUnknown(session, { name, kind, profileId, source: 'family', vertices: profile.ring });
}

/** Shows the Identify sheet with the outline that was found in a picture under a profile; null where it was taken. */
export function identifyTraced(session: Session, id: string, name: string): string | null {
  const underlay = underlayOf(session, id);
  const loop = underlay && pickedLoop(underlay);
  const under = session.documents.getState().document?.family.profiles.find((profile) => profile.id === id);
  if (!loop || !under) return 'No outline is picked.';
  return bringUnknown(session, { name, kind: under.kind, source: 'traced', vertices: loop.vertices });
}

/** Puts the unknown away. */
export function dropUnknown(session: Session): void {
  stopIdentifying(session);
  session.identify.setState(NO_UNKNOWN);
}

const jobs = new WeakMap<Session, JobOnItsWay<unknown>>();

/** Stops the comparison on its way. */
export function stopIdentifying(session: Session): void {
  const { run } = session.identify.getState();
  jobs.get(session)?.cancel();
  jobs.delete(session);
  if (run.phase === 'running') session.identify.setState({ run: { phase: 'stopped' } });
}

/** What was compared last in a window: another outline, question or family is compared anew. */
const lastAsked = new WeakMap<Session, readonly unknown[]>();

/** Compares the unknown where it, the question or the family is another one than last time. */
export function identifyWhenNew(session: Session, family: Family): void {
  const { unknown, among, error, mirrored, turned, run } = session.identify.getState();
  const asked = [unknown, among, error, mirrored, turned, family.profiles];
  const before = lastAsked.get(session);
  if (!unknown || (run.phase !== 'none' && before?.every((part, i) => part === asked[i]))) return;
  lastAsked.set(session, asked);
  identifyNow(session, family);
}

/** Compares the unknown with the sections of the family, in another thread. */
export function identifyNow(session: Session, family: Family): void {
  const { unknown, among, error, mirrored, turned } = session.identify.getState();
  if (!unknown) return;
  stopIdentifying(session);
  const profiles = profilesAmong(family.profiles, among).filter(({ id }) => id !== unknown.profileId);
  const asked = profiles.map(({ id, kind, name, ring }) => ({ id, kind, name, ring }));
  session.identify.setState({ run: { phase: 'running', done: 0, total: 1 }, picked: 0, keyways: { phase: 'none' } });
  const question = { outline: unknown.ring, error, mirrored, turned, profiles: asked };
  follow(session, () =>
    session.doors.identify.identifyOutline(question, (done, total) => {
      if (session.identify.getState().run.phase === 'running')
        session.identify.setState({ run: { phase: 'running', done, total } });
    }),
  )
    ?.then((answer) => answer && session.identify.setState({ run: { phase: 'done', answer, profiles } }))
    .catch((reason) => session.identify.setState({ run: { phase: 'failed', trouble: troubleText(reason) } }));
}

/** Starts a job in place of the one on its way; its result is undefined where another took its place meanwhile. */
function follow<Output>(session: Session, start: () => JobOnItsWay<Output>): Promise<Output | undefined> | null {
  jobs.get(session)?.cancel();
  let job: JobOnItsWay<Output>;
  try {
    job = start();
  } catch (reason) {
    session.identify.setState({ run: { phase: 'failed', trouble: troubleText(reason) } });
    return null;
  }
  jobs.set(session, job);
  const isLatest = () => jobs.get(session) === job;
  return job.result.then(
    (output) => (isLatest() ? output : undefined),
    (reason) => {
      if (reason instanceof JobCancelled || !isLatest()) return undefined;
      throw reason;
    },
  );
}

/** Changes how the unknown is compared; it is compared anew by whoever shows it. */
export function changeQuestion(
  session: Session,
  change: Partial<Pick<IdentifyState, 'among' | 'error' | 'mirrored' | 'turned'>>,
): void {
  session.identify.setState({ ...change, told: '' });
}

/** Looks at another candidate. */
export function pickCandidate(session: Session, picked: number): void {
  const { run } = session.identify.getState();
  const count = run.phase === 'done' ? run.answer.ranked.length : 0;
  if (picked < 0 || picked >= count) return;
  session.identify.setState({ picked, keyways: { phase: 'none' } });
}

/** The candidate that is looked at; null before there is an answer. */
export function pickedCandidate({ run, picked }: IdentifyState): Candidate | null {
  return run.phase === 'done' ? (run.answer.ranked[picked] ?? null) : null;
}

/** The answer; null before there is one. */
export function answerOf({ run }: IdentifyState): Identification | null {
  return run.phase === 'done' ? run.answer : null;
}

/**
 * Tries the unknown in every keyway: one of the family as it is drawn there, another one as it lies on the candidate that is
 * looked at, turned and mirrored like that.
 */
export function tryInKeyways(session: Session, family: Family): void {
  const { identify, conditions, doors } = session;
  const { error } = identify.getState();
  const candidate = pickedCandidate(identify.getState());
  const tried = triedRing(identify.getState(), family);
  const openings = family.profiles.filter(({ kind }) => kind === 'opening');
  if (!tried || openings.length === 0) return;
  const entrant = packOutline(contentOf(tried), tried);
  const packed = openings.map(({ ring }) => packOutline(contentOf(ring), ring));
  const under = conditionsFor(conditions.getState(), family);
  identify.setState({ keyways: { phase: 'running' } });
  const fits: Fit[] = [];
  const pairs = Uint32Array.from(openings.flatMap((_, i) => [0, i]));
  const bands = openings.map(({ tolerance }) => ({ blank: error, opening: tolerance ?? family.tolerance }));
  const input = { openings: packed, entrants: [entrant], pairs, conditions: under, measured: true };
  const isWanted = () => pickedCandidate(identify.getState()) === candidate;
  const fail = (reason: unknown) =>
    isWanted() && identify.setState({ keyways: { phase: 'failed', trouble: troubleText(reason) } });
  try {
    doors
      .judgePairs(input, (part) => fits.push(...part.fits))
      .result.then(
        () =>
          doors.judgeDetails({ entrant, openings: packed, fits, bands, conditions: under, wear: false }, () => {})
            .result,
      )
      .then((details) => {
        if (!isWanted()) return;
        const answers = openings.map(({ id: openingId }, i) => ({
          openingId,
          fit: fits[i],
          threeWay: details[i].threeWay,
        }));
        identify.setState({ keyways: { phase: 'done', answers } });
      })
      .catch(fail);
  } catch (reason) {
    fail(reason);
  }
}

/** The outline that is tried in the keyways; null where there is none. */
function triedRing(state: IdentifyState, family: Family): Ring | null {
  const { unknown } = state;
  const own = family.profiles.find(({ id }) => id === unknown?.profileId);
  if (own) return own.ring;
  const candidate = pickedCandidate(state);
  if (!candidate) return unknown?.ring ?? null;
  const made = makeRing(candidate.comparison.laid);
  return made.ok ? made.ring : null;
}

/** A name for the content of an outline, for the threads that keep prepared shapes. */
function contentOf(ring: Ring): string {
  return `laid ${ring.map(({ x, y }) => `${x} ${y}`).join(' ')}`;
}

/** What the unknown is added as. */
export interface AddedAs {
  readonly name: string;
  readonly kind: ProfileKind;
  /** As it lies on the candidate that is looked at, turned and mirrored like that; else as it was brought. */
  readonly laid: boolean;
}

/** Adds the unknown to the family as one step of undo, and leaves it out of the comparison with itself. */
export function addUnknown(session: Session, { name, kind, laid }: AddedAs): EditAnswer {
  const { identify, documents } = session;
  const { unknown } = identify.getState();
  const candidate = pickedCandidate(identify.getState());
  if (!unknown) return null;
  const turned = laid && candidate ? poseOutline(unknown.vertices, candidate.comparison.pose) : unknown.vertices;
  const before = new Set(documents.getState().document?.family.profiles.map(({ id }) => id));
  const faults = addSection(session, { name, kind }, standOnOrigin(turned, 'left'));
  if (faults) return faults;
  const added = documents.getState().document?.family.profiles.find(({ id }) => !before.has(id));
  identify.setState({
    unknown: { ...unknown, profileId: added?.id ?? null },
    told: `Added to the family as ${name}. Undo takes it out again.`,
  });
  return null;
}

/** Shows a profile of the family in Draw. */
export function openInDraw(session: Session, profile: Pick<Profile, 'id' | 'kind'>): void {
  pickProfile(session.selection, profile);
  session.selection.setState({ view: 'draw' });
}
