import type { Family } from '../../../../family/family.ts';
import type { Hindrance } from '../../../state/plan/sections/sections-question.ts';
import notices from '../../notices.module.css';
import { useSession } from '../../use-store.ts';
import styles from './sections-hindrance.module.css';

const SHEET_NAMES = { access: 'Areas and holders', blade: 'Blade' } as const;

/** Why nothing can be planned yet, and the way to where it is mended. */
export function SectionsHindrance({ hindrance: { what, cure, sheet } }: { hindrance: Hindrance }) {
  const { plan } = useSession();
  return (
    <div className={styles.hindrance} role="status">
      <h1>{what}</h1>
      <p>{cure}</p>
      <button type="button" className="key" onClick={() => plan.setState({ sheet })}>
        {SHEET_NAMES[sheet]}
      </button>
    </div>
  );
}

/** What stands here for a family that is not planned. */
export function SectionsNoPlan({ family }: { family: Family }) {
  const { plan } = useSession();
  return (
    <section className={notices.empty}>
      <h2>{family.name} has no plan</h2>
      <p>
        Its sections were drawn by hand. Name areas and the holders who may enter them, and sections and blanks can be
        planned for them here.
      </p>
      <button type="button" className="key" onClick={() => plan.setState({ sheet: 'access' })}>
        Areas and holders
      </button>
    </section>
  );
}
