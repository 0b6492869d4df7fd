import { makingFileOf } from '../../state/publish/making-file.ts';
import { JobProgress } from '../job-progress.tsx';
import { useSession, useStore } from '../use-store.ts';
import type { ShownPages } from './use-sheet-order.ts';

/** How far the laying out of the pages has come, and the making of a file. */
export function PublishProgress({ shown, word }: { shown: ShownPages; word: string }) {
  const { publishing } = shown;
  const laying = useStore(publishing.store, (s) => s);
  const making = makingFileOf(useSession());
  const file = useStore(making.store, (s) => s);
  return (
    <>
      <JobProgress
        id="laying-out-pages"
        label={laying.done < laying.total ? 'Judging the pairs' : `Laying out the ${word}s`}
        job={laying}
        keys={publishing}
        again="Go on"
        stopped={`Stopped: the ${word}s are not laid out as they are wanted now.`}
        failed={`The ${word}s could not be laid out`}
      />
      <JobProgress
        id="making-file"
        label={`Making the ${file.what}`}
        job={file}
        keys={making}
        again="Try again"
        stopped={`Stopped: no ${file.what} was saved.`}
        failed={`No ${file.what} was saved`}
      />
    </>
  );
}
