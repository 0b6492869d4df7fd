import { listedIds } from './listed-ids.ts';

/** What `grow` is asked for. */
export interface GrowCommand {
  readonly name: 'grow';
  readonly file: string;
  readonly json: boolean;
  /** Ids of two openings that the next sections are to lie between; undefined: anywhere. */
  readonly between?: readonly [string, string];
  /** Ids of group blanks that may enter new keyways. */
  readonly allow: readonly string[];
  /** Whether the widest blank that passes all openings stands for an all-section blank. */
  readonly passage: boolean;
}

/** The command, or what is wrong with its options. */
type ParsedGrowCommand =
  | { readonly ok: true; readonly command: GrowCommand }
  | { readonly ok: false; readonly fault: string };

/** The options of `grow` that take a text. */
export const GROW_OPTIONS = ['between', 'allow'] as const;

interface GrowValues {
  readonly between?: string[];
  readonly allow?: string[];
  readonly passage?: boolean;
  readonly json?: boolean;
}

/** The command, or what is wrong with its options. */
export function toGrowCommand(
  file: string,
  { between, allow = [], passage = false, json = false }: GrowValues,
): ParsedGrowCommand {
  const pair = between && listedIds(between);
  if (pair && (pair.length !== 2 || pair.includes('') || pair[0] === pair[1]))
    return { ok: false, fault: '--between needs the ids of two openings parted by a comma' };
  const allowed = listedIds(allow);
  if (allowed.includes('')) return { ok: false, fault: '--allow needs ids of group blanks parted by commas' };
  const command = { name: 'grow', file, json, passage, allow: [...new Set(allowed)] } as const;
  return { ok: true, command: pair ? { ...command, between: [pair[0], pair[1]] } : command };
}
