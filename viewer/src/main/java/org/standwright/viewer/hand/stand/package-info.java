/**
 * A stand's front as it can be edited by hand: what stands in each bay, what lies between, and the text of the design file
 * that results when one of them is moved, added, split or removed. Lengths are mm; pictures have the assembly's frame seen
 * from the front, x to the right and y upwards. Knows no node.
 */
package org.standwright.viewer.hand.stand;
