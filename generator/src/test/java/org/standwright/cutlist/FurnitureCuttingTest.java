package org.standwright.cutlist;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.standwright.design.CarcassPlan;
import org.standwright.design.CuttingPlan;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.FrontGrain;
import org.standwright.design.Joint;
import org.standwright.design.KeptTogether;
import org.standwright.design.Mount;
import org.standwright.design.StandDesign;
import org.standwright.design.stand.StandBuilder;

class FurnitureCuttingTest {
    @Test
    void asksNothingOfAPlainStandButStagesAndThickness() {
        var list = list(Designs.planerStand());

        assertThat(list.cutting().free()).isEmpty();
        assertThat(list.cutting().together()).isEmpty();
        assertThat(names(list, list.cutting().later()))
                .containsExactlyInAnyOrder("drawer side", "box front", "box back", "drawer bottom");
    }

    @Test
    void letsInsetFrontsWait() {
        var inset = Designs.stand(900, Designs.CASTERS, Mount.INSET, List.of(Designs.bay(Designs.equal(3))));

        var list = list(inset);

        assertThat(names(list, list.cutting().later())).contains("drawer front");
    }

    @Test
    void knowsWhatSitsInTheDadosOfAHousedCarcass() {
        var list = list(Designs.planerStand());

        assertThat(names(list, list.cutting().mating()))
                .containsExactlyInAnyOrder(
                        "bottom", "sub-top", "partition", "back", "box front", "box back", "drawer bottom");
    }

    @Test
    void knowsThatButtedPanelsSitInNone() {
        var list = list(Draft.of(
                Designs.planerStand(),
                draft -> draft.carcass =
                        new CarcassPlan(Designs.BOARD_18, Designs.BOARD_6, 6, 0.15, new Joint.Screwed())));

        assertThat(names(list, list.cutting().mating()))
                .containsExactlyInAnyOrder("box front", "box back", "drawer bottom");
    }

    @Test
    void freesTheGrainOfThePartsThatAreNamed() {
        var list = list(asking(List.of("drawer bottom")));

        assertThat(names(list, list.cutting().free())).containsExactly("drawer bottom");
    }

    @Test
    void matchesLevelFrontsSideBySideFromTopToBottom() {
        var list = list(Draft.of(Designs.planerStand(), draft -> draft.matched(FrontGrain.LEVEL)));

        var columns = list.cutting().together();
        assertThat(columns).hasSize(2).allSatisfy(column -> {
            assertThat(column.kind()).isEqualTo(Together.Kind.ONE_STRIP);
            assertThat(column.along()).isEqualTo(Together.Along.WIDTH);
        });
        assertThat(members(list, columns.get(0)))
                .containsExactly("drawer 1.1 front", "drawer 1.2 front", "drawer 1.2 front", "drawer 1.2 front");
    }

    @Test
    void matchesUprightFrontsEndToEnd() {
        var list = list(Draft.of(Designs.planerStand(), draft -> draft.matched(FrontGrain.UPRIGHT)));

        assertThat(list.cutting().together())
                .allSatisfy(column -> assertThat(column.along()).isEqualTo(Together.Along.LENGTH));
        assertThat(list.lines().stream()
                        .filter(line -> line.part().name().equals("drawer front"))
                        .map(line -> line.part().length()))
                .contains(90.0);
    }

    @Test
    void keepsNamedPartsTogetherByLabelOrByName() {
        var list = list(asking(
                List.of(),
                new KeptTogether.OneStrip(List.of("left side", "right side")),
                new KeptTogether.OneBlank(List.of("caster block lower"), 5)));

        assertThat(list.cutting().together())
                .extracting(Together::kind)
                .containsExactly(Together.Kind.ONE_STRIP, Together.Kind.ONE_BLANK);
        assertThat(members(list, list.cutting().together().get(0))).containsExactly("left side", "right side");
        assertThat(list.cutting().together().get(1).labels()).hasSize(2);
        assertThat(list.cutting().together().get(1).over()).isEqualTo(5);
    }

    private static StandDesign asking(List<String> anyGrain, KeptTogether... together) {
        return Draft.of(Designs.planerStand(), draft -> draft.cutting = new CuttingPlan(anyGrain, List.of(together)));
    }

    private static CutList list(StandDesign design) {
        return CutList.of(StandBuilder.build(design));
    }

    private static Set<String> names(CutList list, Set<String> labels) {
        return list.lines().stream()
                .filter(line -> labels.contains(line.label()))
                .map(line -> line.part().name())
                .collect(Collectors.toSet());
    }

    /** The first part of each piece's line. */
    private static List<String> members(CutList list, Together together) {
        return together.labels().stream()
                .map(label -> list.lines().stream()
                        .filter(line -> line.label().equals(label))
                        .findFirst()
                        .orElseThrow()
                        .members()
                        .get(0))
                .toList();
    }
}
