package org.standwright.drawing.plot;

import java.util.List;
import org.standwright.geom.Require;

/**
 * A drawing at true size.
 *
 * @param title what it shows, for the reader of a file
 * @param width from x = 0 on, mm
 * @param height from y = 0 on, mm
 * @param layers each named once
 */
public record Plot(String title, double width, double height, List<Layer> layers) {
    public Plot {
        Require.named("plot", title);
        Require.positive("width", width, title);
        Require.positive("height", height, title);
        layers = List.copyOf(layers);
        if (layers.stream().map(Layer::name).distinct().count() < layers.size()) {
            throw new IllegalArgumentException("'" + title + "' has two layers of one name; join them.");
        }
    }
}
