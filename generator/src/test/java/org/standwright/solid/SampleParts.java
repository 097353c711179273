package org.standwright.solid;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.part.Bevel;
import org.standwright.part.Channel;
import org.standwright.part.Edge;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.Grain;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
import org.standwright.part.Recess;
import org.standwright.part.Run;

/** Boards as they come up in cabinets, and some that ask more of the solid than cabinets do. */
public final class SampleParts {
    public static final Material PLYWOOD = new Material("birch plywood", 18, 680, Grain.ALONG_LENGTH);
    private static final Material BACK = new Material("thin plywood", 6, 680, Grain.ALONG_LENGTH);
    private static final Material THIN = new Material("drawer plywood", 12, 680, Grain.ALONG_LENGTH);

    private SampleParts() {}

    /** By name, in alphabetical order. */
    public static Map<String, Part> all() {
        var parts = new TreeMap<String, Part>();
        measured().forEach(part -> parts.put(part.name(), part));
        for (var part : List.of(
                plain(),
                shelves(),
                drawerSide(),
                casterPlate(),
                crossing(),
                busy(),
                grid(10, 5),
                plateTop(),
                screwedPanel(),
                boredThrough())) {
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

    /** Cutouts and pockets: a plate in its rim, holes in a floor, notches at edges, one flush with a dado. */
    public static Part plateTop() {
        return plain("plate top")
                .with(
                        Pocket.blind(Face.SHOW, new Rect(100, 100, 360, 280), 10, 6, "plate"),
                        Pocket.through(new Rect(112, 112, 348, 268), 8, "opening"),
                        Hole.through(106, 190, 4, "plate screw"),
                        Hole.blind(Face.SHOW, 354, 190, 4, 14, "plate screw"),
                        Pocket.through(new Rect(0, 150, 30, 250), 12.5, "finger notch"),
                        Pocket.blind(Face.BENCH, new Rect(520, 330, 600, 400), 20, 9, "corner"),
                        Channel.across(Face.SHOW, 400, 418, 400, 6),
                        Pocket.blind(Face.SHOW, new Rect(418, 40, 500, 90), 6.35, 6, "flush with the dado"),
                        Pocket.blind(Face.BENCH, new Rect(200, 20, 420, 60), 20, 9, "slot under the dado"),
                        Pocket.blind(Face.SHOW, new Rect(520, 100, 560, 140), 0, 5, "square"));
    }

    /** Pilots and dowels in all four edges that meet nothing. */
    public static Part screwedPanel() {
        var features = new ArrayList<Feature>();
        for (int i = 0; i < 4; i++) {
            features.add(new EdgeHole(Edge.X0, 50 + 100 * i, 8.9, 2.5, 40, "pilot"));
            features.add(new EdgeHole(Edge.X1, 50 + 100 * i, 9.1, 2.5, 40, "pilot"));
            features.add(new EdgeHole(Edge.Y0, 80 + 140 * i, 9, 8, 30, "dowel"));
            features.add(new EdgeHole(Edge.Y1, 80 + 140.1 * i, 7.3, 8, 30, "dowel"));
        }
        return plain("screwed panel").with(features);
    }

    /** Edge holes that meet a groove, a dado, a through hole, a pocket and each other. */
    public static Part boredThrough() {
        return plain("bored through")
                .with(
                        Channel.along(Face.SHOW, 30, 40, 600, 10),
                        Channel.across(Face.BENCH, 300, 318, 400, 8),
                        Hole.through(520, 60, 20, "barrel nut"),
                        Pocket.blind(Face.SHOW, new Rect(60, 300, 120, 360), 10, 12, "pocket"),
                        new EdgeHole(Edge.Y0, 100, 9, 7, 50, "right through the groove"),
                        new EdgeHole(Edge.Y0, 200, 6.2, 7, 36.3, "ends under the groove"),
                        new EdgeHole(Edge.Y1, 309, 9, 6, 60, "grazes the dado"),
                        new EdgeHole(Edge.X1, 60, 9, 7, 80, "bolt to the barrel nut"),
                        new EdgeHole(Edge.X0, 330, 8, 8, 75, "into the pocket"),
                        new EdgeHole(Edge.X0, 200, 9, 8, 60, "one of two that cross"),
                        new EdgeHole(Edge.X0, 150, 9, 5, 590, "long one"),
                        new EdgeHole(Edge.Y1, 450, 11, 6, 300, "across the long one"),
                        new EdgeHole(Edge.Y0, 550, 9, 6, 400, "out at the other edge"));
    }

    /** The six that builders are measured by: the first of them is {@link #shelves()}. */
    public static List<Part> measured() {
        return List.of(shelves(), pinSide(), backWithCutouts(), mixed(), cleat(), crowded());
    }

    /** A side with two rows of thirty holes for shelf pins. */
    public static Part pinSide() {
        var features = new ArrayList<Feature>();
        for (int i = 0; i < 30; i++) {
            features.add(Hole.blind(Face.SHOW, 36 + 32 * i, 37, 5, 12, "shelf pin"));
            features.add(Hole.blind(Face.SHOW, 36 + 32 * i, 463, 5, 12, "shelf pin"));
        }
        return Part.blank("pin side", PLYWOOD, 1000, 500).with(features);
    }

    /** A back with four rounded cutouts; one has six corners, one is open at an edge. */
    public static Part backWithCutouts() {
        var angle = new Outline(List.of(
                new Vec2(500, 100),
                new Vec2(700, 100),
                new Vec2(700, 200),
                new Vec2(600, 200),
                new Vec2(600, 400),
                new Vec2(500, 400)));
        return Part.blank("back", BACK, 800, 500)
                .with(
                        Pocket.through(new Rect(60, 60, 260, 180), 12, "dust port"),
                        Pocket.through(new Rect(60, 300, 120, 360), 30, "cord"),
                        new Pocket(Face.SHOW, angle, 9.5, OptionalDouble.empty(), "valve"),
                        Pocket.through(new Rect(300, 430, 420, 500), 20, "hose"));
    }

    /** Nearly every kind of feature at once; most meet others, the edge holes meet nothing. */
    public static Part mixed() {
        var features = new ArrayList<Feature>(List.of(
                Channel.across(Face.SHOW, 0, 12, 450, 9),
                Channel.along(Face.SHOW, 0, 9, 720, 9),
                Channel.along(Face.BENCH, 30, 36.5, 720, 6),
                Pocket.blind(Face.BENCH, new Rect(660, 0, 720, 450), 0, 9, "half-lap"),
                new Bevel(Edge.Y1, Face.SHOW, 45, 18)));
        for (int i = 0; i < 4; i++) {
            // two run out through the bevel
            double end = i % 2 == 0 ? 450 : 400;
            features.add(new Channel(Face.SHOW, Run.ACROSS, new Rect(100 + 130 * i, 60, 118 + 130 * i, end), 8));
        }
        for (int i = 0; i < 22; i++) {
            double radius = new double[] {2.5, 4, 10, 17.5, 30, 60}[i % 6];
            double x = 120 + 23.1 * i;
            double y = 85 + 67.3 * i % 295;
            features.add(
                    i % 4 == 3
                            ? Hole.through(x, y, 2 * radius, "bore " + i)
                            : Hole.blind(
                                    i % 3 == 0 ? Face.BENCH : Face.SHOW, x, y, 2 * radius, 4 + i % 11, "bore " + i));
        }
        for (double along : new double[] {90, 225, 380}) {
            features.add(new EdgeHole(Edge.X0, along, 4.5, 5, 40, "dowel"));
            features.add(new EdgeHole(Edge.Y0, along, 4.5, 5, 20, "dowel"));
        }
        features.add(new EdgeHole(Edge.X1, 120, 13.5, 5, 40, "dowel"));
        features.add(new EdgeHole(Edge.X1, 300, 13.5, 5, 40, "dowel"));
        return Part.blank("mixed", PLYWOOD, 720, 450).with(features);
    }

    /** A bevelled edge, and countersunk screws in two rows. */
    public static Part cleat() {
        var features = new ArrayList<Feature>(List.of(new Bevel(Edge.Y1, Face.SHOW, 45, 18)));
        for (int i = 0; i < 6; i++) {
            for (double y : new double[] {25, 60}) {
                features.add(Hole.through(100 + 200 * i, y, 5, "screw").with(new Recess.Countersink(10, 90)));
            }
        }
        return Part.blank("cleat", PLYWOOD, 1200, 100).with(features);
    }

    /** Two hundred features: holes of three sizes, some blind, of which six dados take some. */
    public static Part crowded() {
        var features = new ArrayList<Feature>();
        for (int i = 0; i < 6; i++) {
            features.add(Channel.across(Face.SHOW, 90 + 190 * i, 108 + 190 * i, 600, 9));
        }
        for (int i = 0; i < 194; i++) {
            double diameter = new double[] {5, 8, 35}[i % 3];
            double x = 40 + 58 * (i % 20);
            double y = 35 + 58.0 * (i / 20);
            features.add(
                    i % 4 == 0
                            ? Hole.blind(i % 8 == 0 ? Face.SHOW : Face.BENCH, x, y, diameter, 11, "blind")
                            : Hole.through(x, y, diameter, "through"));
        }
        return Part.blank("crowded", PLYWOOD, 1200, 600).with(features);
    }

    /** A groove, and holes into the edge along it that break through it. */
    public static Part brokenInto(int holes) {
        var features = new ArrayList<Feature>(List.of(Channel.along(Face.SHOW, 30, 40, 1200, 10)));
        for (int i = 0; i < holes; i++) {
            features.add(new EdgeHole(Edge.Y0, 1200 * (i + 0.5) / holes, 9, 7, 50, "through the groove"));
        }
        return Part.blank("groove broken into by " + holes, PLYWOOD, 1200, 400).with(features);
    }

    private static Part plain(String name) {
        return Part.blank(name, PLYWOOD, 600, 400);
    }
}
