import { cautionLine } from '../family/cautions.ts';
import { entrantsOf, type Family } from '../family/family.ts';
import { catalogue } from '../jobs/catalogue.ts';
import type { Profile } from '../profile/profile.ts';
import { type BladeWeb, bladeWeb } from '../strength/blade-web.ts';
import { findMaterial, MATERIALS, type Material, USE_TORQUE, USUAL_MATERIAL } from '../strength/materials.ts';
import type { SectionStrength } from '../strength/strength.ts';
import {
  type LimitRange,
  materialsThatDo,
  type TorqueVerdict,
  torqueLimits,
  torqueVerdict,
} from '../strength/torque-limits.ts';
import { shown } from './fit-table.ts';
import { sayNoEntrants } from './no-sections.ts';
import type { StrengthCommand } from './parse-strength.ts';
import { mm } from './round-lengths.ts';
import { EXIT, type Shell } from './shell.ts';

interface BladeReport {
  readonly profile: Profile;
  readonly section: SectionStrength;
  readonly web: BladeWeb;
}

/** Signs for how a blade takes the torque, told apart without colour. */
const MARKS: Readonly<Record<TorqueVerdict, string>> = { elastic: '+', 'part-plastic': '~', 'too-much': 'x' };

/**
 * Finds what every blank and tool of a family bears in a material and prints it; returns the exit code.
 *
 * @check tests/unit/cli/run-strength.test.ts
 */
export async function runStrength(family: Family, command: StrengthCommand, shell: Shell): Promise<number> {
  const material = command.material === undefined ? USUAL_MATERIAL : findMaterial(command.material);
  if (!material) {
    const ids = MATERIALS.map(({ id }) => id).join(', ');
    shell.warn(`--material: there is no material "${command.material}"; there are ${ids}.\n`);
    return EXIT.badInput;
  }
  const empty = sayNoEntrants(family, command.file, 'there is nothing to examine', shell);
  if (empty !== null) return empty;
  const blades = entrantsOf(family);
  const reports = await examined(blades, shell);
  const torqueNm = command.torqueNm ?? USE_TORQUE.nm;
  shell.print(command.json ? toJson(reports, material, torqueNm) : toText(reports, material, torqueNm));
  return EXIT.done;
}

/** Every blade; those of one outline are examined once. */
async function examined(blades: readonly Profile[], shell: Shell): Promise<BladeReport[]> {
  const known = new Map<string, SectionStrength>();
  const reports: BladeReport[] = [];
  for (const profile of blades) {
    const { ring, drawn, milled } = profile;
    const key = JSON.stringify(milled ?? drawn ?? ring);
    const section =
      known.get(key) ?? (await catalogue.findStrength({ ring, drawn, milled }, { ...shell.jobs, progress: () => {} }));
    known.set(key, section);
    reports.push({ profile, section, web: bladeWeb(profile) });
    shell.jobs.progress(reports.length, blades.length);
  }
  return reports;
}

function toJson(reports: readonly BladeReport[], material: Material, torqueNm: number): string {
  const value = {
    material,
    torqueNm,
    torqueIs: torqueNm === USE_TORQUE.nm ? USE_TORQUE : null,
    blades: reports.map((report) => bladeJson(report, material, torqueNm)),
    caution: cautionLine('strength'),
  };
  return `${JSON.stringify(value, null, 2)}\n`;
}

function bladeJson({ profile, section, web }: BladeReport, material: Material, torqueNm: number) {
  const { torsion, centroid, peakAt, sharpCorners, leastRootRadius, field: _picture, steps: _steps, ...rest } = section;
  const limits = torqueLimits(section, material);
  const place = ({ x, y }: { x: number; y: number }) => [mm(x), mm(y)];
  return {
    profile: profile.id,
    name: profile.name,
    thinnestWebMm: mm(web.thickness),
    areaMm2: sig(rest.area),
    centroidMm: place(centroid),
    ixMm4: sig(rest.ix),
    iyMm4: sig(rest.iy),
    ixyMm4: sig(rest.ixy),
    weakestMm4: sig(rest.weakest),
    weakModulusMm3: sig(rest.weakModulus),
    torsionMm4: { below: sig(torsion.below), best: sig(torsion.best), above: sig(torsion.above) },
    peakShearPerTorque: sig(rest.peakShear),
    peakAtMm: place(peakAt),
    peakOnChords: rest.peakOnChords,
    plasticTorqueMm3: { below: sig(rest.plasticTorque.below), above: sig(rest.plasticTorque.above) },
    leastRootRadiusMm: leastRootRadius === null ? null : mm(leastRootRadius),
    sharpCornersMm: sharpCorners.map(place),
    yieldNm: pair(limits.yieldNm),
    trescaNm: pair(limits.trescaNm),
    plasticNm: pair(limits.plasticNm),
    bendingNm: pair(limits.bendingNm),
    verdict: torqueVerdict(limits, torqueNm),
    materials: materialsThatDo(section, MATERIALS, torqueNm).map(({ material: { id }, verdict }) => ({ id, verdict })),
  };
}

