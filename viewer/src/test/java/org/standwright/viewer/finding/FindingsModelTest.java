package org.standwright.viewer.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.SimpleObjectProperty;
import org.junit.jupiter.api.Test;
import org.standwright.check.Finding;
import org.standwright.check.Severity;
import org.standwright.design.built.Furniture;
import org.standwright.unit.Units;
import org.standwright.viewer.Examples;

class FindingsModelTest {
    private final SimpleObjectProperty<List<Finding>> findings = new SimpleObjectProperty<>(List.of(
            Made.note("a"),
            Made.sag(0.1),
            Made.stop("b"),
            Made.caution("c"),
            Made.note("d"),
            Made.stop("e").waivedFor("It stands still.")));
    private final SimpleObjectProperty<Optional<Furniture>> furniture = new SimpleObjectProperty<>(Optional.empty());
    private final FindingsModel model = new FindingsModel(findings, furniture);

    private List<String> open() {
        return model.openProperty().getValue().stream().map(Finding::subject).toList();
    }

    @Test
    void theHeaviestComeFirstAndTheRulesOrderIsKeptAmongEquals() {
        assertThat(open()).containsExactly("b", "c", "a", "d");
    }

    @Test
    void whatIsFineIsShownWhenItIsAskedFor() {
        model.shownProperty(Severity.FINE).set(true);

        assertThat(open()).containsExactly("b", "c", "a", "d", "worktop");
    }

    @Test
    void filtersByWeight() {
        model.shownProperty(Severity.NOTE).set(false);

        assertThat(open()).containsExactly("b", "c");
        assertThat(model.count(Severity.NOTE)).isEqualTo(2);
    }

    @Test
    void theFilterStaysWhenTheFindingsChange() {
        model.shownProperty(Severity.NOTE).set(false);
        findings.set(List.of(Made.note("f"), Made.caution("g")));

        assertThat(open()).containsExactly("g");
    }

    @Test
    void whatIsAcceptedStandsApartWhateverTheFilterSays() {
        model.shownProperty(Severity.STOP).set(false);

        assertThat(model.accepted()).extracting(Finding::subject).containsExactly("e");
        assertThat(model.count(Severity.STOP)).isEqualTo(1);
    }

    @Test
    void knowsAPartByItsLabelAlone() {
        assertThat(model.part(Made.stop("left side"))).isEmpty();
        furniture.set(Optional.of(Examples.planerStand().furniture()));

        assertThat(model.part(Made.stop("left side"))).contains("left side");
        assertThat(model.part(Made.stop("whole stand"))).isEmpty();
    }

    @Test
    void twoDesignsFindingsThatReadAlikeAreOneCard() {
        var before = CardText.of(Made.cured(2), Units.MM, Optional.empty());

        assertThat(CardText.of(Made.cured(2), Units.MM, Optional.empty()))
                .isEqualTo(before)
                .hasSameHashCodeAs(before);
        assertThat(CardText.of(Made.cured(3), Units.MM, Optional.empty())).isNotEqualTo(before);
        assertThat(CardText.of(Made.cured(2), Units.INCH, Optional.empty())).isNotEqualTo(before);
        assertThat(CardText.of(Made.sag(2), Units.MM, Optional.empty())).isNotEqualTo(before);
    }
}
