package org.standwright.design.wall.holder;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Group;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.design.CuttingPlan;
import org.standwright.design.Designs;
import org.standwright.design.StockPlan;
import org.standwright.design.WallDesign;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.Screw;
import org.standwright.design.wall.Cleat;
import org.standwright.design.wall.Fixing;
import org.standwright.design.wall.Making;
import org.standwright.design.wall.Person;
import org.standwright.design.wall.Rows;
import org.standwright.design.wall.Things;
import org.standwright.design.wall.built.MadeHolder;
import org.standwright.geom.Axis;
import org.standwright.geom.Vec3;
import org.standwright.part.Bevel;
import org.standwright.part.Edge;
import org.standwright.part.Face;
import org.standwright.part.Part;
import org.standwright.part.SheetGood;
import org.standwright.unit.Units;

/** Walls of round numbers, and what is asked of every holder that hangs on them. */
final class Workshop {
    /** 100 mm strips of an 18 mm board, sawn at 45°, tips blunted by 2 mm: short face 82 mm, strip 98 mm high. */
    static final Cleat CLEAT = new Cleat(Designs.BOARD_18, 100, 45, 2, OptionalDouble.empty());

    private static final Screw SCREW = new Screw("screw 4", 4, 2.5, 4.5, List.of(16.0, 20.0, 25.0, 30.0, 35.0, 40.0));

    private Workshop() {}

    static WallDesign wall(Cleat cleat) {
        return wall(cleat, Designs.BOARD_18, Designs.BOARD_6, Units.MM);
    }

    static WallDesign wall(Cleat cleat, SheetGood sheet, SheetGood thin, Units units) {
        return new WallDesign(
                "tools",
                units,
                1000,
                new Person(1050, 1600),
                List.of(),
                cleat,
                new Rows.Densest(400, 2000),
                new Fixing(SCREW, OptionalDouble.empty(), 1, OptionalDouble.empty()),
                new Making(sheet, thin, SCREW, 0.2),
                List.of(),
                new Saw(3.2, 5),
                Optional.empty(),
                StockPlan.NONE,
                CuttingPlan.PLAIN,
                List.of());
    }

    static Things things(int count, double width, double depth, double height) {
        return new Things(count, width, depth, height, 0.5, Things.Use.WEEKLY, false);
    }

    static PlacedPart part(MadeHolder made, String label) {
        return made.parts().stream()
                .filter(part -> part.label().equals(made.holder().name() + " " + label))
                .findFirst()
                .orElseThrow(() -> new AssertionError(label + " of "
                        + made.parts().stream().map(PlacedPart::label).toList()));
    }

    /** A strip on the wall, its high edge at 0. */
    static PlacedPart strip(Cleat cleat, double length) {
        var part = Part.blank("strip", cleat.sheet().material(), length, cleat.height())
                .with(new Bevel(Edge.Y1, Face.BENCH, cleat.tilt(), cleat.bevelDepth()));
        return new PlacedPart("strip", part, new Placement(Axis.X_PLUS, Axis.Z_PLUS, new Vec3(0, 0, -cleat.height())));
    }

    /** With its spacer, where it takes one. */
    static Assembly assembly(HolderMaker maker, MadeHolder made) {
        var parts = new ArrayList<>(made.parts());
        if (maker.takesSpacer(made)) {
            parts.add(maker.spacer(made));
        }
        return new Assembly(
                made.holder().name(), List.of(Group.fixed(made.holder().name(), parts, List.of())), made.hardware());
    }
}
