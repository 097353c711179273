package org.standwright.design.column;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.standwright.design.Bay;
import org.standwright.design.Content;
import org.standwright.design.Hung;
import org.standwright.design.StandDesign;
import org.standwright.geom.Grid;

/**
 * How a bay's height is shared among its sections. Between two of them lies a divider of the panel's thickness t; n
 * openings o add up to the bay's: sum of o + (n - 1) t. An opening with fronts is as high as they are with their gaps,
 * less what they reach over the panels above and below.
 */
public final class Column {
    /** The lowest opening of a bay with anything in it, mm. */
    public static final double LEAST = LeastHeights.CLEAR;

    private final StandDesign design;
    private final BayPlace place;
    private final Bay bay;
    private final Walls walls;
    private final FrontReach reach;
    private final List<Section> sections;
    private final List<Slot> slots;
    private final Optional<ColumnSlots.Limit> tooLow;

    Column(StandDesign design, BayPlace place, Bay bay, Walls walls) {
        this.design = design;
        this.place = place;
        this.bay = bay;
        this.walls = walls;
        this.reach = new FrontReach(design);
        this.sections = Section.of(bay.contents());
        var heights = new ColumnSlots(design, place, bay, walls);
        this.slots = heights.slots();
        this.tooLow = heights.tooLow();
        if (hasFill() && slots.stream().filter(slot -> !slot.isFixed()).count() > 1) {
            throw new ColumnRefusal(design, place).twoWantTheRest();
        }
    }

    /**
     * One opening of a column as it turned out.
     *
     * @param height of the opening, mm
     * @param fronts heights of its fronts, from top to bottom, mm
     */
    record Share(Section section, Walls walls, double height, List<Double> fronts) {}

    /** That of one bay of the carcass. */
    public static Column ofBay(StandDesign design, int bay) {
        var bays = design.bays();
        return new Column(design, BayPlace.of(bay), bays.get(bay), Walls.ofBay(bay, bays.size()));
    }

    /** Those of the bays within a divided part, whose walls are given. */
    static List<Column> within(StandDesign design, BayPlace place, Bay bay, int content, Walls walls) {
        var bays = ((Content.Divided) bay.contents().get(content)).bays();
        var places = place.within(bay, content);
        return IntStream.range(0, bays.size())
                .mapToObj(i -> new Column(design, places.get(i), bays.get(i), walls.across(i, bays.size())))
                .toList();
    }

    /** The lowest opening of the bay in which everything finds its place, mm. */
    public double least() {
        return between() + slots.stream().mapToDouble(Slot::least).sum();
    }

    /** The highest opening that its contents fill, mm; infinite where one of them stretches. */
    public double most() {
        return between() + slots.stream().mapToDouble(Slot::most).sum();
    }

    /** Its openings from top to bottom; with the dividers they fill an opening of this height. */
    List<Share> shares(double opening) {
        tooLow.ifPresent(limit -> {
            throw new ColumnRefusal(design, place).mostTooLow(bay, walls, opening, limit);
        });
        var standing = filled(opening - between());
        var heights = heights(standing, opening);
        var shares = new ArrayList<Share>();
        for (int section = 0; section < sections.size(); section++) {
            int here = section;
            var own = IntStream.range(0, heights.length)
                    .filter(i -> standing.get(i).section() == here)
                    .mapToObj(i -> heights[i])
                    .toList();
            shares.add(share(section, own));
        }
        return shares;
    }

    /** The highest of the fronts of one content in an opening of this height, mm. */
    double highest(int content, double opening) {
        var standing = filled(opening - between());
        var heights = heights(standing, opening);
        return IntStream.range(0, heights.length)
                .filter(i -> standing.get(i).content() == content)
                .mapToDouble(i -> heights[i])
                .max()
                .orElseThrow();
    }

