package org.standwright.design.wall.built;

import org.standwright.design.wall.Holder;

/** A holder that found no place, and why. */
public record Unplaced(Holder holder, String why) {}
