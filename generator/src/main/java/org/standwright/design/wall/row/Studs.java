package org.standwright.design.wall.row;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.frame.Exact;
import org.standwright.design.wall.Framing;
import org.standwright.design.wall.Wall;
import org.standwright.design.wall.built.Stud;
import org.standwright.geom.Grid;
import org.standwright.geom.Interval;
import org.standwright.geom.Outline;
import org.standwright.unit.Units;

/** Where a wall takes screws: its studs, or where anchors go into masonry. */
public final class Studs {
    /** Evenly spaced places closer than this are a slip of the pen, mm (common practice, no source). */
    private static final double CLOSEST = 50;

    private final Wall wall;
    private final Interval along;
    private final Units units;
    private final String field;

    private Studs(Wall wall, Outline outline, Units units, String field) {
        this.wall = wall;
        this.along = new Interval(outline.bounds().x0(), outline.bounds().x1());
        this.units = units;
        this.field = field + "/framing";
    }

    /**
     * All of a wall, from the left. Refuses places that are not said or said twice over, out of order or out of the wall,
     * and fewer than two.
     *
     * @param units of lengths in a refusal
     * @param field of the wall: {@code /walls/0}
     */
    public static List<Stud> of(Wall wall, Outline outline, Units units, String field) {
        var places = new Studs(wall, outline, units, field).places();
        double width = width(wall.framing());
        return IntStream.range(0, places.size())
                .mapToObj(i -> new Stud(i + 1, places.get(i), width))
                .toList();
    }

    private static double width(Framing framing) {
        if (framing instanceof Framing.WoodStuds wood) {
            return wood.width();
        }
        return framing instanceof Framing.SteelStuds steel ? steel.width() : 0;
    }

    private List<Double> places() {
        var framing = wall.framing();
        boolean spaced = framing.spacing().isPresent();
        if (spaced != framing.positions().isEmpty()) {
            throw new ImpossibleDesignException(
                    field + "/positions",
                    "Studs of wall '" + wall.name() + "' have "
                            + (spaced
                                    ? "a spacing and positions, which may differ."
                                    : "neither a spacing nor positions."),
                    List.of("Give their spacing and the first one, or list the centres of all."));
        }
        var places = spaced ? spaced(framing.spacing().getAsDouble(), framing.first()) : listed(framing.positions());
        if (places.size() < 2) {
            throw new ImpossibleDesignException(
                    field + (spaced ? "/spacing" : "/positions"),
                    "Wall '" + wall.name() + "', " + units.length(along.length()) + " wide, has " + places.size()
                            + " stud" + (places.size() == 1 ? "" : "s")
                            + ", but a strip is screwed to two at least.",
                    List.of("Look for another stud, for example at the wall's ends, and list the centres of all."));
        }
        return places;
    }

    private List<Double> spaced(double spacing, double first) {
        if (!(spacing >= CLOSEST)) {
            throw new ImpossibleDesignException(
                    field + "/spacing",
                    "Studs of wall '" + wall.name() + "' are " + units.length(spacing) + " apart, but must be "
                            + units.length(CLOSEST) + " or more from centre to centre.",
                    List.of("Measure from one stud's centre to the next one's."));
        }
        within("/first", first);
        var places = new ArrayList<Double>();
        for (int i = 0; along.holds(first + i * spacing); i++) {
            places.add(first + i * spacing);
        }
        return places;
    }

    private List<Double> listed(List<Double> positions) {
        for (int i = 1; i < positions.size(); i++) {
            if (!Grid.less(positions.get(i - 1), positions.get(i))) {
                throw new ImpossibleDesignException(
                        field + "/positions",
                        "Positions of studs of wall '" + wall.name() + "' run from the left, but "
                                + units.length(positions.get(i)) + " follows " + units.length(positions.get(i - 1))
                                + ".",
                        List.of("In order they are " + sorted(positions) + "."));
            }
        }
        for (int i = 0; i < positions.size(); i++) {
            within("/positions/" + i, positions.get(i));
        }
        return positions;
    }

    /** Each once. */
    private String sorted(List<Double> positions) {
        var once = new ArrayList<Double>();
        positions.stream().sorted().forEach(place -> {
            if (once.isEmpty() || Grid.less(once.get(once.size() - 1), place)) {
                once.add(place);
            }
        });
        return once.stream().map(place -> Exact.length(units, place)).collect(Collectors.joining(", "));
    }

    private void within(String which, double place) {
        if (!along.holds(place)) {
            throw new ImpossibleDesignException(
                    field + which,
                    "A stud at " + units.length(place) + " is not on wall '" + wall.name() + "', which runs from 0 to "
                            + units.length(along.to()) + ".",
                    List.of("Measure its centre from the wall's left end."));
        }
    }
}
