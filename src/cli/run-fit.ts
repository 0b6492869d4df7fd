import type { EntryMatrix } from '../family/entry-matrix.ts';
import type { Family } from '../family/family.ts';
import type { GuardMargins } from '../family/guard-margin.ts';
import type { Conditions } from '../fit/conditions.ts';
import type { FamilyDocument } from '../interchange/json/read.ts';
import { catalogue } from '../jobs/catalogue.ts';
import { JobRefused } from '../jobs/job.ts';
import { toFitJson, writeFitJson } from './fit-json.ts';
import { fitTable } from './fit-table.ts';
import { sayNoOpenings } from './no-sections.ts';
import { numberFeatures } from './outline-numbers.ts';
import type { FitCommand } from './parse-command.ts';
import { sayMargins } from './say-margins.ts';
import { EXIT, type Shell } from './shell.ts';

/** Judges a family as the command asks, prints the answer, and returns the exit code. */
export async function runFit(document: FamilyDocument, command: FitCommand, shell: Shell): Promise<number> {
  const { family } = document;
  const empty = sayNoOpenings(family, command.file, 'there is nothing to judge', shell);
  if (empty !== null) return empty;
  const conditions = conditionsOf(family, command);
  try {
    const matrix = await catalogue.fitFamily({ family, conditions }, shell.jobs);
    return await tell({ document, command, conditions, matrix }, shell);
  } catch (error) {
    if (!(error instanceof JobRefused)) throw error;
    shell.warn(`${command.file}: ${error.message}.\n`);
    return EXIT.badInput;
  }
}

/** A judged family and what was asked of it. */
interface Judged {
  readonly document: FamilyDocument;
  readonly command: FitCommand;
  readonly conditions: Conditions;
  readonly matrix: EntryMatrix;
  readonly margins?: GuardMargins;
}

/** Checks and completes what was judged, prints it, and returns the exit code. */
async function tell(judged: Judged, shell: Shell): Promise<number> {
  const { command } = judged;
  const code = command.verify ? await confirm(judged, shell) : EXIT.done;
  const margins = command.margins ? await measureMargins(judged, shell) : undefined;
  shell.print(await (command.json ? toJson : toText)({ ...judged, margins }, shell));
  return code;
}

/** The conditions of a command in the core's units: new parts held upright where it does not say otherwise. */
function conditionsOf({ runningClearance }: Family, { tiltDeg = 0, wearUm = 0 }: FitCommand): Conditions {
  return { runningClearance, tiltLimit: (tiltDeg * Math.PI) / 180, wear: Math.round(wearUm * 1e3) };
}

/** The details of every pair, within the tolerance of the command or those of the file. */
function describe({ document, command, conditions, matrix }: Judged, shell: Shell) {
  const tolerance = command.toleranceUm === undefined ? undefined : Math.round(command.toleranceUm * 1e3);
  const { draws } = command;
  return catalogue.describeFamily({ family: document.family, matrix, conditions, tolerance, draws }, shell.jobs);
}

async function toJson(judged: Judged, shell: Shell): Promise<string> {
  const { document, conditions, matrix, margins } = judged;
  const details = await describe(judged, shell);
  const numberFeature = conditions.wear === 0 ? numberFeatures(document) : null;
  return writeFitJson(toFitJson({ matrix, details, numberFeature, margins }));
}

async function toText(judged: Judged, shell: Shell): Promise<string> {
  const { document, command, matrix, margins } = judged;
  const plain = command.tiltDeg === undefined && command.toleranceUm === undefined;
  const details = plain ? undefined : await describe(judged, shell);
  const table = fitTable(
    document.family,
    matrix,
    shell.width,
    sayConditions(command),
    details?.map((row) => row.map((pair) => pair.threeWay)),
  );
  return margins ? `${table}\n${sayMargins(document.family, margins)}` : table;
}

/** The conditions that were asked for, in words. */
function sayConditions({ tiltDeg, toleranceUm, wearUm }: FitCommand): string[] {
  const tolerance = toleranceUm === undefined ? 'tolerances as in the file' : `tolerance ${toleranceUm} um a part`;
  return [
    ...(tiltDeg === undefined ? [] : [`tilt up to ${tiltDeg} degrees`]),
    ...(tiltDeg === undefined && toleranceUm === undefined ? [] : [tolerance]),
    ...(wearUm === undefined ? [] : [`worn by ${wearUm} um a part`]),
  ];
}

/** The margins of the new family held upright, whatever the conditions of the matrix. */
async function measureMargins({ document, matrix, conditions }: Judged, shell: Shell): Promise<GuardMargins> {
  const { family } = document;
  const { tiltLimit, wear } = conditions;
  const plain = tiltLimit === 0 && wear === 0 ? matrix : await catalogue.fitFamily({ family }, shell.jobs);
  return catalogue.guardFamily({ family, matrix: plain }, shell.jobs);
}

/** Checks every fit by the second method and says which it does not confirm. */
async function confirm({ document, matrix, conditions }: Judged, shell: Shell): Promise<number> {
  const { family } = document;
  const disagreements = await catalogue.verifyFamily({ family, matrix, conditions }, shell.jobs);
  for (const { profile, opening, reasons } of disagreements)
    shell.warn(`not confirmed: ${profile} in ${opening}: ${reasons.join('; ')}\n`);
  const pairs = matrix.profiles.length * matrix.openings.length;
  shell.warn(`${pairs - disagreements.length} of ${pairs} fits confirmed by the second method\n`);
  return disagreements.length > 0 ? EXIT.notConfirmed : EXIT.done;
}
