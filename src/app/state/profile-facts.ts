import { boxOf } from '../../geom/point.ts';
import type { Profile } from '../../profile/profile.ts';
import { sizeText, type Units } from './length-text.ts';

/** A term and what it comes to, as a title block lists them. */
export interface Fact {
  readonly term: string;
  readonly value: string;
}

const KIND_WORDS = { opening: 'keyway', blank: 'blank', tool: 'tool' } as const;

/** What a title block says of a profile: kind, section, size over all, chambers where stated. */
export function profileFacts(profile: Profile, units: Units): Fact[] {
  const box = boxOf(profile.ring);
  const facts: Fact[] = [{ term: 'Kind', value: KIND_WORDS[profile.kind] }];
  if (profile.section) facts.push({ term: 'Section', value: profile.section });
  facts.push({ term: 'Size', value: sizeText(box.maxX - box.minX, box.maxY - box.minY, units) });
  if (profile.chambers !== undefined) facts.push({ term: 'Chambers', value: String(profile.chambers) });
  return facts;
}
