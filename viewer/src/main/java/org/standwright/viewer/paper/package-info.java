/**
 * Drawings on the screen as they will be printed: one drawing to look at from near and far, the pages of a packet, and
 * the way to the printer.
 *
 * <p>A {@link org.standwright.drawing.Drawing} is in millimetres of paper, y up; a screen is in pixels, y down. {@link
 * org.standwright.viewer.paper.Sight} says which pixel shows which point. Paper stays white and ink black in every
 * theme, for they are what comes out of the printer.
 */
package org.standwright.viewer.paper;