    private double[] heights(List<Slot> standing, double opening) {
        double left = opening - between() - (standing.size() - slots.size()) * reach.gap();
        var step = design.drawers().rounding().orElse(design.unit().tapeStep());
        var heights = Shares.of(standing, left, step);
        close(standing, heights, left, opening);
        return heights;
    }

    private Share share(int section, List<Double> heights) {
        var here = sections.get(section);
        var around = walls.down(section, sections.size());
        boolean fronts = ColumnSlots.fronts(here) > 0;
        double height = heights.stream().mapToDouble(Double::doubleValue).sum();
        return new Share(
                here,
                around,
                fronts ? height - reach.room(0, heights.size(), around) : height,
                fronts ? heights : List.of());
    }

    /** All that is neither front nor opening: dividers and gaps, less what fronts reach over the panels. */
    private double between() {
        double between =
                (sections.size() - 1) * design.carcass().sheet().material().thickness();
        for (int section = 0; section < sections.size(); section++) {
            int fronts = ColumnSlots.fronts(sections.get(section));
            if (fronts > 0) {
                between -= reach.room(0, fronts, walls.down(section, sections.size()));
            }
        }
        return between;
    }

    private boolean hasFill() {
        return bay.contents().stream().anyMatch(Content.FillDrawers.class::isInstance);
    }

    /** The slots with as many fronts as fit in place of those that fill; the lowest takes what remains. */
    private List<Slot> filled(double left) {
        var standing = new ArrayList<Slot>();
        for (var slot : slots) {
            if (bay.contents().get(slot.content()) instanceof Content.FillDrawers fill) {
                double others = slots.stream()
                        .filter(other -> other != slot)
                        .mapToDouble(Slot::least)
                        .sum();
                double room = left - others + reach.gap();
                double pitch = fill.front() + reach.gap();
                int count = (int) StrictMath.floor(room / pitch + 1e-9);
                if (count < 1) {
                    throw new ColumnRefusal(design, place).doesNotFill(fill.front(), room - reach.gap());
                }
                for (int i = 1; i < count; i++) {
                    standing.add(Slot.given(slot.section(), slot.content(), fill.front()));
                }
                standing.add(Slot.given(slot.section(), slot.content(), room - (count - 1) * pitch - reach.gap()));
            } else {
                standing.add(slot);
            }
        }
        return standing;
    }

    /** What misses its height by no more than a mark of the tape closes: the lowest takes the difference. */
    private void close(List<Slot> standing, double[] heights, double left, double opening) {
        double rest = left
                - IntStream.range(0, heights.length)
                        .mapToDouble(i -> heights[i])
                        .sum();
        if (Grid.less(design.unit().tapeStep(), Math.abs(rest))) {
            boolean stretches = standing.stream().anyMatch(slot -> !slot.isFixed());
            throw new ColumnRefusal(design, place).doesNotClose(bay, walls, opening, rest, stretches);
        }
        if (!Grid.same(rest, 0)) {
            heights[heights.length - 1] += rest;
        }
        checkDrawers(standing, heights);
    }

    private void checkDrawers(List<Slot> standing, double[] heights) {
        var least = new LeastHeights(design);
        int drawer = 0;
        for (int section = 0; section < sections.size(); section++) {
            int here = section;
            var fronts = IntStream.range(0, heights.length)
                    .filter(i -> standing.get(i).section() == here)
                    .toArray();
            if (sections.get(section).isDrawers()) {
                for (int i = 0; i < fronts.length; i++) {
                    double low = least.front(i, fronts.length, walls.down(section, sections.size()));
                    drawer++;
                    if (Grid.less(heights[fronts[i]], low)) {
                        throw new ColumnRefusal(design, place).tooLow(drawer, heights[fronts[i]], low);
                    }
                }
            } else {
                drawer += doors(sections.get(section).contents().get(0));
            }
        }
    }

    /** Doors are numbered in one series with the drawers of their bay. */
    static int doors(Content content) {
        return content instanceof Content.Door door ? door.hung() == Hung.PAIR ? 2 : 1 : 0;
    }
}
