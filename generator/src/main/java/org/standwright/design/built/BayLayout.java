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
        return leaves().stream()
                .filter(SectionLayout.Drawers.class::isInstance)
                .flatMap(section -> ((SectionLayout.Drawers) section).drawers().stream())
                .toList();
    }

    /** All its doors, from top to bottom, with those of the bays within it. */
    public List<DoorLayout> doors() {
        return leaves().stream()
                .filter(SectionLayout.Closed.class::isInstance)
                .flatMap(section -> ((SectionLayout.Closed) section).doors().stream())
                .toList();
    }

    /** All its openings that are not divided again, from top to bottom, with those of the bays within it. */
    public List<SectionLayout> leaves() {
        return sections.stream()
                .flatMap(section -> section instanceof SectionLayout.Divided divided
                        ? divided.bays().stream().flatMap(bay -> bay.leaves().stream())
                        : Stream.of(section))
                .toList();
    }
}
