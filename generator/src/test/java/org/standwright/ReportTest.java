package org.standwright;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.Layout;
import org.standwright.design.Place;
import org.standwright.design.Plan;
import org.standwright.design.StandDesign;
import org.standwright.design.Worktop;
import org.standwright.file.StartingFile;
import org.standwright.unit.Units;

/** Every report says enough to work its stand out again, and comes to the same sizes. */
class ReportTest {
    private static final int RANDOM_STANDS = 24;

    static Stream<StandDesign> stands() {
        var random = LongStream.rangeClosed(1, RANDOM_STANDS)
                .mapToObj(RandomStands::buildableText)
                .map(text -> Presets.stand("random.json", text));
        var around = Stream.of(Layout.values()).map(ReportTest::aroundTheMachine);
        return Stream.of(Presets.stands(), Stream.of(router()), around, random).flatMap(stands -> stands);
    }

    @ParameterizedTest
    @MethodSource("stands")
    void comesToTheSameSizes(StandDesign design) {
        var report = Report.of(design);

        new ReportedStack(report).check();
        new ReportedBays(report).check();
        new ReportedMachine(report).check();
        new ReportedParts(report).check();
    }

    /** No machine stands on it: the worktop is the surface. */
    private static StandDesign router() {
        var text = StartingFile.forMachine(Presets.shipped(), "router-in-plate", Units.INCH);
        return Presets.stand("router.json", text);
    }

    /** A plan that is left out: it follows from the base, turned, its margins and the overhang. */
    private static StandDesign aroundTheMachine(Layout layout) {
        return Draft.of(Designs.planerStand(), draft -> {
            draft.layout = layout;
            draft.plan = new Plan(OptionalDouble.empty(), OptionalDouble.empty());
            draft.place = new Place(
                    180,
                    new Place.Margins(
                            OptionalDouble.of(30),
                            OptionalDouble.of(120),
                            OptionalDouble.of(150),
                            OptionalDouble.of(90)),
                    Optional.empty());
            draft.worktop =
                    new Worktop(Designs.BOARD_18, 2, new Worktop.Overhang(20, 10, 5, 25), draft.worktop.plate());
            draft.bays = List.of(Designs.bay(Designs.equal(3)), Designs.bay(300, Designs.fill(110)));
        });
    }
}
