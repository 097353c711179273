/**
 * Everything on paper, in the order in which it is needed in the shop: heights, views, drawers, cut list, hardware,
 * sheet plans, assembly, findings, cautions.
 *
 * <p>A section puts words, tables and figures into the flow of {@link org.standwright.packet.page}.
 */
package org.standwright.packet;
