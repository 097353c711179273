/**
 * Finds cut trees for a packing job: {@link org.standwright.sheet.search.Search} is the door.
 *
 * <p>A board in work is a tree in flat arrays ({@code Board}); boards in work and pieces without a place are a {@code
 * Layout}. {@code FirstLayout} gives one at once; lanes ({@code Lane}) of {@code RuinAndRecreate} look for cheaper ones,
 * a {@code Prover} raises the bound beside them, a {@code Choice} puts boards of different lanes and times together, and
 * {@code OffcutSearch} clears a rectangle in the end.
 */
package org.standwright.sheet.search;
