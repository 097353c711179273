package org.standwright.sheet.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.standwright.cutlist.CutLine;
import org.standwright.cutlist.CutList;
import org.standwright.design.kit.Saw;
import org.standwright.part.Grain;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.part.SheetGood;
import org.standwright.sheet.Area;
import org.standwright.sheet.Cut;
import org.standwright.sheet.PlacedPiece;
import org.standwright.sheet.Stock;

class SheetPlannerTest {
    private static final double IN = 25.4;

    /** n = floor((S + k) / (s + k)), waste = S - n s - (n - 1) k; own derivation. */
    @Test
    void ripsElevenStripsOf100mmFromASheetOf1220WithAKerfOf3Point2() {
        var eleven =
                SheetJob.sheet(2440, 1220).kerf(3.2).pieces("A", 2440, 100, 11).plan();
        var twelve =
                SheetJob.sheet(2440, 1220).kerf(3.2).pieces("A", 2440, 100, 12).plan();

        assertThat(eleven.sheets()).hasSize(1);
        assertThat(eleven.sheets().get(0).offcuts()).hasSize(1);
        // the last cut takes one kerf more out of the 88.0 mm that are left
        assertThat(eleven.sheets().get(0).offcuts().get(0).width()).isEqualTo(units(88.0 - 3.2));
        assertThat(twelve.sheets()).hasSize(2);
    }

    /** The same formula in inches; own derivation. */
    @Test
    void ripsFifteenStripsOf3InchesFromASheetOf48WithAKerfOfOneEighth() {
        var fifteen = SheetJob.sheet(96 * IN, 48 * IN)
                .kerf(IN / 8)
                .pieces("A", 96 * IN, 3 * IN, 15)
                .plan();
        var sixteen = SheetJob.sheet(96 * IN, 48 * IN)
                .kerf(IN / 8)
                .pieces("A", 96 * IN, 3 * IN, 16)
                .plan();

        assertThat(fifteen.sheets()).hasSize(1);
        assertThat(fifteen.sheets().get(0).offcuts().get(0).width()).isEqualTo(units((1.25 - 0.125) * IN));
        assertThat(sixteen.sheets()).hasSize(2);
    }

    /** (S - (n - 1) k) / n for 48 in into 4; own derivation. */
    @Test
    void cutsASheetIntoEqualStripsWithNothingLeft() {
        var plan = SheetJob.sheet(96 * IN, 48 * IN)
                .kerf(IN / 8)
                .pieces("A", 96 * IN, 11.90625 * IN, 4)
                .plan();

        assertThat(plan.sheets()).hasSize(1);
        assertThat(plan.sheets().get(0).cuts()).hasSize(3);
        assertThat(plan.sheets().get(0).offcuts()).isEmpty();
    }

    /** The same for 1220 mm into 3: 404.533 mm, and not a hundredth more; own derivation. */
    @Test
    void cutsThreeEqualStripsFromAMetricSheet() {
        var three = SheetJob.sheet(2440, 1220).kerf(3.2).pieces("A", 2440, 404.533, 3);
        var wider = SheetJob.sheet(2440, 1220).kerf(3.2).pieces("A", 2440, 404.543, 3);

        assertThat(three.plan().sheets()).hasSize(1);
        assertThat(three.plan().sheets().get(0).offcuts()).isEmpty();
        assertThat(wider.plan().sheets()).hasSize(2);
    }

    @Test
    void fitsTwoPiecesAndAKerfExactlyAndNotOneUnitLess() {
        var exact = SheetJob.sheet(1003, 500).kerf(3).pieces("A", 600, 500, 1).pieces("B", 400, 500, 1);
        var short1 = SheetJob.sheet(1003 - 1.0 / 3200, 500)
                .kerf(3)
                .pieces("A", 600, 500, 1)
                .pieces("B", 400, 500, 1);

        assertThat(exact.plan().sheets()).hasSize(1);
        assertThat(SheetJob.text(exact.plan().sheets().get(0))).isEqualTo("A@0,0; B@603,0");
        assertThat(short1.plan().sheets()).hasSize(2);
    }

    @Test
    void startsInsideTheTrimAndSawsInOrder() {
        var plan = SheetJob.sheet(1020, 520)
                .trim(10)
                .kerf(3)
                .grain()
                .pieces("A", 600, 200, 1)
                .pieces("B", 397, 200, 1)
                .pieces("C", 1000, 250, 1)
                .plan();

        var sheet = plan.sheets().get(0);
        assertThat(SheetJob.text(sheet)).isEqualTo("C@10,10; A@10,263; B@613,263; offcut 1000x44@10,466");
        assertThat(SheetJob.cuts(sheet))
                .isEqualTo("rip at y 7; crosscut at x 7; rip at y 510; crosscut at x 1010;"
                        + " rip at y 260; rip at y 463; crosscut at x 610");
    }

    @Test
    void letsTheBladeRunOffTheEdgeWhereLessThanAKerfIsLeft() {
        var sheet = SheetJob.sheet(1000, 500)
                .kerf(3)
                .pieces("A", 998, 500, 1)
                .plan()
                .sheets()
                .get(0);

        assertThat(sheet.cuts()).extracting(Cut::kerf).containsExactly(area(998, 0, 2, 500));
        assertThat(sheet.offcuts()).isEmpty();
    }

