package org.standwright.viewer.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.SimpleObjectProperty;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standwright.drawing.Point;
import org.standwright.make.Product;
import org.standwright.viewer.Examples;
import org.standwright.viewer.work.Job;

class SheetsModelTest {
    private static Product product;
    private static DrawnPlan drawn;

    private final SimpleObjectProperty<Optional<DrawnPlan>> plan = new SimpleObjectProperty<>(Optional.of(drawn));
    private final SimpleObjectProperty<Optional<String>> picked = new SimpleObjectProperty<>(Optional.empty());
    private SheetsModel model;

    @BeforeAll
    static void drawThePlan() {
        product = Examples.planerStand();
        drawn = DrawnPlan.of(job(product));
    }

    @BeforeEach
    void look() {
        model = new SheetsModel(plan, picked);
    }

    static Job job(Product product) {
        return new Job(product.furniture(), product.cutList(), product.plan());
    }

    @Test
    void everyPartThatIsCutFromSheetsLiesOnOneOfThem() {
        var parts = product.cutList().sheetLines().stream()
                .flatMap(line -> line.members().stream())
                .toList();

        assertThat(drawn.parts()).extracting(LaidPart::part).containsExactlyInAnyOrderElementsOf(parts);
    }

    @Test
    void pickingOnThePaperFindsThePartThatLiesThere() {
        for (var laid : drawn.on(0)) {
            var rect = drawn.papers().get(0).onPaper(laid.area());
            model.pick(new Point((rect.x0() + rect.x1()) / 2, (rect.y0() + rect.y1()) / 2));

            assertThat(picked.get()).contains(laid.part());
            assertThat(model.marked()).contains(laid);
        }
    }

    @Test
    void pickingBesideTheBoardPicksNothing() {
        model.pick(new Point(1, 1));

        assertThat(picked.get()).isEmpty();
    }

    @Test
    void aPickedPartTurnsToItsSheet() {
        var last = drawn.papers().size() - 1;
        var laid = drawn.on(last).get(0);
        picked.set(Optional.of(laid.part()));

        assertThat(model.paperProperty().get()).isEqualTo(last);
        assertThat(model.marked()).contains(laid);
    }

    @Test
    void cutsAreSteppedThroughInTheirOrderAndOnTheirSheet() {
        int count = model.steps().size();
        assertThat(model.place()).isEqualTo(count + " cuts");
        for (int i = 1; i <= count; i++) {
            model.nextCut();

            assertThat(model.place()).isEqualTo("Cut " + i + " of " + count);
            assertThat(model.sheet().orElseThrow().index())
                    .isEqualTo(model.step().orElseThrow().made().sheet());
        }
        model.nextCut();
        assertThat(model.isLastCut()).isTrue();
        assertThat(model.doneProperty().get()).isEqualTo(count);
    }

    @Test
    void stepsAreAllCutsOfTheMaterialEachOnce() {
        var material = product.plan().materials().get(0);
        var numbers = material.sheets().stream()
                .flatMap(sheet -> sheet.cuts().stream())
                .map(cut -> cut.number())
                .toList();

        assertThat(model.steps()).extracting(step -> step.cut().number()).containsExactlyInAnyOrderElementsOf(numbers);
    }

    @Test
    void theSecondStageComesLastAndSaysThatItWaits() {
        var stages = DrawnPlan.of(job(Examples.scrollSawStand())).steps().values();

        assertThat(stages)
                .allSatisfy(
                        steps -> assertThat(steps).extracting(CutStep::waits).isSorted());
        assertThat(stages.stream().flatMap(List::stream).filter(CutStep::waits))
                .isNotEmpty()
                .allSatisfy(step -> assertThat(step.stage()).startsWith("Second stage"));
    }

    @Test
    void firstAndLastAndBack() {
        model.lastCut();
        assertThat(model.isLastCut()).isTrue();
        model.firstCut();
        assertThat(model.doneProperty().get()).isOne();
        model.previousCut();
        model.previousCut();
        assertThat(model.step()).isEmpty();
    }

    @Test
    void cutsStartAnewOnASheetOfAnotherMaterial() {
        model.nextCut();
        model.look(drawn.papers().size() - 1);

        assertThat(model.doneProperty().get()).isZero();
    }

    @Test
    void anotherPlanStartsItsCutsAnewAndKeepsTheSheetsNumber() {
        model.look(1);
        model.nextCut();
        model.look(1);
        plan.set(Optional.of(DrawnPlan.of(job(Examples.scrollSawStand()))));

        assertThat(model.doneProperty().get()).isZero();
        assertThat(model.paperProperty().get()).isEqualTo(1);
        plan.set(Optional.empty());
        assertThat(model.sheet()).isEmpty();
        assertThat(model.parts()).isEqualTo(List.of());
    }

    @Test
    void saysHowACutIsMadeAndWhatFallsFree() {
        var material = product.plan().materials().get(0);
        var words = model.steps().stream()
                .map(step -> step.how(material, product.units()))
                .toList();

        assertThat(words.get(0))
                .matches("Set-up 1: (rip|crosscut) \\(trim\\) with the (hand-held )?saw, .* mm from the"
                        + " (left|right|lower|upper) edge, good face (up|down).*\\.");
        assertThat(words).anySatisfy(how -> assertThat(how).contains("set as before"));
        assertThat(model.steps())
                .extracting(CutStep::frees)
                .anySatisfy(frees -> assertThat(frees).startsWith("Falls free: "))
                .contains("Nothing falls free yet.");
    }
}
