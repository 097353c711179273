package org.standwright.design.wall.row;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.WallDesign;
import org.standwright.design.wall.area.BareArea;
import org.standwright.design.wall.area.WallOutline;
import org.standwright.design.wall.area.Zones;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.Screwing;
import org.standwright.design.wall.built.WallFrame;
import org.standwright.geom.Axis;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec3;

/** The walls of a design with their rows, no holders on them yet. */
public final class WallRows {
    /** Where walls run to the right, from the left one on; a fourth would shut the room. */
    private static final List<Axis> RIGHT = List.of(Axis.X_PLUS, Axis.Y_MINUS, Axis.X_MINUS);

    private WallRows() {}

    /** From the left. Refuses a design that no strip can be screwed to the walls of. */
    public static List<CleatedWall> of(WallDesign design) {
        count(design);
        names(design);
        var heights = RowHeights.of(design);
        var screwing = StripScrews.of(design);
        var walls = new ArrayList<CleatedWall>();
        var corner = Vec3.ZERO;
        for (int i = 0; i < design.walls().size(); i++) {
            var frame = new WallFrame(corner, RIGHT.get(i));
            var wall = wall(design, i, frame, heights, screwing);
            walls.add(wall);
            corner = frame.apply(new Vec3(wall.outline().bounds().x1(), 0, 0));
        }
        level(design, walls);
        if (walls.stream().allMatch(wall -> wall.strips().isEmpty())) {
            throw new ImpossibleDesignException(
                    "/rows",
                    "In no row is there bare wall wide enough for a strip that is screwed to two studs.",
                    List.of("Move the rows, or look for more studs."));
        }
        return walls;
    }

    private static void level(WallDesign design, List<CleatedWall> walls) {
        double lowest = walls.stream()
                .mapToDouble(wall -> wall.outline().bounds().y1())
                .min()
                .orElseThrow();
        if (Grid.less(lowest, design.levelLine())) {
            var units = design.unit();
            throw new ImpossibleDesignException(
                    "/levelLine",
                    "The level line is " + units.length(design.levelLine())
                            + " above the floor, but the lowest wall is " + units.length(lowest) + " high.",
                    List.of("Strike it where it can be seen, such as " + units.length(lowest / 2) + "."));
        }
    }

    private static CleatedWall wall(
            WallDesign design, int index, WallFrame frame, List<Double> heights, Screwing screwing) {
        var wall = design.walls().get(index);
        var field = "/walls/" + index;
        var outline = WallOutline.of(wall, design.unit(), field);
        var zones = Zones.of(design, index, outline);
        var bare = BareArea.of(outline, zones.zones());
        var studs = Studs.of(wall, outline, design.unit(), field);
        var planned = StripPlanner.plan(design, index, bare, studs, heights, screwing);
        return new CleatedWall(
                index + 1,
                wall,
                outline,
                frame,
                zones.zones(),
                bare,
                studs,
                planned.rows(),
                planned.shortRuns(),
                zones.notes());
    }

    private static void count(WallDesign design) {
        int count = design.walls().size();
        if (count < 1 || count > RIGHT.size()) {
            throw new ImpossibleDesignException(
                    "/walls",
                    "'" + design.name() + "' has " + count + " walls, but one to three meet from left to right.",
                    List.of(count < 1 ? "Describe one wall." : "Leave the last ones to a design of their own."));
        }
    }

    private static void names(WallDesign design) {
        var seen = new HashSet<String>();
        for (int i = 0; i < design.walls().size(); i++) {
            var name = design.walls().get(i).name();
            if (!seen.add(name)) {
                throw new ImpossibleDesignException(
                        "/walls/" + i + "/name",
                        "Two walls are called '" + name + "', so nobody could tell their strips apart.",
                        List.of("Give each a name of its own."));
            }
        }
    }
}
