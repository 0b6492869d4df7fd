import { addTo, type BitSet, countMembers, emptySet, fullSet, hasMember, intersection, isSubset } from './bit-set.ts';

/** A table of yes and no: which objects have which attributes. */
export interface Context {
  readonly objects: number;
  readonly attributes: number;
  /** `extents[attribute]`: the objects that have it. */
  readonly extents: readonly BitSet[];
}

/** A largest block of yes: all objects that have all of these attributes, and all attributes that they share. */
export interface Concept {
  readonly extent: BitSet;
  readonly intent: BitSet;
}

/** The attributes that all of some objects have. */
export function intentOf({ attributes, extents }: Context, objects: BitSet): BitSet {
  const intent = emptySet(attributes);
  for (let a = 0; a < attributes; a++) if (isSubset(objects, extents[a])) addTo(intent, a);
  return intent;
}

/**
 * All formal concepts of a table, each once, by NextClosure: from an intent to the next one in lectic order. Whoever
 * runs it may stop at any time; nothing but the last concept is kept.
 *
 * @source B. Ganter, R. Wille, Formal Concept Analysis, Springer 1999, section 2.1
 * @check tests/outside/concepts.test.ts, tests/laws/orders.test.ts
 */
export function* formalConcepts(context: Context): Generator<Concept, void, void> {
  let extent = fullSet(context.objects);
  let concept: Concept | null = { extent, intent: intentOf(context, extent) };
  while (concept) {
    extent = concept.extent;
    yield concept;
    concept = nextConcept(context, concept.intent);
  }
}

/** The concept with the next intent in lectic order; null after the last. */
function nextConcept(context: Context, intent: BitSet): Concept | null {
  const kept = prefixExtents(context, intent);
  for (let a = context.attributes - 1; a >= 0; a--) {
    if (hasMember(intent, a)) continue;
    const extent = intersection(kept[a], context.extents[a]);
    if (addsNoneBefore(context, extent, intent, a)) return { extent, intent: intentOf(context, extent) };
  }
  return null;
}

/** `extents[a]`: the objects that have all attributes of the intent below a. */
function prefixExtents({ objects, attributes, extents }: Context, intent: BitSet): BitSet[] {
  const prefixes: BitSet[] = [fullSet(objects)];
  for (let a = 0; a < attributes; a++)
    prefixes.push(hasMember(intent, a) ? intersection(prefixes[a], extents[a]) : prefixes[a]);
  return prefixes;
}

/** Whether the objects share no attribute below `limit` that the intent lacks. */
function addsNoneBefore({ extents }: Context, objects: BitSet, intent: BitSet, limit: number): boolean {
  for (let a = 0; a < limit; a++) if (!hasMember(intent, a) && isSubset(objects, extents[a])) return false;
  return true;
}

/**
 * How many concepts lie directly below one: its lower covers, the lines that go down from it in the diagram.
 *
 * Every concept below has one attribute more at least, so it lies within a block that one more attribute leaves; the
 * largest of those are the covers.
 *
 * @check tests/outside/concepts.test.ts
 */
export function countLowerCovers({ attributes, extents }: Context, { extent, intent }: Concept): number {
  const blocks: { block: BitSet; size: number }[] = [];
  for (let a = 0; a < attributes; a++) {
    if (hasMember(intent, a)) continue;
    const block = intersection(extent, extents[a]);
    blocks.push({ block, size: countMembers(block) });
  }
  blocks.sort((a, b) => b.size - a.size);
  const covers: BitSet[] = [];
  for (const { block } of blocks) if (!covers.some((cover) => isSubset(block, cover))) covers.push(block);
  return covers.length;
}
