import type { ReactNode } from 'react';
import styles from './block-sheet.module.css';

/** What stands in place of the picture where the browser draws no solids. */
export function NoSolids({ children }: { readonly children: ReactNode }) {
  return (
    <section className={styles.noSolids}>
      <h2>This browser draws no solids</h2>
      <p role="alert">
        It has no WebGL, or it is switched off. The set is built all the same: its parts and checks are told in words,
        and 3MF and STL are saved as usual.
      </p>
      {children}
    </section>
  );
}
