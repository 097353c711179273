/**
 * Words, tables and figures as bands, which no page break divides, and the pages that the flow of bands fills: only the
 * flow knows where a page ends.
 */
package org.standwright.packet.page;
