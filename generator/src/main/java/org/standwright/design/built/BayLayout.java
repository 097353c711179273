package org.standwright.design.built;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.geom.Rect;

/**
 * One bay as built.
 *
 * @param name its number from the left, starting at 1; of a bay within a bay with a letter: '2a'
 * @param opening seen from the front in the assembly frame: x to the right, y is the height
 * @param sections from top to bottom
 */
public record BayLayout(String name, Rect opening, List<SectionLayout> sections) {
    public BayLayout {
        sections = List.copyOf(sections);
    }

    /** All its drawers, from top to bottom, with those of the bays within it. */
    public List<DrawerLayout> drawers() {
        return sections.stream().flatMap(BayLayout::drawers).toList();
    }

    /** All its doors, from top to bottom, with those of the bays within it. */
    public List<DoorLayout> doors() {
        return sections.stream().flatMap(BayLayout::doors).toList();
    }

    private static Stream<DrawerLayout> drawers(SectionLayout section) {
        if (section instanceof SectionLayout.Drawers drawers) {
            return drawers.drawers().stream();
        }
        return section instanceof SectionLayout.Divided divided
                ? divided.bays().stream().flatMap(bay -> bay.drawers().stream())
                : Stream.empty();
    }

    private static Stream<DoorLayout> doors(SectionLayout section) {
        if (section instanceof SectionLayout.Closed closed) {
            return closed.doors().stream();
        }
        return section instanceof SectionLayout.Divided divided
                ? divided.bays().stream().flatMap(bay -> bay.doors().stream())
                : Stream.empty();
    }
}
