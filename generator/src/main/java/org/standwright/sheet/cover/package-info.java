/**
 * Covering: how to have enough of everything at the least cost, from columns that each give so much of each thing.
 * {@link org.standwright.sheet.cover.CoveringProgram} takes fractions of columns,
 * {@link org.standwright.sheet.cover.PatternCover} whole ones. Sheets and bars use both.
 */
package org.standwright.sheet.cover;
