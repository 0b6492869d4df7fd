import type { Family } from '../../../family/family.ts';
import type { Lesson } from '../../../family/lesson.ts';
import { EmptyNotice } from '../../panels/empty-notice.tsx';
import notice from '../../panels/notices.module.css';
import { PageDesk } from '../../panels/publish/page-desk.tsx';
import { PrintedPages } from '../../panels/publish/printed-pages.tsx';
import { PublishKeys } from '../../panels/publish/publish-keys.tsx';
import { PublishProgress } from '../../panels/publish/publish-progress.tsx';
import { PublishTold } from '../../panels/publish/publish-told.tsx';
import { SlidesOptions, TeachKey } from '../../panels/publish/slides-options.tsx';
import { useAskedPages, useSlidesOrder } from '../../panels/publish/use-sheet-order.ts';
import { ReadyKey, useReadyLesson } from '../../panels/teach/ready-lesson.tsx';
import { useFocusAlong } from '../../panels/use-focus-along.ts';
import { useSession } from '../../panels/use-store.ts';
import { makingFileOf } from '../../state/publish/making-file.ts';
import { lackFor } from '../../state/publish/sheet-words.ts';
import { slidesLookOf } from '../../state/publish/sheets-look.ts';
import { stepOfSlide } from '../../state/publish/slide-step.ts';
import styles from './slides-sheet.module.css';
import { usePageKeys } from './use-page-keys.ts';

/** The lesson as pages and as a file. */
export function SlidesSheet({ family }: { family: Family }) {
  const { lesson } = family;
  const any = Boolean(lesson?.steps.length);
  // The key that makes the lesson goes with the press, and comes back with undo.
  useFocusAlong(any, '[data-ready-key]:enabled, [data-teach-key]');
  return lesson && any ? <Slides family={family} lesson={lesson} /> : <NoLesson family={family} />;
}

function Slides({ family, lesson }: { family: Family; lesson: Lesson }) {
  const look = slidesLookOf(useSession());
  const order = useSlidesOrder();
  const shown = useAskedPages(family, order);
  const pages = shown.found?.output.pages ?? null;
  const ready = shown.current ? pages : null;
  usePageKeys(look, pages?.length ?? 0);
  const stepNow = () => stepOfSlide(lesson.steps, pages?.map(({ title }) => title) ?? [], look.getState().page);
  return (
    <div className={styles.sheet} data-publish={shown.current ? 'slides' : ''}>
      <header className={styles.head}>
        <h1>{lesson.title}</h1>
        <PublishKeys family={family} order={order} look={look} pages={ready} word="slide" />
        <PublishTold family={family} order={order} />
      </header>
      <SlidesOptions stepNow={stepNow} />
      <PublishProgress shown={shown} word="slide" />
      {pages && pages.length > 0 && (
        <PageDesk look={look} pages={pages} palette={order.palette} current={shown.current} word="slide" />
      )}
      <PrintedPages look={look} pages={ready} palette={order.palette} paper="slide" />
    </div>
  );
}

/** Without sections there is nothing to teach; without a lesson the way to one. */
function NoLesson({ family }: { family: Family }) {
  const making = makingFileOf(useSession());
  const order = useSlidesOrder();
  // A frame later the slides stand here and tell it.
  const ready = useReadyLesson(family, (said) => requestAnimationFrame(() => making.store.setState({ said })));
  const lack = lackFor('chart', family);
  if (lack) return <EmptyNotice {...lack} />;
  return (
    <section className={notice.empty}>
      <h2>No lesson yet</h2>
      <p>
        Slides are the steps of the lesson, a page each. One press makes a lesson from this family; in Teach it is
        edited, or begun with one step.
      </p>
      <div className="key-row">
        <ReadyKey {...ready} />
        <TeachKey label="To Teach" stepNow={() => 0} />
      </div>
      {ready.wait && <p role="status">{ready.wait}</p>}
      <PublishTold family={family} order={order} />
    </section>
  );
}
