import { type Family, openingsOf } from '../family/family.ts';
import { unknownIdText } from '../family/unknown-id.ts';
import type { Fit } from '../fit/fit.ts';
import { catalogue } from '../jobs/catalogue.ts';
import type { PassageInput } from '../passage/find-passage.ts';
import type { Passage, PassageBlank, PassageMember } from '../passage/passage.ts';
import { shown } from './fit-table.ts';
import { sayNoOpenings } from './no-sections.ts';
import type { MilledWish, PassageCommand } from './parse-passage.ts';
import { mm, um } from './round-lengths.ts';
import { EXIT, type Shell, sayFault } from './shell.ts';

/**
 * Finds what keyways have in common and prints it, as text or as JSON; returns the exit code.
 *
 * @check tests/unit/cli/run-passage.test.ts
 */
export async function runPassage(family: Family, command: PassageCommand, shell: Shell): Promise<number> {
  const empty = sayNoOpenings(family, command.file, 'there is nothing to pass', shell);
  if (empty !== null) return empty;
  const openings = openingsOf(family);
  const ids = openings.map(({ id }) => id);
  const unknown = command.openings?.find((id) => !ids.includes(id));
  if (unknown !== undefined) return sayFault(command.file, unknownIdText('opening', unknown, ids), shell);
  const chosen = command.openings ?? ids;
  const { runningClearance } = family;
  const input = { openings: openings.map(({ id, ring }) => ({ id, ring })), chosen, runningClearance };
  const free = await catalogue.findPassage(input, shell.jobs);
  const passage = command.milled ? await milledPassage(free, input, command.milled, shell) : free;
  if (!passage) {
    shell.print('No blank: nothing is left that this cutter could mill and that passes all openings\n');
    return EXIT.done;
  }
  shell.print(command.json ? toJson(passage) : toText(passage, family));
  return EXIT.done;
}

/** The passage with a milled blank; the free one where that has none either. */
function milledPassage(free: Passage, { openings }: PassageInput, wish: MilledWish, shell: Shell) {
  if (!free.blank) return free;
  const plain = {
    thickness: wish.thicknessUm === null ? null : wish.thicknessUm * 1e3,
    height: wish.heightUm === null ? null : wish.heightUm * 1e3,
  };
  const cutter = {
    flank: (wish.flankDeg * Math.PI) / 180,
    rootRadius: wish.rootUm * 1e3,
    leastWidth: wish.widthUm * 1e3,
    depthStep: wish.stepUm * 1e3,
  };
  return catalogue.millPassage({ passage: free, openings, plain, cutter }, shell.jobs);
}

const mm2 = (area: number) => Math.round(area / 1e8) / 1e4;

function toJson({ members, area, sure, blank, none, entries, clearance }: Passage): string {
  const value = {
    clearanceUm: um(clearance),
    commonMm2: mm2(area),
    sure: sure && { kind: sure.kind, starts: sure.starts, same: sure.same, atMostMm2: mm2(sure.atMost) },
    none,
    blank: blank && {
      widthMm: mm(blank.width),
      heightMm: mm(blank.height),
      areaMm2: mm2(blank.area),
      thinnestWebMm: mm(blank.web.thickness),
      partsApart: blank.apart.length,
      milled: blank.milled ? milledJson(blank.milled) : null,
      outlineMm: blank.ring.map(({ x, y }) => [mm(x), mm(y)]),
    },
    openings: members.map(({ id, move, loss }) => ({
      opening: id,
      moveMm: [mm(move.x), mm(move.y)],
      lossMm2: loss && mm2(loss.area),
      lossShare: loss && Math.round(loss.share * 1e4) / 1e4,
      places:
        loss?.places.map(({ side, from, to, area: its }) => ({
          side,
          fromMm: mm(from),
          toMm: mm(to),
          areaMm2: mm2(its),
        })) ?? [],
    })),
    entries: entries.map(({ id, chosen, fit }) => ({
      opening: id,
      chosen,
      verdict: fit.verdict,
      clearanceUm: um(fit.clearance),
    })),
  };
  return `${JSON.stringify(value, null, 2)}\n`;
}

