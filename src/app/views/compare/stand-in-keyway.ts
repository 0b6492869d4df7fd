import type { ShownPair } from '../../panels/use-pair.ts';
import type { Session } from '../../state/session.ts';
import { standCentred } from '../../tools/compare/standing-centred.ts';

/** Stands the blank by hand where a keyway cut for it would hold it. */
export function standInKeyway({ hand }: Session, { shapes }: Pick<ShownPair, 'shapes'>): void {
  hand.setState({ placement: standCentred(shapes.opening, shapes.entrant) });
}
