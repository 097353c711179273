package org.standwright.design.column;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.standwright.design.Bay;
import org.standwright.design.Content;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.frame.Exact;
import org.standwright.geom.Grid;

/** Why the contents of a bay do not fill its height, and what would. */
final class ColumnRefusal {
    private final StandDesign design;
    private final BayPlace place;

    ColumnRefusal(StandDesign design, BayPlace place) {
        this.design = design;
        this.place = place;
    }

    ImpossibleDesignException twoWantTheRest() {
        return impossible(
                "more than one of its contents wants the height that is left.",
                List.of("Keep one \"filled-drawers\" and give all else a height, or use \"equal-drawers\" instead."));
    }

    ImpossibleDesignException doesNotFill(double front, double left) {
        return impossible(
                "fronts of " + design.unit().length(front) + " do not fit into the "
                        + design.unit().length(left) + " that are left of its height.",
                List.of("Use a lower front, or less above and below."));
    }

    ImpossibleDesignException tooLow(int drawer, double height, double least) {
        var units = design.unit();
        return new ImpossibleDesignException(
                place.pointer() + "/contents",
                "Drawer " + place.name() + "." + drawer + " has a front of " + units.length(height)
                        + ", too low for a box with what it runs on: it takes " + units.length(least) + " or more.",
                List.of("Use fewer drawers in bay " + place.name() + ", or make this front " + Exact.up(units, least)
                        + " high."));
    }

    /** @param opening to be filled */
    ImpossibleDesignException mostTooLow(Bay bay, Walls walls, double opening, ColumnSlots.Limit limit) {
        var units = design.unit();
        double needed = Exact.onTapeUp(units, limit.needed());
        double most = DoubleStream.concat(
                        DoubleStream.of(needed), highest(bay, walls, opening, limit.content()).stream())
                .filter(allowed -> builds(allowing(bay, limit.content(), OptionalDouble.of(allowed)), walls, opening))
                .findFirst()
                .orElse(needed);
        return new ImpossibleDesignException(
                place.content(limit.content()) + "/most",
                "In bay " + place.name() + " fronts may be " + units.length(limit.most())
                        + " high at most, but one of them takes " + units.length(limit.needed()) + " or more.",
                List.of("Allow them " + units.length(most) + "."));
    }

    /**
     * @param opening to be filled
     * @param rest what the contents leave of it, less than 0 when they are too high
     */
    ImpossibleDesignException doesNotClose(Bay bay, Walls walls, double opening, double rest, boolean stretches) {
        var units = design.unit();
        var divided = rest > 0 ? within(bay, walls, opening) : Optional.<ImpossibleDesignException>empty();
        if (divided.isPresent()) {
            return divided.get();
        }
        var allowed = stretches && rest > 0 ? allowed(bay, walls, opening) : Optional.<ColumnSlots.Limit>empty();
        var ways = new ArrayList<String>();
        if (!stretches) {
            lowest(bay, walls, opening, rest).ifPresent(ways::add);
        } else if (rest > 0) {
            allowed.ifPresent(way -> ways.add("Allow those fronts " + units.length(way.most()) + "."));
            ways.add((ways.isEmpty() ? "L" : "Or l") + "eave \"most\" out: those fronts then take what is left.");
        }
        if (!place.isNested()) {
            workingHeight(opening, rest)
                    .ifPresent(way -> ways.add((ways.isEmpty() ? "Make" : "Or make") + " the working height " + way));
        }
        if (!stretches) {
            ways.add((ways.isEmpty() ? "" : "Or ")
                    + (Section.of(bay.contents()).stream().allMatch(Section::isDrawers)
                            ? "replace one of them by \"equal-drawers\" or \"filled-drawers\", which take what is left."
                            : "leave the height of one of them out: it takes what is left."));
        }
        return impossible(
                allowed.map(way -> place.content(way.content()) + "/most").orElse(place.pointer() + "/contents"),
                "the heights with the gaps and panels between them add up to an opening of "
                        + units.length(opening - rest) + ", but the one to fill is " + units.length(opening) + ".",
                ways);
    }

    /** What the bays of a divided part say that is alone in its bay, but whose own heights do not fill it. */
    private Optional<ImpossibleDesignException> within(Bay bay, Walls walls, double opening) {
        if (bay.contents().size() > 1
                || !(bay.contents().get(0) instanceof Content.Divided divided)
                || divided.height().isPresent()) {
            return Optional.empty();
        }
        return Column.within(design, place, bay, 0, walls.down(0, 1)).stream()
                .flatMap(column -> refusal(column, opening).stream())
                .findFirst();
    }

    private static Optional<ImpossibleDesignException> refusal(Column column, double opening) {
        try {
            column.shares(opening);
            return Optional.empty();
        } catch (ImpossibleDesignException e) {
            return Optional.of(e);
        }
    }

