import type { FamilyFile, ProfileFile } from '../../../interchange/json/schema.ts';

/** The file with another value for one profile; as it was where it has none of that id. */
export function withProfile(file: FamilyFile, id: string, change: (profile: ProfileFile) => ProfileFile): FamilyFile {
  return { ...file, profiles: file.profiles.map((profile) => (profile.id === id ? change(profile) : profile)) };
}
