import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { findEzdxf, GET_EZDXF } from './find-ezdxf.mjs';

/** What ezdxf sees in a DXF file; lengths in the drawing's units. */
export interface EzdxfDrawing {
  readonly errors: readonly string[];
  /** What ezdxf had to mend to go on. */
  readonly fixes: readonly string[];
  /** $INSUNITS. */
  readonly units: number;
  /** Millimetres in one unit; null where ezdxf does not know the unit. */
  readonly mm: number | null;
  /** Every line and curve in model space, blocks taken apart, as points along it. */
  readonly lines: readonly (readonly (readonly [number, number])[])[];
  readonly polylines: readonly {
    readonly layer: string;
    readonly closed: boolean;
    readonly points: readonly (readonly [x: number, y: number, bulge: number])[];
  }[];
}

const SCRIPT = fileURLToPath(new URL('./read-with-ezdxf.py', import.meta.url));

/**
 * DXF files as ezdxf reads them.
 *
 * @throws with what to do where ezdxf is missing, and with its own words where it refuses a file.
 */
export function readWithEzdxf(files: readonly string[]): EzdxfDrawing[] {
  const python = findEzdxf();
  if (!python) throw new Error(GET_EZDXF);
  const env = { ...process.env, PYTHONIOENCODING: 'utf-8' };
  const { status, stdout, stderr } = spawnSync(python, [SCRIPT, ...files], {
    ...{ encoding: 'utf8', maxBuffer: 1 << 28, env },
  });
  if (status !== 0) throw new Error(`ezdxf ended with ${status}: ${stderr}`);
  return JSON.parse(stdout) as EzdxfDrawing[];
}
