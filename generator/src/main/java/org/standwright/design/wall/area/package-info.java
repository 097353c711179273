/**
 * What of a wall is bare: its outline as its maker gave it, what each obstacle keeps free, and the outline without that,
 * exactly. Frame of the wall: x to the right from its left end, y upwards from the floor's highest point, mm.
 */
package org.standwright.design.wall.area;
