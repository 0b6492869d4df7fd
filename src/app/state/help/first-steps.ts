import { SAMPLE_FAMILIES } from '../sample-families.ts';
import type { ViewName } from '../selection-state.ts';
import type { Session } from '../session.ts';

/** One step of the first five minutes: where it happens, what is picked when it begins, what to do and to see. */
export interface FirstStep {
  readonly view: ViewName;
  readonly entrantId?: string;
  readonly openingId?: string;
  /** Shows the sheet of the view that it is about. */
  readonly sheet?: (session: Session) => void;
  readonly what: string;
}

/** The family that the first five minutes are about. */
export const FIRST_FAMILY = SAMPLE_FAMILIES[1];

/** From one blank in one keyway to a printed chart. The ids are those of {@link FIRST_FAMILY}. */
export const FIRST_STEPS: readonly FirstStep[] = [
  {
    view: 'wall',
    entrantId: 'heron-blank',
    what: 'Three keyways, each with one ward. The Heron blank has one groove, where the Heron ward stands: it enters that keyway and no other.',
  },
  {
    view: 'wall',
    entrantId: 'reed-group-blank',
    what: 'The Reed group blank has two grooves, so it enters two keyways. Walk through the tray with ↑ and ↓: the thin strip enters all three.',
  },
  {
    view: 'compare',
    entrantId: 'heron-blank',
    openingId: 'bittern-keyway',
    what: 'A blocked pair, large. Drag the blank: however it lies, the ward stands in solid metal. The hatched part says how deep.',
  },
  {
    view: 'tiers',
    sheet: ({ tiers }) => tiers.setState({ sheet: 'tiers' }),
    entrantId: 'reed-group-blank',
    what: 'The whole family at once: base blanks below, the group blank above those whose keyways it enters too, the strip on top.',
  },
  {
    view: 'draw',
    entrantId: 'heron-blank',
    what: 'Now change something: drag a vertex of the blank, and watch the verdicts in the readings. Ctrl+Z takes it back.',
  },
  {
    view: 'gauge',
    sheet: ({ gauge }) => gauge.setState({ sheet: 'curves' }),
    what: 'How thick may a straight strip be? Each line is one keyway. The lowest of them is the limit for a strip that enters all.',
  },
  {
    view: 'names',
    sheet: ({ names }) => names.setState({ sheet: 'ask' }),
    what: 'Ask: “Does the Reed group blank go into Plover?” The answer says yes or no, by how much, and which ward stops it.',
  },
  {
    view: 'publish',
    sheet: ({ publish, sheetChoice }) => {
      publish.setState({ sheet: 'sheets' });
      sheetChoice.setState({ sheet: 'chart' });
    },
    what: 'The chart of this family, as it prints. Save it as a PDF. That was the way from a blank to a printed chart; Family > New family… begins your own.',
  },
];
