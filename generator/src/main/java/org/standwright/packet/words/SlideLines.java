package org.standwright.packet.words;

import java.util.Optional;
import java.util.OptionalDouble;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.kit.Slide;

/** Slides of a drawer and where they are screwed on; nothing for a drawer that runs on something else. */
public final class SlideLines {
    private SlideLines() {}

    public static Optional<Slide.Size> slide(DrawerLayout drawer) {
        return Optional.of(drawer.slide());
    }

    /** Centre of the slide above the top face of the bottom panel, mm. */
    public static OptionalDouble onSide(DrawerLayout drawer) {
        return OptionalDouble.of(drawer.slideLineOnSide());
    }

    /** Centre of the slide above the lower edge of the box, mm. */
    public static OptionalDouble onBox(DrawerLayout drawer) {
        return OptionalDouble.of(drawer.slideLineOnBox());
    }
}