    @Test
    void keepsSliversOutOfTheOffcuts() {
        var sheet = SheetJob.sheet(1000, 500)
                .kerf(3)
                .pieces("A", 1000, 490, 1)
                .plan()
                .sheets()
                .get(0);

        assertThat(sheet.cuts()).hasSize(1);
        assertThat(sheet.offcuts()).isEmpty();
    }

    @Test
    void turnsPiecesOnlyWhereThereIsNoGrain() {
        var plain = SheetJob.sheet(1000, 500).pieces("A", 250, 500, 4);
        var turning = SheetJob.sheet(1000, 500).pieces("A", 500, 250, 3).pieces("B", 500, 250, 1);
        var across = SheetJob.sheet(1000, 500).grain().pieces("A", 400, 700, 1);

        assertThat(plain.plan().sheets()).hasSize(1);
        assertThat(turning.plan().sheets()).hasSize(1);
        assertThatThrownBy(across::plan).isInstanceOf(PartTooLargeException.class);
        assertThat(SheetJob.sheet(1000, 500)
                        .pieces("A", 400, 700, 1)
                        .plan()
                        .sheets()
                        .get(0)
                        .pieces())
                .allMatch(PlacedPiece::turned);
    }

    @Test
    void saysWhichLineIsTooLargeForWhichSheetAndByHowMuch() {
        var job = SheetJob.sheet(2440, 1220)
                .trim(5)
                .kerf(3.2)
                .pieces("A", 100, 100, 1)
                .pieces("B", 2450, 1212, 2);

        var refusal = catchThrowableOfType(PartTooLargeException.class, job::plan);

        assertThat(refusal.label()).isEqualTo("B");
        assertThat(refusal.excessLength()).isEqualTo(20);
        assertThat(refusal.excessWidth()).isEqualTo(2);
        assertThat(refusal)
                .hasMessage("cut line 'B' (part B) is 2450.00 x 1212.00 mm, but a sheet of 'plain board',"
                        + " 2440.00 x 1220.00 mm, leaves 2430.00 x 1210.00 mm inside its trim: 20.00 mm"
                        + " too much along the sheet's length and 2.00 mm too much across it. Make the part smaller or"
                        + " buy a sheet of at least 2460.00 x 1222.00 mm.");
    }

    @Test
    void takesAnOversizePartAtItsCutSize() {
        var material = SheetJob.sheet(1000, 500).sheet().material();
        var part = Part.blank("top", material, 400, 300).cutOver(3);
        var line = new CutLine("A", part, List.of("top"), List.of());
        var job = SheetJob.sheet(1000, 500);

        var plan = SheetPlanner.plan(job.stock(), new CutList(List.of(line), List.of()));

        assertThat(plan.materials().get(0).pieceArea()).isEqualTo((long) units(406) * units(306));
    }

    @Test
    void plansEachMaterialByItselfInTheOrderOfTheCutList() {
        var thin = new Material("thin board", 6, 650, Grain.NONE);
        var thick = new Material("thick board", 18, 650, Grain.NONE);
        var stock = Stock.of(
                new Saw(3, 0),
                new SheetGood(thick, 1000, 500, Optional.empty(), Optional.empty()),
                new SheetGood(thin, 600, 600, Optional.empty(), Optional.empty()));
        var cutList = new CutList(
                List.of(
                        SheetJob.line(thin, "A", 550, 550, 2),
                        SheetJob.line(thick, "B", 900, 400, 1),
                        SheetJob.line(thin, "C", 40, 40, 1)),
                List.of());

        var plan = SheetPlanner.plan(stock, cutList);

        assertThat(plan.materials()).extracting(material -> material.material()).containsExactly(thin, thick);
        assertThat(plan.materials())
                .extracting(material -> material.sheets().size())
                .containsExactly(2, 1);
        assertThat(plan.saw()).isEqualTo(stock.saw());
    }

    @Test
    void plansNothingForAnEmptyCutList() {
        assertThat(SheetPlanner.plan(Stock.of(new Saw(3, 0)), new CutList(List.of(), List.of()))
                        .materials())
                .isEmpty();
    }

    @Test
    void refusesAMaterialThatIsNotInStock() {
        var job = SheetJob.sheet(1000, 500).pieces("A", 100, 100, 1);
        var empty = Stock.of(new Saw(3, 0));

        assertThatThrownBy(() -> SheetPlanner.plan(empty, job.cutList()))
                .hasMessage("stock holds no sheet of 'plain board', but the cut list needs it. Add its length and"
                        + " width to the stock.");
    }

    @Test
    void refusesTwoLinesWithOneLabel() {
        var job = SheetJob.sheet(1000, 500).pieces("A", 100, 100, 1).pieces("A", 200, 100, 1);

        assertThatThrownBy(job::plan).hasMessageContaining("labelled 'A'");
    }

    @Test
    void refusesATrimThatLeavesNothing() {
        var job = SheetJob.sheet(1000, 500).trim(250).pieces("A", 100, 100, 1);

        assertThatThrownBy(job::plan).hasMessageContaining("leaves nothing of a side of 500.0 mm");
    }

    private static int units(double mm) {
        return (int) Math.round(mm * 3200);
    }

    private static Area area(double x, double y, double length, double width) {
        return new Area(units(x), units(y), units(length), units(width));
    }
}
