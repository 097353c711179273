/** What of a wall is bare: its outline without the zones that obstacles keep free, exactly. */
package org.standwright.design.wall.area;
