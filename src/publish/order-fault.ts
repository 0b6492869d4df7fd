import { entrantsOf, type Family, openingsOf } from '../family/family.ts';
import { unknownIdText } from '../family/unknown-id.ts';
import type { Profile } from '../profile/profile.ts';
import type { AnswersOrder, CardOrder, ChartOrder, ScaleOrder, SheetOrder } from './sheet-order.ts';

/** How many times a part may be enlarged. */
export const ENLARGE_RANGE = { least: 1, most: 50 } as const;

/** How many questions an answer sheet may have. */
export const QUESTIONS_RANGE = { least: 1, most: 100 } as const;

/**
 * Why a sheet cannot be laid out for a family.
 *
 * @returns what is wrong and what to do, one sentence without a full stop; null where nothing is.
 * @check tests/unit/publish/order-fault.test.ts
 */
export function orderFault(family: Family, order: SheetOrder): string | null {
  switch (order.sheet) {
    case 'slides':
      return slidesFault(family);
    case 'card':
      return cardEmptyFault(family) ?? cardFault(family, order);
    case 'scale':
      return emptyFault(family) ?? scaleFault(family, order);
    case 'answers':
      return emptyFault(family) ?? answersFault(order);
    case 'chart':
      return emptyFault(family) ?? chartFault(family, order);
    default:
      return emptyFault(family) ?? (order.blanksOnly ? blanksFault(family) : null);
  }
}

/** What a family lacks for sheets of its sections, and what to do; null where it has all. @check tests/unit/publish/order-fault.test.ts */
export function emptyFault(family: Family): string | null {
  if (openingsOf(family).length === 0) return 'the family has no openings: draw or import one first';
  if (entrantsOf(family).length === 0) return 'the family has no blanks and no tools: draw or import one first';
  return null;
}

/** A plan with holders makes cards before anything is drawn. */
function cardEmptyFault(family: Family): string | null {
  const { plan } = family;
  return plan && plan.holders.length > 0 && plan.areas.length > 0 ? null : emptyFault(family);
}

function blanksFault(family: Family): string | null {
  const blanks = family.profiles.some(({ kind }) => kind === 'blank');
  return blanks ? null : 'the family has tools only: take tools in, or draw a blank first';
}

function chartFault(family: Family, { blanksOnly, inBetween = [] }: ChartOrder): string | null {
  const openings = openingsOf(family);
  const unknown = inBetween.map((id) => unknownFault(id, openings, 'opening')).find(Boolean);
  return unknown ?? (blanksOnly ? blanksFault(family) : null);
}

/** Without a lesson of its own, one is made of the family's parts. */
function slidesFault(family: Family): string | null {
  return family.lesson && family.lesson.steps.length > 0 ? null : emptyFault(family);
}

function scaleFault(family: Family, { opening, blank, enlarge = ENLARGE_RANGE.least }: ScaleOrder): string | null {
  const { least, most } = ENLARGE_RANGE;
  if (!(enlarge >= least && enlarge <= most)) return `the enlargement must be ${least} to ${most}, not ${enlarge}`;
  return (
    unknownFault(opening, openingsOf(family), 'opening') ?? unknownFault(blank, entrantsOf(family), 'blank or tool')
  );
}

function cardFault(family: Family, { of }: CardOrder): string | null {
  const holders = family.plan?.holders ?? [];
  if (of === undefined || holders.some(({ id }) => id === of)) return null;
  return unknownFault(of, entrantsOf(family), 'blank, tool or holder');
}

function unknownFault(id: string | undefined, among: readonly Profile[], what: string): string | null {
  if (id === undefined || among.some((profile) => profile.id === id)) return null;
  return unknownIdText(
    what,
    id,
    among.map((profile) => profile.id),
  );
}

function answersFault({ questions }: AnswersOrder): string | null {
  const { least, most } = QUESTIONS_RANGE;
  if (Number.isInteger(questions) && questions >= least && questions <= most) return null;
  return `the number of questions must be a whole number from ${least} to ${most}, not ${questions}`;
}
