package org.standwright.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.standwright.geom.Rect;
import org.standwright.part.Channel;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.Grain;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.part.Run;

/** Boards as they come up in cabinets, and some that ask more of the solid than cabinets do. */
public final class SampleParts {
    public static final Material PLYWOOD = new Material("birch plywood", 18, 680, Grain.ALONG_LENGTH);
    private static final Material THIN = new Material("drawer plywood", 12, 680, Grain.ALONG_LENGTH);

    private SampleParts() {}

    /** By name, in alphabetical order. */
    public static Map<String, Part> all() {
        var parts = new TreeMap<String, Part>();
        for (var part : List.of(plain(), shelves(), drawerSide(), casterPlate(), crossing(), busy(), grid(10, 5))) {
            parts.put(part.name(), part);
        }
        return parts;
    }

    public static Part plain() {
        return Part.blank("plain", PLYWOOD, 600, 400);
    }

    /** 600 x 400 x 18 with six dados and twenty holes. */
    public static Part shelves() {
        var features = new ArrayList<Feature>();
        for (int i = 0; i < 6; i++) {
            features.add(Channel.across(Face.SHOW, 50 + 90 * i, 68 + 90 * i, 400, 9));
        }
        for (int i = 0; i < 10; i++) {
            features.add(Hole.blind(Face.SHOW, 30 + 58 * i, 37, 5, 12, "shelf pin"));
            features.add(Hole.through(30 + 58 * i, 363, 8, "bolt"));
        }
        return plain("shelves").with(features);
    }

    /** A groove along its length that runs through the rabbets at both ends. */
    public static Part drawerSide() {
        return Part.blank("drawer side", THIN, 500, 150)
                .with(
                        Channel.across(Face.SHOW, 0, 12, 150, 6),
                        Channel.across(Face.SHOW, 488, 500, 150, 6),
                        Channel.along(Face.SHOW, 10, 16.35, 500, 6),
                        Hole.through(37, 75, 4, "slide"),
                        Hole.through(462.3, 75.1, 4, "slide"));
    }

    /** Counterbored bolts from both faces, one of them into a groove. */
    public static Part casterPlate() {
        return plain("caster plate")
                .with(
                        Channel.along(Face.BENCH, 190, 208, 600, 6),
                        Hole.blind(Face.SHOW, 100, 100, 26, 9, "washer"),
                        Hole.through(100, 100, 9, "bolt"),
                        Hole.blind(Face.BENCH, 300, 100, 26, 9, "washer"),
                        Hole.blind(Face.SHOW, 300, 100, 9, 9, "bolt"),
                        Hole.through(200, 199, 9, "bolt in the groove"),
                        Hole.blind(Face.SHOW, 400, 199, 35, 10, "hinge over the groove"),
                        Hole.blind(Face.SHOW, 500, 190, 20, 15, "into the groove's wall"));
    }

    /** Channels that cross, abut and end in each other, at equal and unequal depths. */
    public static Part crossing() {
        return plain("crossing")
                .with(
                        Channel.across(Face.SHOW, 100, 118, 400, 9),
                        Channel.along(Face.SHOW, 200, 218, 600, 9),
                        Channel.along(Face.SHOW, 0, 10, 600, 9),
                        Channel.along(Face.BENCH, 300, 318, 600, 9),
                        new Channel(Face.SHOW, Run.ALONG, new Rect(118, 40, 300, 60), 6),
                        new Channel(Face.SHOW, Run.ALONG, new Rect(300, 60, 400, 80), 6),
                        new Channel(Face.SHOW, Run.ALONG, new Rect(400, 80, 500, 90), 12),
                        new Channel(Face.BENCH, Run.ALONG, new Rect(20, 360, 90, 390), 9),
                        new Channel(Face.SHOW, Run.ALONG, new Rect(60, 350, 100, 380), 9));
    }

    /** Features that overlap each other heavily. */
    public static Part busy() {
        var features = new ArrayList<Feature>(List.of(
                Channel.along(Face.SHOW, 0, 9, 600, 9),
                Channel.along(Face.SHOW, 391, 400, 600, 9),
                Channel.along(Face.BENCH, 30, 36.5, 600, 6)));
        for (int i = 0; i < 4; i++) {
            features.add(new Channel(Face.SHOW, Run.ACROSS, new Rect(80 + 130 * i, 40, 98 + 130 * i, 360), 8));
        }
        for (int i = 0; i < 23; i++) {
            var face = i % 3 == 0 ? Face.BENCH : Face.SHOW;
            double diameter = new double[] {5, 8, 20, 35, 60, 120}[i % 6];
            double x = 65 + 20.7 * i;
            double y = 65 + 31.3 * i % 270;
            features.add(Hole.blind(face, x, y, diameter, 3 + i % 12, "hole " + i));
        }
        return plain("busy").with(features);
    }

    public static Part grid(int columns, int rows) {
        var features = new ArrayList<Feature>();
        for (int i = 0; i < columns * rows; i++) {
            features.add(Hole.through(20 + 32 * (i % columns), 20 + 32.0 * (i / columns), 5, "pin"));
        }
        return Part.blank("grid " + columns * rows, PLYWOOD, 8 + 32.0 * (columns + 1), 8 + 32.0 * (rows + 1))
                .with(features);
    }

    private static Part plain(String name) {
        return Part.blank(name, PLYWOOD, 600, 400);
    }
}
