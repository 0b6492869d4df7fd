import type { Family } from '../../../family/family.ts';
import { lackFor, SHEET_WORDS } from '../../state/publish/sheet-words.ts';
import readings from '../readings.module.css';
import styles from './page-readings.module.css';
import { PageFacts, PageWords } from './page-readings.tsx';
import { useShownPages, useSlidesOrder } from './use-sheet-order.ts';

/** What belongs beside the Slides sheet: what the file is for, and how it is shown. */
export function SlidesReadings({ family }: { family: Family }) {
  return lackFor('slides', family) ? null : <OfSlides family={family} />;
}

function OfSlides({ family }: { family: Family }) {
  const shown = useShownPages(family, useSlidesOrder());
  return (
    <>
      <section className={readings.part}>
        <h2 className={readings.title}>{SHEET_WORDS.slides.label}</h2>
        <p>{SHEET_WORDS.slides.what}</p>
        <PageFacts shown={shown} />
      </section>
      <section className={readings.part}>
        <h3>Show it</h3>
        <ul className={styles.points}>
          <li>
            The <b>web page</b> is one file that any browser opens, without this app and without a network. Arrow keys,
            a press or a swipe turn its slides; its own print makes handouts.
          </li>
          <li>
            The <b>PDF</b> is for projectors and for sending: most readers show it over the whole screen.
          </li>
          <li>
            A <b>PNG</b> is one slide as a picture, 1920 points wide, for slides made elsewhere.
          </li>
        </ul>
        <p className={readings.note}>
          Words, order and steps are those of the lesson in Teach. An edit there, or of a section, renews the slides.
        </p>
      </section>
      <PageWords shown={shown} />
    </>
  );
}
