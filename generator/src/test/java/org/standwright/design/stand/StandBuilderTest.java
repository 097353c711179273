package org.standwright.design.stand;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;
import static org.standwright.design.Designs.fill;
import static org.standwright.design.Designs.given;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.standwright.cutlist.CutList;
import org.standwright.design.Designs;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.Mount;
import org.standwright.unit.Units;

class StandBuilderTest {
    @Test
    void addsUpToTheWorkingHeight() {
        var stack = StandBuilder.build(Designs.planerStand()).stack();

        assertThat(stack.terms().stream()
                        .map(term -> term.name() + " " + term.height())
                        .collect(Collectors.joining("\n")))
                .isEqualTo("""
                        casters 125.0
                        caster blocks (two layers) 36.0
                        carcass 593.0
                        worktop layer 1 18.0
                        worktop layer 2 18.0
                        machine feet (none, or off) 0.0
                        machine table above its base 110.0""");
        assertThat(stack.sum()).isCloseTo(900, within(1e-6));
    }

    @Test
    void keepsAllPartsApartAndAllDrawersFree() {
        for (var mount : Mount.values()) {
            for (var support : List.of(Designs.CASTERS, Designs.LEVELERS)) {
                var stand = StandBuilder.build(
                        Designs.stand(900, support, mount, List.of(bay(400, given(90), equal(3)), bay(fill(80)))));
                Clearances.check(stand.assembly());
            }
        }
    }

    @Test
    void mergesMirroredPairsUnderOneLetter() {
        var design = Designs.stand(900, Designs.CASTERS, Mount.OVERLAY, List.of(bay(equal(3)), bay(equal(3))));
        var list = CutList.of(StandBuilder.build(design).assembly(), Units.MM);

        assertThat(list.lines().stream()
                        .map(line -> line.label() + " " + line.part().name() + " " + line.count())
                        .toList())
                .containsExactly(
                        "A caster block lower 2",
                        "B caster block upper 2",
                        "C-L side 1",
                        "C-R side 1",
                        "D bottom 1",
                        "E sub-top 1",
                        "F partition 1",
                        "G worktop lower layer 1",
                        "H worktop upper layer 1",
                        "I drawer front 6",
                        "J back 1",
                        "K drawer bottom 6",
                        "L-L drawer side 4",
                        "L-R drawer side 4",
                        "M box front 4",
                        "N box back 4",
                        "O-L drawer side 2",
                        "O-R drawer side 2",
                        "P box front 2",
                        "Q box back 2");
    }

    @Test
    void namesTheNearestHeightThatWorksAndItDoes() {
        var low = Designs.stand(500, Designs.CASTERS, Mount.OVERLAY, List.of(bay(equal(4))));

        assertThatThrownBy(() -> StandBuilder.build(low))
                .isInstanceOf(ImpossibleDesignException.class)
                .hasMessageContaining("The nearest possible working height is 630 mm");
        StandBuilder.build(Designs.stand(630, Designs.CASTERS, Mount.OVERLAY, List.of(bay(equal(4)))));
    }
}
