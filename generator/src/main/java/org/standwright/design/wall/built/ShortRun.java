package org.standwright.design.wall.built;

import org.standwright.geom.Interval;

/** Bare wall in a row that no strip is put on, and why. */
public record ShortRun(int row, Interval along, String why) {}
