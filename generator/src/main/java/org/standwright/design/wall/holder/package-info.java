/**
 * Holders of every kind: what a maker decided goes in, boards come out.
 *
 * <p>Frame of a holder: x to the right from its left edge, y into the wall from the wall's surface, z up from the high edge
 * of the strip that it hangs on, mm. So a hanger lies at y from -t to 0 for cleats t thick, the back right before it, and
 * all else in front of the back. Figures without a source are common practice, no source.
 */
package org.standwright.design.wall.holder;
