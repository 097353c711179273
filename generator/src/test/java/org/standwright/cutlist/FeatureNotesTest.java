package org.standwright.cutlist;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.geom.Axis;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.geom.Vec3;
import org.standwright.part.Bevel;
import org.standwright.part.Contour;
import org.standwright.part.Edge;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.Grain;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
import org.standwright.part.Recess;
import org.standwright.unit.Units;

/** The words that a maker cuts bevels, outlines, notches, laps and sunk holes by: trade words, common practice. */
class FeatureNotesTest {
    private static final Part BOARD = Part.blank("side", new Material("ply", 18, 680, Grain.NONE), 600, 400);

    @Nested
    class Notches {
        @Test
        void lieInAnEdgeWhenTheyGoThroughAndAreOpenThere() {
            var notch = Pocket.through(new Rect(0, 150, 30, 250), 12.5, "finger notch");

            assertThat(note(notch))
                    .isEqualTo("finger notch: notch 30 × 100 mm in the lower end, inner corners r 12.5 mm, through,"
                            + " x 0 to 30, y 150 to 250");
            assertThat(inches(notch))
                    .isEqualTo("finger notch: notch 1 3/16 × 3 15/16 in in the lower end, inner corners r 1/2 in,"
                            + " through, x 0 to 1 3/16, y 5 29/32 to 9 27/32");
        }

        @Test
        void lieInACornerWhenTheyAreOpenAtAnEndAndAnEdge() {
            assertThat(note(Pocket.through(new Rect(520, 0, 600, 60), 0, "toe space")))
                    .isEqualTo("toe space: notch 80 × 60 mm in the corner of the upper end and the front edge, square"
                            + " inner corner, through, x 520 to 600, y 0 to 60");
        }

        @Test
        void tellTheirCornersInTurnWhenTheyAreNoRectangles() {
            var wedge = new Outline(List.of(new Vec2(200, 400), new Vec2(250, 350), new Vec2(300, 400)));

            assertThat(note(new Pocket(Face.SHOW, wedge, 0, OptionalDouble.empty(), "cord")))
                    .isEqualTo("cord: notch 100 × 50 mm in the rear edge, square inner corner, through, x 200 to 300,"
                            + " y 350 to 400, corners (x, y) in turn: (200, 400), (250, 350), (300, 400) mm");
        }

        @Test
        void areNoNotchesWhenTheyCutTheBoardInTwoOrShorter() {
            assertThat(note(Pocket.through(new Rect(300, 0, 310, 400), 0, "saw cut")))
                    .isEqualTo("saw cut: cutout 10 × 400 mm open at the front edge and the rear edge, through,"
                            + " x 300 to 310, y 0 to 400");
            assertThat(note(Pocket.through(new Rect(0, 0, 100, 400), 0, "too long")))
                    .isEqualTo("too long: cutout 100 × 400 mm open at the lower end and the front edge and the rear"
                            + " edge, through, x 0 to 100, y 0 to 400");
        }
    }

    @Nested
    class Laps {
        @Test
        void areHalfLapsWhenTheyTakeHalfTheThicknessOverAWholeEnd() {
            var lap = Pocket.blind(Face.SHOW, new Rect(540, 0, 600, 400), 0, 9, "frame joint");

            assertThat(note(lap))
                    .isEqualTo("frame joint: half-lap 60 × 400 mm across the upper end, 9 mm deep, show face,"
                            + " x 540 to 600, y 0 to 400");
            assertThat(inches(lap))
                    .isEqualTo("frame joint: half-lap 2 3/8 × 15 3/4 in across the upper end, 11/32 in deep, show face,"
                            + " x 21 1/4 to 23 5/8, y 0 to 15 3/4");
        }

        @Test
        void areLapsAtAnotherDepth() {
            assertThat(note(Pocket.blind(Face.BENCH, new Rect(0, 0, 60, 400), 0, 6, "frame joint")))
                    .isEqualTo("frame joint: lap 60 × 400 mm across the lower end, 6 mm deep, bench face, x 0 to 60,"
                            + " y 0 to 400");
        }

        @Test
        void arePocketsOpenAtAnEdgeWhereNoTradeWordIsSure() {
            assertThat(note(Pocket.blind(Face.SHOW, new Rect(268, 0, 332, 2), 0, 12, "mortise for a hinge")))
                    .isEqualTo("mortise for a hinge: pocket 64 × 2 mm open at the front edge, square inner corners,"
                            + " 12 mm deep, show face, x 268 to 332, y 0 to 2");
            assertThat(note(Pocket.blind(Face.SHOW, new Rect(200, 0, 260, 400), 0, 9, "cross joint")))
                    .isEqualTo("cross joint: pocket 60 × 400 mm open at the front edge and the rear edge, 9 mm deep,"
                            + " show face, x 200 to 260, y 0 to 400");
        }
    }

