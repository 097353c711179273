package org.standwright.design.wall.row;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.standwright.design.WallDesign;
import org.standwright.design.wall.Cleat;
import org.standwright.design.wall.HoldWord;
import org.standwright.design.wall.area.BareArea;
import org.standwright.design.wall.built.Row;
import org.standwright.design.wall.built.Screwing;
import org.standwright.design.wall.built.ShortRun;
import org.standwright.design.wall.built.Strip;
import org.standwright.design.wall.built.Stud;
import org.standwright.geom.Grid;
import org.standwright.geom.Interval;
import org.standwright.unit.Units;

/**
 * Lays the strips of one wall, row by row from the lowest: each row covers as much as it can, with its joints in other
 * bays than those of the row below.
 *
 * <p>A strip hangs free beyond its last screw by a quarter of a bay at most, so two strips that follow each other leave a
 * gap around the middle of a bay, unless that bay is half as wide as its neighbours; the bay of the gap is their joint.
 */
public final class StripPlanner {
    /** Between the end of a strip and the strips of the wall to the left of an inside corner, mm. */
    private static final double CORNER_GAP = 3;

    /** Bare wall narrower than this between obstacles is not worth a word, mm. */
    private static final double SLIVER = 2 * Overhang.LEAST;

    private final String wall;
    private final HoldWord place;
    private final Units units;
    private final Cleat cleat;
    private final double from;
    private final double longest;
    private final BareArea bare;
    private final List<Double> studs;
    private final Screwing screwing;
    private final List<ShortRun> shortRuns = new ArrayList<>();

    private StripPlanner(WallDesign design, int wallIndex, BareArea bare, List<Stud> studs, Screwing screwing) {
        this.wall = design.walls().get(wallIndex).name();
        this.place = HoldWord.of(design.walls().get(wallIndex).framing());
        this.units = design.unit();
        this.cleat = design.cleat();
        this.from = wallIndex == 0 ? 0 : cleat.thickness() + CORNER_GAP;
        this.longest = LongestStrip.of(design);
        this.bare = bare;
        this.studs = thinned(studs);
        this.screwing = screwing;
    }

    /**
     * @param wallIndex place of the wall in the design, from 0
     * @param heights of the rows, from the lowest
     */
    public static PlannedRows plan(
            WallDesign design,
            int wallIndex,
            BareArea bare,
            List<Stud> studs,
            List<Double> heights,
            Screwing screwing) {
        return new StripPlanner(design, wallIndex, bare, studs, screwing).plan(heights);
    }

    private PlannedRows plan(List<Double> heights) {
        var rows = new ArrayList<Row>();
        Set<Integer> below = Set.of();
        var lengths = new TreeSet<Double>();
        for (double height : heights) {
            int number = rows.size() + 1;
            var spans = new ArrayList<Span>();
            var joints = new TreeSet<Integer>();
            for (var run : runs(height)) {
                var planner = new RunPlanner(studs, longest, run, below, List.copyOf(lengths));
                var best = planner.best();
                spans.addAll(best);
                joints.addAll(RunPlanner.joints(best));
                if (best.isEmpty() && Grid.less(SLIVER, run.length())) {
                    shortRuns.add(new ShortRun(number, run, why(run, planner.studs())));
                }
            }
            rows.add(new Row(number, height, strips(number, height, spans)));
            spans.forEach(span -> lengths.add(span.along().length()));
            below = joints;
        }
        return new PlannedRows(rows, shortRuns);
    }

    /** Where a strip and a hanger above it, as it is lifted off, meet bare wall only. */
    private List<Interval> runs(double height) {
        return bare.free(height - cleat.height(), height + cleat.hangerAbove() + cleat.headroom()).stream()
                .flatMap(run -> beyondCorner(run).stream())
                .toList();
    }

    private Optional<Interval> beyondCorner(Interval run) {
        return Grid.less(from, run.to())
                ? Optional.of(new Interval(Math.max(from, run.from()), run.to()))
                : Optional.empty();
    }

    private String why(Interval run, int held) {
        long lying = studs.stream().filter(run::holds).count();
        var inside = lying > held ? " lies " + units.length(Overhang.LEAST) + " or more within it" : " lies within it";
        return switch (held) {
            case 0 -> "no " + place.one() + inside;
            case 1 -> "only one " + place.one() + inside + ", and a strip is screwed to two at least";
            default ->
                "its " + place.many() + " are farther apart than a strip of " + units.length(longest)
                        + ", the longest there is, reaches";
        };
    }

    private List<Strip> strips(int row, double height, List<Span> spans) {
        var strips = new ArrayList<Strip>();
        for (var span : spans) {
            var label = wall + " row " + row + (spans.size() == 1 ? "" : " strip " + (strips.size() + 1));
            var screwed = studs.subList(span.first(), span.last() + 1);
            strips.add(new Strip(label, row, span.along(), height, screwed, screwing.heights()));
        }
        return strips;
    }

    private static List<Double> thinned(List<Stud> studs) {
        var taken = new ArrayList<Double>();
        for (var stud : studs) {
            if (taken.isEmpty() || !Grid.less(stud.x() - taken.get(taken.size() - 1), Overhang.CLOSEST)) {
                taken.add(stud.x());
            }
        }
        return taken;
    }
}
