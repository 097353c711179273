/**
 * Statics of French cleats and of what hangs on them: numbers in, numbers out. Nothing here knows a wall's design.
 *
 * <p>A {@link org.standwright.check.wall.statics.Hanging} sits on a {@link org.standwright.check.wall.statics.CleatBevel};
 * a {@link org.standwright.check.wall.statics.StripPull} is what each screw of its strip gets of that, with its share by
 * {@link org.standwright.check.wall.statics.StudShares} or {@link org.standwright.check.wall.statics.StripOverhang}; a
 * {@link org.standwright.check.wall.statics.WallScrew} says what it may get, and {@link
 * org.standwright.check.wall.statics.LoadLimit} what may hang there at most.
 *
 * <p>Lengths are mm, forces and weights N, angles degrees. 'Out' is from the wall towards the person. The statics are our
 * own derivation (references 3.8); a strip in sheet metal or masonry has no figures here, because no source gives any.
 */
package org.standwright.check.wall.statics;
