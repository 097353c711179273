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
        return leaves(SectionLayout.Drawers.class)
                .flatMap(section -> section.drawers().stream())
                .toList();
    }

    /** All its doors, from top to bottom, with those of the bays within it. */
    public List<DoorLayout> doors() {
        return leaves(SectionLayout.Closed.class)
                .flatMap(section -> section.doors().stream())
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

    /** Those of its openings that are of one kind, in the same order. */
    public <S extends SectionLayout> Stream<S> leaves(Class<S> kind) {
        return leaves().stream().filter(kind::isInstance).map(kind::cast);
    }
}