function toText(reports: readonly BladeReport[], material: Material, torqueNm: number): string {
  const { name, alloy, temper, yield: yields, yieldBy, yieldAs, E, G, source, fromMemory } = material;
  const width = Math.max(...reports.map(({ profile }) => shown(profile.name).length));
  const memory = fromMemory.length > 0 ? `, from memory: ${fromMemory.join(', ')}` : '';
  const lines = [
    `${name} ${alloy} ${temper}: yield ${range(yields)} MPa (${yieldBy}, ${yieldAs}); ${source}${memory}`,
    `modulus of elasticity E ${range(E)} GPa, shear modulus G ${range(G)} GPa`,
    `Compared with ${torqueNm} N m${torqueNm === USE_TORQUE.nm ? ` (${USE_TORQUE.standard}, ${USE_TORQUE.title}). ${USE_TORQUE.sure}` : ''}`,
    '',
    `${''.padEnd(width)}  area mm2  web mm    J mm4  +-%  yields N m  plastic N m  bends N m    of ${MATERIALS.length} do`,
    ...reports.map((report) => bladeLine(report, material, torqueNm, width)),
    '',
    '+ without yielding, ~ part of the section yields and it may stay twisted, x more than it bears; the least yield counts.',
    'Lines after a blade say what its figures leave out. Cuts, wear and burrs are not in them.',
    cautionLine('strength'),
  ];
  return `${lines.join('\n')}\n`;
}

function bladeLine(
  { profile, section, web }: BladeReport,
  material: Material,
  torqueNm: number,
  width: number,
): string {
  const { torsion, area, sharpCorners } = section;
  const limits = torqueLimits(section, material);
  const error = (100 * (torsion.above - torsion.below)) / 2 / torsion.best;
  const doing = materialsThatDo(section, MATERIALS, torqueNm).filter(({ verdict }) => verdict === 'elastic').length;
  const cells = [
    area.toFixed(2).padStart(8),
    mm(web.thickness).toFixed(3).padStart(6),
    torsion.best.toFixed(3).padStart(7),
    error.toFixed(1).padStart(4),
    nm(limits.yieldNm).padStart(10),
    nm(limits.plasticNm).padStart(11),
    nm(limits.bendingNm).padStart(9),
    MARKS[torqueVerdict(limits, torqueNm)],
    String(doing).padStart(8),
  ];
  const line = `${shown(profile.name).padEnd(width)}  ${cells.join('  ')}`;
  if (section.peakOnChords)
    return `${line}\n${''.padEnd(width)}  its roundings are drawn as chords: the true peak may be up to 7 % higher than told, so it yields as much earlier`;
  if (sharpCorners.length === 0) return line;
  const told = `${''.padEnd(width)}  ${sharpCorners.length} sharp inner ${sharpCorners.length === 1 ? 'corner' : 'corners'}: the true peak there is higher than told; give root radii`;
  return `${line}\n${told}`;
}

const sig = (value: number) => Number(value.toPrecision(6));
const pair = ({ low, high }: LimitRange) => [sig(low), sig(high)];
const nm = ({ low, high }: LimitRange) =>
  low.toFixed(2) === high.toFixed(2) ? low.toFixed(2) : `${low.toFixed(2)}-${high.toFixed(2)}`;
const range = ([low, high]: readonly [number, number]) => (low === high ? `${low}` : `${low}-${high}`);
