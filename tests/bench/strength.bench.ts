// The torsion constant of two sections to within one and a half percent: triangles of second degree refined where the two bounds are
// apart, as shipped, beside the two usual ways at the same bounds: the same triangles refined evenly, and linear triangles
// (three nodes) refined evenly. All solve with the same solver, and all bounds are rigorous, so the error is the same by
// their own word. The linear way gathers its matrix plainly, so the numbers of triangles tell more than the times.

import { findStrength } from '../../src/strength/find-strength.ts';
import { flattenOutline } from '../../src/strength/flatten-outline.ts';
import { meshSection, refineMesh, type SectionMesh } from '../../src/strength/section-mesh.ts';
import { type SectionShape, sectionOutline } from '../../src/strength/section-outline.ts';
import { torsionFields } from '../../src/strength/torsion-fields.ts';
import { manyGrooved, milledRing, rootedBlade } from '../cases/strength-blades.ts';
import { angleSection } from '../cases/torsion-shapes.ts';
import { linearBounds } from '../kit/engines/linear-torsion.ts';
import { type Timing, takeTurns } from './measure.ts';
import { figures, printNote, printTable, times } from './print-table.ts';

const GAP = 0.015;
const REPEATS = 3;
const MOST_TRIANGLES = 6_000;

interface Answer {
  readonly triangles: number;
  readonly gap: number;
}

const grooved = rootedBlade(0.06);
const sections: readonly [string, SectionShape][] = [
  ['sharp L, 10.5 x 10.5 x 1', angleSection(10.5, 1, 10.5, 1, 0)],
  ['blade with two grooves', { ring: milledRing(grooved), milled: grooved }],
];

for (const [name, section] of sections) compare(name, section);
wholeAnswer();

/** One table: the three ways on one section. The even ways are told beforehand how fine they must be. */
function compare(name: string, section: SectionShape): void {
  const [quadratic, linear] = [radiusFor(section, quadraticBounds), radiusFor(section, linearBounds)];
  const answers: Answer[] = [];
  const contestants = [
    { name: 'second degree, where the gap is', run: () => void answers.splice(0, 1, adaptive(section)) },
    {
      name: 'second degree, evenly',
      run: () => void answers.splice(1, 1, answerOn(section, quadratic, quadraticBounds)),
    },
    { name: 'linear, evenly', run: () => void answers.splice(2, 1, answerOn(section, linear, linearBounds)) },
  ];
  const timings = takeTurns(contestants, REPEATS);
  const baseline = timings[2];
  const rows = timings.map((timing: Timing, i) => {
    const { triangles, gap } = answers[i];
    const speed = times(baseline.median / timing.median);
    return [timing.name, figures(timing.median), speed, String(triangles), `${figures(100 * gap)} %`];
  });
  printTable(
    `${name}: torsion constant to ${100 * GAP} %, median ms of ${REPEATS}; speed beside ${baseline.name}`,
    ['', 'ms', 'speed', 'triangles', 'gap'],
    rows,
  );
}

/** As shipped, without peak and plastic torque: from the first mesh on, refined where the gap is. */
function adaptive(section: SectionShape): Answer {
  let mesh = firstMesh(section, 0.5);
  for (;;) {
    const { below, above, gaps } = torsionFields(mesh);
    const gap = (above - below) / below;
    if (gap <= GAP) return { triangles: gaps.length, gap };
    const fair = (0.3 * GAP * below) / gaps.length;
    mesh = refineMesh(mesh, (t) => gaps[t] > fair);
  }
}

type BoundsOn = (mesh: SectionMesh) => { below: number; above: number };

/** The first circumradius, of ever smaller ones, at which the bounds are close; or where there are too many triangles. */
function radiusFor(section: SectionShape, bounds: BoundsOn): number {
  for (let radius = 0.5; ; radius /= Math.SQRT2) {
    const { triangles, gap } = answerOn(section, radius, bounds);
    if (gap <= GAP || triangles > MOST_TRIANGLES) return radius;
  }
}

function answerOn(section: SectionShape, radius: number, bounds: BoundsOn): Answer {
  const mesh = firstMesh(section, radius);
  const { below, above } = bounds(mesh);
  return { triangles: mesh.corners.length / 3, gap: (above - below) / below };
}

function quadraticBounds(mesh: SectionMesh): { below: number; above: number } {
  return torsionFields(mesh);
}

function firstMesh(section: SectionShape, radius: number): SectionMesh {
  return meshSection(flattenOutline(sectionOutline(section), 1e-4), new Map(), radius);
}

/** How long a blade with eight grooves takes, from the outline to the whole answer. */
function wholeAnswer(): void {
  const milled = manyGrooved();
  const question = { ring: milledRing(milled), milled };
  const [all] = takeTurns([{ name: 'all', run: () => void findStrength(question) }], REPEATS);
  printNote(
    `blade with eight grooves, everything: ${figures(all.median)} ms (${figures(all.least)} - ${figures(all.greatest)})`,
  );
}
