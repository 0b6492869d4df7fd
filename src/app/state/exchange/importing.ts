import type { Vertex } from '../../../geom/vertex.ts';
import type { FileFault } from '../../../interchange/json/file-fault.ts';
import type { MergeChoice } from '../../../interchange/json/merge-families.ts';
import type { TextEncoding } from '../../../interchange/sniff-format.ts';
import { JobCancelled } from '../../../jobs/job.ts';
import type { DrawingInput, LoopsRead } from '../../../jobs/read-drawing.ts';
import type { ProfileKind } from '../../../profile/profile.ts';
import type { JobOnItsWay } from '../doors.ts';
import { commitFamily, endEdit, previewOutline } from '../edit-document.ts';
import { pickProfile } from '../selection-state.ts';
import type { Session } from '../session.ts';
import { troubleText } from '../trouble-text.ts';
import {
  beginDrawing,
  type DrawingImport,
  type FamilyImport,
  type ImportStage,
  isReady,
  type LoopChoice,
  tickedLoops,
  withScale,
} from './import-state.ts';

/** A file or a pasted text that is to come in. */
export interface IncomingFile {
  readonly name: string;
  /** Bytes. */
  readonly size: number;
  /** So many of its first bytes. */
  head(bytes: number): Promise<Uint8Array>;
  text(encoding: TextEncoding): Promise<string>;
}

/** What the window does with files that are not read here. */
export interface ImportHands<F extends IncomingFile> {
  takePicture(file: F): void;
  /** Shows a table of claims before it is taken. */
  takeClaims(name: string, text: string): void;
  /** Opens a family in place of the open one, after asking where edits would be lost. */
  openFamily(file: F): void;
  /** Asks what an outline is; returns what is wrong with it, in words, null where it is asked. */
  identify(outline: {
    readonly name: string;
    readonly kind: ProfileKind;
    readonly vertices: readonly Vertex[];
  }): string | null;
}

/** Larger drawings and families are not read: hundreds of traced sections stay far below. Bytes. */
export const LARGEST_FILE = 20_000_000;

/** So many bytes of a file tell what it is. */
const SNIFFED_BYTES = 65_536;

type Wanted = Pick<Session, 'documents' | 'selection' | 'imports' | 'doors'>;

/** Brings files in one after another: reads each, asks what it cannot know, and hands the answer to the family. */
export class Importing<F extends IncomingFile> {
  private queue: F[] = [];
  private current: F | null = null;
  private job: JobOnItsWay<LoopsRead> | null = null;
  /** Grows with every file and every cancel, so that a late answer is known as one. */
  private turn = 0;
  private refused: { name: string; faults: readonly FileFault[] }[] = [];

  constructor(
    private readonly session: Wanted,
    private readonly hands: ImportHands<F>,
  ) {}

  /** Takes files in; those that come while one is asked about wait behind it. */
  take(files: readonly F[]): void {
    if (files.length === 0) return;
    this.queue.push(...files);
    this.session.imports.setState({ waiting: this.queue.length });
    if (this.session.imports.getState().now.stage === 'none') this.next();
  }

  /** Gives up the file in hand and goes on with the next. */
  cancel(): void {
    this.turn++;
    this.job?.cancel();
    this.job = null;
    this.next();
  }

  /** Gives up everything. */
  cancelAll(): void {
    this.queue = [];
    this.cancel();
  }

  private next(): void {
    const file = this.queue.shift();
    this.current = file ?? null;
    this.session.imports.setState({ now: { stage: 'none' }, waiting: this.queue.length });
    if (!file) {
      this.refused = [];
      return;
    }
    this.session.imports.setState({ now: { stage: 'reading', name: file.name } });
    const turn = ++this.turn;
    this.prepare(file)
      .catch(() => [fault('cannot be read', 'Pick a file, not a folder, and see that it still exists.')])
      .then((prepared) => {
        if (turn !== this.turn) return;
        if (!('stage' in prepared)) this.refuse(file.name, prepared);
        else if (prepared.stage === 'none') this.next();
        else this.session.imports.setState({ now: prepared });
      });
  }

