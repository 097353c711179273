/**
 * Finds cut trees for a packing job: {@link org.standwright.sheet.search.Search} is the door.
 *
 * <p>A board in work is a tree in flat arrays ({@code Board}). {@code FirstLayout} gives a layout of them at once; the
 * lanes of {@link org.standwright.sheet.lane} look for cheaper ones, {@code RuinAndRecreate} at each step; a {@code
 * Prover} raises the bound beside them, a {@code Choice} puts boards of different lanes and times together, and {@code
 * OffcutSearch} clears a rectangle in the end.
 */
package org.standwright.sheet.search;
