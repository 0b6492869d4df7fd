import { type DocumentState, openDocument, openText } from '../state/document-state.ts';
import type { PenTarget } from '../state/draw/draw-state.ts';
import { SAMPLE_FAMILIES } from '../state/sample-families.ts';
import type { Session } from '../state/session.ts';
import { listenTo } from '../state/store.ts';
import { Autosave } from './autosave.ts';
import { familyLabel } from './family-label.ts';
import * as notices from './keep-notices.ts';
import { type KeepStatus, keepOf } from './keep-state.ts';
import { packWork, type Unpacked, unpackWork, type WorkState, workState } from './kept-work.ts';
import { untouchedSample } from './sample-work.ts';
import type { KeepShelf } from './shelf.ts';
import { copySnapshots } from './snapshots.ts';
import type { Hold, Tabs } from './tabs.ts';
import {
  changeHead,
  claimWork,
  type Desk,
  type NewHead,
  readBodies,
  type WorkHead,
  writeWork,
} from './work-records.ts';

/** What keeping needs of the browser, and of the panels. */
export interface KeepParts {
  readonly shelf: KeepShelf;
  readonly tabs: Tabs;
  /** A memory that this tab has to itself and that survives a reload; null where there is none. */
  readonly memory: Pick<Storage, 'getItem' | 'setItem'> | null;
  freshId(): string;
  /** Milliseconds since 1970. */
  now(): number;
  /** Saves the open family as a file. */
  saveFile(): void;
  /** Saves a text as a file. */
  saveText(text: string, fileName: string): void;
}

/** The work that the open family is kept under. */
interface OpenWork {
  readonly id: string;
  readonly autosave: Autosave;
  hold: Hold | null;
  /** Resolves with whether this window may write it. */
  ready: Promise<boolean>;
  /** When the record was written that this window opened or wrote last; null where none is. */
  keptAt: number | null;
  takingOver: boolean;
}

const MEMORY_KEY = 'sectionary-tab';
const DESK_REST_MS = 300;

/** How long to wait for a right that another window has: a window that is just closing gives it up in time. */
export const WAIT_MS = { none: 0, another: 400, reload: 2_500, takeOver: 2_000, reloading: 6_000, closed: 2 ** 31 - 1 };

/**
 * Keeps the open family on the shelf: every change that is not in the middle of a gesture, at once. One window at a
 * time writes a work; another that opens it is told and may take it over or keep a copy.
 *
 * @check tests/unit/app/keeping.test.ts, tests/browser/keep-reload.test.ts
 */
export class Keeping {
  private readonly state;
  private readonly writer: string;
  private work: OpenWork | null = null;
  private adopting: OpenWork | null = null;
  private deskTimer: (() => void) | null = null;
  /** What is picked and begun in the open family, as it was when it last changed. */
  private deskNow: Desk | null = null;
  /** The count of families opened, as it was when the open work was begun. */
  private openedAt = 0;

  constructor(
    readonly session: Session,
    readonly parts: KeepParts,
  ) {
    this.state = keepOf(session);
    this.writer = parts.freshId();
  }

  /** Begins to keep what is open and what will be. Not before the first family is open: what was kept comes first. */
  follow(): void {
    const { documents, selection, draw } = this.session;
    this.openedAt = documents.getState().opened;
    if (!this.work) this.begin();
    // What the pen began before the store had answered.
    if (!this.work && draw.getState().pen) this.write();
    documents.subscribe((now, before) => this.changed(now, before));
    const noteDesk = () => this.deskChanged();
    for (const pick of ['entrantId', 'openingId', 'part'] as const) listenTo(selection, (s) => s[pick], noteDesk);
    listenTo(draw, (s) => s.pen, noteDesk);
    this.parts.tabs.listen(({ id }) => {
      if (this.work?.id === id) this.handOver(this.work);
    });
  }

  /** What this tab had open before it was loaded again: a kept work or a family that comes with the app. */
  remembered(): { readonly kind: 'work' | 'sample'; readonly id: string } | null {
    const [, kind, id] = /^(work|sample):(.+)$/.exec(this.parts.memory?.getItem(MEMORY_KEY) ?? '') ?? [];
    return kind === 'work' || kind === 'sample' ? { kind, id } : null;
  }

