package org.standwright.part;

import com.fasterxml.jackson.annotation.JsonProperty;
import org.standwright.geom.Require;

/**
 * The thickness that a sheet is sold under, and the rule that says how far the real one may be off.
 *
 * @param thickness as sold, mm
 */
public record Nominal(double thickness, Standard standard) {
    public Nominal {
        Require.positive("nominal thickness", thickness, standard.name());
    }

    /** A rule for the thickness of plywood. */
    public enum Standard {
        /**
         * Sanded metric plywood: +(0.2 + 0.03 t) / -(0.4 + 0.03 t) mm, as in EN 315; read in the text of its adoption
         * GB/T 9846 and in a birch mill's table.
         */
        @JsonProperty("metric-sanded")
        METRIC_SANDED,
        /**
         * Unsanded US structural plywood by performance category: ± 1/32 in up to 13/16 in, ± 5 % above, limits to
         * 0.001 in; US Product Standard PS 1, performance-category thickness table.
         */
        @JsonProperty("us-unsanded")
        US_UNSANDED
    }

    /** Thinnest sheet that the rule allows, mm. */
    public double least() {
        return switch (standard) {
            case METRIC_SANDED -> thickness - (0.4 + 0.03 * thickness);
            case US_UNSANDED -> thickness - category();
        };
    }

    /** Thickest sheet that the rule allows, mm. */
    public double most() {
        return switch (standard) {
            case METRIC_SANDED -> thickness + 0.2 + 0.03 * thickness;
            case US_UNSANDED -> thickness + category();
        };
    }

    private double category() {
        double thirteenSixteenths = 13 * 25.4 / 16;
        return thickness <= thirteenSixteenths + 1e-9 ? 25.4 / 32 : 0.05 * thickness;
    }
}
