import { type ConditionsState, makeConditionsStore } from './conditions-state.ts';
import { type DocumentState, makeDocumentStore } from './document-state.ts';
import type { Doors } from './doors.ts';
import { explainOnce } from './explain-once.ts';
import { type HandState, makeHandStore, snapToBest } from './hand-state.ts';
import { type Judging, makeJudging, makeResultsStore, type ResultsState } from './results-state.ts';
import { makeSelectionStore, type SelectionState, settleSelection } from './selection-state.ts';
import { makeSettingsStore, type SettingsState, type Shelf } from './settings-state.ts';
import { listenTo, type Store } from './store.ts';

/** Everything one window of the app knows, each part in a store of its own. */
export interface Session {
  readonly doors: Doors;
  readonly documents: Store<DocumentState>;
  readonly selection: Store<SelectionState>;
  readonly results: Store<ResultsState>;
  readonly judging: Judging;
  readonly hand: Store<HandState>;
  readonly settings: Store<SettingsState>;
  readonly conditions: Store<ConditionsState>;
}

/**
 * Makes the stores of a window and the threads between them: a new document settles the selection and is
 * judged; a new pair lies in its best placement again.
 */
export function makeSession(given: Doors, shelf: Shelf | null): Session {
  const doors: Doors = { ...given, explainPlacement: explainOnce(given.explainPlacement) };
  const documents = makeDocumentStore();
  const selection = makeSelectionStore();
  const results = makeResultsStore();
  const judging = makeJudging(results, doors);
  const hand = makeHandStore();
  const settings = makeSettingsStore(shelf);
  const conditions = makeConditionsStore();
  listenTo(
    documents,
    (s) => s.document,
    (document) => {
      if (!document) return;
      settleSelection(selection, document.family);
      snapToBest(hand);
      judging.start(document.family);
    },
  );
  listenTo(
    selection,
    (s) => s.entrantId,
    () => snapToBest(hand),
  );
  listenTo(
    selection,
    (s) => s.openingId,
    () => snapToBest(hand),
  );
  return { doors, documents, selection, results, judging, hand, settings, conditions };
}
