package org.standwright.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.standwright.assembly.Assembly;
import org.standwright.assembly.PlacedPart;

/** What must hold for the solid of every part of any assembly. */
public final class ClosedSolids {
    private ClosedSolids() {}

    /** Every distinct part has a solid without open edges, of the volume that its features leave. */
    public static void check(Assembly assembly) {
        assembly.parts().stream().map(PlacedPart::part).distinct().forEach(part -> {
            double expected = LayeredVolume.of(part);
            var read = ReadBack.of(Solids.of(part));

            assertThat(read.openEdges()).as(part.name()).isZero();
            assertThat(read.volume()).as(part.name()).isCloseTo(expected, within(1 + 1e-6 * expected));
        });
    }
}
