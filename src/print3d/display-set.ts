import type { WardSide } from '../fit/fit.ts';

/** A place or a size in millimetres as printed: x right, y to the back of the bed, z up. */
export type Place = readonly [number, number, number];

/** What a part is for. */
export type PartKind = 'block' | 'coupon' | 'board';

/** One closed solid, as it is printed; millimetres. */
export interface SolidPart {
  /** Differs from the names of all other parts of the set. */
  readonly name: string;
  readonly kind: PartKind;
  /** Ids of the profiles that it shows. */
  readonly subjects: readonly string[];
  /** `#RRGGBB`. */
  readonly colour: string;
  /** Of the raised letters. */
  readonly letterColour: string;
  /** x, y, z of each corner; the part's box begins at 0, 0, 0. */
  readonly positions: Float32Array;
  /** Three corners of each triangle, counter-clockwise seen from outside. */
  readonly triangles: Uint32Array;
  /** Number of the first triangle that belongs to a raised letter; they are the last ones. */
  readonly lettersFrom: number;
  /** Cubic millimetres. */
  readonly volume: number;
  readonly size: Place;
  /** Where its box begins on the beds, which lie side by side. */
  readonly place: Place;
  /** Which bed it lies on, from 0. */
  readonly bed: number;
}

/** Where an opening is in the block. */
export interface OpeningFrame {
  readonly opening: string;
  /** Number of the part. */
  readonly part: number;
  /** Where the origin of the opening's drawing lies on the front, in the part; right is x, up is y, the viewer is at z. */
  readonly at: Place;
  /** How deep the opening is. */
  readonly depth: number;
}

/**
 * Where a blade is in its coupon. It is printed with its tip up, so that the section's right is x, its up is -y, and the
 * way to the tip is z.
 */
export interface CouponFrame {
  readonly profile: string;
  /** Number of the part. */
  readonly part: number;
  /** Where the origin of the section's drawing lies on the shoulder of the grip, in the part. */
  readonly at: Place;
  /** From the shoulder to the tip. */
  readonly bladeLength: number;
  /** From the bed to the shoulder. */
  readonly gripLength: number;
}

/** What a check is about. */
export type CheckKind =
  /** Material of the block that stands into an opening and is thinner than the nozzle makes. */
  | 'ward'
  /** Part of an opening that is narrower than the nozzle keeps free. */
  | 'slot'
  /** Part of a coupon that is thinner than the nozzle makes. */
  | 'web'
  /** Groove of a coupon that is narrower than the nozzle keeps free. */
  | 'groove'
  /** A coupon of which the fitting gap leaves nothing. */
  | 'nothing-left'
  | 'wall'
  | 'letters'
  | 'missing-letters'
  | 'bed'
  /** The block is cut because the bed is too small for it. */
  | 'cut'
  /** A blocked pair that goes in as printed. */
  | 'gap-lets-in'
  /** A pair that goes in by less than the gap adds. */
  | 'gap-hides'
  | 'true-size'
  /** A solid that is not closed: it is written, but a slicer may misread it. */
  | 'not-closed';

/** How much it matters: a fault spoils what the set shows, a caution should be read before printing. */
export type CheckWeight = 'fault' | 'caution' | 'note';

/** Where on a section something is; nanometres of the real section above the back of the blade. */
export interface SectionPlace {
  readonly side: WardSide;
  readonly from: number;
  readonly to: number;
}

/** One thing that was found out before printing. */
export interface PrintCheck {
  readonly kind: CheckKind;
  readonly weight: CheckWeight;
  /** What it is about: nothing (the whole set), one profile, or a blank in an opening; ids. */
  readonly subjects: readonly string[];
  /** What it is, for people, without a full stop. */
  readonly what: string;
  readonly where: SectionPlace | null;
  /** Size as printed, millimetres. */
  readonly size: number | null;
  /** The least that the nozzle makes, or the most that the bed takes, millimetres. */
  readonly limit: number | null;
  /** What to do, for people, without a full stop. */
  readonly cure: string;
}

/** A display set, ready to be looked at and written. */
export interface DisplaySet {
  readonly parts: readonly SolidPart[];
  readonly checks: readonly PrintCheck[];
  readonly openingFrames: readonly OpeningFrame[];
  readonly couponFrames: readonly CouponFrame[];
  /** How many beds the parts take. */
  readonly beds: number;
  readonly bed: readonly [number, number];
  readonly scale: number;
}
