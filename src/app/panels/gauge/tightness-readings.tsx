import type { Family } from '../../../family/family.ts';
import { readingText } from '../../../family/length-text.ts';
import { settersAt } from '../../../gauge/family-limit.ts';
import type { Profile } from '../../../profile/profile.ts';
import { askedHeightText, tallestText, thicknessFigure } from '../../state/gauge/gauge-lengths.ts';
import { keywayName } from '../../state/gauge/gauge-words.ts';
import { placeText, sightOfOpening, sightWords, type TightRow } from '../../state/gauge/tight-rows.ts';
import { FactList } from '../fact-list.tsx';
import readings from '../readings.module.css';
import { useSession, useStore } from '../use-store.ts';
import { SightPicture } from './sight-picture.tsx';
import { type ShownGauge, useGauge, useTightRows } from './use-gauge.ts';

/** What belongs beside the Tightness sheet: the picked keyway, what is seen through it, who is tightest at the height in hand. */
export function TightnessReadings({ family }: { family: Family }) {
  const gauge = useGauge(family);
  const rows = useTightRows(gauge);
  const { picked } = gauge;
  if (!picked) return null;
  const row = rows.find(({ opening }) => opening.id === picked.id);
  return (
    <>
      <Picked opening={picked} row={row} rows={rows} gauge={gauge} />
      <Sight opening={picked} />
      <Tightest gauge={gauge} />
    </>
  );
}

interface PickedProps {
  readonly opening: Profile;
  readonly row: TightRow | undefined;
  readonly rows: readonly TightRow[];
  readonly gauge: ShownGauge;
}

function Picked({ opening, row, rows, gauge }: PickedProps) {
  const units = useStore(useSession().settings, (s) => s.units);
  return (
    <section className={readings.part} aria-labelledby="reading-tight" data-tight-reading={opening.id}>
      <h2 id="reading-tight" className={readings.title}>
        {opening.name}
      </h2>
      {row ? (
        <FactList
          facts={[
            { term: 'Place from tight to wide', value: placeText(row, rows) },
            {
              term: `Strip ${askedHeightText(gauge.height, units)} tall`,
              value: row.most > 0 ? thicknessFigure(row.most, units) : 'none so tall',
            },
            { term: 'Thickest strip of any height', value: thicknessFigure(row.thickest, units) },
            { term: 'Mean over all heights', value: readingText(row.mean, units) },
            { term: 'Tallest strip', value: tallestText(row.tallest, units) },
          ]}
        />
      ) : (
        <p>Not gauged yet …</p>
      )}
    </section>
  );
}

function Sight({ opening }: { opening: Profile }) {
  const units = useStore(useSession().settings, (s) => s.units);
  const sight = sightOfOpening(opening);
  const words = sightWords(opening, sight, units);
  return (
    <section className={readings.part} aria-labelledby="reading-sight" data-sight={opening.id}>
      <h2 id="reading-sight" className={readings.title}>
        Line of sight
      </h2>
      <SightPicture opening={opening} sight={sight} height={230} label={words} />
      <p>{words}</p>
      <p className={readings.note}>
        Dash and dot: the centre line, midway between the outermost walls. Rings: the tips of the longest wards.
      </p>
    </section>
  );
}

function Tightest({ gauge }: { gauge: ShownGauge }) {
  const { settings, selection } = useSession();
  const units = useStore(settings, (s) => s.units);
  const { most, height, limit, curves, openings } = gauge;
  if (!limit || most === null || curves.size < 2) return null;
  const ids = settersAt([...curves.values()], height, limit);
  const setters = openings.filter(({ id }) => ids.includes(id));
  return (
    <section className={readings.part} aria-labelledby="reading-tightest">
      <h2 id="reading-tightest" className={readings.title}>
        Tightest for a strip {askedHeightText(height, units)} tall
      </h2>
      <p>
        {most > 0
          ? `${thicknessFigure(most, units)} is the thickest that enters all ${openings.length}.`
          : `None so tall enters all ${openings.length}.`}
      </p>
      <ul className={readings.pairs}>
        {setters.map((opening) => (
          <li key={opening.id}>
            <button
              type="button"
              className={readings.pair}
              onClick={() => selection.setState({ openingId: opening.id, part: 'opening' })}
            >
              <span className={readings.grow}>{keywayName(opening)}</span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
