package org.standwright.export.mesh;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.math.BigDecimal;
import java.math.RoundingMode;
import org.standwright.part.Colour;

/** A colour as glTF wants it: shares of light, not of what a screen is told, and how opaque it is. */
final class LinearColour {
    private static final int PLACES = 6;

    private LinearColour() {}

    static ArrayNode of(Colour colour) {
        var factor = JsonNodeFactory.instance.arrayNode();
        factor.add(rounded(linear(colour.red() / 255.0)));
        factor.add(rounded(linear(colour.green() / 255.0)));
        factor.add(rounded(linear(colour.blue() / 255.0)));
        return factor.add(1);
    }

    /** The curve of sRGB (IEC 61966-2-1) backwards; from memory. */
    static double linear(double share) {
        return share <= 0.04045 ? share / 12.92 : StrictMath.pow((share + 0.055) / 1.055, 2.4);
    }

    private static BigDecimal rounded(double share) {
        return BigDecimal.valueOf(share).setScale(PLACES, RoundingMode.HALF_EVEN);
    }
}
