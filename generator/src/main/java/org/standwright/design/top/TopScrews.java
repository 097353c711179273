package org.standwright.design.top;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.standwright.design.Cutout;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.built.BayLayout;
import org.standwright.design.frame.Frame;
import org.standwright.design.kit.Point2;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;
import org.standwright.part.Hole;

/**
 * Clearance holes in the sub-top through which the worktop is screwed up from inside. A screw that would come too near a
 * machine bolt or something cut out moves aside, or is left out.
 */
public final class TopScrews {
    /** Distance from panels and edges at which a screwdriver still works, mm; common practice, no source. */
    private static final double FROM_PANEL = 40;
    /** Widest spacing of the screws, mm; common practice, no source. */
    private static final double SPACING = 300;
    /** Around a machine bolt, mm (shop practice). */
    private static final double FROM_BOLT = 30;
    /** Wood between a screw's hole and a cut-out, mm; common practice, no source. */
    private static final double FROM_CUTOUT = 15;
    /** A screw is looked for a new place in such steps, mm. */
    private static final double STEP = 10;
    /** So many steps aside it still does its work. */
    private static final int STEPS = 12;

    private static final int LEAST = 4;

    private final Frame frame;
    private final double bore;
    private final MachineBolts bolts;
    private final List<TopSection> sections;
    private final List<Rect> openings = new ArrayList<>();

    public TopScrews(Frame frame, List<BayLayout> bays) {
        this.frame = frame;
        this.sections = TopSection.of(bays);
        this.bore = frame.design().screws().panel().clearance();
        this.bolts = new MachineBolts(frame);
        frame.design().worktop().plate().ifPresent(plate -> openings.add(new Plate(frame, plate).rabbet()));
        new Cutouts(frame).in(Cutout.In.WORKTOP).forEach(cutout -> openings.add(cutout.area()));
    }

    /** Through holes in the assembly's x and y, opening by opening under the sub-top from the left, front to back. */
    public List<Hole> places() {
        var places = new ArrayList<Point2>();
        int wanted = 0;
        for (var section : sections) {
            double from = Math.min(FROM_PANEL, section.opening().width() / 2);
            double left = section.opening().x0() + from;
            double right = section.opening().x1() - from;
            for (double x : row(left, right)) {
                for (double y : row(FROM_PANEL, frame.insideDepth() - FROM_PANEL)) {
                    wanted++;
                    aside(new Point2(x, y), left, right, places).ifPresent(places::add);
                }
            }
        }
        if (places.size() < Math.min(wanted, LEAST)) {
            throw tooFew(places.size());
        }
        return places.stream()
                .map(place -> Hole.through(place.x(), place.y(), bore, "worktop screw"))
                .toList();
    }

    /** The nearest place, along the depth or the width of its bay, that is free. */
    private Optional<Point2> aside(Point2 wanted, double left, double right, List<Point2> others) {
        return IntStream.rangeClosed(-STEPS, STEPS)
                .boxed()
                .sorted(Comparator.comparingInt(step -> Math.abs(step)))
                .flatMap(step -> List.of(
                        new Point2(wanted.x(), wanted.y() + step * STEP),
                        new Point2(wanted.x() + step * STEP, wanted.y()))
                        .stream())
                .filter(place -> !Grid.less(place.x(), Math.min(left, wanted.x()))
                        && !Grid.less(Math.max(right, wanted.x()), place.x())
                        && !Grid.less(place.y(), Math.min(FROM_PANEL, wanted.y()))
                        && !Grid.less(Math.max(frame.insideDepth() - FROM_PANEL, wanted.y()), place.y()))
                .filter(place -> isFree(place) && others.stream().noneMatch(other -> near(place, other, 2 * bore)))
                .findFirst();
    }

    private boolean isFree(Point2 place) {
        double fromBolt = FROM_BOLT + bolts.hole() / 2;
        var room = Taken.around(place.x(), place.y(), bore / 2 + FROM_CUTOUT);
        return bolts.places().stream().noneMatch(bolt -> near(place, bolt, fromBolt))
                && openings.stream().noneMatch(opening -> new Taken("cut-out", opening).meets(room));
    }

    private static boolean near(Point2 a, Point2 b, double distance) {
        return Grid.less(StrictMath.hypot(a.x() - b.x(), a.y() - b.y()), distance);
    }

    private ImpossibleDesignException tooFew(int left) {
        var design = frame.design();
        return new ImpossibleDesignException(
                design.worktop().plate().isPresent() ? "/worktop/plate" : "/cutouts",
                "What is cut out of the worktop leaves room for " + left + " of the " + LEAST
                        + " screws that hold it at least.",
                List.of("Make the openings smaller, or the plan larger."));
    }

    /** Even places from one end to the other, no farther apart than the widest spacing; one where there is no room. */
    private static List<Double> row(double from, double to) {
        if (!Grid.less(from, to)) {
            return List.of((from + to) / 2);
        }
        int steps = Math.max(1, (int) StrictMath.ceil((to - from) / SPACING));
        var row = new ArrayList<Double>();
        for (int i = 0; i <= steps; i++) {
            row.add(from + i * (to - from) / steps);
        }
        return row;
    }
}
