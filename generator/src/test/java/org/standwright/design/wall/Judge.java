package org.standwright.design.wall;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.WallDesign;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.Row;
import org.standwright.design.wall.built.Strip;

/**
 * What is wrong with the strips of a wall, by code of its own that knows the rules but not how strips are planned. Its
 * figures are those of the glossary of cleats: 25 mm to an end, an overhang of 150 mm or a quarter of a bay.
 */
public final class Judge {
    private static final double SLACK = 1e-5;

    private final WallDesign design;
    private final CleatedWall wall;
    private final List<String> faults = new ArrayList<>();

    private Judge(WallDesign design, CleatedWall wall) {
        this.design = design;
        this.wall = wall;
    }

    /** Nothing if the wall is as it must be. */
    public static List<String> faults(WallDesign design, CleatedWall wall) {
        var judge = new Judge(design, wall);
        wall.strips().forEach(judge::strip);
        wall.rows().forEach(judge::row);
        for (int i = 1; i < wall.rows().size(); i++) {
            judge.neighbours(wall.rows().get(i - 1), wall.rows().get(i));
        }
        judge.area();
        return judge.faults;
    }

    private void strip(Strip strip) {
        screws(strip);
        overhangs(strip);
        double t = design.cleat().sheet().material().thickness();
        double rise = t * Math.tan(Math.toRadians(design.cleat().tilt()));
        double low = strip.top() - (design.cleat().face() - design.cleat().blunt());
        // up to the top of a hanger that is lifted off
        double high = strip.top() + design.cleat().blunt() + design.cleat().face() - rise + rise + 3;
        var band = new double[] {strip.along().from(), low, strip.along().to(), high};
        fault(!PlainGeometry.within(wall.outline().corners(), shrunk(band)), strip.label() + " leaves the wall");
        wall.zones().forEach(zone -> {
            var kept = zone.kept();
            fault(
                    meet(band, kept.x0(), kept.y0(), kept.x1(), kept.y1()),
                    strip.label() + " crosses what '" + zone.name() + "' keeps free");
        });
        wall.wall().obstacles().forEach(obstacle -> obstacle(strip, obstacle, band));
        fault(wall.number() > 1 && strip.along().from() < t + 3 - SLACK, strip.label() + " runs into the corner");
        double longest = Math.min(
                design.cleat().longest().orElse(Double.POSITIVE_INFINITY),
                design.cleat().sheet().length() - design.saw().trim().offLength());
        fault(strip.along().length() > longest + SLACK, strip.label() + " is longer than its sheet gives");
    }

    private void screws(Strip strip) {
        fault(strip.studs().size() < 2, strip.label() + " has fewer than two studs");
        for (double screw : strip.studs()) {
            fault(
                    wall.studs().stream().noneMatch(stud -> Math.abs(stud.x() - screw) < SLACK),
                    strip.label() + " has a screw at " + screw + " beside the studs");
            fault(
                    screw - strip.along().from() < 25 - SLACK || strip.along().to() - screw < 25 - SLACK,
                    strip.label() + " has a screw at " + screw + " too near its end");
        }
        double face = design.cleat().face();
        for (double height : strip.screws()) {
            fault(height <= 0 || height >= face, strip.label() + " has a screw outside its height");
        }
    }

    private void overhangs(Strip strip) {
        var studs = strip.studs();
        int last = studs.size() - 1;
        if (last > 0) {
            double left = Math.min(150, (studs.get(1) - studs.get(0)) / 4);
            double right = Math.min(150, (studs.get(last) - studs.get(last - 1)) / 4);
            fault(strip.overhangLeft() > left + SLACK, strip.label() + " overhangs too far on the left");
            fault(strip.overhangRight() > right + SLACK, strip.label() + " overhangs too far on the right");
        }
    }

