package org.standwright.viewer.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import org.standwright.drawing.Weight;

/** The typeface that drawings are laid out with, on the screen. */
final class Typeface {
    /** Some size; others come from it by name. */
    private static final double ANY = 12;

    private final Map<Weight, Font> loaded = new EnumMap<>(Weight.class);
    private final Map<Weight, Map<Double, Font>> bySize = new EnumMap<>(Weight.class);

    private Typeface() {
        for (var weight : Weight.values()) {
            loaded.put(weight, load(weight));
            bySize.put(weight, new ConcurrentHashMap<>());
        }
    }

    /** Reads it when it is first asked for. */
    private static final class Shipped {
        private static final Typeface TYPEFACE = new Typeface();
    }

    static Typeface shipped() {
        return Shipped.TYPEFACE;
    }

    Font of(Weight weight, double size) {
        return bySize.get(weight)
                .computeIfAbsent(
                        size,
                        wanted -> Font.font(
                                loaded.get(weight).getFamily(),
                                weight == Weight.BOLD ? FontWeight.BOLD : FontWeight.NORMAL,
                                wanted));
    }

    private static Font load(Weight weight) {
        try (var file = weight.open()) {
            return Font.loadFont(file, ANY);
        } catch (IOException e) {
            throw new UncheckedIOException("the typeface in the program's own jar cannot be read.", e);
        }
    }
}
