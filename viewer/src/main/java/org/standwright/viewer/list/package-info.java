/**
 * What to cut and what to buy, as tables: the cut list, the hardware, and what all of it costs as far as prices are
 * known.
 *
 * <p>Tables sort by what is meant, not by its letters ('shelf 2' before 'shelf 10', 9 1/2 before 34), and what is
 * selected is copied as tab-separated text for a spreadsheet.
 */
package org.standwright.viewer.list;
