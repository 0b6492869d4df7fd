import type { Profile } from '../../../profile/profile.ts';
import type { Session } from '../session.ts';

/** Ticks one keyway to be covered, or takes its tick away. */
export function tickOpening({ gauge }: Pick<Session, 'gauge'>, openings: readonly Profile[], id: string): void {
  const all = openings.map((opening) => opening.id);
  const { ticked } = gauge.getState();
  const before = ticked ?? all;
  const next = before.includes(id) ? before.filter((one) => one !== id) : [...before, id];
  gauge.setState({ ticked: all.every((one) => next.includes(one)) ? null : next });
}

/** Ticks all keyways, or none. */
export function tickAll({ gauge }: Pick<Session, 'gauge'>, all: boolean): void {
  gauge.setState({ ticked: all ? null : [] });
}
