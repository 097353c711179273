/**
 * Everything on paper, in the order in which it is needed in the shop: heights, views, drawers, cut list, hardware,
 * sheet plans, assembly, findings, cautions.
 *
 * <p>Words, tables and figures of a section become bands, which no page break divides; only the flow of bands knows
 * where a page ends.
 */
package org.standwright.packet;
