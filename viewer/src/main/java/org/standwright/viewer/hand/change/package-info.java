/**
 * What direct editing is made of, whatever is edited: things that can be picked, handles that can be dragged, deeds that
 * can be done to them, and the text that results. Knows no node.
 */
package org.standwright.viewer.hand.change;
