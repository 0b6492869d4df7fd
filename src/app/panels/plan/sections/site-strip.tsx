import type { NamedSite } from '../../../state/plan/sections/drawn-sections.ts';
import { siteWords } from '../../../state/plan/sections/sections-rows.ts';
import styles from './site-strip.module.css';

/** Width of one site in a strip, pixels; the style sheet has it too. */
export const SITE_WIDTH = 24;

interface SiteStripProps {
  /** Depth of a ward or groove at each site of the ward plan; 0 for none. */
  readonly depths: readonly number[];
  readonly sites: readonly NamedSite[];
  /** Whether a site has more than one depth. */
  readonly several: boolean;
  readonly what: 'wards' | 'grooves';
}

/** Wards or grooves site by site: a plate with the number of the site, or its depth where there are several. */
export function SiteStrip({ depths, sites, several, what }: SiteStripProps) {
  return (
    <span className={styles.strip} data-what={what}>
      <span className="unseen">{siteWords(depths, sites, several)}</span>
      {sites.map(({ at, name }) => {
        const depth = depths[at] ?? 0;
        return (
          <span key={at} className={styles.site} data-depth={depth} aria-hidden="true">
            {depth > 0 && (several ? depth : name)}
          </span>
        );
      })}
    </span>
  );
}

const SIDE_LETTERS = { left: 'L', right: 'R' } as const;

/** The numbers of the sites over strips, each with the side of the blade that it is on. */
export function SiteHeads({ sites }: { sites: readonly NamedSite[] }) {
  return (
    <span className={styles.strip}>
      {sites.map(({ at, name, site }) => (
        <span
          key={at}
          className={styles.head}
          title={site ? `Site ${name}, ${site.side} face` : `Site ${name}, not placed yet`}
        >
          {name}
          <small>{site ? SIDE_LETTERS[site.side] : ' '}</small>
        </span>
      ))}
    </span>
  );
}
