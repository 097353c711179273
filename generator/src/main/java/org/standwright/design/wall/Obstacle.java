package org.standwright.design.wall;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Something on a wall or before it that no cleat crosses.
 *
 * @param name what messages call it; its kind without one
 * @param x left edge, from the wall's left end, mm
 * @param bottom lower edge above the floor, mm
 * @param width to the right, mm; of a stand, that of the stand
 * @param height upwards, mm; of a stand, that of the stand and its machine
 * @param depth how far it stands out from the wall, mm; 0 for what is flush
 * @param casing width of the trim around a door or window, beyond {@code width} and {@code height}, mm
 * @param margin kept free around it and its casing, mm; that of its kind without one
 * @param swing how a door opens
 * @param stand one of our own stands that stands before the wall
 */
public record Obstacle(
        Kind kind,
        Optional<String> name,
        double x,
        double bottom,
        OptionalDouble width,
        OptionalDouble height,
        double depth,
        double casing,
        OptionalDouble margin,
        Optional<Swing> swing,
        Optional<StandBox> stand) {

    /** What it is, and how much is kept free around it (common practice, no source). */
    public enum Kind {
        @JsonProperty("door")
        DOOR("door", 10),
        @JsonProperty("window")
        WINDOW("window", 10),
        @JsonProperty("outlet")
        OUTLET("outlet", 50),
        @JsonProperty("switch")
        SWITCH("switch", 50),
        @JsonProperty("electrical-panel")
        ELECTRICAL_PANEL("electrical panel", 0),
        @JsonProperty("pipe")
        PIPE("pipe", 25),
        @JsonProperty("beam")
        BEAM("beam", 5),
        @JsonProperty("radiator")
        RADIATOR("radiator", 100),
        @JsonProperty("bench")
        BENCH("bench", 0),
        @JsonProperty("cabinet")
        CABINET("cabinet", 0),
        @JsonProperty("stand")
        STAND("stand", 0);

        private final String words;
        private final double margin;

        Kind(String words, double margin) {
            this.words = words;
            this.margin = margin;
        }

        public String words() {
            return words;
        }

        /** Kept free around it where its maker says nothing, mm. */
        public double margin() {
            return margin;
        }

        /** Whether there is wiring in it. */
        public boolean isElectrical() {
            return this == OUTLET || this == SWITCH || this == ELECTRICAL_PANEL;
        }

        /** Whether it stands on the floor before the wall, with room for a holder above it. */
        public boolean isFurniture() {
            return this == BENCH || this == CABINET || this == STAND;
        }
    }

    /** 'the door', or the name that its maker gave it. */
    public String called() {
        return name.or(() -> stand.map(StandBox::name)).orElse(kind.words());
    }
}
