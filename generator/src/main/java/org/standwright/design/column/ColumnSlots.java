package org.standwright.design.column;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.DoubleStream;
import org.standwright.design.Bay;
import org.standwright.design.Content;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.frame.Exact;
import org.standwright.geom.Grid;

/** Everything in a bay's column that has a height, with the least and the most of each. */
final class ColumnSlots {
    private final StandDesign design;
    private final BayPlace place;
    private final Bay bay;
    private final Walls walls;
    private final LeastHeights least;
    private final List<Section> sections;
    private final List<Slot> slots = new ArrayList<>();
    private Optional<Limit> tooLow = Optional.empty();

    /**
     * How high the fronts of one content may be at most, and what one of them takes.
     *
     * @param content of the bay, 0 at the top
     */
    record Limit(int content, double most, double needed) {}

    ColumnSlots(StandDesign design, BayPlace place, Bay bay, Walls walls) {
        this.design = design;
        this.place = place;
        this.bay = bay;
        this.walls = walls;
        this.least = new LeastHeights(design);
        this.sections = Section.of(bay.contents());
    }

    /** From top to bottom; drawers that fill are one slot as high as the first of them. */
    List<Slot> slots() {
        double equal = leastEqual();
        for (int section = 0; section < sections.size(); section++) {
            var here = sections.get(section);
            int count = fronts(here);
            int front = 0;
            for (int i = 0; i < here.contents().size(); i++) {
                var content = here.contents().get(i);
                if (here.isDrawers()) {
                    drawers(content, section, here.first() + i, front, count, equal);
                    front += fronts(content);
                } else {
                    slots.add(opening(content, section, here.first() + i));
                }
            }
        }
        return List.copyOf(slots);
    }

    /** A most that is too low, once the slots are worked out. */
    Optional<Limit> tooLow() {
        return tooLow;
    }

    /** How many fronts a section has; drawers that fill count as one. */
    static int fronts(Section section) {
        return section.contents().stream().mapToInt(ColumnSlots::fronts).sum();
    }

    private static int fronts(Content content) {
        if (content instanceof Content.GivenDrawers given) {
            return given.fronts().size();
        } else if (content instanceof Content.EqualDrawers equal) {
            return equal.count();
        } else if (content instanceof Content.GraduatedDrawers graduated) {
            return graduated.count();
        }
        return content instanceof Content.FillDrawers || content instanceof Content.Door ? 1 : 0;
    }

    private void drawers(Content content, int section, int index, int from, int count, double equal) {
        var around = walls.down(section, sections.size());
        if (content instanceof Content.GivenDrawers given) {
            given.fronts().forEach(front -> slots.add(Slot.given(section, index, front)));
        } else if (content instanceof Content.FillDrawers fill) {
            double low = Math.max(fill.front(), least.front(from, count, around));
            slots.add(new Slot(section, index, false, 1, low, Double.POSITIVE_INFINITY));
        } else if (content instanceof Content.EqualDrawers drawers) {
            limits(index, from, drawers.count(), count, around, drawers.least(), drawers.most());
            for (int i = 0; i < drawers.count(); i++) {
                slots.add(drawer(section, index, 1, equal, drawers.least(), drawers.most()));
            }
        } else if (content instanceof Content.GraduatedDrawers drawers) {
            limits(index, from, drawers.count(), count, around, drawers.least(), drawers.most());
            double unit = 0;
            for (int i = 0; i < drawers.count(); i++) {
                unit = Math.max(unit, least.front(from + i, count, around) / StrictMath.pow(drawers.ratio(), i));
            }
            for (int i = 0; i < drawers.count(); i++) {
                double shares = StrictMath.pow(drawers.ratio(), i);
                slots.add(drawer(section, index, shares, unit * shares, drawers.least(), drawers.most()));
            }
        }
    }

    /**
     * @param even what keeps it equal to the others, or in its ratio to them, where all have room for their boxes
     */
    private static Slot drawer(
            int section, int content, double shares, double even, OptionalDouble least, OptionalDouble most) {
        double highest = most.orElse(Double.POSITIVE_INFINITY);
        double lowest = Math.max(Math.min(even, highest), least.orElse(0));
        return new Slot(section, content, false, shares, lowest, highest);
    }

    /** Notes the first content whose fronts may not be as high as their boxes and their least ask for. */
    private void limits(
            int content,
            int from,
            int drawers,
            int count,
            Walls around,
            OptionalDouble lowest,
            OptionalDouble highest) {
        double needed = lowest.orElse(0);
        for (int i = 0; i < drawers; i++) {
            needed = Math.max(needed, least.front(from + i, count, around));
        }
        if (tooLow.isEmpty() && highest.isPresent() && Grid.less(highest.getAsDouble(), needed)) {
            tooLow = Optional.of(new Limit(content, highest.getAsDouble(), needed));
        }
    }

    /** What the equal drawers of the whole bay need at least, so that they stay equal. */
    private double leastEqual() {
        double most = 0;
        for (int section = 0; section < sections.size(); section++) {
            var here = sections.get(section);
            int front = 0;
            for (var content : here.contents()) {
                for (int i = 0; i < fronts(content); i++, front++) {
                    if (content instanceof Content.EqualDrawers) {
                        var around = walls.down(section, sections.size());
                        most = Math.max(most, least.front(front, fronts(here), around));
                    }
                }
            }
        }
        return most;
    }

    private Slot opening(Content content, int section, int place) {
        double any = Double.POSITIVE_INFINITY;
        if (content instanceof Content.Open open) {
            return slot(section, place, open.height(), least.open(open), any, "Open space");
        } else if (content instanceof Content.Clear clear) {
            return slot(section, place, clear.height(), LeastHeights.CLEAR, any, "Clear space");
        } else if (content instanceof Content.Door door) {
            double low = least.door(door, walls.down(section, sections.size()));
            return slot(section, place, door.height(), low, any, "A door");
        }
        var divided = (Content.Divided) content;
        var columns = Column.within(design, this.place, bay, place, walls.down(section, sections.size()));
        double low = extreme(columns, Column::least).max().orElseThrow();
        double high = extreme(columns, Column::most).min().orElseThrow();
        return slot(section, place, divided.height(), low, high, "A divided part");
    }

    private static DoubleStream extreme(List<Column> columns, ToDoubleFunction<Column> height) {
        return columns.stream().mapToDouble(height);
    }

    private Slot slot(int section, int content, OptionalDouble given, double low, double high, String what) {
        if (given.isEmpty()) {
            return new Slot(section, content, false, 1, low, Math.max(low, high));
        }
        double height = given.getAsDouble();
        if (Grid.less(height, low)) {
            var units = design.unit();
            throw new ImpossibleDesignException(
                    place.content(content) + "/height",
                    what + " in bay " + place.name() + " is " + units.length(height) + " high, but what is in it takes "
                            + units.length(low) + " or more.",
                    List.of("Make it " + Exact.up(units, low) + " high."));
        }
        return Slot.given(section, content, height);
    }
}
