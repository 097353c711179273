package org.standwright.design.column;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.standwright.design.Bay;
import org.standwright.design.Content;
import org.standwright.design.Shelves;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.DoorLayout;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.frame.Frame;
import org.standwright.geom.Rect;

/** Lays out the bays of one carcass: their openings, and the drawers, doors and shelves in them. */
public final class BayFit {
    private final Frame frame;
    private final FrontReach reach;
    private final DrawerFit drawers;

    public BayFit(Frame frame) {
        this.frame = frame;
        this.reach = new FrontReach(frame.design());
        this.drawers = new DrawerFit(frame);
    }

    /** From left to right. */
    public List<BayLayout> bays() {
        var bays = frame.design().bays();
        return IntStream.range(0, bays.size())
                .mapToObj(i -> bay(BayPlace.of(i), bays.get(i), frame.opening(i), Walls.ofBay(i, bays.size())))
                .toList();
    }

    private BayLayout bay(BayPlace place, Bay bay, Rect opening, Walls walls) {
        var sections = new ArrayList<SectionLayout>();
        var numbers = new Numbers(place.name());
        double top = opening.y1();
        var shares = new Column(frame.design(), place, bay, walls).shares(opening.height());
        for (int i = 0; i < shares.size(); i++) {
            var share = shares.get(i);
            double bottom = i == shares.size() - 1 ? opening.y0() : top - share.height();
            var here = new Rect(opening.x0(), bottom, opening.x1(), top);
            sections.add(section(place, bay, share, here, numbers));
            top = bottom - frame.panel();
        }
        return new BayLayout(place.name(), opening, sections);
    }

    private SectionLayout section(BayPlace place, Bay bay, Column.Share share, Rect opening, Numbers numbers) {
        var content = share.section().contents().get(0);
        if (share.section().isDrawers()) {
            return new SectionLayout.Drawers(opening, drawers(place.pointer() + "/contents", share, opening, numbers));
        } else if (content instanceof Content.Open open) {
            return open(open, opening, place.content(share.section().first()) + "/shelves");
        } else if (content instanceof Content.Door door) {
            return closed(
                    door, share, opening, numbers, place.content(share.section().first()) + "/shelves");
        } else if (content instanceof Content.Clear clear) {
            return new SectionLayout.Clear(opening, clear.use());
        }
        return divided(place, bay, share, opening);
    }

    private List<DrawerLayout> drawers(String field, Column.Share share, Rect opening, Numbers numbers) {
        var area = reach.fronts(opening, share.walls());
        double top = area.y1();
        var drawers = new ArrayList<DrawerLayout>();
        for (double height : share.fronts()) {
            var front = new Rect(area.x0(), top - height, area.x1(), top);
            drawers.add(this.drawers.drawer(field, numbers.next(), front, opening));
            top -= height + reach.gap();
        }
        return drawers;
    }

    private SectionLayout open(Content.Open open, Rect opening, String field) {
        var shelves = fixed(open.shelves(), opening);
        var kind = open.shelves().map(Shelves::kind);
        return new SectionLayout.Open(
                opening, adjustable(open.shelves(), opening, List.of(), field).orElse(shelves), kind);
    }

    private SectionLayout closed(Content.Door door, Column.Share share, Rect opening, Numbers numbers, String field) {
        var fixed = fixed(door.shelves(), opening);
        var names = IntStream.range(0, Column.doors(door))
                .mapToObj(i -> numbers.next())
                .toList();
        var doors = new DoorFit(door, opening, frame.panel(), fixed)
                .doors(reach.fronts(opening, share.walls()), reach.gap(), names);
        var shelves = adjustable(door.shelves(), opening, doors, field).orElse(fixed);
        return new SectionLayout.Closed(opening, doors, shelves, door.shelves().map(Shelves::kind));
    }

    private List<Double> fixed(Optional<Shelves> shelves, Rect opening) {
        return shelves.filter(some -> some.kind() == Shelves.Kind.FIXED)
                .map(some -> ShelfFit.fixed(some.count(), opening.height(), frame.panel()))
                .orElse(List.of());
    }

    private Optional<List<Double>> adjustable(
            Optional<Shelves> shelves, Rect opening, List<DoorLayout> doors, String field) {
        return shelves.filter(some -> some.kind() == Shelves.Kind.ADJUSTABLE)
                .map(some -> ShelfFit.adjustable(some.count(), opening, frame.panel(), doors, field));
    }

    private SectionLayout divided(BayPlace place, Bay bay, Column.Share share, Rect opening) {
        int content = share.section().first();
        var bays = ((Content.Divided) share.section().contents().get(0)).bays();
        var places = place.within(bay, content);
        var widths = new BayWidths(frame.design()).within(places, bays, opening.width());
        var layouts = new ArrayList<BayLayout>();
        double left = opening.x0();
        for (int i = 0; i < bays.size(); i++) {
            double right = i == bays.size() - 1 ? opening.x1() : left + widths.get(i);
            var here = new Rect(left, opening.y0(), right, opening.y1());
            layouts.add(bay(places.get(i), bays.get(i), here, share.walls().across(i, bays.size())));
            left = right + frame.panel();
        }
        return new SectionLayout.Divided(opening, layouts);
    }

    /** One series for the drawers and doors of a bay, from the top. */
    private static final class Numbers {
        private final String bay;
        private int last;

        private Numbers(String bay) {
            this.bay = bay;
        }

        private String next() {
            return bay + "." + ++last;
        }
    }
}
