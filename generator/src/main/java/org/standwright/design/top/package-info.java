/**
 * The worktop, and the machine that stands on it: where it stands, how it is bolted down, and what is cut into worktop,
 * sub-top and back. {@link org.standwright.design.top.Top} is the door; the rest are its places, cuts and refusals.
 *
 * <p>Assembly frame, mm. Cuts are thought of as seen square to the boards, from above or from the front, and turned into
 * features of each part by its placement.
 */
package org.standwright.design.top;
