/**
 * The model of the window: the document on the desk, what was worked out from it, and what every pane shares.
 *
 * <p>{@link org.standwright.viewer.work.Desk} has the properties; its work is done in stages behind the screen's thread,
 * and the newest request wins. Knows no node, so that tests drive it without a window.
 */
package org.standwright.viewer.work;
