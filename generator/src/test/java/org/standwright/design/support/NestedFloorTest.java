package org.standwright.design.support;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.design.Content;
import org.standwright.design.Designs;
import org.standwright.design.Mount;
import org.standwright.design.Support;
import org.standwright.design.stand.StandBuilder;
import org.standwright.geom.Grid;
import org.standwright.part.Hole;

/** What is screwed up through the bottom from below keeps off the partitions of bays within bays. */
class NestedFloorTest {
    static Stream<Support> supports() {
        return Stream.of(
                new Support.Plinth(90, 75, 5),
                new Support.Levelers(Designs.LEVELERS.leveler(), Support.Bed.DOUBLED_BOTTOM));
    }

    @ParameterizedTest
    @MethodSource("supports")
    void screwsTheBottomWithinTheOpeningsThatStandOnIt(Support support) {
        var divided = new Content.Divided(
                OptionalDouble.empty(), List.of(Designs.bay(150, Designs.equal(1)), Designs.bay(Designs.equal(2))));
        var stand = StandBuilder.build(Designs.stand(900, support, Mount.OVERLAY, List.of(Designs.bay(divided))));
        var floors = stand.bays().get(0).leaves();
        var bottom = stand.assembly().parts().stream()
                .filter(part -> part.label().equals("bottom"))
                .findFirst()
                .orElseThrow();

        assertThat(floors).hasSize(2);
        for (var feature : bottom.part().features()) {
            if (feature instanceof Hole hole) {
                double x = new Bored(bottom).at(hole).x();
                double r = hole.diameter() / 2;
                assertThat(floors)
                        .as("%s at x %s", hole.purpose(), x)
                        .anyMatch(floor -> !Grid.less(x - r, floor.opening().x0())
                                && !Grid.less(floor.opening().x1(), x + r));
            }
        }
    }
}
