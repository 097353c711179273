/**
 * Changes to the text of a design file that leave everything else as its maker wrote it: order, units, notes, white space.
 *
 * <p>Places are JSON pointers (RFC 6901): {@code /bays/0/width}. Offsets are characters from the start of the text.
 */
package org.standwright.file.edit;
