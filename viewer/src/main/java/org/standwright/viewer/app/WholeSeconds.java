package org.standwright.viewer.app;

import java.util.function.Supplier;
import javafx.util.StringConverter;

/**
 * Seconds as they are typed; what is no number leaves them as they are.
 */
final class WholeSeconds extends StringConverter<Integer> {
    private final Supplier<Integer> present;

    WholeSeconds(Supplier<Integer> present) {
        this.present = present;
    }

    @Override
    public String toString(Integer seconds) {
        return String.valueOf(seconds);
    }

    @Override
    public Integer fromString(String typed) {
        return typed.strip().matches("\\d{1,4}") ? Integer.valueOf(typed.strip()) : present.get();
    }
}
