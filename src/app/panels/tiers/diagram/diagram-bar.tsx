import type { KeyboardEvent } from 'react';
import { entrantsOf, type Family } from '../../../../family/family.ts';
import { useSession, useStore } from '../../use-store.ts';
import styles from '../tiers-bar.module.css';
import type { DiagramShown } from './use-diagram.ts';
import type { DiagramSheet } from './use-diagram-view.ts';

interface DiagramBarProps {
  readonly family: Family;
  readonly shown: DiagramShown;
  readonly sought: string;
  onSeek(text: string): void;
  /** How many nodes are found; null where nothing is sought. */
  readonly foundCount: number | null;
  /** Picks the first that is found. */
  onTakeFirst(): void;
  readonly sheet: DiagramSheet;
}

/** What is looked for in the diagram, how much of it is shown, and how large. */
export function DiagramBar({ family, shown, sought, onSeek, foundCount, onTakeFirst, sheet }: DiagramBarProps) {
  const { tiers } = useSession();
  const { whole, neighboursOnly } = shown;
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === 'Enter') onTakeFirst();
    else if (event.key === 'Escape' && sought !== '') onSeek('');
    else return;
    event.preventDefault();
  };
  return (
    <div className={styles.bar}>
      <input
        type="search"
        className={styles.search}
        aria-label="Find a blank in the diagram"
        placeholder="Find"
        title="Lights what has these letters in its name; Enter picks the first"
        value={sought}
        onChange={(event) => onSeek(event.target.value)}
        onKeyDown={onKeyDown}
      />
      <span role="status" className={foundCount === null ? 'unseen' : undefined}>
        {foundCount === null ? '' : `${foundCount} found`}
      </span>
      <button
        type="button"
        className="key"
        title="Only what stands above and below the picked blank"
        aria-pressed={neighboursOnly}
        disabled={whole === 0}
        onClick={() => tiers.setState({ neighboursOnly: !neighboursOnly })}
      >
        Neighbours
      </button>
      <ToolsKey family={family} />
      <fieldset className="key-row bare" aria-label="Size of the diagram">
        <button type="button" className="key" aria-label="Smaller" title="Smaller (−)" onClick={() => sheet.zoom(0.8)}>
          −
        </button>
        <button type="button" className="key" aria-label="Larger" title="Larger (+)" onClick={() => sheet.zoom(1.25)}>
          +
        </button>
        <button type="button" className="key" title="The whole diagram (0)" onClick={() => sheet.fit()}>
          Fit
        </button>
      </fieldset>
    </div>
  );
}

/** The switch for tools; none where the family has only blanks, or only tools. */
function ToolsKey({ family }: { family: Family }) {
  const { tiers } = useSession();
  const withTools = useStore(tiers, (s) => s.withTools);
  const entrants = entrantsOf(family);
  const tools = entrants.filter(({ kind }) => kind === 'tool').length;
  if (tools === 0 || tools === entrants.length) return null;
  return (
    <button
      type="button"
      className="key"
      title={withTools ? 'Leave the tools out of the diagram' : 'Put the tools into the diagram too'}
      aria-pressed={withTools}
      onClick={() => tiers.setState({ withTools: !withTools })}
    >
      Tools
    </button>
  );
}
