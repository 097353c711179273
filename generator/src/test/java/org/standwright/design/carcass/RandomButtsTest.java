package org.standwright.design.carcass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.design.Bay;
import org.standwright.design.Cutout;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.Hang;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.Mount;
import org.standwright.design.StandDesign;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Bar;
import org.standwright.design.stand.Clearances;
import org.standwright.design.stand.StandBuilder;

/** Random bays, drawers on slides or runners, supports and cut-outs with every joint. */
class RandomButtsTest {
    static LongStream seeds() {
        return LongStream.range(0, 150);
    }

    /** What is housed can be butted, or the message says that a housed carcass would do. */
    @ParameterizedTest
    @MethodSource("seeds")
    void buttsWhatCanBeHoused(long seed) {
        var design = design(seed);
        var housed = built(design);
        if (housed.isEmpty()) {
            return;
        }
        for (var joint : Butted.KINDS) {
            try {
                holds(StandBuilder.build(Butted.with(joint, design)), housed.get());
            } catch (ImpossibleDesignException refused) {
                assertThat(refused.field()).isEqualTo("/carcass/joint");
                assertThat(refused).hasMessageContaining("the carcass the joint \"dado\"");
            }
        }
    }

    @Test
    void findsStandsToJudge() {
        long built = seeds().mapToObj(RandomButtsTest::design)
                .filter(design -> built(Butted.with(Butted.CONNECTORS, design)).isPresent())
                .count();

        assertThat(built).isGreaterThan(30);
    }

    private static void holds(Stand stand, Stand housed) {
        Clearances.check(stand.assembly());
        ButtCollisionsTest.hasWoodBetweenBores(stand);
        assertThat(stand.bays()).isEqualTo(housed.bays());
        var joints = Bore.of(stand).stream().filter(Bore::isOfJoint).toList();
        joints.stream()
                .filter(Bore::inEdge)
                .forEach(end -> assertThat(joints)
                        .filteredOn(
                                face -> !face.inEdge() && !face.purpose().equals("connector head") && face.meets(end))
                        .singleElement()
                        .satisfies(face -> assertThat(end.forward() ? face.high() : face.low())
                                .isCloseTo(end.mouth()[end.way()], within(1e-9))));
    }

    private static Optional<Stand> built(StandDesign design) {
        try {
            return Optional.of(StandBuilder.build(design));
        } catch (ImpossibleDesignException refused) {
            return Optional.empty();
        }
    }

    private static StandDesign design(long seed) {
        var random = new SplittableRandom(seed);
        var bays = new ArrayList<Bay>();
        IntStream.range(0, random.nextInt(1, 3)).forEach(i -> bays.add(RandomColumnsTest.bay(random, 1)));
        var supports = ButtCollisionsTest.supports().toList();
        var support = supports.get(random.nextInt(supports.size()));
        var mount = Mount.values()[random.nextInt(2)];
        return Draft.of(Designs.stand(random.nextDouble(800, 1300), support, mount, bays), draft -> {
            draft.plan(random.nextDouble(650, 1100), random.nextDouble(420, 700));
            if (random.nextInt(3) == 0) {
                draft.hang(new Hang.Runners(new Bar("bar", 30, 20, 700, 2400, Optional.empty())));
            }
            if (random.nextBoolean()) {
                draft.cutouts = List.of(new Cutout.Rectangular(
                        "cord", Cutout.In.WORKTOP, random.nextDouble(40, 70), random.nextDouble(60, 380), 30, 60, 5));
            }
        });
    }
}
