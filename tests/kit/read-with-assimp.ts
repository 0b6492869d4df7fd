import { readFileSync } from 'node:fs';
import { askMeshProgram } from './ask-mesh-program.ts';

type Vector = readonly [number, number, number];

/** A solid as Assimp reads it. */
export interface ReadSolid {
  /** Its corners, as its file numbers them. */
  readonly corners: readonly Vector[];
  readonly triangles: readonly Vector[];
  /** Where it stands in the whole. */
  readonly place: Vector;
  /** `#RRGGBB`, or null where the format has none. */
  readonly colour: string | null;
}

/** What is used of glTF 2.0, the format in which Assimp hands on what it read, every number as it has it. */
interface Gltf {
  readonly nodes: readonly { readonly mesh?: number; readonly matrix?: readonly number[] }[];
  readonly meshes: readonly {
    readonly primitives: readonly {
      readonly material: number;
      readonly indices: number;
      readonly attributes: { readonly POSITION: number };
    }[];
  }[];
  readonly accessors: readonly {
    readonly bufferView: number;
    readonly byteOffset: number;
    readonly componentType: number;
    readonly count: number;
  }[];
  readonly bufferViews: readonly { readonly byteOffset?: number }[];
  readonly materials?: readonly { readonly pbrMetallicRoughness: { readonly baseColorFactor?: readonly number[] } }[];
}

/**
 * The solids of a 3MF or STL file, in its order, as Assimp reads them.
 *
 * @throws with what to do where Assimp is missing, and with its own words where it refuses the file.
 * @source Khronos Group, glTF 2.0 Specification, binary container and accessors.
 */
export function readWithAssimp(file: string): ReadSolid[] {
  const out = `${file}.glb`;
  askMeshProgram('assimp', ['export', file, out, '-fglb2']);
  const bytes = readFileSync(out);
  const length = bytes.readUInt32LE(12);
  const gltf: Gltf = JSON.parse(bytes.toString('utf8', 20, 20 + length));
  const numbers = (accessor: number, many: number) => readNumbers(bytes, 28 + length, gltf, accessor, many);
  return gltf.nodes.flatMap(({ mesh, matrix }) => {
    if (mesh === undefined) return [];
    const { primitives } = gltf.meshes[mesh];
    if (primitives.length !== 1) throw new Error(`solid ${mesh} has ${primitives.length} pieces`);
    const [{ material, indices, attributes }] = primitives;
    const colour = gltf.materials?.[material]?.pbrMetallicRoughness.baseColorFactor;
    return {
      corners: threes(numbers(attributes.POSITION, 3)),
      triangles: threes(numbers(indices, 1)),
      place: placeOf(matrix),
      colour: colour ? hexOf(colour) : null,
    };
  });
}

/** 5123, 5125 and 5126 are 16 and 32 bit whole numbers and single-precision ones, without gaps between. */
function readNumbers(bytes: Buffer, start: number, { accessors, bufferViews }: Gltf, accessor: number, many: number) {
  const { bufferView, byteOffset, componentType, count } = accessors[accessor];
  const from = start + (bufferViews[bufferView].byteOffset ?? 0) + byteOffset;
  return Array.from({ length: many * count }, (_, i) => {
    if (componentType === 5123) return bytes.readUInt16LE(from + 2 * i);
    return componentType === 5125 ? bytes.readUInt32LE(from + 4 * i) : bytes.readFloatLE(from + 4 * i);
  });
}

function threes(numbers: readonly number[]): Vector[] {
  return Array.from({ length: numbers.length / 3 }, (_, i) => [numbers[3 * i], numbers[3 * i + 1], numbers[3 * i + 2]]);
}

/** Of a matrix that moves and does nothing else. */
function placeOf(matrix: readonly number[] = [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1]): Vector {
  const turned = [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0].some((value, i) => value !== matrix[i]);
  if (turned) throw new Error(`a solid is turned: ${matrix}`);
  return [matrix[12], matrix[13], matrix[14]];
}

function hexOf([red, green, blue]: readonly number[]): string {
  const digits = [red, green, blue].map((part) =>
    Math.round(255 * part)
      .toString(16)
      .padStart(2, '0'),
  );
  return `#${digits.join('').toUpperCase()}`;
}
