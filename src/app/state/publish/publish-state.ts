import { makeStore, type Store } from '../store.ts';

/** The sheets of the Publish view. */
export const PUBLISH_SHEETS = ['sheets', 'slides', 'block'] as const;

/** See {@link PUBLISH_SHEETS}. */
export type PublishSheet = (typeof PUBLISH_SHEETS)[number];

/** What the Publish view shows. */
export interface PublishState {
  readonly sheet: PublishSheet;
}

/** A store that shows the first sheet. */
export function makePublishStore(): Store<PublishState> {
  return makeStore<PublishState>({ sheet: 'sheets' });
}
