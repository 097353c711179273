package org.standwright.solid;

import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.standwright.part.Part;

/** What a part's features take straight down, drawn with JTS from the part alone, for tests elsewhere. */
public final class ModelCuts {
    /** Takes its whole footprint between two heights, mm. */
    public record Cut(Geometry footprint, double low, double high) {}

    private ModelCuts() {}

    public static List<Cut> of(Part part) {
        return new Footprints(part, false)
                .cuts().stream()
                        .map(cut -> new Cut(cut.footprint(), cut.low(), cut.high()))
                        .toList();
    }
}
