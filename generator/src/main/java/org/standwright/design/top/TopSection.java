package org.standwright.design.top;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.geom.Rect;

/**
 * What lies just under the sub-top: the uppermost section of a bay, or of a bay within it where that is divided.
 *
 * @param bay its name: '2', '2a'
 * @param opening of the bay, seen from the front
 */
record TopSection(String bay, Rect opening, boolean holdsDrawers) {
    /** From left to right. */
    static List<TopSection> of(List<BayLayout> bays) {
        return bays.stream().flatMap(TopSection::of).toList();
    }

    private static Stream<TopSection> of(BayLayout bay) {
        var top = bay.sections().stream().findFirst();
        if (top.isPresent() && top.get() instanceof SectionLayout.Divided divided) {
            return divided.bays().stream().flatMap(TopSection::of);
        }
        boolean drawers = top.filter(SectionLayout.Drawers.class::isInstance)
                .map(section -> !((SectionLayout.Drawers) section).drawers().isEmpty())
                .orElse(false);
        return Stream.of(new TopSection(bay.name(), bay.opening(), drawers));
    }
}
