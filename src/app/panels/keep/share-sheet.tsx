import { useRef, useState } from 'react';
import { linkToFamily } from '../../keep/share-link.ts';
import { downloadFamily } from '../exchange/save-file.ts';
import { ModalSheet } from '../modal-sheet.tsx';
import { useSession } from '../use-store.ts';
import styles from './kept-list.module.css';

/** The open family as a link that carries it: no server keeps it, whoever has the link has the family. */
export function ShareSheet({ onClose }: { onClose(): void }) {
  const session = useSession();
  // The family as it is when the sheet is opened: nothing changes it while the sheet has the focus.
  const [written] = useState(() => linkToFamily(session));
  const save = (
    <button type="button" className="key" onClick={() => downloadFamily(session)}>
      Save family as a file
    </button>
  );
  const done = (
    <button type="button" className="key" onClick={onClose}>
      Done
    </button>
  );
  return (
    <ModalSheet
      title="Share by a link"
      onClose={onClose}
      foot={
        <>
          {save}
          {done}
        </>
      }
    >
      <div className={styles.body}>
        {written?.ok && <Link fragment={written.fragment} />}
        {written && !written.ok && (
          <p className={styles.fault} role="alert">
            This family is too large for a link: it would have{' '}
            {written.length === null ? 'far' : `${count(written.length)} characters,`} more than the{' '}
            {count(written.most)} that a link may have. {picturesWords(written.pictures)}Save it as a file and pass that
            on.
          </p>
        )}
      </div>
    </ModalSheet>
  );
}

const count = (n: number) => n.toLocaleString('en-GB');

/** Pictures hardly pack: where there are some, they are the likely cause. */
function picturesWords(pictures: number): string {
  if (pictures === 0) return '';
  const kept = pictures === 1 ? 'the picture that a section keeps' : `the pictures that ${pictures} sections keep`;
  return `The likely cause is ${kept}: without ${pictures === 1 ? 'it' : 'them'} the link may be short enough. `;
}

function Link({ fragment }: { fragment: string }) {
  const field = useRef<HTMLTextAreaElement>(null);
  const [copied, setCopied] = useState<'no' | 'yes' | 'by hand'>('no');
  const address = `${location.href.split('#')[0]}${fragment}`;
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(address);
      setCopied('yes');
    } catch {
      field.current?.select();
      setCopied('by hand');
    }
  };
  return (
    <>
      <p>
        The whole family is in the link itself, packed. No server keeps it; whoever has the link can read the family, so
        pass it on with care.
      </p>
      <label>
        Link, {address.length} characters
        <textarea ref={field} className={`${styles.field} ${styles.link}`} readOnly value={address} />
      </label>
      <p>
        <button type="button" className="key" onClick={copy}>
          Copy link
        </button>{' '}
        <span role="status">
          {copied === 'yes' && 'Copied.'}
          {copied === 'by hand' && 'The browser does not let us copy: the link is marked, press Ctrl+C.'}
        </span>
      </p>
      {address.length > 2_000 && (
        <p className={styles.hint}>Some programs cut links as long as this one. If it arrives damaged, send a file.</p>
      )}
    </>
  );
}
