import type { Passage, PassageGroove } from '../../../../passage/passage.ts';
import type { Profile } from '../../../../profile/profile.ts';
import { type PassageView, pixelOfHeight } from '../../../state/tiers/passage-view.ts';
import { namesText } from '../../../state/tiers/passage-words.ts';
import styles from './passage-picture.module.css';

interface PassageCalloutsProps {
  readonly passage: Passage;
  readonly openings: readonly Profile[];
  readonly view: PassageView;
  /** Where the drawing ends at its left and right, and where the picture does, pixels. */
  readonly drawing: { readonly left: number; readonly right: number };
  readonly room: { readonly left: number; readonly right: number };
}

/** Length of the line from a groove to its words, pixels. */
const LEADER = 26;

/** Words wider than the room are left out; a letter is about this wide, pixels. */
const LETTER = 8;

/** Beside each groove of the blank the keyways that have a ward there. */
export function PassageCallouts({ passage, openings, view, drawing, room }: PassageCalloutsProps) {
  const names = new Map(openings.map(({ id, name, section }) => [id, section ?? name]));
  const total = passage.members.length;
  return (
    <g className={styles.callouts}>
      {passage.blank?.grooves.map((groove) => {
        const left = groove.side === 'left';
        const y = pixelOfHeight((groove.from + groove.to) / 2, view);
        const from = left ? drawing.left : drawing.right;
        const to = left ? from - LEADER : from + LEADER;
        const wide = left ? to - room.left : room.right - to;
        return (
          <g key={`${groove.side} ${groove.from}`}>
            <path d={`M${from} ${y}H${to}`} />
            <text x={left ? to - 6 : to + 6} y={y + 5} textAnchor={left ? 'end' : 'start'}>
              {callout(groove, names, total, Math.floor((wide - 12) / LETTER))}
            </text>
          </g>
        );
      })}
    </g>
  );
}

/** As many names as there is room for: "Knot, Curlew and 2 more". */
function callout({ ids }: PassageGroove, names: ReadonlyMap<string, string>, total: number, letters: number): string {
  if (ids.length === total && total > 1) return total === 2 ? 'both' : `all ${total}`;
  const sections = [...new Set([...names].filter(([id]) => ids.includes(id)).map(([, name]) => name))];
  for (let most = sections.length; most > 1; most--) {
    const text = namesText(sections, most);
    if (text.length <= letters) return text;
  }
  const [only] = sections;
  if (sections.length === 1 && only.length <= letters) return only;
  return sections.length === 1 ? '1 keyway' : `${sections.length} keyways`;
}