  /** What is to be asked about a file, nothing where it needs no question, or why it does not come in. */
  private async prepare(file: F): Promise<ImportStage | readonly FileFault[]> {
    const { doors } = this.session;
    const turn = this.turn;
    const sniffed = doors.interchange.sniffFormat(file.name, await file.head(SNIFFED_BYTES));
    if (!sniffed.ok) return [sniffed.fault];
    const { format, encoding } = sniffed;
    if (turn !== this.turn) return NOTHING;
    if (format === 'picture') {
      this.hands.takePicture(file);
      return NOTHING;
    }
    if (file.size > LARGEST_FILE) return [tooLarge(file.size, format)];
    const text = await file.text(encoding);
    if (turn !== this.turn) return NOTHING;
    if (format === 'claims') return this.handClaims(file.name, text);
    return format === 'family' ? this.prepareFamily(file, text) : this.prepareDrawing(file.name, { format, text });
  }

  private handClaims(name: string, text: string): ImportStage | readonly FileFault[] {
    if (!this.session.documents.getState().document) return [NO_FAMILY];
    this.hands.takeClaims(name, text);
    return NOTHING;
  }

  private prepareFamily(file: F, text: string): ImportStage | readonly FileFault[] {
    const { documents, doors } = this.session;
    const into = documents.getState().document;
    if (!into) {
      this.hands.openFamily(file);
      return NOTHING;
    }
    const read = doors.readFamily(text);
    if (!read.ok) return read.faults;
    const plan = doors.interchange.planMerge(into, read.document);
    const choices = new Map(plan.rows.map(({ id, usual }) => [id, usual]));
    return { stage: 'family', name: file.name, from: read.document, plan, choices, merging: false, faults: [] };
  }

  private async prepareDrawing(name: string, input: DrawingInput): Promise<ImportStage | readonly FileFault[]> {
    if (!this.session.documents.getState().document) return [NO_FAMILY];
    const read = await this.loopsOf(input);
    if (!read) return NOTHING;
    return read.ok ? beginDrawing(name, input, read.drawing) : read.faults;
  }

  /** The loops of a drawing; null where it was cancelled. */
  private async loopsOf(input: DrawingInput): Promise<LoopsRead | null> {
    try {
      this.job?.cancel();
      this.job = this.session.doors.interchange.readDrawing(input);
      return await this.job.result;
    } catch (reason) {
      if (reason instanceof JobCancelled) return null;
      const what = `cannot be read: ${troubleText(reason)}`;
      return { ok: false, faults: [fault(what, 'Save it anew in the drawing program, or as another form.')] };
    }
  }

  /** Reads the drawing that is asked about anew, with so many nanometres in its unit; null: as it says itself. */
  async setScale(nmPerUnit: number | null): Promise<void> {
    const now = this.drawing();
    if (!now) return;
    const { format, text } = now.input;
    const input = nmPerUnit === null ? { format, text } : { format, text, nmPerUnit };
    const turn = ++this.turn;
    this.session.imports.setState({ now: { ...now, rereading: true, faults: [] } });
    const read = await this.loopsOf(input);
    const latest = this.drawing();
    if (turn !== this.turn || !latest || !read) return;
    const next = read.ok
      ? withScale(latest, input, read.drawing)
      : { ...latest, faults: read.faults, rereading: false };
    this.session.imports.setState({ now: next });
  }

  /** Adds the ticked loops to the family as one step of undo, or replaces one outline; then the next file comes. */
  addLoops(): void {
    const now = this.drawing();
    if (!now || !isReady(now)) return;
    const faults = now.replacing === null ? this.addTicked(now) : this.replaceOutline(now, now.replacing);
    if (faults) this.session.imports.setState({ now: { ...now, faults } });
    else this.next();
  }

  /** Asks what the one ticked loop is: it is not added to the family. */
  identifyLoop(): void {
    const now = this.drawing();
    const [i, ...others] = now ? tickedLoops(now) : [];
    if (!now || i === undefined || others.length > 0) return;
    const { kind, name, lighter } = now.choices[i];
    const vertices = this.session.doors.interchange.placeLoop(now.drawing.loops[i], { ...now.placing, lighter });
    const wrong = this.hands.identify({ name: name.trim() || now.name, kind, vertices });
    if (wrong)
      this.session.imports.setState({ now: { ...now, faults: [fault(wrong, 'Mend it in the drawing program.')] } });
    else this.next();
  }

