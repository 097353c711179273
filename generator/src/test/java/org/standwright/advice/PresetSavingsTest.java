package org.standwright.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.standwright.Presets;
import org.standwright.design.CarcassPlan;
import org.standwright.design.Draft;
import org.standwright.design.Savings;
import org.standwright.design.StandDesign;
import org.standwright.design.kit.Saw;

class PresetSavingsTest {
    private static final Pattern DEPTH = Pattern.compile(".* less deep: the plan (.*) deep");
    private static final Savings.Give NONE = new Savings.Give(0, 0);

    /** What the advice says is written into the file, and the file comes to what the advice promised. */
    @Test
    void aFileChangedByTheAdviceComesToWhatItSays() {
        var text = Presets.shipped().show("stand/table-saw-stand");
        var design = read(text);
        var advice = TightTops.advice(design);
        var shallow = advice.savings().stream()
                .filter(saving -> DEPTH.matcher(saving.words(design)).matches())
                .findFirst()
                .orElseThrow();
        var depth = DEPTH.matcher(shallow.words(design)).replaceAll("$1");

        var changed = read(text.replace("\"depth\": \"26 in\"", "\"depth\": \"" + depth + "\""));

        assertThat(TightTops.plan(changed)).isEqualTo(TightTops.plan(shallow.design()));
        assertThat(Cost.of(TightTops.plan(changed))).isEqualTo(shallow.after());
        assertThat(Cost.of(TightTops.plan(design))).isEqualTo(advice.before());
        assertThat(shallow.also()).containsExactly("drawer boxes 22 in deep instead of 24 in");
    }

    /** A whole back is as wide as the stand; two pieces find room beside drawer bottoms. */
    @Test
    void aBackInTwoPiecesSavesASheetOfTheMitreSawsStand() {
        var whole = Draft.of(read(Presets.shipped().show("stand/mitre-saw-stand")), draft -> {
            var now = draft.carcass;
            draft.carcass = new CarcassPlan(now.sheet(), now.back(), now.housing(), now.fit(), now.joint());
            draft.saw = new Saw(3.2, 6);
            draft.savings = Optional.of(new Savings(NONE, NONE, NONE, 0, List.of(), true, List.of(now.back())));
        });
        var advice = TightTops.advice(whole);

        assertThat(advice.savings())
                .extracting(saving -> saving.words(whole))
                .containsExactly(
                        "the back in 2 pieces that meet on a partition",
                        "parts of Plywood 1/4 in in either direction: its grain none");
        assertThat(advice.savings())
                .allMatch(saving -> saving.after().sheets() == advice.before().sheets() - 1);
    }

    private static StandDesign read(String text) {
        return Presets.stand("stand.json", text);
    }
}
