package org.standwright.drawing.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standwright.geom.Rect;

class EdgeTest {
    private static final Rect CARCASS = new Rect(0, 0, 700, 560);

    @Test
    void aHiddenEdgeOnAVisibleOneIsNotDrawnTwice() {
        var worktop = Edge.of(new Rect(0, -20, 700, 560));

        assertThat(Edge.of(CARCASS))
                .filteredOn(edge -> worktop.stream().noneMatch(edge::liesOn))
                .isEqualTo(List.of(new Edge(true, 0, 0, 700)));
    }

    @Test
    void onlyEdgesInsideARectangleAreUnderIt() {
        assertThat(Edge.of(CARCASS))
                .filteredOn(edge -> edge.isUnder(new Rect(0, -20, 700, 560)))
                .isEqualTo(List.of(new Edge(true, 0, 0, 700)));
    }
}
