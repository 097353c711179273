/**
 * A packing job in numbers, kerf and trim taken out, and its answer as trees of cuts without places. Nothing here knows
 * names, materials or money.
 */
package org.standwright.sheet.job;
