package org.standwright.drawing.wall;

import java.util.Map;
import java.util.Optional;

/**
 * What is printed beside strips and holders.
 *
 * @param limits what each may carry, '≤ 42 kg', by the label of a strip or the name of a holder
 */
public record WallLabels(Map<String, String> limits) {
    /** Nothing beside names. */
    public static final WallLabels NONE = new WallLabels(Map.of());

    public WallLabels {
        limits = Map.copyOf(limits);
    }

    /** Of a strip's label or a holder's name. */
    public Optional<String> limit(String label) {
        return Optional.ofNullable(limits.get(label));
    }
}
