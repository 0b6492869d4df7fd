import { useEffect, useState } from 'react';
import styles from '../notices.module.css';
import { useSession } from '../use-store.ts';
import { takeFiles } from './import-files.ts';

/** Takes files dropped anywhere on the window, and says what can be dropped while some are held over it. */
export function DropZone() {
  const session = useSession();
  const [over, setOver] = useState(false);
  useEffect(() => {
    const holdsFile = (event: DragEvent) => event.dataTransfer?.types.includes('Files') ?? false;
    const onOver = (event: DragEvent) => {
      if (!holdsFile(event)) return;
      event.preventDefault();
      setOver(true);
    };
    const onLeave = (event: DragEvent) => {
      if (event.relatedTarget === null) setOver(false);
    };
    const onDrop = (event: DragEvent) => {
      setOver(false);
      if (event.defaultPrevented || !holdsFile(event)) return;
      event.preventDefault();
      takeFiles(session, event.dataTransfer?.files ?? []);
    };
    addEventListener('dragover', onOver);
    addEventListener('dragleave', onLeave);
    addEventListener('drop', onDrop);
    return () => {
      removeEventListener('dragover', onOver);
      removeEventListener('dragleave', onLeave);
      removeEventListener('drop', onDrop);
    };
  }, [session]);
  if (!over) return null;
  return (
    <div className={styles.dropSheet}>
      <p>
        Drop to open or import
        <small>
          a family (.json), drawings (SVG, DXF), points or claims (CSV, TXT) or a picture to trace (PNG, JPEG, WebP)
        </small>
      </p>
    </div>
  );
}
