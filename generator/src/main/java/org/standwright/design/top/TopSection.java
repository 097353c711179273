package org.standwright.design.top;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.SectionLayout;

/**
 * What lies just under the sub-top: the uppermost section of a bay, or of a bay within it where that is divided.
 *
 * @param bay its name: '2', '2a'
 */
record TopSection(String bay, SectionLayout section) {
    /** From left to right. */
    static List<TopSection> of(List<BayLayout> bays) {
        return bays.stream().flatMap(TopSection::of).toList();
    }

    private static Stream<TopSection> of(BayLayout bay) {
        var top = bay.sections().get(0);
        return top instanceof SectionLayout.Divided divided
                ? of(divided.bays()).stream()
                : Stream.of(new TopSection(bay.name(), top));
    }

    boolean holdsDrawers() {
        return section instanceof SectionLayout.Drawers drawers
                && !drawers.drawers().isEmpty();
    }
}
