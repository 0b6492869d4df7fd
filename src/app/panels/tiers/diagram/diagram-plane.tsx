import { useMemo } from 'react';
import type { KnownFits } from '../../../../family/known-fits.ts';
import { nodeOf, reachOf } from '../../../../family/tier-reach.ts';
import type { Profile } from '../../../../profile/profile.ts';
import { tierWords } from '../../../state/tiers/diagram-nodes.ts';
import type { LaidOut } from '../../../state/tiers/laying-out.ts';
import styles from './diagram.module.css';
import { DiagramNodeKey, type NodeRelation } from './diagram-node.tsx';

interface DiagramPlaneProps {
  readonly drawn: LaidOut;
  readonly entrantId: string | null;
  /** Half the width and height of the largest section, millimetres. */
  readonly reach: { readonly x: number; readonly y: number };
  /** The keyway whose verdicts stand in the nodes; null for none. */
  readonly opening: Profile | null;
  readonly fits: KnownFits | null;
  /** Which nodes a search has found; null where nothing is searched. */
  readonly found: ReadonlySet<number> | null;
}

/**
 * The diagram at full scale: lines under nodes, base at the bottom. What stands above the picked node has heavy lines,
 * what stands below it broken ones. The nodes are a list by tiers, the highest first, for those who hear it.
 */
export function DiagramPlane({ drawn, entrantId, reach, opening, fits, found }: DiagramPlaneProps) {
  const { tiers, nodes, layout } = drawn;
  const relations = useRelations(drawn, entrantId);
  const verdicts = useVerdicts(drawn, opening, fits);
  const lines = useMemo(() => linesOf(drawn, relations), [drawn, relations]);
  const rows = useMemo(() => rowsOf(drawn), [drawn]);
  const start = Math.max(0, relations.indexOf('picked'));
  return (
    <>
      <svg className={styles.lines} width={layout.width} height={layout.height} aria-hidden="true">
        {lines.map(({ key, relation, way }) => (
          <path key={key} data-relation={relation} d={way} />
        ))}
      </svg>
      <ol className={styles.tiers} aria-label="Tiers, the highest first">
        {rows.map(({ tier, row }) => (
          <li key={tier} aria-label={tierWords(tier, tiers)}>
            <ul>
              {row.map((at) => (
                <li key={nodes[at].id}>
                  <DiagramNodeKey
                    node={nodes[at]}
                    x={layout.at[at].x}
                    y={layout.at[at].y}
                    relation={relations[at]}
                    found={found ? found.has(at) : null}
                    focusable={at === start}
                    reachX={reach.x}
                    reachY={reach.y}
                    verdict={verdicts[at]}
                    openingName={opening?.name ?? ''}
                    tier={tierWords(tier, tiers)}
                  />
                </li>
              ))}
            </ul>
          </li>
        ))}
      </ol>
    </>
  );
}

function useRelations({ tiers }: LaidOut, entrantId: string | null): NodeRelation[] {
  return useMemo(() => {
    const picked = nodeOf(tiers, entrantId);
    if (picked < 0) return tiers.nodes.map(() => 'apart');
    const { above, below } = reachOf(tiers, picked);
    return tiers.nodes.map((_, at) => {
      if (at === picked) return 'picked';
      if (above.has(at)) return 'above';
      return below.has(at) ? 'below' : 'apart';
    });
  }, [tiers, entrantId]);
}

function useVerdicts({ nodes }: LaidOut, opening: Profile | null, fits: KnownFits | null) {
  return useMemo(() => {
    const column = fits && opening ? fits.openings.indexOf(opening.id) : -1;
    const rows = new Map(fits?.profiles.map((id, i) => [id, i]));
    return nodes.map(({ lead }) => fits?.fits[rows.get(lead.id) ?? -1]?.[column]?.verdict ?? null);
  }, [nodes, opening, fits]);
}

function rowsOf({ nodes, layout }: LaidOut): { tier: number; row: number[] }[] {
  const tiers = [...new Set(nodes.map(({ tier }) => tier))].sort((a, b) => b - a);
  return tiers.map((tier) => ({
    tier,
    row: nodes.flatMap((node, at) => (node.tier === tier ? [at] : [])).sort((a, b) => layout.at[a].x - layout.at[b].x),
  }));
}

/** All lines, those that are lit last, so that they lie on top. */
function linesOf({ layout }: LaidOut, relations: readonly NodeRelation[]) {
  const lines = layout.edges.map(({ from, to, points }) => ({
    key: `${from} ${to}`,
    relation: lineRelation(relations[from], relations[to]),
    way: wayOf(points),
  }));
  return lines.sort((a, b) => Number(a.relation !== 'apart') - Number(b.relation !== 'apart'));
}

function lineRelation(a: NodeRelation, b: NodeRelation): NodeRelation {
  const of = (relation: NodeRelation) => (a === relation || a === 'picked') && (b === relation || b === 'picked');
  if (of('above')) return 'above';
  return of('below') ? 'below' : 'apart';
}

/** A line that leaves and comes in upright. */
function wayOf(points: readonly (readonly [number, number])[]): string {
  return points
    .map(([x, y], at) => {
      if (at === 0) return `M${x} ${y}`;
      const [fromX, fromY] = points[at - 1];
      const middle = (fromY + y) / 2;
      return `C${fromX} ${middle} ${x} ${middle} ${x} ${y}`;
    })
    .join('');
}
