import type { Claim } from '../../family/claim.ts';
import type { ClaimFile, FamilyFile } from './schema.ts';

/**
 * The family with further claims at the end; one that stands there already, word for word, is not put there again.
 *
 * @returns the same value where all of them stand there already.
 * @check tests/unit/interchange/edit-claims.test.ts
 */
export function addClaims(file: FamilyFile, claims: readonly Claim[]): FamilyFile {
  const had = new Set((file.claims ?? []).map(contentOf));
  const fresh: ClaimFile[] = [];
  for (const claim of claims) {
    const content = contentOf(claim);
    if (had.has(content)) continue;
    had.add(content);
    fresh.push(tidy(claim));
  }
  return fresh.length === 0 ? file : { ...file, claims: [...(file.claims ?? []), ...fresh] };
}

/**
 * The family with another claim in one place. Fields of it that are not known here stay.
 *
 * @throws RangeError where there is no such place.
 */
export function replaceClaim(file: FamilyFile, index: number, claim: Claim): FamilyFile {
  const claims = file.claims ?? [];
  const before = claims[index];
  if (!before) throw new RangeError(`no claim ${index}`);
  const { blank: _blank, opening: _opening, enters: _enters, by: _by, note: _note, ...unknown } = before;
  return { ...file, claims: claims.with(index, { ...tidy(claim), ...unknown }) };
}

/** The family without the claims in the given places. */
export function removeClaims(file: FamilyFile, indexes: Iterable<number>): FamilyFile {
  const gone = new Set(indexes);
  return withClaims(file, (_, i) => !gone.has(i));
}

/** The family without what one source claims; undefined: without the claims that name no source. */
export function removeClaimsBy(file: FamilyFile, by: string | undefined): FamilyFile {
  return withClaims(file, (claim) => (claim.by?.trim() || undefined) !== (by?.trim() || undefined));
}

/** The family with each claim once: what is repeated word for word by the same source stays where it comes first. */
export function dropRepeatedClaims(file: FamilyFile): FamilyFile {
  const had = new Set<string>();
  return withClaims(file, (claim) => {
    const content = contentOf(claim);
    if (had.has(content)) return false;
    had.add(content);
    return true;
  });
}

/** The family with one name in place of another on one side of its claims: all of them, or those in the given places. */
export function renameInClaims(
  file: FamilyFile,
  side: 'blank' | 'opening',
  from: string,
  to: string,
  places?: ReadonlySet<number>,
): FamilyFile {
  const claims = file.claims ?? [];
  if (!claims.some((claim, i) => claim[side] === from && (places?.has(i) ?? true))) return file;
  const renamed = claims.map((claim, i) =>
    claim[side] === from && (places?.has(i) ?? true) ? { ...claim, [side]: to } : claim,
  );
  return { ...file, claims: renamed };
}

function withClaims(file: FamilyFile, keeps: (claim: ClaimFile, index: number) => boolean): FamilyFile {
  const { claims = [], ...rest } = file;
  const kept = claims.filter(keeps);
  if (kept.length === claims.length) return file;
  return kept.length === 0 ? rest : { ...file, claims: kept };
}

/** What a claim says and who says it; equal texts say the same. */
function contentOf({ blank, opening, enters, by, note }: Claim): string {
  return JSON.stringify([blank.trim(), opening.trim(), enters, by?.trim() ?? '', note?.trim() ?? '']);
}

/** A claim as it is written: without empty fields. */
function tidy({ blank, opening, enters, by, note }: Claim): ClaimFile {
  return {
    blank: blank.trim(),
    opening: opening.trim(),
    enters,
    ...(by?.trim() ? { by: by.trim() } : {}),
    ...(note?.trim() ? { note: note.trim() } : {}),
  };
}