  private addTicked(now: DrawingImport): readonly FileFault[] | null {
    const { documents, selection, doors } = this.session;
    let file = documents.getState().document?.file;
    if (!file) return [NO_FAMILY];
    const ids: string[] = [];
    for (const i of tickedLoops(now)) {
      const { kind, name, section, lighter } = now.choices[i];
      const vertices = doors.interchange.placeLoop(now.drawing.loops[i], { ...now.placing, lighter });
      const head = { kind, name: name.trim(), ...(section.trim() ? { section: section.trim() } : {}) };
      const added = doors.addSection(file, head, { drawn: vertices });
      file = added.file;
      ids.push(added.id);
    }
    const faults = commitFamily(documents, doors, file);
    if (faults) return faults;
    const first = documents.getState().document?.family.profiles.find(({ id }) => id === ids[0]);
    if (first) pickProfile(selection, first);
    selection.setState({ view: 'draw' });
    return null;
  }

  private replaceOutline(now: DrawingImport, id: string): readonly FileFault[] | null {
    const { documents, selection, doors } = this.session;
    const [i] = tickedLoops(now);
    const vertices = doors.interchange.placeLoop(now.drawing.loops[i], {
      ...now.placing,
      lighter: now.choices[i].lighter,
    });
    endEdit(documents);
    const taken = previewOutline(documents, doors, id, vertices);
    const why = documents.getState().editFault;
    endEdit(documents);
    if (!taken) return [fault(why?.message ?? 'is not sound', 'Mend it in the drawing program.')];
    const profile = documents.getState().document?.family.profiles.find((other) => other.id === id);
    if (profile) pickProfile(selection, profile);
    selection.setState({ view: 'draw' });
    return null;
  }

  /** Opens the family that is asked about in place of the open one. */
  openInstead(): void {
    if (this.family() && this.current) this.hands.openFamily(this.current);
    this.next();
  }

  /** Adds the sections of the family that is asked about, as chosen, as one step of undo. */
  mergeSections(): void {
    const { documents, doors, imports } = this.session;
    const now = this.family();
    const into = documents.getState().document;
    if (!now || !into) return;
    const faults = commitFamily(documents, doors, doors.interchange.mergeFamilies(into, now.from, now.choices));
    if (faults) imports.setState({ now: { ...now, faults } });
    else this.next();
  }

  /** Changes what is chosen for all loops of the drawing. */
  choose(change: Partial<Pick<DrawingImport, 'placing' | 'pointed' | 'replacing' | 'choices'>>): void {
    const now = this.drawing();
    if (now) this.session.imports.setState({ now: { ...now, faults: [], ...change } });
  }

  /** Changes what is chosen for one loop. */
  chooseLoop(i: number, change: Partial<LoopChoice>): void {
    const now = this.drawing();
    if (now) this.choose({ pointed: i, choices: now.choices.with(i, { ...now.choices[i], ...change }) });
  }

  /** Begins to ask about each section of the other family. */
  beginMerge(): void {
    const now = this.family();
    if (now) this.session.imports.setState({ now: { ...now, merging: true } });
  }

  /** Changes what becomes of one section of the other family. */
  chooseSection(id: string, choice: MergeChoice): void {
    const now = this.family();
    if (now)
      this.session.imports.setState({ now: { ...now, faults: [], choices: new Map(now.choices).set(id, choice) } });
  }

  private drawing(): DrawingImport | null {
    const { now } = this.session.imports.getState();
    return now.stage === 'drawing' ? now : null;
  }

  private family(): FamilyImport | null {
    const { now } = this.session.imports.getState();
    return now.stage === 'family' ? now : null;
  }

  /** Tells why a file does not come in, beside the others of the same lot, and goes on with the next. */
  private refuse(name: string, faults: readonly FileFault[]): void {
    this.refused.push({ name, faults });
    const several = this.refused.length > 1;
    const fileName = several ? `${this.refused.length} files` : name;
    const all = several
      ? this.refused.flatMap((one) => one.faults.map((f) => ({ ...f, path: `${one.name}: ${f.path}` })))
      : faults;
    this.session.documents.setState({ refusal: { fileName, faults: all }, reading: false });
    this.next();
  }
}

const NOTHING: ImportStage = { stage: 'none' };

const NO_FAMILY: FileFault = {
  path: 'file',
  what: 'holds sections, and no family is open that they could be added to',
  cure: 'Open a family first.',
};

function fault(what: string, cure: string): FileFault {
  return { path: 'file', what, cure };
}

function tooLarge(bytes: number, format: string): FileFault {
  const what = `has ${Math.ceil(bytes / 1e6)} MB, more than the ${LARGEST_FILE / 1e6} MB that are read`;
  if (format === 'family') return fault(what, 'Split the family.');
  return fault(what, 'Keep only the outlines of the sections in the drawing, without pictures, hatches and layers.');
}
