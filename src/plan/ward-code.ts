/** Depths at the sites, of the wards of a section or the grooves of a blank. */
export type Code = readonly number[];
