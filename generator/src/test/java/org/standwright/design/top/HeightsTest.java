package org.standwright.design.top;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;
import static org.standwright.design.Designs.given;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.Mount;
import org.standwright.design.Place;
import org.standwright.design.StandDesign;
import org.standwright.design.Support;
import org.standwright.design.Work;
import org.standwright.design.WorkingHeight;
import org.standwright.design.built.HeightStack.Term;
import org.standwright.design.kit.Range;
import org.standwright.design.kit.Reference;
import org.standwright.design.stand.Clearances;
import org.standwright.design.stand.StandBuilder;
import org.standwright.unit.Units;

class HeightsTest {
    /**
     * Elbow 1104 and shoes 25: light work at 1029 to 1079, heavy at 729 to 929; the middle is taken. Elbow: ANSUR II,
     * median of the men; offsets: CCOHS and AUVA, as quoted.
     */
    @ParameterizedTest
    @CsvSource({"LIGHT, 1054", "HEAVY, 829", "PRECISE, 1204"})
    void worksInTheMiddleOfTheRangeForAnElbow(Work work, double height) {
        var design = at(new WorkingHeight.Elbow(1104, 25, work));

        assertThat(StandBuilder.build(design).stack().workingHeight()).isEqualTo(height);
    }

    /** 1022 + 25 - 75 = 972 mm is 38.27 in; the nearest sixteenth is 38 1/4 in = 971.55 mm. Own arithmetic. */
    @Test
    void goesToTheNearestMarkOfTheTape() {
        var design = Draft.of(at(new WorkingHeight.Elbow(1022, 25, Work.LIGHT)), draft -> draft.unit = Units.INCH);
        var stack = StandBuilder.build(design).stack();

        assertThat(stack.workingHeight()).isCloseTo(38.25 * 25.4, within(1e-9));
        assertThat(stack.sum()).isCloseTo(38.25 * 25.4, within(1e-6));
    }

    /** A table 250 to 330 above the base, used at 280, can go 30 down and 50 up. */
    @Test
    void letsAMovableTableMove() {
        var design = TopDesigns.press(draft -> draft.machine = Draft.OfMachine.of(
                TopDesigns.PRESS,
                machine -> machine.reference = new Reference(
                        Reference.Kind.MOVABLE_TABLE, 280, OptionalDouble.of(250), OptionalDouble.of(330))));
        var terms = StandBuilder.build(design).stack().terms();

        assertThat(terms).last().isEqualTo(new Term("machine table at its usual setting", 280, 30, 50));
    }

    @Test
    void countsShimsUnderTheMachine() {
        var design = TopDesigns.press(draft -> draft.place = TopDesigns.shims(Designs.CENTRED, new Range(2, 5, 12)));
        var stand = StandBuilder.build(design);

        assertThat(stand.stack().terms()).contains(new Term("shims under the machine", 5, 3, 7));
        assertThat(stand.stack().sum()).isCloseTo(1000, within(1e-6));
        double worktop = stand.carcass().max().z() + 36;
        assertThat(stand.machine().orElseThrow().base().min().z()).isCloseTo(worktop + 5, within(1e-9));
        assertThat(stand.machine().orElseThrow().base().max().z()).isCloseTo(1000, within(1e-9));
        Clearances.check(stand.assembly());
    }

    @Test
    void hasNothingToShimWithoutAMachineOnTheWorktop() {
        var design = TopDesigns.press(draft -> {
            draft.machine = Draft.OfMachine.of(
                    TopDesigns.PRESS, machine -> machine.reference = Reference.fixed(Reference.Kind.WORKTOP, 0));
            draft.place = TopDesigns.shims(Designs.CENTRED, new Range(0, 0, 5));
        });

        assertThat(Refusals.of(design).field()).isEqualTo("/place/shims");
    }

    /** Levelers of 25 to 60 mm give 35: enough for a fall of 30 and 5 mm more, not for 30.1 (shop practice). */
    @ParameterizedTest
    @CsvSource({"30, true", "30.1, false"})
    void stoodBesideAnotherSurfaceTakesTheFloorsFallAndFiveMillimetresMore(double fall, boolean builds) {
        var design = at(new WorkingHeight.Beside("bench", 1000, 0, fall));

        if (builds) {
            assertThat(StandBuilder.build(design).stack().workingHeight()).isEqualTo(1000);
        } else {
            assertThat(Refusals.of(design))
                    .hasMessageContaining("To stand level with the bench on a floor that falls 30.1 mm")
                    .extracting("field")
                    .isEqualTo("/workingHeight");
        }
    }

    @Test
    void standsBelowTheSurfaceBesideIt() {
        var design = at(new WorkingHeight.Beside("table saw", 900, 3, 4));

        assertThat(StandBuilder.build(design).stack().workingHeight()).isEqualTo(897);
        assertThat(Refusals.of(at(new WorkingHeight.Beside("table saw", 900, -1, 4)))
                        .field())
                .isEqualTo("/workingHeight/below");
    }

    /** On a plinth nothing gives: a fall of 8 needs 13 mm of shims. */
    @Test
    void namesShimsThatThenBuild() {
        var design = onPlinth(new WorkingHeight.Beside("bench", 1000, 0, 8), Designs.CENTRED);
        var refusal = Refusals.of(design);

        assertThat(refusal)
                .hasMessageContaining("\"shims\": {\"least\": \"0 mm\", \"usual\": \"7 mm\", \"most\": \"13 mm\"}");
        var cured = onPlinth(design.workingHeight(), TopDesigns.shims(Designs.CENTRED, new Range(0, 7, 13)));
        var stack = StandBuilder.build(cured).stack();
        assertThat(stack.highest() - stack.lowest()).isCloseTo(13, within(1e-9));
    }

    /** Fronts that fill the carcass have nothing to give to shims: they start at nothing. */
    @Test
    void takesNoHeightForShimsFromAColumnThatIsFull() {
        var full = Draft.of(
                Designs.stand(
                        1000, new Support.Plinth(95, 75, 5), Mount.OVERLAY, List.of(bay(given(200.0, 200.0, 202.0)))),
                draft -> {
                    draft.machine = TopDesigns.PRESS;
                    draft.workingHeight = new WorkingHeight.Beside("bench", 1000, 0, 8);
                    draft.plan(600, 500);
                });
        assertThat(Refusals.of(full)).hasMessageContaining("\"usual\": \"0 mm\", \"most\": \"13 mm\"");
        StandBuilder.build(Draft.of(
                full, draft -> draft.place = TopDesigns.shims(Designs.CENTRED, new Range(0, 0, 13))));
    }

    /** More shims where there are some already: 0 to 6 become 0 to 13. */
    @Test
    void widensTheShimsThatAreThere() {
        var design = onPlinth(
                new WorkingHeight.Beside("bench", 1000, 0, 8), TopDesigns.shims(Designs.CENTRED, new Range(0, 3, 6)));

        assertThat(Refusals.of(design)).hasMessageContaining("\"usual\": \"7 mm\", \"most\": \"13 mm\"");
    }

    private static StandDesign at(WorkingHeight height) {
        return Draft.of(TopDesigns.stand(bay(equal(3))), draft -> draft.workingHeight = height);
    }

    private static StandDesign onPlinth(WorkingHeight height, Place place) {
        return TopDesigns.press(draft -> {
            draft.support = new Support.Plinth(95, 75, 5);
            draft.workingHeight = height;
            draft.place = place;
        });
    }
}
