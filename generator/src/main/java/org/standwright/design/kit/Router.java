package org.standwright.design.kit;

import java.util.Optional;
import org.standwright.geom.Require;

/**
 * The CNC router that cuts the sheets, and how its files are drawn. Its program and its operator own feeds, speeds, clamps
 * and safety.
 *
 * @param bit diameter of the bit that cuts outlines and pockets, mm
 * @param margin left between the ways of the bit round two parts, mm
 * @param smallestHole diameter of the smallest hole that it cuts or bores, mm; smaller ones become centre marks
 * @param below how far it cuts below the sheet where it goes through, mm
 * @param skin left under outlines to hold the parts, mm; 0 to cut through
 * @param tabs that hold the parts instead
 * @param relief of inside corners that a square mate goes into
 * @param dowel diameter of the two dowels on which a sheet is turned over, mm
 */
public record Router(
        double bit,
        double margin,
        double smallestHole,
        double below,
        double skin,
        Optional<Tabs> tabs,
        Relief relief,
        double dowel) {
    /** What is cut out of an inside corner so that a square one goes in. */
    public enum Relief {
        /** A circle through the corner, its centre on the corner's bisector. */
        DOG_BONE,
        /** A circle through the corner, its centre on the longer side. */
        T_BONE,
        /** Nothing: corners stay round, and the mate is rounded to them. */
        NONE
    }

    /**
     * Bridges that hold a part in its sheet.
     *
     * @param height above the sheet's lower face, mm
     * @param length along the outline, mm
     */
    public record Tabs(double height, double length) {
        public Tabs {
            Require.positive("height of tabs", height, "router");
            Require.positive("length of tabs", length, "router");
        }
    }

    public Router {
        Require.positive("bit", bit, "router");
        Require.positive("margin", margin, "router");
        Require.positive("smallest hole", smallestHole, "router");
        Require.notNegative("cut below the sheet", below, "router");
        Require.notNegative("skin", skin, "router");
        Require.positive("dowel", dowel, "router");
        if (skin > 0 && tabs.isPresent()) {
            throw new IllegalArgumentException(
                    "a router with a skin of " + skin + " mm and tabs holds its parts twice; leave one of them out.");
        }
    }

    /** Clear distance between parts, and between a part and the edge of its sheet: bit and margin, mm. */
    public double spacing() {
        return bit + margin;
    }
}
