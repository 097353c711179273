package org.standwright.viewer.hand.stand;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.DoorLayout;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.geom.Rect;

/**
 * What is seen of one cell of a bay's column.
 *
 * @param name 'drawer 1.2'
 * @param title that stands on it: '1.2'
 * @param says what else is to be said of it: 'front' before its height
 * @param look style class
 * @param area of its front, or of its opening
 * @param label of its part in the assembly, where it has one
 * @param groups what the labels of all its parts start with
 */
record Front(
        String name, String title, String says, String look, Rect area, Optional<String> label, List<String> groups) {
    Front {
        groups = List.copyOf(groups);
    }

    static Front of(DrawerLayout drawer) {
        var name = "drawer " + drawer.name();
        return new Front(
                name, drawer.name(), "front ", "drawer", drawer.front(), Optional.of(name + " front"), List.of(name));
    }

    /** One that is no drawer. */
    static Front of(SectionLayout section, BayLayout bay) {
        if (section instanceof SectionLayout.Closed closed) {
            return door(closed.doors(), closed.shelves().size());
        } else if (section instanceof SectionLayout.Clear clear) {
            return plain("space for " + clear.use() + " in bay " + bay.name(), clear.use(), "clear", section);
        } else if (section instanceof SectionLayout.Open open) {
            int count = open.shelves().size();
            var shelves = count == 0 ? "" : count == 1 ? "one shelf, " : count + " shelves, ";
            return new Front(
                    "open part of bay " + bay.name(),
                    "open",
                    shelves,
                    "open",
                    open.opening(),
                    Optional.empty(),
                    List.of());
        }
        return plain("divided part of bay " + bay.name(), "", "divided", section);
    }

    private static Front plain(String name, String title, String look, SectionLayout section) {
        return new Front(name, title, "", look, section.opening(), Optional.empty(), List.of());
    }

    private static Front door(List<DoorLayout> doors, int shelves) {
        var first = doors.get(0);
        var last = doors.get(doors.size() - 1);
        var area = new Rect(
                first.front().x0(),
                first.front().y0(),
                last.front().x1(),
                first.front().y1());
        var title = first == last ? first.name() : first.name() + " and " + last.name();
        var hung = first == last ? "hinges " + first.hung().name().toLowerCase(Locale.ROOT) + ", " : "";
        return new Front(
                (first == last ? "door " : "doors ") + title,
                title,
                hung,
                first == last ? "door-hung-" + first.hung().name().toLowerCase(Locale.ROOT) : "door-pair",
                area,
                Optional.of("door " + first.name()),
                doors.stream().map(door -> "door " + door.name()).toList());
    }
}
