import { FitCache } from '../../family/fit-cache.ts';
import { AS_DRAWN, type ConditionsState, conditionsFor, makeConditionsStore } from './conditions-state.ts';
import { type DocumentState, makeDocumentStore } from './document-state.ts';
import type { Doors } from './doors.ts';
import { type DrawState, makeDrawStore, NOTHING_BEGUN } from './draw/draw-state.ts';
import { dropEdit, endEdit } from './edit-document.ts';
import { type ImportState, makeImportStore } from './exchange/import-state.ts';
import { explainOnce } from './explain-once.ts';
import { rowOf } from './fits-lookup.ts';
import { type GaugeState, makeGaugeStore } from './gauge/gauge-state.ts';
import { keepGauge } from './gauge/kept-gauge.ts';
import { Guarding, type GuardState, makeGuardStore } from './guarding.ts';
import { type HandState, makeHandStore, snapToBest } from './hand-state.ts';
import { type HelpState, makeHelpStore } from './help/help-state.ts';
import { Judging } from './judging.ts';
import { keepLikings, keepSheets } from './kept-looks.ts';
import type { Shelf } from './kept-store.ts';
import { type IdentifyState, makeIdentifyStore, NO_UNKNOWN } from './names/identify-state.ts';
import { makeNamesStore, type NamesState, NOTHING_ASKED } from './names/names-state.ts';
import { capacityStateOf } from './plan/capacity/capacity-state.ts';
import { makePlanStore, type PlanState } from './plan/plan-state.ts';
import { strengthStateOf } from './plan/strength/strength-state.ts';
import { type BlockSettings, makeBlockSettingsStore } from './publish/block-settings.ts';
import { makePublishStore, type PublishState } from './publish/publish-state.ts';
import { makeSheetChoiceStore, type SheetChoice } from './publish/sheet-choice.ts';
import { makeResultsStore, type ResultsState } from './results-state.ts';
import { makeDetailsStore, type RowDetails } from './row-details.ts';
import { editedProfile, makeSelectionStore, type SelectionState, settleSelection } from './selection-state.ts';
import { makeSettingsStore, type SettingsState } from './settings-state.ts';
import { listenTo, type Store } from './store.ts';
import { type KeptScore, makeQuizScoreStore } from './teach/quiz-score.ts';
import { makeTeachStore, type TeachState } from './teach/teach-state.ts';
import { TellingDetails } from './telling-details.ts';
import { CountingConcepts } from './tiers/counting-concepts.ts';
import { LayingOut } from './tiers/laying-out.ts';
import { makeTiersStore, type TiersState } from './tiers/tiers-state.ts';

/** Everything one window of the app knows, each part in a store of its own. */
export interface Session {
  readonly doors: Doors;
  /** Where small things are kept between visits. */
  readonly shelf: Shelf | null;
  readonly documents: Store<DocumentState>;
  readonly selection: Store<SelectionState>;
  readonly results: Store<ResultsState>;
  readonly judging: Judging;
  readonly details: Store<RowDetails>;
  readonly guard: Store<GuardState>;
  readonly hand: Store<HandState>;
  readonly settings: Store<SettingsState>;
  readonly help: Store<HelpState>;
  readonly conditions: Store<ConditionsState>;
  readonly draw: Store<DrawState>;
  readonly tiers: Store<TiersState>;
  readonly layingOut: LayingOut;
  readonly countingConcepts: CountingConcepts;
  readonly plan: Store<PlanState>;
  readonly gauge: Store<GaugeState>;
  readonly publish: Store<PublishState>;
  /** How display sets are made and printed, as kept in this browser. */
  readonly blockSettings: Store<BlockSettings>;
  /** How sheets for paper are wanted. */
  readonly sheetChoice: Store<SheetChoice>;
  readonly names: Store<NamesState>;
  /** The unknown outline of the Identify sheet. */
  readonly identify: Store<IdentifyState>;
  readonly teach: Store<TeachState>;
  /** What was done in the quiz so far on this computer. */
  readonly quizScore: Store<KeptScore>;
  /** What is coming in and is asked about. */
  readonly imports: Store<ImportState>;
}

/**
 * Makes the stores of a window and the threads between them: a new document settles the selection and is judged; a
 * new pair lies in its best placement again, an edit leaves the hand where it is.
 *
 * @param shelf where settings are kept in this browser.
 * @param tab a memory that the tab has to itself and that survives a reload.
 */
