import { sizeText, type Units } from '../../family/length-text.ts';
import { boxOf } from '../../geom/point.ts';
import type { Profile } from '../../profile/profile.ts';

/** A term and what it comes to, as a title block lists them. */
export interface Fact {
  readonly term: string;
  readonly value: string;
}

const KIND_WORDS = { opening: 'keyway', blank: 'blank', tool: 'tool' } as const;

/** What a title block says of a profile: kind with section and chambers where stated, size over all. */
export function profileFacts(profile: Profile, units: Units): Fact[] {
  const box = boxOf(profile.ring);
  const size = sizeText(box.maxX - box.minX, box.maxY - box.minY, units);
  const facts: Fact[] = [{ term: KIND_WORDS[profile.kind], value: size }];
  const chambers = profile.chambers === undefined ? '' : `${profile.chambers} chambers`;
  if (profile.section) facts.push({ term: `${profile.section} section`, value: chambers });
  else if (chambers) facts.push({ term: 'length', value: chambers });
  return facts;
}
