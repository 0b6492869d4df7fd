import { readNames, writeNames } from '../../interchange/csv/read-names.ts';
import { addNames, removeNames, replaceName } from '../../interchange/json/edit-names.ts';
import { renameIn } from '../../interchange/json/rename.ts';
import type { NamesDoors } from '../state/names/names-doors.ts';

/** The real operations on names in files and tables. */
export const namesDoors: NamesDoors = { readNames, writeNames, addNames, replaceName, removeNames, renameIn };
