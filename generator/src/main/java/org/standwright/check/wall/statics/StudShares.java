package org.standwright.check.wall.statics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.standwright.geom.Grid;

/**
 * How a load hung evenly on a length of strip comes down to the studs that the strip is screwed to.
 *
 * <p>Only the studs within the hung width count, and at most one beyond (common practice, no source): the one that leaves the
 * most loaded the least. Of a load between two studs the nearer gets all; of one wholly beyond the last, the last, and the
 * stud behind holds the strip down.
 *
 * <p>A stud's share is the larger of two: the lever rule between neighbours, as if the strip were cut at each, and that of a
 * strip in one piece over rigid studs, whose inner studs get more (5/4 in the middle of three). Two studs that stand against
 * each other make a rigid pair that wood does not have: hand them in as one, at their middle.
 *
 * @param studs of the strip, along it, rising, at least two, mm
 * @param from where the hung width begins, mm
 * @param to where it ends, mm
 */
public record StudShares(List<Double> studs, double from, double to) {
    public StudShares {
        studs = List.copyOf(studs);
        if (studs.size() < 2) {
            throw Given.refused("number of studs", studs.size(), "", "must be at least 2; lengthen the strip");
        }
        for (int i = 1; i < studs.size(); i++) {
            if (!Grid.less(studs.get(i - 1), studs.get(i))) {
                throw Given.refused(
                        "place of a stud",
                        studs.get(i),
                        "mm",
                        "must lie beyond the one before, at " + studs.get(i - 1) + " mm");
            }
        }
        if (!Grid.less(from, to) || Double.isInfinite(to - from)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "the hung width goes from %s to %s mm, but must end beyond where it begins.",
                    from,
                    to));
        }
    }

    /** The stud that gets a load at one place, such as the end of the strip; of two as near the first. */
    public static double nearest(List<Double> studs, double place) {
        return studs.stream()
                .min(Comparator.comparingDouble(stud -> Math.abs(stud - place)))
                .orElseThrow(() -> Given.refused("number of studs", 0, "", "must be at least 1"));
    }

    /** The studs that count, rising, mm. */
    public List<Double> counting() {
        return choices().stream()
                .min(Comparator.<List<Double>>comparingDouble(this::most).thenComparingDouble(this::reach))
                .orElseThrow();
    }

    /** What each of {@link #counting()} gets of the whole by the lever rule; together 1. Less than 0 where it holds down. */
    public List<Double> byLever() {
        return boxed(new StripSpans(counting(), from, to).cutAtStuds());
    }

    /** What each of {@link #counting()} gets of the whole if the strip is in one piece; together 1. */
    public List<Double> inOnePiece() {
        return boxed(new StripSpans(counting(), from, to).inOnePiece());
    }

    /** The share of the most loaded stud; more than 1 where most of the load hangs beyond the last. */
    public double most() {
        return most(counting());
    }

    private double most(List<Double> counted) {
        var spans = new StripSpans(counted, from, to);
        double most = 0;
        for (int i = 0; i < counted.size(); i++) {
            most = Math.max(most, Math.max(spans.cutAtStuds()[i], spans.inOnePiece()[i]));
        }
        return most;
    }

    /** How far the counted ones lie from the middle of the load at most: of equals the closest are taken. */
    private double reach(List<Double> counted) {
        return counted.stream()
                .mapToDouble(stud -> Math.abs(stud - (from + to) / 2))
                .max()
                .orElseThrow();
    }

    private List<List<Double>> choices() {
        int first = (int) studs.stream().filter(stud -> Grid.less(stud, from)).count();
        int end = studs.size()
                - (int) studs.stream().filter(stud -> Grid.less(to, stud)).count();
        if (end == 0) {
            return List.of(studs.subList(0, 2));
        }
        if (first == studs.size()) {
            return List.of(studs.subList(first - 2, first));
        }
        var choices = new ArrayList<List<Double>>();
        if (first > 0) {
            choices.add(studs.subList(first - 1, end));
        }
        if (end < studs.size()) {
            choices.add(studs.subList(first, end + 1));
        }
        if (choices.isEmpty()) {
            choices.add(studs);
        }
        return choices;
    }

    private static List<Double> boxed(double[] values) {
        var list = new ArrayList<Double>();
        for (double value : values) {
            list.add(value);
        }
        return List.copyOf(list);
    }
}
