package org.standwright.drawing.wall;

import java.util.Map;
import java.util.Optional;

/**
 * What is printed beside strips and holders.
 *
 * @param limits what each may carry, '≤ 42 kg', by the label of a strip or the name of a holder
 * @param weakest what gives first beyond it, 'the screw is drawn out', by the same
 */
public record WallLabels(Map<String, String> limits, Map<String, String> weakest) {
    /** Nothing beside names. */
    public static final WallLabels NONE = new WallLabels(Map.of(), Map.of());

    public WallLabels {
        limits = Map.copyOf(limits);
        weakest = Map.copyOf(weakest);
    }

    /** Of a strip's label or a holder's name. */
    public Optional<String> limit(String label) {
        return Optional.ofNullable(limits.get(label));
    }

    /** What gives first beyond the limit of a strip's label or a holder's name. */
    public Optional<String> weakest(String label) {
        return Optional.ofNullable(weakest.get(label));
    }
}
