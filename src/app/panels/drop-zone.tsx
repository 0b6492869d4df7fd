import { useEffect, useState } from 'react';
import styles from './notices.module.css';
import { openFile } from './open-file.ts';
import { useSession } from './use-store.ts';

/** Takes a family file dropped anywhere on the window, and says so while one is held over it. */
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
      if (!holdsFile(event)) return;
      event.preventDefault();
      const file = event.dataTransfer?.files[0];
      if (file) openFile(session, file);
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
  return over ? <div className={styles.dropSheet}>Drop to open this family</div> : null;
}
