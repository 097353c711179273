/**
 * Finds a sheet plan, and how few sheets any plan needs.
 *
 * <p>{@link org.standwright.sheet.search.SheetPlanner} is the door. Inside, a packing job is the cut list of one
 * material with kerf and trim taken out, so that pieces may touch; the packer answers it with cut trees, which carry no
 * places; sawing a tree puts the kerf back and gives places, cuts and offcuts. The verifier in the package above judges
 * them before anybody sees them.
 */
package org.standwright.sheet.search;
