package org.standwright.design.carcass;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.design.Shelves;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.frame.Frame;
import org.standwright.geom.Rect;

/** Which panels stand and lie between the openings of a carcass. */
final class Panels {
    /** Between an inset door and the fixed shelves behind it, mm; common practice, no source. */
    private static final double BEHIND_DOOR = 2;

    private final Frame frame;
    private final List<Upright> partitions = new ArrayList<>();
    private final List<Level> dividers = new ArrayList<>();
    private final List<Level> shelves = new ArrayList<>();

    Panels(Frame frame, List<BayLayout> bays) {
        this.frame = frame;
        var lefts = frame.partitions();
        for (int i = 0; i < lefts.size(); i++) {
            partitions.add(new Upright(
                    label(frame, i), Upright.Kind.PARTITION, lefts.get(i), frame.openingBottom(), frame.openingTop()));
        }
        bays.forEach(this::bay);
    }

    /** Those between the bays of the carcass, then those within them. */
    List<Upright> partitions() {
        return partitions;
    }

    /** Dividers, then fixed shelves. */
    List<Level> inner() {
        var inner = new ArrayList<>(dividers);
        inner.addAll(shelves);
        return inner;
    }

    /** Of a partition between bays of the carcass, counted from the left. */
    static String label(Frame frame, int partition) {
        return frame.partitions().size() == 1 ? "partition" : "partition " + (partition + 1);
    }

    /** Whether something is housed even where the outer panels are butted. */
    boolean haveHoused() {
        return !inner().isEmpty() || partitions.stream().anyMatch(upright -> upright.kind() == Upright.Kind.NESTED);
    }

    private void bay(BayLayout bay) {
        var sections = bay.sections();
        int shelf = 1;
        for (int i = 0; i < sections.size(); i++) {
            var section = sections.get(i);
            if (i > 0) {
                var label = "divider " + bay.name() + "." + i;
                dividers.add(level(
                        label, "divider", bay.opening(), 0, section.opening().y1()));
            }
            shelf = shelves(bay, section, shelf);
            if (section instanceof SectionLayout.Divided divided) {
                within(divided);
            }
        }
    }

    private void within(SectionLayout.Divided divided) {
        for (int i = 0; i < divided.bays().size(); i++) {
            var bay = divided.bays().get(i);
            if (i < divided.bays().size() - 1) {
                var opening = divided.opening();
                partitions.add(new Upright(
                        "partition " + bay.name(),
                        Upright.Kind.NESTED,
                        bay.opening().x1(),
                        opening.y0(),
                        opening.y1()));
            }
            bay(bay);
        }
    }

    /** Numbered through the bay from the top; returns the next number. */
    private int shelves(BayLayout bay, SectionLayout section, int first) {
        var undersides = ShelfBoards.undersides(section);
        int next = first;
        for (int i = undersides.size() - 1; i >= 0; i--) {
            if (ShelfBoards.kind(section).equals(Optional.of(Shelves.Kind.FIXED))) {
                var opening = section.opening();
                double front =
                        section instanceof SectionLayout.Closed && frame.isInset() ? insetFront() + BEHIND_DOOR : 0;
                shelves.add(level(
                        "shelf " + bay.name() + "." + next, "shelf", opening, front, opening.y0() + undersides.get(i)));
            }
            next++;
        }
        return next;
    }

    private double insetFront() {
        return frame.design().drawers().front().material().thickness();
    }

    private static Level level(String label, String name, Rect between, double front, double z) {
        return new Level(label, name, between.x0(), between.x1(), front, z);
    }
}
