package org.standwright.check;

import org.standwright.geom.Vec3;

/**
 * One thing that weighs on a stand or is part of it.
 *
 * @param group of the assembly that it moves with: 'carcass', 'drawer 1.2'
 * @param mass kg
 * @param centre of mass in the assembly frame with everything closed, mm
 */
public record Weight(String what, Kind kind, String group, double mass, Vec3 centre) {
    /** What it is. */
    public enum Kind {
        BOARD,
        HARDWARE,
        CONTENTS,
        MACHINE,
        BALLAST
    }
}