function milledJson({ blade, free }: NonNullable<PassageBlank['milled']>) {
  const { thickness, height, backRadius, grooves } = blade;
  return {
    thicknessMm: mm(thickness),
    heightMm: mm(height),
    backRadiusMm: mm(backRadius),
    grooves: grooves.map((groove) => ({
      side: groove.side,
      bottomMm: mm(groove.bottom),
      widthMm: mm(groove.width),
      depthMm: mm(groove.depth),
      flankDeg: Math.round((groove.flank * 1.8e6) / Math.PI) / 1e4,
      rootRadiusMm: mm(groove.rootRadius),
    })),
    widestMm2: mm2(free),
  };
}

/** What the cutter costs, and what is milled. */
function milledLines({ area, milled }: PassageBlank): string[] {
  if (!milled) return [];
  const { blade, free } = milled;
  const less = `${mm2(free - area).toFixed(2)} mm2 (${(((free - area) / free) * 100).toFixed(1)} %)`;
  return [
    `  milled from a plain blade, ${less} less than the widest without a cutter`,
    ...blade.grooves.map(
      ({ side, bottom, width, depth }) =>
        `  ${side} groove at ${mm(bottom).toFixed(3)}-${mm(bottom + width).toFixed(3)} mm, ${mm(depth).toFixed(3)} mm deep`,
    ),
  ];
}

function toText(passage: Passage, family: Family): string {
  const { blank, members, entries, sure } = passage;
  const nameOf = (id: string) => shown(family.profiles.find((profile) => profile.id === id)?.name ?? id);
  if (!blank) return `${noBlank(passage, nameOf)}\n`;
  const byId = new Map(members.map((member) => [member.id, member]));
  const rows = entries.map(({ id, fit }) => {
    const member = byId.get(id);
    return `  ${nameOf(id).padEnd(28)}  ${fit.verdict.padEnd(8)} ${member ? lost(member) : notChosen(fit)}`;
  });
  const lines = [
    `The widest blank that passes ${members.length} of ${entries.length} openings with ${um(passage.clearance)} um all round:`,
    `  ${mm(blank.width).toFixed(3)} x ${mm(blank.height).toFixed(3)} mm, ${mm2(blank.area).toFixed(2)} mm2, thinnest web ${mm(blank.web.thickness).toFixed(3)} mm`,
    ...milledLines(blank),
    ...(blank.apart.length > 0 ? [`  left out: ${blank.apart.length} parts that do not hang together with it`] : []),
    `Common region ${mm2(passage.area).toFixed(2)} mm2; ${sure ? sureWords(sure) : ''}`,
    ...rows,
  ];
  return `${lines.join('\n')}\n`;
}

/** An opening that was not chosen; with the margin where the blank would also enter it. */
function notChosen({ verdict, clearance }: Fit): string {
  if (verdict === 'blocked') return '(not chosen)';
  return `(not chosen: would also enter, ${um(clearance)} um all round)`;
}

function sureWords({ kind, starts, same }: NonNullable<Passage['sure']>): string {
  if (kind === 'best') return 'no alignment shares more';
  const led = kind === 'agreed' ? `all ${starts} alignments` : `${same} of ${starts} alignments`;
  return `${led} that were tried led to it, which is no proof`;
}

function lost({ loss }: PassageMember): string {
  if (!loss) return '';
  const [place] = loss.places;
  const where = place ? `, most ${place.side} at ${mm(place.from).toFixed(1)}-${mm(place.to).toFixed(1)} mm` : '';
  return `loses ${mm2(loss.area).toFixed(2)} mm2 (${(loss.share * 100).toFixed(0)} %)${where}`;
}

function noBlank({ none, clearance }: Passage, nameOf: (id: string) => string): string {
  if (none?.why === 'too-narrow')
    return `No blank: with ${um(clearance)} um all round nothing is left of ${none.ids.map(nameOf).join(', ')}`;
  return `No blank: with ${um(clearance)} um all round nothing is left that all openings share`;
}