    private void obstacle(Strip strip, Obstacle obstacle, double[] band) {
        if (obstacle.stand().isPresent()) {
            var box = obstacle.stand().get();
            fault(
                    meet(band, obstacle.x(), 0, obstacle.x() + box.width(), box.height()),
                    strip.label() + " is behind a stand");
            return;
        }
        double width = obstacle.width().orElseThrow();
        double around =
                obstacle.casing() + obstacle.margin().orElse(obstacle.kind().margin());
        double top = obstacle.height().orElseThrow() + (obstacle.kind() == Obstacle.Kind.DOOR ? 0 : obstacle.bottom());
        boolean toFloor =
                obstacle.kind() == Obstacle.Kind.DOOR || obstacle.kind().isFurniture();
        double foot = toFloor ? 0 : obstacle.bottom() - around;
        if (obstacle.kind() == Obstacle.Kind.OUTLET) {
            foot = Math.min(foot, obstacle.bottom() - 150);
        }
        fault(
                meet(band, obstacle.x() - around, foot, obstacle.x() + width + around, top + around),
                strip.label() + " is too near '" + obstacle.called() + "'");
        if (obstacle.kind() == Obstacle.Kind.ELECTRICAL_PANEL) {
            // NEC 110.26(A): 30 in wide or the equipment's width, 6 1/2 ft high or the equipment (references 4)
            double half = Math.max(762, width) / 2;
            double centre = obstacle.x() + width / 2;
            fault(
                    meet(band, centre - half, 0, centre + half, Math.max(1981, top)),
                    strip.label() + " is in the working space of '" + obstacle.called() + "'");
        }
    }

    private void row(Row row) {
        for (int i = 1; i < row.strips().size(); i++) {
            var left = row.strips().get(i - 1);
            fault(
                    left.along().to() > row.strips().get(i).along().from() + SLACK,
                    left.label() + " overlaps the next one");
        }
    }

    private void neighbours(Row below, Row above) {
        double densest = 2 * design.cleat().face() + 3;
        fault(above.height() - below.height() < densest - SLACK, "row " + above.number() + " is too close");
        for (var joint : joints(above)) {
            for (var lower : joints(below)) {
                fault(
                        Math.min(joint[1], lower[1]) - Math.max(joint[0], lower[0]) > SLACK,
                        "row " + above.number() + " has a joint in a bay where row " + below.number() + " has one");
            }
        }
    }

    /** From the last screw of a strip to the first of the next, where no obstacle is between the strips. */
    private List<double[]> joints(Row row) {
        var joints = new ArrayList<double[]>();
        for (int i = 1; i < row.strips().size(); i++) {
            var left = row.strips().get(i - 1);
            var right = row.strips().get(i);
            var between = new double[] {
                left.along().to() - SLACK,
                row.height() - design.cleat().height(),
                right.along().from() + SLACK,
                row.height() + design.cleat().hangerAbove() + design.cleat().headroom()
            };
            boolean open = PlainGeometry.within(wall.outline().corners(), shrunk(between))
                    && wall.zones().stream()
                            .noneMatch(zone -> meet(
                                    between,
                                    zone.kept().x0(),
                                    zone.kept().y0(),
                                    zone.kept().x1(),
                                    zone.kept().y1()));
            if (open) {
                joints.add(new double[] {
                    left.studs().get(left.studs().size() - 1), right.studs().get(0)
                });
            }
        }
        return joints;
    }

    private void area() {
        double strips = wall.strips().stream()
                .mapToDouble(strip -> strip.along().length() * design.cleat().height())
                .sum();
        fault(strips > wall.bare().size() + 1, "strips cover more than the wall has bare");
    }

    private static double[] shrunk(double[] rect) {
        return new double[] {rect[0] + SLACK, rect[1] + SLACK, rect[2] - SLACK, rect[3] - SLACK};
    }

    private static boolean meet(double[] rect, double x0, double y0, double x1, double y1) {
        return Math.min(rect[2], x1) - Math.max(rect[0], x0) > SLACK
                && Math.min(rect[3], y1) - Math.max(rect[1], y0) > SLACK;
    }

    private void fault(boolean present, String words) {
        if (present) {
            faults.add(words);
        }
    }
}
