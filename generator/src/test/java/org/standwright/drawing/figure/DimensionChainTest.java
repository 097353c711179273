package org.standwright.drawing.figure;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.standwright.drawing.Lettering;
import org.standwright.drawing.Shape;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.figure.DimensionChain.Span;

class DimensionChainTest {
    private static final TextMeasure MEASURE = TextMeasure.shipped();

    @ParameterizedTest
    @EnumSource(Side.class)
    void figuresNeverOverlapHoweverShortTheirSpans(Side side) {
        var random = new SplittableRandom(7);
        for (int run = 0; run < 50; run++) {
            var shapes = new ArrayList<Shape>();
            double begin = 0;
            for (int chain = 0; chain < 3; chain++) {
                var taken = Lettering.of(shapes, MEASURE);
                var drawn = DimensionChain.of(side, 0, begin, spans(random), taken, MEASURE);
                shapes.addAll(drawn.shapes());
                begin = drawn.end();
            }
            var texts = Lettering.of(shapes, MEASURE).texts();
            for (int i = 0; i < texts.size(); i++) {
                for (int j = 0; j < i; j++) {
                    assertThat(Lettering.overlap(
                                    texts.get(i).box(), texts.get(j).box()))
                            .as("%s and %s, run %d", texts.get(i), texts.get(j), run)
                            .isFalse();
                }
            }
        }
    }

    private static List<Span> spans(SplittableRandom random) {
        var spans = new ArrayList<Span>();
        double at = 0;
        int count = random.nextInt(1, 12);
        for (int i = 0; i < count; i++) {
            double length = random.nextDouble(0.2, 12);
            spans.add(new Span(at, at + length, String.valueOf(random.nextInt(1, 3000))));
            at += length;
        }
        return spans;
    }
}
