/**
 * Editing by direct hand: the front of a stand and the elevation of a wall, to scale, with what can be dragged on them.
 *
 * <p>What is moved or done, and the text that results, is worked out in the packages within this one; here it is shown, and
 * tried on the desk before it becomes an edit.
 */
package org.standwright.viewer.hand;
