/**
 * What screws, nails and slides hold: formulas that anybody may use, and the rules that ask them of a stand.
 *
 * <p>Lengths are mm, forces N, stresses N/mm². Formulas are those of the National Design Specification for Wood
 * Construction 2018 (NDS) in allowable-stress design, worked in inches and pounds inside where a coefficient needs them.
 * They hold for wood and, with its own specific gravity, for plywood; a fastener for which no source gives a figure
 * (metric flat heads pulled through, connecting screws, dowels, screws into a panel's edge) gets none.
 */
package org.standwright.check.fastener;
