package org.standwright.export.dxf;

import java.util.List;
import org.standwright.part.Colour;

/**
 * The nearest of the nine standard colours that every DXF reader knows. Number 7 is black on a light ground and white on a
 * dark one. (True colours came later than R2000.)
 */
final class ColourIndex {
    private static final List<Colour> STANDARD = List.of(
            new Colour(255, 0, 0),
            new Colour(255, 255, 0),
            new Colour(0, 255, 0),
            new Colour(0, 255, 255),
            new Colour(0, 0, 255),
            new Colour(255, 0, 255),
            new Colour(0, 0, 0),
            new Colour(128, 128, 128),
            new Colour(192, 192, 192));

    private ColourIndex() {}

    /** 1 to 9. */
    static int of(Colour colour) {
        int nearest = 0;
        for (int i = 1; i < STANDARD.size(); i++) {
            if (distance(colour, STANDARD.get(i)) < distance(colour, STANDARD.get(nearest))) {
                nearest = i;
            }
        }
        return distance(colour, new Colour(255, 255, 255)) < distance(colour, STANDARD.get(nearest)) ? 7 : nearest + 1;
    }

    private static int distance(Colour a, Colour b) {
        int red = a.red() - b.red();
        int green = a.green() - b.green();
        int blue = a.blue() - b.blue();
        return red * red + green * green + blue * blue;
    }
}