    /** The first content that could fill the opening if its fronts might be higher, and how high. */
    private Optional<ColumnSlots.Limit> allowed(Bay bay, Walls walls, double opening) {
        for (int content = 0; content < bay.contents().size(); content++) {
            var most = highest(bay, walls, opening, content);
            if (most.isPresent() && builds(allowing(bay, content, most), walls, opening)) {
                return Optional.of(new ColumnSlots.Limit(content, most.getAsDouble(), most.getAsDouble()));
            }
        }
        return Optional.empty();
    }

    /** How high the fronts of a content with a most become without it. */
    private OptionalDouble highest(Bay bay, Walls walls, double opening, int content) {
        var free = allowing(bay, content, OptionalDouble.empty());
        if (free.equals(bay) || !builds(free, walls, opening)) {
            return OptionalDouble.empty();
        }
        double highest = new Column(design, place, free, walls).highest(content, opening);
        return OptionalDouble.of(Exact.onTapeUp(design.unit(), highest));
    }

    /** The bay with this most for the fronts of one content. */
    private static Bay allowing(Bay bay, int content, OptionalDouble most) {
        var contents = new ArrayList<>(bay.contents());
        if (contents.get(content) instanceof Content.EqualDrawers drawers) {
            contents.set(content, new Content.EqualDrawers(drawers.count(), drawers.least(), most));
        } else if (contents.get(content) instanceof Content.GraduatedDrawers drawers) {
            contents.set(
                    content, new Content.GraduatedDrawers(drawers.count(), drawers.ratio(), drawers.least(), most));
        }
        return new Bay(bay.width(), contents);
    }

    /** The lowest of its heights changed so that all of it closes, if that can be built. */
    private Optional<String> lowest(Bay bay, Walls walls, double opening, double rest) {
        int last = bay.contents().size() - 1;
        var changed = new ArrayList<>(bay.contents());
        var content = changed.get(last);
        double height;
        if (content instanceof Content.GivenDrawers given) {
            var fronts = new ArrayList<>(given.fronts());
            height = Exact.onTapeDown(design.unit(), fronts.remove(fronts.size() - 1) + rest);
            fronts.add(height);
            changed.set(last, new Content.GivenDrawers(fronts));
        } else if (content instanceof Content.Door door && door.height().isPresent()) {
            height = Exact.onTapeDown(design.unit(), door.height().getAsDouble() + rest);
            changed.set(last, new Content.Door(OptionalDouble.of(height), door.hinge(), door.hung(), door.shelves()));
        } else if (content instanceof Content.Open open && open.height().isPresent()) {
            height = Exact.onTapeDown(design.unit(), open.height().getAsDouble() + rest);
            changed.set(last, new Content.Open(OptionalDouble.of(height), open.shelves()));
        } else if (content instanceof Content.Clear clear && clear.height().isPresent()) {
            height = Exact.onTapeDown(design.unit(), clear.height().getAsDouble() + rest);
            changed.set(last, new Content.Clear(OptionalDouble.of(height), clear.use(), clear.hose()));
        } else if (content instanceof Content.Divided divided
                && divided.height().isPresent()) {
            height = Exact.onTapeDown(design.unit(), divided.height().getAsDouble() + rest);
            changed.set(last, new Content.Divided(OptionalDouble.of(height), divided.bays()));
        } else {
            return Optional.empty();
        }
        var what = content instanceof Content.GivenDrawers
                ? "lowest front"
                : content instanceof Content.Door
                        ? "lowest door"
                        : content instanceof Content.Divided ? "lowest part" : "lowest opening";
        return builds(new Bay(bay.width(), changed), walls, opening)
                ? Optional.of("Make the " + what + " " + design.unit().length(height) + " high.")
                : Optional.empty();
    }

    private boolean builds(Bay bay, Walls walls, double opening) {
        try {
            return refusal(new Column(design, place, bay, walls), opening).isEmpty();
        } catch (ImpossibleDesignException e) {
            return false; // it cannot stand in any opening
        }
    }

    /** Another working height, if all bays can be built with it. */
    private Optional<String> workingHeight(double opening, double rest) {
        double now = design.workingHeight().height();
        double then = Exact.onTapeUp(design.unit(), now - rest);
        double changed = opening + then - now;
        boolean fits = IntStream.range(0, design.bays().size())
                .mapToObj(bay -> Column.ofBay(design, bay))
                .allMatch(column -> !Grid.less(changed, column.least())
                        && !Grid.less(column.most() + design.unit().tapeStep(), changed));
        return fits ? Optional.of(design.unit().length(then) + ".") : Optional.empty();
    }

    private ImpossibleDesignException impossible(String reason, List<String> waysOut) {
        return impossible(place.pointer() + "/contents", reason, waysOut);
    }

    private ImpossibleDesignException impossible(String field, String reason, List<String> waysOut) {
        return new ImpossibleDesignException(field, "In bay " + place.name() + " " + reason, waysOut);
    }
}
