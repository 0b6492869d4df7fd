import type { Family } from '../../src/family/family.ts';
import type { NameEntry } from '../../src/family/name-entry.ts';
import { readFamily } from '../../src/interchange/json/read.ts';

/** A slot or a tongue, width in mm; all are 8 mm high, slots open 2 mm more. */
export interface SlotPart {
  readonly id: string;
  readonly name?: string;
  readonly section?: string;
  readonly width: number;
  readonly tolerance?: number;
  readonly chambers?: number;
}

/** A family of slots and tongues, whose answers follow from their widths alone. */
export function slotFamily(
  slots: readonly SlotPart[],
  tongues: readonly SlotPart[],
  more: { tolerance?: number; names?: readonly NameEntry[]; claims?: readonly object[] } = {},
): Family {
  const read = readFamily(slotFile(slots, tongues, more));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.document.family;
}

/** The file of {@link slotFamily}. */
export function slotFile(
  slots: readonly SlotPart[],
  tongues: readonly SlotPart[],
  more: { tolerance?: number; names?: readonly NameEntry[]; claims?: readonly object[] } = {},
): string {
  const part =
    (kind: string, height: number) =>
    ({ id, name = id, section, width, tolerance, chambers }: SlotPart) => ({
      ...{ id, kind, name, tolerance, chambers },
      ...(section && { section }),
      outline: [
        [0, 0],
        [width, 0],
        [width, height],
        [0, height],
      ],
    });
  const file = {
    ...{ format: 'sectionary-family', version: 1, name: 'Slots', units: 'mm', runningClearance: 0.04, ...more },
    profiles: [...slots.map(part('opening', 10)), ...tongues.map(part('blank', 8))],
  };
  return JSON.stringify(file);
}
