import type { readNames, writeNames } from '../../../interchange/csv/read-names.ts';
import type { addNames, removeNames, replaceName } from '../../../interchange/json/edit-names.ts';
import type { renameIn } from '../../../interchange/json/rename.ts';

/** The operations of the core on names in files and tables; main.tsx names the real ones. */
export interface NamesDoors {
  readNames: typeof readNames;
  writeNames: typeof writeNames;
  addNames: typeof addNames;
  replaceName: typeof replaceName;
  removeNames: typeof removeNames;
  renameIn: typeof renameIn;
}
