package org.standwright.cutlist;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.geom.Axis;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;
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
import org.standwright.part.Run;
import org.standwright.unit.Units;

class MachiningNotesTest {
    private static final Part BOARD = Part.blank("side", new Material("ply", 18, 680, Grain.NONE), 600, 400);
    private static final String REFERENCE =
            "as left side: x from the lower end, y from the front edge, show face to the left";

    @Test
    void sayOfAPlainBoardWhereItsReferenceLies() {
        assertThat(notes()).containsExactly(REFERENCE);
    }

    @Test
    void tellAPocketByItsSizeCornersDepthAndPlace() {
        assertThat(notes(Pocket.blind(Face.SHOW, new Rect(100, 20, 360, 200), 10, 9, "motor plate")))
                .containsExactly(
                        REFERENCE,
                        "motor plate: pocket 260 × 180 mm, corners r 10 mm, 9 mm deep, show face, x 100 to 360,"
                                + " y 20 to 200");
    }

    @Test
    void tellACutoutThatItGoesThrough() {
        assertThat(notes(Pocket.through(new Rect(100, 150, 130, 250), 0, "cord")))
                .containsExactly(
                        REFERENCE, "cord: cutout 30 × 100 mm, square corners, through, x 100 to 130, y 150 to 250");
    }

    /** What is housed in it is cut square, so its end is too. */
    @Test
    void gatherPocketsThatDifferInXAlone() {
        assertThat(notes(
                        Pocket.through(new Rect(100, 0, 120, 50), 10, "slot"),
                        Pocket.through(new Rect(200, 0, 220, 50), 10, "slot"),
                        Pocket.through(new Rect(300, 0, 320, 60), 10, "slot")))
                .containsExactly(
                        REFERENCE,
                        "2 × slot: notch 20 × 50 mm in the front edge, inner corners r 10 mm, through,"
                                + " x 100 to 120, 200 to 220, y 0 to 50",
                        "slot: notch 20 × 60 mm in the front edge, inner corners r 10 mm, through, x 300 to 320,"
                                + " y 0 to 60");
    }

    @Test
    void tellWhereAStoppedDadoEnds() {
        assertThat(notes(new Channel(Face.BENCH, Run.ACROSS, new Rect(200, 0, 218, 380), 6)))
                .containsExactly(
                        REFERENCE,
                        "stopped dado 18 mm wide, 6 mm deep, bench face, x 200 to 218, y 0 to 380, cut square where "
                                + "it stops");
    }

    @Test
    void gatherEdgeHolesInRowsByEdgeAndHeight() {
        assertThat(notes(
                        new EdgeHole(Edge.X0, 300, 8.9, 2.5, 40, "pilot for panel screw"),
                        new EdgeHole(Edge.Y1, 120, 9, 8, 30, "dowel"),
                        new EdgeHole(Edge.X0, 50, 8.9, 2.5, 40, "pilot for panel screw"),
                        new EdgeHole(Edge.X1, 50, 8.9, 2.5, 40, "pilot for panel screw")))
                .containsExactly(
                        REFERENCE,
                        "2 × pilot for panel screw, Ø 2.5 mm, 40 mm deep, into the lower end, 8.9 mm above the bench"
                                + " face: y 50, 300",
                        "1 × dowel, Ø 8 mm, 30 mm deep, into the rear edge, 9 mm above the bench face: x 120",
                        "1 × pilot for panel screw, Ø 2.5 mm, 40 mm deep, into the upper end, 8.9 mm above the bench"
                                + " face: y 50");
    }

    @Test
    void keepTheOrderChannelsAndPocketsThenHolesThenEdgeHoles() {
        var notes = notes(
                new EdgeHole(Edge.X0, 50, 9, 8, 30, "dowel"),
                Hole.through(50, 50, 8, "bolt"),
                Pocket.through(new Rect(100, 100, 160, 160), 30, "cable"),
                Channel.along(Face.BENCH, 10, 16, 600, 6));

        assertThat(notes)
                .extracting(note -> note.split("[,:]")[0])
                .containsExactly("as left side", "cable", "groove 6 mm wide", "1 × bolt", "1 × dowel");
    }

    @Test
    void countThePlacesOfAnOversizePartFromItsTrimmedEdges() {
        var placement = new Placement(Axis.X_PLUS, Axis.Y_PLUS, new Vec3(0, 0, 0));
        var bolt = Hole.through(50, 50, 8, "bolt");

        assertThat(last("worktop upper layer", placement, bolt))
                .isEqualTo("cut 3 mm over on every edge, trimmed after assembly; bore it after the trim; places count "
                        + "from the trimmed edges");
        assertThat(last("door", placement, bolt))
                .isEqualTo("cut 3 mm over on every edge, trimmed after assembly; places count from the trimmed edges");
        assertThat(last("worktop upper layer", placement))
                .isEqualTo("cut 3 mm over on every edge, trimmed after assembly");
    }

    private static String last(String name, Placement placement, Feature... features) {
        var part = Part.blank(name, BOARD.material(), 600, 400).with(features).cutOver(3);
        var lines = new MachiningNotes(new PlacedPart(name, part, placement), Units.MM).lines();
        return lines.get(lines.size() - 1);
    }

    private static List<String> notes(Feature... features) {
        // a left side: grain upright, show face outwards
        var placement = new Placement(Axis.Z_PLUS, Axis.Y_PLUS, new Vec3(18, 0, 0));
        return new MachiningNotes(new PlacedPart("left side", BOARD.with(features), placement), Units.MM).lines();
    }
}
