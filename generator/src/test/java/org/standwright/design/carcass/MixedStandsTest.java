package org.standwright.design.carcass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;
import static org.standwright.design.Designs.fill;
import static org.standwright.design.Designs.given;
import static org.standwright.design.column.Mixed.clear;
import static org.standwright.design.column.Mixed.divided;
import static org.standwright.design.column.Mixed.door;
import static org.standwright.design.column.Mixed.graduated;
import static org.standwright.design.column.Mixed.open;
import static org.standwright.design.column.Mixed.shelved;
import static org.standwright.design.column.Mixed.stand;

import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.design.Bay;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.Edges;
import org.standwright.design.Hung;
import org.standwright.design.Mount;
import org.standwright.design.Shelves.Kind;
import org.standwright.design.StandDesign;
import org.standwright.design.kit.Edging;
import org.standwright.design.stand.Clearances;
import org.standwright.design.stand.StandBuilder;

/** Stands with every content beside, above and within every other. */
class MixedStandsTest {
    @ParameterizedTest
    @MethodSource("designs")
    void standsWithoutOnePartInAnother(StandDesign design) {
        var stand = StandBuilder.build(design);

        Clearances.check(stand.assembly());
        assertThat(stand.stack().sum()).isEqualTo(stand.stack().workingHeight());
    }

    static Stream<StandDesign> designs() {
        return Stream.of(Mount.values())
                .flatMap(mount -> columns().map(bays -> {
                    var design = stand(mount, bays);
                    return bays.length > 1 ? banded(design) : design;
                }));
    }

    private static Stream<Bay[]> columns() {
        return Stream.of(
                of(bay(equal(2), open())),
                of(bay(open(), equal(2)), bay(equal(3))),
                of(bay(door(Hung.LEFT))),
                of(bay(door(Hung.PAIR, Kind.ADJUSTABLE, 2))),
                of(bay(given(90.0), door(Hung.LEFT, Kind.FIXED, 1)), bay(door(Hung.RIGHT), given(100.0))),
                of(bay(shelved(Kind.FIXED, 3)), bay(shelved(Kind.ADJUSTABLE, 2)), bay(clear())),
                of(bay(fill(80), open(150), door(200.0, Hung.LEFT))),
                of(bay(graduated(4, 1.2))),
                of(bay(graduated(2, 1.5), clear()), bay(equal(2), graduated(2, 1.1))),
                of(bay(divided(bay(equal(3)), bay(open())), given(120.0))),
                of(bay(given(120.0), divided(bay(200, door(Hung.LEFT)), bay(shelved(Kind.FIXED, 1))))),
                of(bay(equal(2), divided(bay(clear()), bay(door(Hung.RIGHT)))), bay(open(), open(), open())),
                of(
                        bay(divided(bay(open()), bay(open()), bay(open())), divided(bay(open()), bay(open()))),
                        bay(open(), divided(180, bay(door(Hung.LEFT)), bay(equal(1))))),
                of(bay(
                        divided(bay(open(), divided(bay(clear()), bay(clear()))), bay(equal(2))),
                        door(170.0, Hung.PAIR))));
    }

    private static Bay[] of(Bay... bays) {
        return bays;
    }

    private static StandDesign banded(StandDesign design) {
        var tape = new Edging("tape 1", Edging.Kind.TAPE, 1);
        return Draft.of(
                design,
                draft -> draft.edges = new Edges(Optional.of(tape), Optional.empty(), Designs.NO_EDGES.worktop()));
    }
}
