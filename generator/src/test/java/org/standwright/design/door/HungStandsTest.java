package org.standwright.design.door;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;
import static org.standwright.design.Designs.fill;
import static org.standwright.design.Designs.given;
import static org.standwright.design.column.Mixed.divided;
import static org.standwright.design.column.Mixed.graduated;
import static org.standwright.design.column.Mixed.open;
import static org.standwright.design.column.Mixed.stand;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.design.Bay;
import org.standwright.design.Content;
import org.standwright.design.Draft;
import org.standwright.design.Grip;
import org.standwright.design.Hang;
import org.standwright.design.Hung;
import org.standwright.design.Mount;
import org.standwright.design.Shelves;
import org.standwright.design.StandDesign;
import org.standwright.design.column.Mixed;
import org.standwright.design.kit.Bar;
import org.standwright.design.kit.Hinge;
import org.standwright.design.stand.Clearances;
import org.standwright.design.stand.StandBuilder;
import org.standwright.solid.ClosedSolids;

/** Whole stands with doors beside, above and below drawers on slides and on runners. */
class HungStandsTest {
    private static final Hang RUNNERS = new Hang.Runners(new Bar("bar", 30, 20, 700, 2400, Optional.empty()));

    @ParameterizedTest
    @MethodSource("designs")
    void standWithoutOnePartInAnother(StandDesign design) {
        Clearances.check(StandBuilder.build(design).assembly());
    }

    static Stream<StandDesign> designs() {
        return Stream.of(Mount.values())
                .flatMap(mount -> Stream.of(true, false)
                        .flatMap(slides -> columns(mount)
                                .map(bays -> Draft.of(stand(mount, bays), draft -> {
                                    draft.grip(new Grip.Notch(90, 20));
                                    if (!slides) {
                                        draft.hang(RUNNERS);
                                    }
                                }))));
    }

    private static Stream<Bay[]> columns(Mount mount) {
        var hinge = mount == Mount.INSET ? Mixed.BUTT : Mixed.CONCEALED;
        return Stream.of(
                of(bay(equal(2), door(hinge, Hung.PAIR, 0))),
                of(bay(door(hinge, Hung.RIGHT, 0)), bay(door(Mixed.CONCEALED, Hung.LEFT, 0))),
                of(bay(door(hinge, Hung.RIGHT, 0)), bay(equal(3))),
                of(bay(given(120.0), open(150), fill(100)), bay(door(hinge, Hung.LEFT, 1), equal(1))),
                of(bay(graduated(3, 1.3)), bay(equal(2), open(150), given(130.0))),
                of(bay(divided(bay(equal(2)), bay(door(hinge, Hung.RIGHT, 0))), given(140.0))));
    }

    @Test
    void haveClosedSolidsOfTheVolumeThatTheirFeaturesLeave() {
        var concealed = stand(Mount.OVERLAY, bay(equal(1), door(Mixed.CONCEALED, Hung.PAIR, 1)));
        ClosedSolids.check(StandBuilder.build(Draft.of(concealed, draft -> draft.grip(new Grip.Notch(90, 20))))
                .assembly());
        var butt = stand(Mount.INSET, bay(equal(2), door(HandMade.BUTT, Hung.PAIR, 0)));
        ClosedSolids.check(
                StandBuilder.build(Draft.of(butt, draft -> draft.hang(RUNNERS))).assembly());
    }

    /** Whatever their number, shelves on pins come to lie above or below the hinges. */
    @Test
    void letAdjustableShelvesClearTheHinges() {
        IntStream.rangeClosed(1, 4)
                .forEach(count -> Stream.of(Mount.values())
                        .map(mount -> stand(mount, bay(door(Mixed.CONCEALED, Hung.LEFT, count)), bay(open())))
                        .forEach(design ->
                                Clearances.check(StandBuilder.build(design).assembly())));
    }

    @Test
    void countHingesPullsAndBumpers() {
        var design = stand(Mount.OVERLAY, bay(equal(1), door(Mixed.CONCEALED, Hung.PAIR, 2)));

        assertThat(StandBuilder.build(design).assembly().hardware().stream()
                        .map(line -> line.count() + " " + line.item() + ": " + line.use()))
                .contains(
                        "4 hinge 35: doors",
                        "8 slide screw 4 x 16 mm: hinge plates on uprights",
                        "8 slide screw 4 x 16 mm: hinge cups on doors",
                        "1 pull 96: drawer fronts, bored 96 mm apart after they are set",
                        "2 pull 96: doors, bored 96 mm apart after they are set",
                        "2 bumper 1.5 mm thick: behind drawer fronts",
                        "4 bumper 1.5 mm thick: behind doors",
                        "8 shelf pin 5 mm: adjustable shelves");
    }

    private static Content door(Hinge hinge, Hung hung, int shelves) {
        return new Content.Door(
                OptionalDouble.empty(),
                hinge,
                hung,
                shelves == 0 ? Optional.empty() : Optional.of(new Shelves(Shelves.Kind.ADJUSTABLE, shelves)));
    }

    private static Bay[] of(Bay... bays) {
        return bays;
    }
}
