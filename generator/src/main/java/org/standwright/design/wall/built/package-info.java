/** What became of the decisions about walls: studs, rows, strips with their screws, holders where they hang. */
package org.standwright.design.wall.built;
