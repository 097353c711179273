package org.standwright.viewer.app;

import java.util.Optional;
import java.util.function.Supplier;

/** Something that is made when it is first asked for. */
final class Once<T> {
    private final Supplier<? extends T> maker;
    private Optional<T> made = Optional.empty();

    Once(Supplier<? extends T> maker) {
        this.maker = maker;
    }

    T get() {
        if (made.isEmpty()) {
            made = Optional.of(maker.get());
        }
        return made.get();
    }

    /** What was made, if anybody asked for it. */
    Optional<T> made() {
        return made;
    }
}
