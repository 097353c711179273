/**
 * The sheet plans on the screen: every sheet as it is printed, the pieces that lie on it, and the cuts one after the
 * other in the order in which they are sawn.
 *
 * <p>A piece of a cut line that has several parts stands for one of them: pieces and parts are counted in the same
 * order, so each part is marked on one piece. Equal parts may be changed over in the workshop.
 */
package org.standwright.viewer.sheet;
