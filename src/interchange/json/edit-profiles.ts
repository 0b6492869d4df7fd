import type { FileUnits } from '../../family/family.ts';
import { toFileLength } from '../../family/file-length.ts';
import { firstFree } from '../../family/first-free.ts';
import { idName } from '../../family/plain-name.ts';
import type { Vertex } from '../../geom/vertex.ts';
import type { Milled, ProfileKind } from '../../profile/profile.ts';
import type { FamilyFile, MilledFile, ProfileFile } from './schema.ts';

/** What a profile is called and what it is, apart from its shape. */
export interface ProfileHead {
  readonly id: string;
  readonly kind: ProfileKind;
  readonly name: string;
  readonly section?: string;
}

/** An outline as a file writes it: `[x, y]` a vertex, `[x, y, bulge]` where an arc follows. */
export function outlineFile(vertices: readonly Vertex[], units: FileUnits): NonNullable<ProfileFile['outline']> {
  return vertices.map(({ x, y, bulge }) => {
    const at: [number, number] = [toFileLength(x, units), toFileLength(y, units)];
    return bulge ? [...at, bulge] : at;
  });
}

/** A milled description as a file writes it; fields that are 0 by default are left out where they are 0. */
export function milledFile({ thickness, height, backRadius, grooves }: Milled, units: FileUnits): MilledFile {
  const length = (nm: number) => toFileLength(nm, units);
  return {
    thickness: length(thickness),
    height: length(height),
    ...(backRadius > 0 ? { backRadius: length(backRadius) } : {}),
    grooves: grooves.map((g) => ({
      side: g.side,
      bottom: length(g.bottom),
      width: length(g.width),
      depth: length(g.depth),
      ...(g.flank > 0 ? { flankDeg: Number(((g.flank * 180) / Math.PI).toFixed(6)) } : {}),
      ...(g.rootRadius > 0 ? { rootRadius: length(g.rootRadius) } : {}),
    })),
  };
}

/** A profile that is described by its outline. */
export function drawnProfile(head: ProfileHead, vertices: readonly Vertex[], units: FileUnits): ProfileFile {
  return { ...head, outline: outlineFile(vertices, units) };
}

/** A profile that is described as it is milled. */
export function milledProfile(head: ProfileHead, milled: Milled, units: FileUnits): ProfileFile {
  return { ...head, milled: milledFile(milled, units) };
}

/** The family with one more profile, after the one called `afterId`, else at the end. */
export function addProfile(file: FamilyFile, profile: ProfileFile, afterId?: string): FamilyFile {
  const after = file.profiles.findIndex(({ id }) => id === afterId);
  const place = after < 0 ? file.profiles.length : after + 1;
  return { ...file, profiles: file.profiles.toSpliced(place, 0, profile) };
}

/**
 * The family with another value for one profile.
 *
 * @throws RangeError where the family has no such profile.
 */
export function replaceProfile(file: FamilyFile, id: string, profile: ProfileFile): FamilyFile {
  return { ...file, profiles: file.profiles.with(placeOf(file, id), profile) };
}

/** The value of one profile, or undefined where the family has none of that id. */
export function profileFileOf(file: FamilyFile, id: string): ProfileFile | undefined {
  return file.profiles.find((profile) => profile.id === id);
}

/**
 * An id that no profile of the family has, made of a name: small letters, digits and hyphens, with a number behind
 * where it is taken.
 */
export function freshId(file: FamilyFile, wanted: string): string {
  const plain = idName(wanted);
  // The one word that programs reserve and that small letters can spell.
  const stem = plain === '' || plain === 'constructor' ? 'section' : plain;
  const taken = file.profiles.map(({ id }) => id);
  return firstFree(taken, (n) => (n === 1 ? stem : `${stem}-${n}`));
}

function placeOf(file: FamilyFile, id: string): number {
  const place = file.profiles.findIndex((profile) => profile.id === id);
  if (place < 0) throw new RangeError(`no profile "${id}" in the family`);
  return place;
}