    @Nested
    class Bevels {
        @Test
        void tellTheTiltOfTheBladeAndWhatEachFaceLoses() {
            var bevel = new Bevel(Edge.Y1, Face.SHOW, 45, 18);

            assertThat(note(bevel))
                    .isEqualTo("bevel along the rear edge, blade tilted 45° from square: 18 mm off the show face,"
                            + " nothing off the bench face");
            assertThat(inches(bevel))
                    .isEqualTo("bevel along the rear edge, blade tilted 45° from square: 23/32 in off the show face,"
                            + " nothing off the bench face");
        }

        /** 18 tan 22.5° = 7.456. */
        @Test
        void countWhatTheyTakeByTheTangentOfTheTilt() {
            assertThat(note(new Bevel(Edge.X0, Face.BENCH, 22.5, 18)))
                    .isEqualTo("bevel across the lower end, blade tilted 22.5° from square: 7.5 mm off the bench face,"
                            + " nothing off the show face");
        }

        @Test
        void sayWhatABluntedTipLeavesOfTheEdge() {
            assertThat(note(new Bevel(Edge.Y1, Face.BENCH, 45, 16)))
                    .isEqualTo("bevel along the rear edge, blade tilted 45° from square: 16 mm off the bench face,"
                            + " 2 mm of the edge left flat");
        }

        @Test
        void areChamfersWhenTheyTakePartOfTheThickness() {
            assertThat(note(new Bevel(Edge.Y0, Face.SHOW, 30, 6)))
                    .isEqualTo("chamfer along the front edge, blade tilted 30° from square: 3.5 mm off the show face,"
                            + " 6 mm off the edge");
        }
    }

    @Nested
    class Recesses {
        @Test
        void areSunkFromTheFaceThatTheHoleIsBoredFrom() {
            var screw = Hole.through(50, 60, 5, "screw").with(new Recess.Countersink(10, 90));

            assertThat(note(screw))
                    .isEqualTo("1 × screw, Ø 5 mm, through, countersunk to Ø 10 mm at 90° from the show face: x 50 at"
                            + " y 60");
            assertThat(inches(screw))
                    .isEqualTo("1 × screw, Ø 13/64 in (5 mm), through, countersunk to Ø 25/64 in at 90° from"
                            + " the show face: x 1 31/32 at y 2 3/8");
        }

        /** 7/64 in is 2.778 mm: a pilot of 1/8 in would be 3.175. */
        @Test
        void tellInchDrillsToASixtyFourth() {
            assertThat(inches(Hole.through(50.8, 50.8, 2.8, "pilot"))).contains("Ø 7/64 in, through");
        }

        @Test
        void tellTheDepthOfACounterboreAndOfItsHole() {
            assertThat(note(Hole.blind(Face.BENCH, 50, 60, 9, 15, "bolt").with(new Recess.Counterbore(26, 6))))
                    .isEqualTo("1 × bolt, Ø 9 mm, 15 mm deep, bench face, counterbored Ø 26 mm, 6 mm deep: x 50 at"
                            + " y 60");
        }

        @Test
        void keepHolesApartThatAreSunkAnotherWay() {
            var plain = Hole.through(50, 60, 5, "screw");

            assertThat(notes(Units.MM, plain, plain.with(new Recess.Countersink(10, 90))))
                    .hasSize(3);
        }
    }

    @Nested
    class Outlines {
        @Test
        void tellTheCornersOfAContourInTurn() {
            var bracket = new Contour(
                    new Outline(List.of(Vec2.ZERO, new Vec2(600, 0), new Vec2(600, 300), new Vec2(0, 400))),
                    "sloped end");

            assertThat(note(bracket))
                    .isEqualTo("sloped end: cut to an outline with straight sides, corners (x, y) in turn: (0, 0),"
                            + " (600, 0), (600, 300), (0, 400) mm");
            assertThat(inches(bracket))
                    .isEqualTo("sloped end: cut to an outline with straight sides, corners (x, y) in turn: (0, 0),"
                            + " (23 5/8, 0), (23 5/8, 11 13/16), (0, 15 3/4) in");
        }

        @Test
        void tellTheCornersOfAPocketAndWhichStaySharp() {
            var angle = new Outline(List.of(
                    new Vec2(100, 100),
                    new Vec2(300, 100),
                    new Vec2(300, 150),
                    new Vec2(150, 150),
                    new Vec2(150, 300),
                    new Vec2(100, 300)));

            assertThat(note(new Pocket(Face.BENCH, angle, 6, OptionalDouble.of(8), "valve")))
                    .isEqualTo("valve: pocket 200 × 200 mm, corners r 6 mm, sharp where one points in, 8 mm deep, bench"
                            + " face, x 100 to 300, y 100 to 300, corners (x, y) in turn: (100, 100), (300, 100),"
                            + " (300, 150), (150, 150), (150, 300), (100, 300) mm");
        }
    }

    private static String note(Feature feature) {
        return notes(Units.MM, feature).get(1);
    }

    private static String inches(Feature feature) {
        return notes(Units.INCH, feature).get(1);
    }

    private static List<String> notes(Units units, Feature... features) {
        // a left side: grain upright, show face outwards
        var placement = new Placement(Axis.Z_PLUS, Axis.Y_PLUS, new Vec3(18, 0, 0));
        return new MachiningNotes(new PlacedPart("left side", BOARD.with(features), placement), units).lines();
    }
}
