import { askPython } from './ask-python.ts';

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

/**
 * DXF files as ezdxf reads them.
 *
 * @throws with what to do where ezdxf is missing, and with its own words where it refuses a file.
 */
export function readWithEzdxf(files: readonly string[]): EzdxfDrawing[] {
  return askPython({ library: 'ezdxf', script: 'read-with-ezdxf.py', words: files }) as EzdxfDrawing[];
}
