import { sayText } from '../json/file-fault.ts';
import type { Notes } from './gather-notes.ts';
import type { Group } from './scan-groups.ts';

/** One thing in a DXF file: what group 0 calls it, and its groups up to the next one. */
export interface DxfRecord {
  readonly type: string;
  readonly line: number;
  readonly groups: readonly Group[];
}

/** The parts of a DXF file that can hold or place outlines. */
export interface SortedRecords {
  /** Values of the header by variable: the first group of each. */
  readonly header: ReadonlyMap<string, string>;
  readonly layers: readonly DxfRecord[];
  readonly blocks: readonly { readonly head: DxfRecord; readonly entities: readonly DxfRecord[] }[];
  readonly entities: readonly DxfRecord[];
}

/** The value of the first group with a code. */
export function groupValue(record: DxfRecord, code: number): string | undefined {
  return record.groups.find((group) => group.code === code)?.value.trim();
}

/**
 * Sorts the groups of a file into its header, layers, blocks and entities; a section or block without its end is told.
 *
 * @source DXF reference, "General DXF file structure" (from memory).
 */
export function sortRecords(groups: readonly Group[], notes: Notes): SortedRecords {
  const sections = toSections(toRecords(groups), notes);
  const within = (name: string) => sections.filter((section) => section.name === name);
  return {
    header: readHeader(within('HEADER').flatMap(({ head }) => head.groups)),
    layers: within('TABLES').flatMap(({ records }) => records.filter(({ type }) => type === 'LAYER')),
    blocks: within('BLOCKS').flatMap(({ records }) => toBlocks(records)),
    entities: within('ENTITIES').flatMap(({ records }) => records),
  };
}

/** A section: the record that opens it, and those up to its end. */
interface Section {
  readonly name: string;
  readonly head: DxfRecord;
  readonly records: DxfRecord[];
}

function toSections(records: readonly DxfRecord[], notes: Notes): Section[] {
  const sections: Section[] = [];
  let open: Section | null = null;
  for (const record of records) {
    if (record.type === 'SECTION') {
      if (open) notes.add(record.line, `a section begins before ${sayText(open.name)} has ended`, CHECK_DAMAGE);
      open = { name: (groupValue(record, 2) ?? '').toUpperCase(), head: record, records: [] };
      sections.push(open);
    } else if (record.type === 'ENDSEC') open = null;
    else open?.records.push(record);
  }
  return sections;
}

function toBlocks(records: readonly DxfRecord[]): SortedRecords['blocks'] {
  const blocks: { head: DxfRecord; entities: DxfRecord[] }[] = [];
  let open: DxfRecord[] | null = null;
  for (const record of records) {
    if (record.type === 'BLOCK') {
      open = [];
      blocks.push({ head: record, entities: open });
    } else if (record.type === 'ENDBLK') open = null;
    else open?.push(record);
  }
  return blocks;
}

const CHECK_DAMAGE = 'Check that all is there; save the drawing once more if not.';

function toRecords(groups: readonly Group[]): DxfRecord[] {
  const records: { type: string; line: number; groups: Group[] }[] = [];
  for (const group of groups) {
    if (group.code === 0) records.push({ type: group.value.trim().toUpperCase(), line: group.line, groups: [] });
    else records.at(-1)?.groups.push(group);
  }
  return records;
}

function readHeader(groups: readonly Group[]): Map<string, string> {
  const header = new Map<string, string>();
  let name = '';
  for (const { code, value } of groups) {
    if (code === 9) name = value.trim().toUpperCase();
    else if (name !== '' && !header.has(name)) header.set(name, value.trim());
  }
  return header;
}
