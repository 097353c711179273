package org.standwright.file;

import org.standwright.unit.Units;

/**
 * The text of a first design for one plain wall, to be changed by its maker: studs as they usually are, rows from elbow
 * to where hands still reach, a few holders (common practice, no source).
 */
public final class StartingWall {
    /** Within what the schema allows. */
    private static final double LEAST_WIDTH = 900;

    private static final double MOST_WIDTH = 16000;
    private static final double LEAST_HEIGHT = 600;
    private static final double MOST_HEIGHT = 6000;
    /** From the highest row to the ceiling: a hanger, and room to lift it off. */
    private static final double ABOVE_ROWS = 150;

    private static final double HIGHEST_ROW = 2100;
    private static final double LOWEST_ROW = 900;
    /** Below the lowest row of a low wall: its strip. */
    private static final double BELOW_ROWS = 150;

    private final Units unit;
    private final double width;
    private final double height;

    private StartingWall(Units unit, double width, double height) {
        this.unit = unit;
        this.width = width;
        this.height = height;
    }

    /**
     * A complete design.
     *
     * @param unit that its maker reads and writes
     * @param width of the wall, mm
     * @param height from the floor's highest point to the ceiling, mm
     * @throws IllegalArgumentException when no rows fit such a wall; the message says what would do
     */
    public static String text(Units unit, double width, double height) {
        require("width", width, LEAST_WIDTH, MOST_WIDTH, unit);
        require("height", height, LEAST_HEIGHT, MOST_HEIGHT, unit);
        return new StartingWall(unit, width, height).text();
    }

    private static void require(String what, double value, double least, double most, Units unit) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(what + " of the wall is " + unit.length(value) + ", but must be "
                    + unit.length(least) + " to " + unit.length(most) + ".");
        }
    }

    private String text() {
        boolean metric = unit == Units.MM;
        double highest = down(Math.min(HIGHEST_ROW, height - ABOVE_ROWS));
        double lowest = down(Math.min(LOWEST_ROW, Math.max(BELOW_ROWS, highest / 2)));
        return """
                {
                  "version": 1,
                  "kind": "cleat-wall",
                  "name": "My wall",
                  "note": "Find your studs and the cables between them first; then write where they are, and what is on the wall.",
                  "unit": "%s",
                  "levelLine": "%s",
                  "person": { "elbow": "%s", "eye": "%s" },
                  "walls": [
                    {
                      "name": "wall",
                      "width": "%s",
                      "height": "%s",
                      "framing": { "kind": "wood-studs", "spacing": "%s", "first": "%s", "covering": "%s" },
                      "obstacles": []
                    }
                  ],
                  "cleat": { "sheet": "%s", "face": "%s" },
                  "rows": { "kind": "even", "lowest": "%s", "highest": "%s", "about": "%s" },
                  "fixing": { "screw": "%s" },
                  "making": { "sheet": "%s", "thin": "%s", "screw": "%s" },
                  "holders": [
                    {
                      "kind": "shelf",
                      "name": "glue shelf",
                      "things": { "count": 3, "width": "%s", "depth": "%s", "height": "%s", "mass": "%s" }
                    },
                    {
                      "kind": "bores",
                      "name": "screwdriver rack",
                      "bore": "%s",
                      "things": { "count": 6, "width": "%s", "depth": "%s", "height": "%s", "mass": "%s", "use": "daily" }
                    }
                  ],
                  "saw": { "kerf": "%s", "trim": "%s" }
                }
                """.formatted(
                        unit.word(),
                        unit.length(down(Math.min(metric ? 1000 : 40 * 25.4, height / 2))),
                        metric ? "1090 mm" : "43 in",
                        metric ? "1600 mm" : "63 in",
                        unit.length(width),
                        unit.length(height),
                        metric ? "400 mm" : "16 in",
                        metric ? "200 mm" : "8 in",
                        metric ? "12.7 mm" : "1/2 in",
                        metric ? "birch-18" : "ply-23-32",
                        metric ? "100 mm" : "4 in",
                        unit.length(lowest),
                        unit.length(highest),
                        metric ? "250 mm" : "10 in",
                        metric ? "screw-5" : "screw-10",
                        metric ? "birch-12" : "ply-15-32",
                        metric ? "birch-6.5" : "ply-1-4",
                        metric ? "screw-4" : "screw-8",
                        metric ? "75 mm" : "3 in",
                        metric ? "75 mm" : "3 in",
                        metric ? "200 mm" : "8 in",
                        metric ? "0.9 kg" : "2 lb",
                        metric ? "16 mm" : "5/8 in",
                        metric ? "32 mm" : "1 1/4 in",
                        metric ? "32 mm" : "1 1/4 in",
                        metric ? "110 mm" : "4 in",
                        metric ? "0.15 kg" : "0.3 lb",
                        metric ? "3.2 mm" : "1/8 in",
                        metric ? "5 mm" : "1/4 in");
    }

    /** A round number on a tape that is not more: 10 mm or 1/2 in. */
    private double down(double length) {
        double step = unit == Units.MM ? 10 : 12.7;
        return Math.floor(length / step + 1e-9) * step;
    }
}
