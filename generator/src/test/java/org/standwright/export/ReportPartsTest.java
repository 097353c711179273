package org.standwright.export;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Group;
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
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.Hole;
import org.standwright.part.Pocket;
import org.standwright.part.Recess;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.SampleParts;

class ReportPartsTest {
    @Test
    void writesAPocketAndACutout() {
        var area = new Rect(10, 20, 110, 60);

        assertThat(feature(Pocket.blind(Face.BENCH, area, 12.5, 6, "plate")))
                .isEqualTo("{\"kind\":\"pocket\",\"face\":\"bench\",\"x0\":10.0,\"y0\":20.0,\"x1\":110.0,\"y1\":60.0,"
                        + "\"radius\":12.5,\"through\":false,\"purpose\":\"plate\",\"depth\":6.0}");
        assertThat(feature(Pocket.through(area, 0, "cable")))
                .isEqualTo("{\"kind\":\"pocket\",\"face\":\"show\",\"x0\":10.0,\"y0\":20.0,\"x1\":110.0,\"y1\":60.0,"
                        + "\"radius\":0.0,\"through\":true,\"purpose\":\"cable\"}");
    }

    @Test
    void writesAnEdgeHole() {
        assertThat(feature(new EdgeHole(Edge.Y1, 120, 8.9, 2.5, 40, "pilot")))
                .isEqualTo("{\"kind\":\"edge-hole\",\"edge\":\"y1\",\"along\":120.0,\"z\":8.9,\"diameter\":2.5,"
                        + "\"depth\":40.0,\"purpose\":\"pilot\"}");
    }

    @Test
    void writesABevelWithWhatItTakesOffTheFace() {
        assertThat(feature(new Bevel(Edge.Y1, Face.SHOW, 60, 9)))
                .startsWith("{\"kind\":\"bevel\",\"edge\":\"y1\",\"face\":\"show\",\"tilt\":60.0,\"depth\":9.0,"
                        + "\"setback\":15.588");
    }

    /** 82° for inch screws: common practice, no source. */
    @Test
    void writesWhatSinksAHole() {
        var hole = Hole.through(50, 60, 5, "screw");

        assertThat(feature(hole.with(new Recess.Counterbore(26, 6))))
                .isEqualTo("{\"kind\":\"hole\",\"face\":\"show\",\"x\":50.0,\"y\":60.0,\"diameter\":5.0,"
                        + "\"through\":true,\"purpose\":\"screw\",\"recess\":{\"kind\":\"counterbore\","
                        + "\"diameter\":26.0,\"depth\":6.0}}");
        assertThat(feature(hole.with(new Recess.Countersink(10, 82))))
                .contains("\"recess\":{\"kind\":\"countersink\",\"diameter\":10.0,\"depth\":2.875")
                .endsWith("\"angle\":82.0}}");
    }

    @Test
    void writesTheCornersOfAnOutlineCounterClockwise() {
        var clockwise = new Outline(List.of(Vec2.ZERO, new Vec2(0, 400), new Vec2(600, 0)));

        assertThat(feature(new Contour(clockwise, "bracket")))
                .isEqualTo("{\"kind\":\"contour\",\"purpose\":\"bracket\",\"outline\":[{\"x\":600.0,\"y\":0.0},"
                        + "{\"x\":0.0,\"y\":400.0},{\"x\":0.0,\"y\":0.0}]}");
        assertThat(feature(new Pocket(Face.BENCH, clockwise, 5, OptionalDouble.of(6), "plate")))
                .isEqualTo("{\"kind\":\"pocket\",\"face\":\"bench\",\"x0\":0.0,\"y0\":0.0,\"x1\":600.0,\"y1\":400.0,"
                        + "\"radius\":5.0,\"through\":false,\"purpose\":\"plate\",\"depth\":6.0,\"outline\":["
                        + "{\"x\":600.0,\"y\":0.0},{\"x\":0.0,\"y\":400.0},{\"x\":0.0,\"y\":0.0}]}");
    }

    private static String feature(Feature feature) {
        var part = new PlacedPart(
                "board", SampleParts.plain().with(feature), new Placement(Axis.X_PLUS, Axis.Y_PLUS, Vec3.ZERO));
        var assembly = new Assembly("one board", List.of(Group.fixed("all", List.of(part), List.of())), List.of());
        return new ReportParts(assembly, AssemblySolids.of(assembly))
                .parts()
                .at("/0/features/0")
                .toString();
    }
}
