import type { TiersShown } from '../../state/tiers/tiers-state.ts';
import { useSession, useStore } from '../use-store.ts';

const CHOICES: readonly (readonly [TiersShown, string, string])[] = [
  ['matrix', 'Matrix', 'The matrix alone'],
  ['both', 'Both', 'Matrix and diagram side by side'],
  ['diagram', 'Diagram', 'The diagram alone'],
];

/** Which of the two pictures are seen. */
export function ShownKeys() {
  const { tiers } = useSession();
  const shown = useStore(tiers, (s) => s.shown);
  return (
    <fieldset className="key-row bare" aria-label="Shown">
      {CHOICES.map(([choice, label, title]) => (
        <button
          key={choice}
          type="button"
          className="key"
          title={title}
          aria-pressed={shown === choice}
          onClick={() => tiers.setState({ shown: choice })}
        >
          {label}
        </button>
      ))}
    </fieldset>
  );
}