  /**
   * Opens a kept work in place of the open family. Where it cannot be read that is told, and the open family stays.
   * @param waitMs how long another window may take to give it up, before it counts as open there.
   * @param isWanted asked once its record is read: another family may be open by then.
   * @returns whether it was opened.
   */
  async open(head: WorkHead, waitMs = WAIT_MS.another, isWanted = () => true): Promise<boolean> {
    if (head.id === this.work?.id) return true;
    const unpacked = await this.read(head);
    if (!unpacked || !isWanted()) return false;
    const work = this.newWork(head.id, head.keptAt);
    this.show(work, unpacked, head.desk);
    work.ready = this.claim(work, waitMs);
    return true;
  }

  /** Opens what the tab showed before, of the families that come with the app. */
  openSample(id: string): void {
    const { documents, doors } = this.session;
    const sample = SAMPLE_FAMILIES.find((each) => each.id === id) ?? SAMPLE_FAMILIES[0];
    openText(documents, doors, sample.text, sample.fileName);
  }

  /** Keeps what is open here under a work of its own; the other window's work stays as it is there. */
  async keepAsCopy(): Promise<void> {
    const from = this.work;
    this.leave();
    const work = this.create();
    notices.clearTabNotice(this.session);
    this.write();
    if (from) await copySnapshots(this.parts.shelf, from.id, work.id).catch(() => {});
  }

  /** Makes this window the one that keeps the family, as the other window left it. */
  async takeOver(): Promise<void> {
    const { work } = this;
    if (!work || !this.isElsewhere()) return;
    work.takingOver = true;
    const { tabs } = this.parts;
    if (work.hold || !tabs.knowsOthers) return this.finishTakeOver(work);
    tabs.send({ ask: 'hand-over', id: work.id });
    await this.rest(WAIT_MS.takeOver);
    if (this.work !== work || !this.isElsewhere()) return;
    // The other window does not answer: it hangs, or sleeps.
    this.granted(work, await tabs.seize(work.id));
  }

  /** The work of the open family; one that came with the app, and is as it came, is made one now. */
  async ownWork(): Promise<string> {
    if (!this.work) this.write();
    await this.settled();
    return this.work?.id ?? '';
  }

  /** Resolves when everything asked for so far is written or has failed. */
  async settled(): Promise<void> {
    await this.work?.ready;
    await this.work?.autosave.settled();
  }

  /** Writes at once what would be written in a moment: the window may be about to go. */
  hurry(): void {
    if (this.deskTimer) this.writeDesk();
  }

  private changed(now: DocumentState, before: DocumentState): void {
    if (now.opened !== before.opened) {
      this.openedAt = now.opened;
      this.opened();
      return;
    }
    const [state, old] = [workState(now), workState(before)];
    if (!state || !old || now.editedFrom) return;
    const parts = ['document', 'past', 'future', 'saved', 'fileName'] as const;
    if (parts.some((part) => state[part] !== old[part])) this.write();
  }

  private opened(): void {
    const { adopting } = this;
    this.adopting = null;
    if (this.work !== adopting) this.leave();
    if (adopting) this.work = adopting;
    else this.begin();
  }

  /** A family that was just opened: kept at once, unless it came with the app and is as it came. */
  private begin(): void {
    notices.clearTabNotice(this.session);
    const state = workState(this.session.documents.getState());
    if (!state) return;
    const sample = untouchedSample(state);
    this.say(sample ? 'untouched' : 'writing', { workId: null, changed: false, dropped: 0 });
    if (sample) this.remember(`sample:${sample.id}`);
    else this.write();
  }

  private write(): void {
    const state = workState(this.session.documents.getState());
    if (!state) return;
    if (this.isElsewhere()) {
      this.state.setState({ changed: true });
      return;
    }
    const work = this.work ?? this.create();
    const { status } = this.state.getState();
    this.say(status === 'full' || status === 'failed' ? status : 'writing', { changed: true });
    // Now, not when it is written: another family may be open by then.
    const desk = this.desk();
    work.autosave.request(() => this.put(work, state, desk));
  }

  private async put(work: OpenWork, state: WorkState, desk: Desk): Promise<void> {
    if (!(await work.ready)) return;
    try {
      const kept = packWork(state);
      const head = this.headOf(work.id, state, desk);
      const ours = await writeWork(this.parts.shelf, head, kept);
      if (this.work !== work || this.isElsewhere()) return;
      if (!ours) return this.lose(work);
      work.keptAt = head.keptAt;
      notices.clearStoreNotice(this.session);
      if (!work.autosave.isBehind) this.say('kept', { dropped: kept.dropped });
    } catch (reason) {
      const full = notices.isFull(reason);
      if (this.work === work) this.say(full ? 'full' : 'failed');
      notices.tellNotWritten(this.session, full, this.actions());
    }
  }

