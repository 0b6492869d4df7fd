import { askPython } from './ask-python.ts';

/** What stands in a 3MF file's model. */
export interface ModelXml {
  readonly unit: string;
  readonly tag: string;
  readonly files: readonly string[];
  readonly titles: readonly string[];
  readonly objects: readonly {
    readonly id: string;
    readonly type: string;
    readonly name: string;
    readonly colour: string;
    readonly letterColours: readonly string[];
    readonly raised: number;
    readonly triangles: number;
    readonly vertices: number;
    readonly transform: string;
  }[];
}

/** What a 3MF file says, read by Python's own zipfile and xml. @throws with their words where they refuse it */
export function read3mfModel(file: string): ModelXml {
  return askPython({ library: 'xml', script: 'read-3mf-model.py', words: [file] }) as ModelXml;
}
