import { useEffect, useMemo, useState } from 'react';
import type { Family } from '../../../family/family.ts';
import type { Published, PublishInput } from '../../../jobs/publish-sheets.ts';
import type { SheetOrder } from '../../../publish/sheet-order.ts';
import { isSameOrder, type Publishing, publishingOf } from '../../state/publish/publishing.ts';
import { orderOf, type SheetChoice, type SheetSubjects, slidesOrder } from '../../state/publish/sheet-choice.ts';
import { sheetsLookOf } from '../../state/publish/sheets-look.ts';
import { useSession, useStore } from '../use-store.ts';

/** What the sheets of a family are made of: what is picked in the window, and the day. */
export function useSheetSubjects(): SheetSubjects {
  const session = useSession();
  const { openingId, entrantId } = useStore(session.selection, (s) => s);
  const units = useStore(session.settings, (s) => s.units);
  const look = sheetsLookOf(session);
  const wholeFamily = useStore(look, (s) => s.wholeFamily);
  const holderId = useStore(look, (s) => s.holderId);
  const everyCard = useStore(look, (s) => s.everyCard);
  const today = useToday();
  return useMemo(
    () => ({ openingId, entrantId, units, wholeFamily, holderId, everyCard, today }),
    [openingId, entrantId, units, wholeFamily, holderId, everyCard, today],
  );
}

/** The day on which the sheet is looked at, as it is written. */
function useToday(): string {
  const [today] = useState(() => new Date().toLocaleDateString('en-GB', { dateStyle: 'long' }));
  return today;
}

/** The order of the chosen sheet, the same value as long as nothing of it changes. */
export function useSheetOrder(family: Family): SheetOrder {
  const choice: SheetChoice = useStore(useSession().sheetChoice, (s) => s);
  const subjects = useSheetSubjects();
  return useMemo(() => orderOf(choice, subjects, family), [choice, subjects, family]);
}

/** The order of the slides, the same value as long as nothing of it changes. */
export function useSlidesOrder(): SheetOrder {
  const session = useSession();
  const choice: SheetChoice = useStore(session.sheetChoice, (s) => s);
  const units = useStore(session.settings, (s) => s.units);
  const today = useToday();
  return useMemo(() => slidesOrder(choice, units, today), [choice, units, today]);
}

/** Pages as they are shown: those of the order, or those of the one before until they are there. */
export interface ShownPages {
  readonly publishing: Publishing;
  readonly input: PublishInput;
  readonly found: { readonly input: PublishInput; readonly output: Published } | null;
  /** Whether what is shown is what was ordered. */
  readonly current: boolean;
}

/** Has an order laid out as long as the component is there. */
export function useAskedPages(family: Family, order: SheetOrder): ShownPages {
  const shown = useShownPages(family, order);
  const { publishing, input } = shown;
  useEffect(() => publishing.ask(input), [publishing, input]);
  useEffect(() => () => publishing.ask(null), [publishing]);
  return shown;
}

/** The same for a component beside the one that asks. */
export function useShownPages(family: Family, order: SheetOrder): ShownPages {
  const publishing = publishingOf(useSession());
  const { phase, found } = useStore(publishing.store, (s) => s);
  const input = useMemo<PublishInput>(() => ({ family, sheet: order, as: 'pages' }), [family, order]);
  // Pages of another sheet are no stand-in while those of this one are on their way.
  const fitting = found && found.input.sheet.sheet === order.sheet ? found : null;
  const current = phase === 'found' && fitting !== null && isSameOrder(fitting.input, input);
  return { publishing, input, found: fitting, current };
}