  private headOf(id: string, { document, saved, fileName }: WorkState, desk: Desk): NewHead {
    const { writer } = this;
    const edited = document !== saved;
    return { ...familyLabel(document.file), id, writer, fileName, keptAt: this.parts.now(), edited, desk };
  }

  private desk(): Desk {
    const { entrantId, openingId, part } = this.session.selection.getState();
    const { pen, penFor } = this.session.draw.getState();
    return { entrantId, openingId, part, pen, penFor };
  }

  private deskChanged(): void {
    // Another family is being opened: what is put away for it is no change of the one that is kept here.
    if (this.adopting || this.session.documents.getState().opened !== this.openedAt) return;
    this.deskNow = this.desk();
    // An outline that the pen has begun is work, also on a family that came with the app.
    if (!this.work && this.session.draw.getState().pen) this.write();
    if (this.deskTimer || !this.work || this.isElsewhere()) return;
    this.deskTimer = this.session.doors.pace.later(DESK_REST_MS, () => this.writeDesk());
  }

  private writeDesk(): void {
    this.deskTimer?.();
    this.deskTimer = null;
    const { work, deskNow: desk } = this;
    if (!work || !desk || this.state.getState().status !== 'kept') return;
    const { shelf } = this.parts;
    // What was picked is worth no word where it cannot be kept.
    changeHead(shelf, work.id, this.writer, (old) => old && { ...old, desk }).catch(() => {});
  }

  /** The kept family of a head, or null and a word to the user where there is none. */
  private async read(head: WorkHead): Promise<Extract<Unpacked, { ok: true }> | null> {
    const bodies = await readBodies(this.parts.shelf, head).catch(() => []);
    const [latest, older] = bodies.map((body) => unpackWork(body, this.session.doors));
    const found = latest?.ok ? latest : older;
    if (!found?.ok) {
      const why = latest && !latest.ok ? latest.why : 'Its record is not there.';
      const rest = () => this.parts.saveText(JSON.stringify({ head, bodies }, null, 2), `${head.name} (damaged).json`);
      notices.tellUnreadable(this.session, head.name, why, rest);
      return null;
    }
    if (found !== latest) notices.tellPartlyLost(this.session, `The last change of ${head.name} could not be read.`);
    else if (found.historyLost) notices.tellPartlyLost(this.session, `The steps of undo of ${head.name} are lost.`);
    return found;
  }

  private show(work: OpenWork, { family }: Extract<Unpacked, { ok: true }>, desk: Desk | null): void {
    const { documents, selection, draw } = this.session;
    if (this.work !== work) this.leave();
    this.work = work;
    this.adopting = work;
    if (desk) selection.setState({ entrantId: desk.entrantId, openingId: desk.openingId, part: desk.part });
    openDocument(documents, family);
    this.adopting = null;
    if (desk?.pen) draw.setState({ pen: desk.pen, penFor: standingTarget(documents.getState(), desk) });
    this.remember(`work:${work.id}`);
    notices.clearTabNotice(this.session);
    this.say('writing', { workId: work.id, changed: false, dropped: 0 });
  }

  private async claim(work: OpenWork, waitMs: number): Promise<boolean> {
    const hold = await this.parts.tabs.hold(work.id, waitMs);
    if (this.work !== work) {
      hold?.release();
      return false;
    }
    if (!hold) {
      this.say('elsewhere');
      notices.tellElsewhere(this.session, false, this.actions());
      this.waitUntilFree(work);
      return false;
    }
    this.watch(work, hold);
    const claimed = await claimWork(this.parts.shelf, work.id, this.writer).catch(() => null);
    if (this.work !== work || this.state.getState().changed) return true;
    if (claimed) this.say('kept');
    else this.write();
    return true;
  }

  private watch(work: OpenWork, hold: Hold): void {
    work.hold = hold;
    hold.lost.then(() => {
      if (this.work === work && work.hold === hold) this.lose(work);
    });
  }

  /** Another window has the right now. */
  private lose(work: OpenWork): void {
    work.hold = null;
    work.ready = Promise.resolve(false);
    const safe = this.state.getState().status === 'kept';
    this.say('taken', { changed: !safe });
    notices.tellTaken(this.session, this.actions());
    this.waitUntilFree(work);
  }

  private async handOver(work: OpenWork): Promise<void> {
    const { hold } = work;
    if (!hold || this.isElsewhere()) return;
    await work.autosave.settled();
    this.lose(work);
    hold.release();
  }

