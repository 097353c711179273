package org.standwright.packet.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.standwright.cutlist.BarRun;
import org.standwright.cutlist.CutLine;
import org.standwright.design.kit.Bar;
import org.standwright.part.Part;

class BarsToBuyTest {
    private static BarsToBuy from(double length) {
        var bar = new Bar("oak strip", 40, 20, 700, length, Optional.empty());
        var lines = List.of(
                line("A", "kicker", 390, 3, bar), line("B", "runner", 600, 1, bar), line("C", "stop", 500, 1, bar));
        return new BarsToBuy(new BarRun(bar.material(), lines), Optional.of(bar), 3);
    }

    private static CutLine line(String label, String name, double length, int count, Bar bar) {
        return new CutLine(
                label, Part.blank(name, bar.material(), length, 40), Collections.nCopies(count, name), List.of());
    }

    /** By hand, bars of 1000 and a kerf of 3: 600 + 3 + 390 fit one bar, 500 + 3 + 390 the next, 390 the last. */
    @Test
    void cutsFullBarsFirstAndTheLongestPieceOfEachFirst() {
        assertThat(from(1000).plan()).containsExactly(List.of("B", "A"), List.of("C", "A"), List.of("A"));
        assertThat(from(1000).barPlan().orElseThrow().proof().isMinimal()).isTrue();
    }

    @Test
    void namesThePieceThatIsLongerThanABar() {
        assertThatThrownBy(() -> from(550).plan())
                .hasMessageContaining("'runner' is 600.0 mm long, but a bar of 'oak strip' only 550.0 mm");
    }
}
