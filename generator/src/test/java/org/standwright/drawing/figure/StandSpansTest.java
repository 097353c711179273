package org.standwright.drawing.figure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.standwright.design.Designs;
import org.standwright.design.stand.StandBuilder;
import org.standwright.drawing.figure.DimensionChain.Span;

class StandSpansTest {
    /** Added by hand: overlay fronts of 18 mm on bumpers of 1.5 mm, under an overhang of 20 mm: 0.5 + 19.5 + 560 = 580. */
    @Test
    void depthsAddUpToTheWhole() {
        var spans = new StandSpans(StandBuilder.build(Designs.planerStand()), new Scale(10));

        assertThat(spans.depths()).extracting(Span::words).containsExactly("0.5", "19.5", "560");
        assertThat(spans.wholeDepth()).extracting(Span::words).containsExactly("580");
    }
}