  /** Waits for the right to the work; a window that is only loaded again has it back before this one takes it. */
  private async waitUntilFree(work: OpenWork): Promise<void> {
    const { tabs } = this.parts;
    if (!tabs.knowsOthers) return;
    const isOurs = () => this.work === work && this.isElsewhere();
    let hold = await tabs.hold(work.id, WAIT_MS.closed);
    while (hold && isOurs() && !work.takingOver) {
      hold.release();
      await this.rest(WAIT_MS.reloading);
      hold = isOurs() ? await tabs.hold(work.id, WAIT_MS.none) : null;
      if (hold) break;
      hold = isOurs() ? await tabs.hold(work.id, WAIT_MS.closed) : null;
    }
    if (hold) this.granted(work, hold);
  }

  private rest(ms: number): Promise<void> {
    return new Promise((resolve) => this.session.doors.pace.later(ms, resolve));
  }

  private granted(work: OpenWork, hold: Hold): void {
    if (this.work !== work || !this.isElsewhere()) {
      hold.release();
      return;
    }
    this.watch(work, hold);
    if (work.takingOver || !this.state.getState().changed) this.finishTakeOver(work);
    else notices.tellElsewhere(this.session, true, this.actions());
  }

  private async finishTakeOver(work: OpenWork): Promise<void> {
    const { shelf } = this.parts;
    const head = await claimWork(shelf, work.id, this.writer).catch(() => null);
    work.takingOver = false;
    work.ready = Promise.resolve(true);
    const { changed } = this.state.getState();
    const movedOn = head !== null && head.keptAt !== work.keptAt;
    if (movedOn) {
      if (changed) await this.writeCopy();
      const unpacked = await this.read(head);
      work.keptAt = head.keptAt;
      if (unpacked) this.show(work, unpacked, head.desk);
    }
    notices.clearTabNotice(this.session);
    this.say('kept');
    // Nobody changed it meanwhile: what was changed here goes on from there.
    if (changed && !movedOn) this.write();
  }

  /** Puts what is open here into a work of its own, without opening that. */
  private async writeCopy(): Promise<void> {
    const state = workState(this.session.documents.getState());
    if (!state) return;
    const id = this.parts.freshId();
    const head = this.headOf(id, state, this.desk());
    // Among the recent families the two must not look the same.
    await writeWork(this.parts.shelf, { ...head, name: `${head.name} (copy)` }, packWork(state));
    notices.tellCopied(this.session);
  }

  private create(): OpenWork {
    const work = this.newWork(this.parts.freshId(), null);
    this.work = work;
    this.remember(`work:${work.id}`);
    this.say('writing', { workId: work.id, changed: false, dropped: 0 });
    work.ready = this.parts.tabs.hold(work.id, WAIT_MS.closed).then((hold) => {
      if (hold && this.work === work) this.watch(work, hold);
      else hold?.release();
      return true;
    });
    return work;
  }

  private newWork(id: string, keptAt: number | null): OpenWork {
    const autosave = new Autosave((ms) => this.rest(ms));
    return { id, autosave, hold: null, ready: Promise.resolve(true), keptAt, takingOver: false };
  }

  /** Lets go of the open work, when what is on its way there is written. */
  private leave(): void {
    const { work } = this;
    this.hurry();
    this.work = null;
    if (!work) return;
    const { hold } = work;
    work.hold = null;
    work.autosave.settled().then(() => hold?.release());
  }

  private isElsewhere(): boolean {
    const { status } = this.state.getState();
    return status === 'elsewhere' || status === 'taken';
  }

  private say(status: KeepStatus, more: { workId?: string | null; changed?: boolean; dropped?: number } = {}): void {
    this.state.setState({ status, ...more });
  }

  private remember(what: string): void {
    try {
      this.parts.memory?.setItem(MEMORY_KEY, what);
    } catch {
      // A reload then opens the latest work: no loss worth a word.
    }
  }

  private actions(): notices.KeepActions {
    return {
      saveFile: this.parts.saveFile,
      keepAsCopy: () => void this.keepAsCopy(),
      takeOver: () => void this.takeOver(),
    };
  }
}

/** What a begun outline is for, where that is still there. */
function standingTarget({ document }: DocumentState, { penFor }: Desk): PenTarget | null {
  if (!penFor || 'head' in penFor) return penFor ?? null;
  return document?.family.profiles.some(({ id }) => id === penFor.id) ? penFor : null;
}
