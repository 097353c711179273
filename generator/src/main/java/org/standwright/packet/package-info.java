/**
 * Everything on paper, in the order in which it is needed in the shop: heights, views, drawers, cut list, hardware,
 * sheet plans, assembly, findings, cautions.
 */
package org.standwright.packet;
