import type { Family } from '../family/family.ts';
import { unknownIdText } from '../family/unknown-id.ts';
import { JobRefused } from '../jobs/job.ts';
import { type Published, publishSheets } from '../jobs/publish-sheets.ts';
import { emptyFault, orderFault } from '../publish/order-fault.ts';
import { type OrderOfAny, type SheetOrder, USUAL_TURNS } from '../publish/sheet-order.ts';
import { sayNoEntrants, sayNoOpenings } from './no-sections.ts';
import type { PublishCommand } from './parse-publish.ts';
import { EXIT, type Shell, sayFault } from './shell.ts';
import { fileSpan, mayWriteOrWarn, numberedName, type OutFile, writeFiles } from './write-files.ts';

/** How many questions there are and what draws them, where it is not said. */
const USUAL = { questions: 12, seed: 1 } as const;

/**
 * Lays out a sheet of a family, writes its file or files, and returns the exit code.
 *
 * @check tests/unit/cli/publish.test.ts
 */
export async function runPublish(family: Family, command: PublishCommand, shell: Shell): Promise<number> {
  const { file, format, output } = command;
  if (!mayWriteOrWarn(output, file, shell)) return EXIT.badInput;
  const sheet = orderOf(family, command);
  const fault = sayEmpty(family, sheet, file, shell) ?? sayUnpaired(family, command, shell);
  if (fault !== null) return fault;
  try {
    const published = await publishSheets({ family, sheet, as: format }, shell.jobs);
    const files = filesOf(published, output);
    const code = writeFiles(files, file, shell);
    if (code === EXIT.done) shell.warn(sayWritten(published, files));
    return code;
  } catch (error) {
    if (error instanceof JobRefused) return sayFault(file, error.message, shell);
    throw error;
  }
}

/** The exit code where the sheet needs sections and the family lacks them; a plan's card and a lesson of words need none. */
function sayEmpty(family: Family, sheet: SheetOrder, file: string, shell: Shell): number | null {
  const lack = emptyFault(family);
  if (lack === null || orderFault(family, sheet) !== lack) return null;
  const idle = 'there is nothing to lay out';
  return sayNoOpenings(family, file, idle, shell) ?? sayNoEntrants(family, file, idle, shell);
}

/** The exit code where the two ids that a scale sheet is of are not an opening and what may enter it. */
function sayUnpaired({ profiles }: Family, { file, sheet, of }: PublishCommand, shell: Shell): number | null {
  if (sheet !== 'scale' || of.length < 2) return null;
  const ids = profiles.map(({ id }) => id);
  const unknown = of.find((id) => !ids.includes(id));
  if (unknown !== undefined) return sayFault(file, unknownIdText('opening, blank or tool', unknown, ids), shell);
  const openings = profiles.filter(({ id, kind }) => kind === 'opening' && of.includes(id)).length;
  if (openings === 1 && of[0] !== of[1]) return null;
  return sayFault(file, `--of is "${of.join(',')}", must be one opening and one blank or tool`, shell);
}

function orderOf(family: Family, command: PublishCommand): SheetOrder {
  const { sheet, blanks: blanksOnly, onePage, inBetween, of, enlarge, questions, seed } = command;
  const any: OrderOfAny = {
    ...{ paper: command.paper, turned: command.turned ?? USUAL_TURNS[sheet] },
    ...{ palette: command.grey ? 'grey' : 'colour', units: command.units ?? family.units },
    ...(command.date !== undefined && { date: command.date }),
  };
  switch (sheet) {
    case 'chart':
      return { ...any, sheet, blanksOnly, onePage, inBetween };
    case 'matrix':
      return { ...any, sheet, blanksOnly };
    case 'scale':
      return { ...any, sheet, ...partsOf(family, of), enlarge };
    case 'card':
      return { ...any, sheet, ...(of.length > 0 && { of: of[0] }) };
    case 'answers':
      return { ...any, sheet, questions: questions ?? USUAL.questions, seed: seed ?? USUAL.seed };
    default:
      return { ...any, sheet };
  }
}

/** An opening and a blank, whichever of the two is named first. */
function partsOf({ profiles }: Family, ids: readonly string[]): { opening?: string; blank?: string } {
  const isEntrant = (id: string) => profiles.some((profile) => profile.id === id && profile.kind !== 'opening');
  const blank = ids.find(isEntrant);
  const opening = ids.find((id) => id !== blank);
  return { ...(opening !== undefined && { opening }), ...(blank !== undefined && { blank }) };
}

/** One file; where there are several pages of SVG, one a page, numbered before the ending. */
function filesOf({ svg, pdf, html, csv }: Published, output: string): OutFile[] {
  const one = pdf ?? html ?? csv;
  if (one !== undefined) return [{ name: output, content: one }];
  const pages = svg ?? [];
  if (pages.length === 1) return [{ name: output, content: pages[0] }];
  return pages.map((content, i) => ({ name: numberedName(output, i, pages.length), content }));
}

function sayWritten({ pageCount, missingLetters, csv }: Published, files: readonly OutFile[]): string {
  const pages = `${pageCount} ${pageCount === 1 ? 'page' : 'pages'}`;
  const written = `${fileSpan(files)}: ${csv === undefined ? pages : 'a table'} written\n`;
  if (missingLetters.length === 0 || csv !== undefined) return written;
  return `${written}The typeface does not have ${missingLetters.join(' ')}: a box stands for each.\n`;
}
