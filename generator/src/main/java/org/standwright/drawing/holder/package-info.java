/**
 * Figures of one holder of a wall of cleats: front and right side with hidden edges dashed, in third-angle projection,
 * drawn from its boards where they belong.
 *
 * <p>The frame in life is that of a made holder: x to the right from its left edge, y into the wall from the wall's
 * surface, z up from the high edge of the strip that it hangs on. Heights are printed from the lower edge of its back, and
 * those of screws from its upper edge; depths from the wall's surface.
 */
package org.standwright.drawing.holder;
