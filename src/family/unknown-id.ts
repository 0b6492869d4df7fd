/** Most ids that are named where one is not there. */
const MOST_NAMED = 12;

/**
 * That there is nothing with an id, and which ids there are, without a full stop.
 *
 * @param what of which there is none: "opening".
 * @check tests/unit/cli/run-export.test.ts
 */
export function unknownIdText(what: string, id: string, ids: readonly string[]): string {
  const more = ids.length > MOST_NAMED ? ` and ${ids.length - MOST_NAMED} more` : '';
  return `there is no ${what} with the id "${id}"; it has ${ids.slice(0, MOST_NAMED).join(', ')}${more}`;
}
