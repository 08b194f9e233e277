/** Points in a millimetre: an inch is 25.4 mm (exactly, since 1959) and 72 points of PDF. */
export const POINTS_PER_MM = 72 / 25.4;

/** Points by which a line may exceed its measure or its zone: what adding up fractions can cost. */
export const TOLERANCE = 0.001;
