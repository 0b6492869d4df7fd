import type { FamilyDocument } from '../../interchange/json/read.ts';

/**
 * Whether two documents hold the same family to the letter. Profiles that both share are not looked into, so that a
 * gesture that ends where it began costs what it touched.
 *
 * @check tests/unit/app/edit-document.test.ts
 */
export function isSameFamily(a: FamilyDocument, b: FamilyDocument): boolean {
  if (a === b) return true;
  const { profiles: own, ...frame } = a.file;
  const { profiles: others, ...otherFrame } = b.file;
  return (
    own.length === others.length &&
    own.every((profile, i) => profile === others[i] || isSameText(profile, others[i])) &&
    isSameText(frame, otherFrame)
  );
}

function isSameText(a: object, b: object): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