export function makeSession(given: Doors, shelf: Shelf | null, tab: Shelf | null = null): Session {
  const doors: Doors = { ...given, explainPlacement: explainOnce(given.explainPlacement) };
  const cache = new FitCache();
  const results = makeResultsStore();
  const session: Session = {
    doors,
    shelf,
    documents: makeDocumentStore(),
    selection: makeSelectionStore(),
    results,
    judging: new Judging(results, doors, cache),
    details: makeDetailsStore(),
    guard: makeGuardStore(),
    hand: makeHandStore(),
    settings: makeSettingsStore(shelf),
    help: makeHelpStore(shelf),
    conditions: makeConditionsStore(),
    draw: makeDrawStore(),
    tiers: makeTiersStore(),
    layingOut: new LayingOut(doors.tiers, doors.pace),
    countingConcepts: new CountingConcepts(doors.tiers),
    plan: makePlanStore(),
    gauge: makeGaugeStore(),
    publish: makePublishStore(),
    blockSettings: makeBlockSettingsStore(shelf),
    sheetChoice: makeSheetChoiceStore(shelf),
    names: makeNamesStore(),
    identify: makeIdentifyStore(),
    teach: makeTeachStore(),
    quizScore: makeQuizScoreStore(shelf),
    imports: makeImportStore(),
  };
  keepLikings(session, shelf);
  keepSheets(session, tab);
  keepGauge(session);
  // Looked at at once: a family takes them along to another name, even where their sheets were not shown yet.
  capacityStateOf(session);
  strengthStateOf(session);
  tieSelection(session);
  tieJudging(session);
  tieDetails(session, cache);
  tieGuard(session, cache);
  tieDraw(session);
  listenTo(
    session.documents,
    (s) => s.opened,
    () => {
      session.tiers.setState({ chosenOpenings: null, pointed: null, neighboursOnly: null });
      session.layingOut.clear();
      session.names.setState(NOTHING_ASKED);
      session.identify.setState(NO_UNKNOWN);
      session.teach.setState({ step: 0, presenting: false, round: null });
      session.help.setState({ step: null });
    },
  );
  return session;
}

/** What a new family and a new pair begin with. */
function tieSelection({ documents, selection, hand, conditions }: Session): void {
  const snap = () => snapToBest(hand);
  listenTo(
    documents,
    (s) => s.document,
    (document) => document && settleSelection(selection, document.family),
  );
  listenTo(
    documents,
    (s) => s.opened,
    () => {
      snap();
      conditions.setState(AS_DRAWN);
    },
  );
  listenTo(selection, (s) => s.entrantId, snap);
  listenTo(selection, (s) => s.openingId, snap);
}

function tieJudging({ documents, selection, conditions, judging }: Session): void {
  const follow = () => {
    const family = documents.getState().document?.family;
    if (!family) return;
    const { entrantId, openingId } = selection.getState();
    judging.follow({ family, conditions: conditionsFor(conditions.getState(), family), entrantId, openingId });
  };
  listenTo(documents, (s) => s.document, follow);
  listenTo(conditions, (s) => s.tiltLimit, follow);
  listenTo(conditions, (s) => s.wear, follow);
  listenTo(selection, (s) => s.entrantId, follow);
  listenTo(selection, (s) => s.openingId, follow);
}

/** Details are told on the wall only; in Compare they would take the threads from the hand. */
function tieDetails({ documents, selection, conditions, results, details, doors }: Session, cache: FitCache): void {
  const telling = new TellingDetails(details, doors, cache);
  const follow = () => {
    const family = documents.getState().document?.family;
    const { entrantId, view } = selection.getState();
    const state = conditions.getState();
    const entrant = family?.profiles.find(({ id }) => id === entrantId);
    const told = family && entrant && view === 'wall' && state.telling !== 'margin';
    const row = rowOf(results.getState().fits, entrantId);
    telling.follow(told ? { family, state, entrant, row } : null);
  };
  listenTo(results, (s) => s.fits, follow);
  listenTo(conditions, (s) => s, follow);
  listenTo(selection, (s) => s.entrantId, follow);
  listenTo(selection, (s) => s.view, follow);
}

function tieGuard({ documents, results, guard, doors }: Session, cache: FitCache): void {
  const guarding = new Guarding(guard, doors, cache);
  const follow = () => {
    const { document, editedFrom } = documents.getState();
    const settled = results.getState().phase === 'done' && editedFrom === null;
    if (document) guarding.follow(document.family, settled);
  };
  listenTo(documents, (s) => s.document, follow);
  listenTo(documents, (s) => s.editedFrom, follow);
  listenTo(results, (s) => s.phase, follow);
}

/** Another profile in hand begins with nothing chosen, an undone step with nothing refused, a family with no draft. */
function tieDraw({ documents, selection, draw }: Session): void {
  const handed = (picked: SelectionState) => {
    const family = documents.getState().document?.family;
    return (family && editedProfile(family, picked)?.id) ?? null;
  };
  listenTo(selection, handed, () => {
    const { edit } = draw.getState();
    // What an operation only shows is not taken unasked.
    if (edit?.kind === 'preview') dropEdit(documents);
    else if (edit) endEdit(documents);
    draw.setState({ chosen: [], refused: null, edit: null });
  });
  listenTo(
    documents,
    (s) => s.document,
    (document) => {
      const { edit, refused } = draw.getState();
      if (refused && edit?.document !== document) draw.setState({ refused: null });
      // Undo, or a family from elsewhere: what held the outline holds it no longer.
      if (edit && edit.document !== document && documents.getState().editedFrom === null) draw.setState({ edit: null });
    },
  );
  listenTo(
    documents,
    (s) => s.opened,
    () => draw.setState(NOTHING_BEGUN),
  );
}
