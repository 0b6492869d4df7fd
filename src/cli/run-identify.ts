import type { Family } from '../family/family.ts';
import type { Candidate, Identification } from '../identify/identify.ts';
import { USUAL_ERROR } from '../identify/judge-likeness.ts';
import { candidateName, candidateWords, sayIdentity } from '../identify/say-identity.ts';
import { placeLoop } from '../interchange/place-loop.ts';
import { sniffFormat } from '../interchange/sniff-format.ts';
import type { DrawnLoop } from '../interchange/take-outline.ts';
import { catalogue } from '../jobs/catalogue.ts';
import type { DrawingFormat, DrawingLoops } from '../jobs/read-drawing.ts';
import { shown } from './fit-table.ts';
import { sayNoProfiles } from './no-sections.ts';
import type { IdentifyCommand } from './parse-command.ts';
import { EXIT, readOrWarn, type Shell } from './shell.ts';

const FORMATS: readonly string[] = ['svg', 'dxf', 'points'] satisfies DrawingFormat[];

/**
 * Says what an outline of a drawing is among the sections of a family: prints the answer and the sections, the closest
 * first.
 *
 * @returns the exit code: done also where it is like none of them.
 * @check tests/unit/cli/run-identify.test.ts
 */
export async function runIdentify(family: Family, command: IdentifyCommand, shell: Shell): Promise<number> {
  const empty = sayNoProfiles(family, command.file, 'there is nothing to compare with', shell);
  if (empty !== null) return empty;
  const drawing = await openDrawing(command.outline, shell);
  const loop = drawing && chooseLoop(drawing, command, shell);
  if (!drawing || !loop) return EXIT.badInput;
  if (!drawing.unitsStated) shell.warn(`${command.outline}: says no unit; taken as millimetres.\n`);
  const { among } = command;
  const profiles = family.profiles.filter(
    ({ kind }) => among === 'all' || (kind === 'opening') === (among === 'keyways'),
  );
  if (profiles.length === 0) {
    shell.warn(`${command.file}: holds nothing to compare with; try --among all.\n`);
    return EXIT.badInput;
  }
  const error = command.errorUm === undefined ? USUAL_ERROR.outside : command.errorUm * 1e3;
  const outline = placeLoop(loop, { seenFrom: 'bow', quarters: 0, place: 'origin', lighter: true });
  const question = { outline, error, profiles, mirrored: true, turned: true };
  const answer = await catalogue.identifyOutline(question, shell.jobs);
  shell.print(command.json ? toJson(answer) : toText(answer, family, error, loop));
  return EXIT.done;
}

/** The loops of a drawing, or null after saying what is wrong with it. */
async function openDrawing(file: string, shell: Shell): Promise<DrawingLoops | null> {
  const text = readOrWarn(file, shell);
  if (text === null) return null;
  const sniffed = sniffFormat(file, new TextEncoder().encode(text.slice(0, 60_000)));
  if (!sniffed.ok) {
    shell.warn(`${file}: ${sniffed.fault.what}. ${sniffed.fault.cure}\n`);
    return null;
  }
  const format = sniffed.format as DrawingFormat;
  if (!FORMATS.includes(format)) {
    shell.warn(`${file}: holds no outline. Give an SVG, a DXF or a table of points (CSV).\n`);
    return null;
  }
  const read = await catalogue.readDrawing({ format, text }, shell.jobs);
  if (read.ok) return read.drawing;
  for (const { path, what, cure } of read.faults) shell.warn(`${file}: ${path}: ${what}. ${cure}\n`);
  return null;
}

/** The loop that was asked for, or the only sound one; null after saying which ones there are. */
function chooseLoop({ loops }: DrawingLoops, command: IdentifyCommand, shell: Shell): DrawnLoop | null {
  const { loop: wanted, outline: file } = command;
  const sound = loops.flatMap((loop, i) => (loop.fault === null ? [{ loop, number: i + 1 }] : []));
  const asked = wanted === undefined ? sound : sound.filter(({ number }) => number === wanted);
  if (asked.length === 1) return asked[0].loop;
  if (sound.length === 0) {
    const kinds = [...new Set(loops.map(({ fault }) => fault?.kind))].join(', ');
    shell.warn(`${file}: has no sound outline (${kinds}). Mend it in the drawing program.\n`);
    return null;
  }
  const list = sound.map(
    ({ loop, number }) => `  ${number}  ${mm(loop.width)} x ${mm(loop.height)}  ${shown(loop.label)}`,
  );
  const why = wanted === undefined ? `has ${sound.length} outlines: say --loop N` : `has no sound outline ${wanted}`;
  shell.warn(`${file}: ${why}.\n${list.join('\n')}\n`);
  return null;
}

function mm(nm: number): string {
  return `${(nm / 1e6).toFixed(3)} mm`;
}

function toText(answer: Identification, family: Family, error: number, { width, height }: DrawnLoop): string {
  const said = sayIdentity(answer, family.profiles, error, mm).map(shown);
  const rows = answer.ranked.map(({ comparison: { most, mean, areaApart, pose }, ...candidate }, i) => {
    const figures = [most / 1e6, mean / 1e6, areaApart / 1e12].map((figure) => figure.toFixed(3).padStart(9)).join(' ');
    const words = candidateWords(answer, i);
    const name = shown(candidateName(candidate, family.profiles));
    return `${figures}  ${pose.mirrored ? 'tip' : 'bow'}   ${name}${words && `: ${words}`}`;
  });
  return [
    `An outline of ${mm(width)} x ${mm(height)}, drawing error ${mm(error)} either way`,
    ...said,
    '',
    '  most mm   mean mm  area mm2  view  section',
    ...rows,
    ...(answer.beyond > 0 ? [`and ${answer.beyond} more, further off`] : []),
    '',
  ].join('\n');
}

function toJson({ likeness, count, ranked, beyond }: Identification): string {
  const um = (nm: number) => Number((nm / 1e3).toFixed(3));
  const row = ({ ids, careful, comparison }: Candidate) => {
    const { most, at, mean, rms, areaApart, pose } = comparison;
    return {
      profiles: ids,
      hausdorffUm: um(most),
      atMm: [at.x, at.y].map((nm) => Number((nm / 1e6).toFixed(6))),
      meanUm: um(mean),
      rmsUm: um(rms),
      areaMm2: Number((areaApart / 1e12).toFixed(6)),
      mirrored: pose.mirrored,
      turnedDeg: Number(((pose.turned * 180) / Math.PI).toFixed(4)),
      careful,
    };
  };
  return `${JSON.stringify({ likeness, count, ranked: ranked.map(row), beyond }, null, 2)}\n`;
}
