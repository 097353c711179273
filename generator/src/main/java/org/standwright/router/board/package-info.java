/**
 * A router's board as it is drawn for its program: the work of all parts at their places, for each side that is up, and a
 * legend for the operator.
 */
package org.standwright.router.board;
