import { entrantsOf, type Family, openingsOf } from '../family/family.ts';
import { decimalsApart } from '../family/length-text.ts';
import { hyphenedName } from '../family/plain-name.ts';
import { unknownIdText } from '../family/unknown-id.ts';
import { write3mf } from '../interchange/print3d/write-3mf.ts';
import { writeStl } from '../interchange/print3d/write-stl.ts';
import { catalogue } from '../jobs/catalogue.ts';
import { JobRefused } from '../jobs/job.ts';
import type { DisplaySet, PrintCheck, SolidPart } from '../print3d/display-set.ts';
import { type DisplaySetup, usualSetup } from '../print3d/display-setup.ts';
import { sayNoProfiles } from './no-sections.ts';
import type { Print3dCommand } from './parse-print3d.ts';
import { mm } from './round-lengths.ts';
import { EXIT, type Shell, sayFault } from './shell.ts';
import { fileSpan, numberedName, type OutFile, writeFiles } from './write-files.ts';

/**
 * Builds the display set of a family, writes its file or files, says what was found out, and returns the exit code.
 *
 * @check tests/unit/cli/print3d.test.ts
 */
export async function runPrint3d(family: Family, command: Print3dCommand, shell: Shell): Promise<number> {
  const { file, output, format } = command;
  const empty = sayNoProfiles(family, file, 'there is nothing to print', shell);
  if (empty !== null) return empty;
  const setup = setupOf(family, command);
  if (typeof setup === 'string') return sayFault(file, setup, shell);
  try {
    const set = await catalogue.buildDisplaySet({ family, setup }, shell.jobs);
    const files =
      format === 'stl' ? stlFiles(set, output) : [{ name: output, content: write3mf(set.parts, family.name) }];
    const code = writeFiles(files, file, shell);
    if (code !== EXIT.done) return code;
    shell.warn(sayChecks(set, family));
    shell.warn(
      `${fileSpan(files)}: ${counted(set.parts.length, 'part')} on ${counted(set.beds, 'bed')}, ${set.scale}:1, written\n`,
    );
    return EXIT.done;
  } catch (error) {
    if (error instanceof JobRefused) return sayFault(file, error.message.replace(/\.$/, ''), shell);
    throw error;
  }
}

/** The setup asked for, or what is wrong with the ids. */
function setupOf(family: Family, { only, numbers, bed, tip, letters, board }: Print3dCommand): DisplaySetup | string {
  const usual = usualSetup(family);
  const setup = { ...usual, ...numbers, ...(bed && { bed }), ...(tip && { tip }), letters, board };
  if (!only) return setup;
  const ids = family.profiles.map(({ id }) => id);
  const unknown = only.find((id) => !ids.includes(id));
  if (unknown !== undefined) return unknownIdText('profile', unknown, ids);
  const chosen = (profiles: readonly { readonly id: string }[]) =>
    only.filter((id) => profiles.some((profile) => profile.id === id));
  return { ...setup, openings: chosen(openingsOf(family)), blanks: chosen(entrantsOf(family)) };
}

/** One file; where there are several parts, one a part, numbered and named before the ending. */
function stlFiles({ parts }: DisplaySet, output: string): OutFile[] {
  if (parts.length === 1) return [{ name: output, content: writeStl(parts[0]) }];
  const named = ({ name }: SolidPart, i: number) => numberedName(output, i, parts.length, hyphenedName(name));
  return parts.map((part, i) => ({ name: named(part, i), content: writeStl(part) }));
}

/** Each check on a line. */
function sayChecks({ checks }: DisplaySet, family: Family): string {
  return checks.map((check) => `${check.weight}: ${checkText(check, family)}\n`).join('');
}

function checkText({ subjects, what, where, size, limit, cure }: PrintCheck, family: Family): string {
  const nameOf = (id: string) => family.profiles.find((profile) => profile.id === id)?.name ?? id;
  const about = subjects.length > 0 ? `${subjects.map(nameOf).join(' in ')}: ` : '';
  const place = where ? `, ${where.side} side at ${mm(where.from).toFixed(2)}-${mm(where.to).toFixed(2)} mm` : '';
  const decimals = decimalsApart(size ?? 0, limit ?? size ?? 0, 2);
  const against = limit === null ? '' : ` against ${limit.toFixed(decimals)}`;
  const sizes = size === null ? '' : ` (${size.toFixed(decimals)}${against} mm as printed)`;
  return `${about}${what}${place}${sizes}. To do: ${cure}.`;
}

function counted(count: number, word: string): string {
  return `${count} ${count === 1 ? word : `${word}s`}`;
}
