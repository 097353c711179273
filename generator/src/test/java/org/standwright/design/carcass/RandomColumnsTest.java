package org.standwright.design.carcass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.standwright.design.column.Mixed.stand;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.Bay;
import org.standwright.design.Content;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.Hung;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.Mount;
import org.standwright.design.Shelves;
import org.standwright.design.StandDesign;
import org.standwright.design.Support;
import org.standwright.design.WorkingHeight;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.DoorLayout;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.column.Cure;
import org.standwright.design.column.Mixed;
import org.standwright.design.stand.Clearances;
import org.standwright.design.stand.StandBuilder;
import org.standwright.geom.Rect;
import org.standwright.part.Channel;
import org.standwright.part.Hole;
import org.standwright.unit.Units;

/** Bays filled at random: what is built holds together, what is too low builds at the height that the message names. */
class RandomColumnsTest {
    private static final List<Support> SUPPORTS =
            List.of(Designs.CASTERS, Designs.LEVELERS, new Support.Plinth(90, 75, 5), new Support.None(5));

    @ParameterizedTest
    @MethodSource("seeds")
    void buildsOrNamesWhatWouldBuild(long seed) {
        var random = new SplittableRandom(seed);
        var bays = new ArrayList<Bay>();
        for (int i = random.nextInt(1, 4); i > 0; i--) {
            bays.add(bay(random, 2));
        }
        var mount = random.nextBoolean() ? Mount.OVERLAY : Mount.INSET;
        var rounding = random.nextBoolean() ? OptionalDouble.of(0) : OptionalDouble.empty();
        var units = random.nextInt(3) == 0 ? Units.INCH : Units.MM;
        double height = random.nextDouble(400, 1400);
        double width = random.nextDouble(600, 1150);
        var support = SUPPORTS.get(random.nextInt(SUPPORTS.size()));
        var design = Draft.of(Mixed.rounded(stand(mount, bays.toArray(Bay[]::new)), rounding), draft -> {
            draft.unit = units;
            draft.support = support;
            draft.workingHeight = new WorkingHeight.Given(height);
            draft.plan(width, 560);
        });
        for (int turn = 0; turn < 25; turn++) {
            var refused = refusal(design);
            if (refused.isEmpty()) {
                return;
            }
            var cured = Cure.of(design, refused.get());
            if (cured.isEmpty()) {
                return;
            }
            // what a message asks for must not be refused again by the same field
            refusal(cured.get())
                    .ifPresent(again -> assertThat(again.field() + " " + again.getMessage())
                            .as(refused.get().getMessage())
                            .doesNotStartWith(refused.get().field() + " "));
            design = cured.get();
        }
    }

    private static Optional<ImpossibleDesignException> refusal(StandDesign design) {
        try {
            judge(design);
            return Optional.empty();
        } catch (ImpossibleDesignException refused) {
            return Optional.of(refused);
        }
    }

    static LongStream seeds() {
        return LongStream.range(0, 200);
    }

    private static void judge(StandDesign design) {
        var stand = StandBuilder.build(design);
        Clearances.check(stand.assembly());
        stand.assembly().groups().get(1).parts().forEach(RandomColumnsTest::staysApartFromDadosAndHoles);
        var fronts = new ArrayList<Rect>();
        for (var bay : stand.bays()) {
            fillsItsOpening(bay, design.carcass().sheet().material().thickness());
            bay.drawers().stream().map(DrawerLayout::front).forEach(fronts::add);
            bay.doors().stream().map(DoorLayout::front).forEach(fronts::add);
        }
        for (int i = 0; i < fronts.size(); i++) {
            for (int j = i + 1; j < fronts.size(); j++) {
                assertThat(gap(fronts.get(i), fronts.get(j))).isGreaterThan(3 - 1e-6);
            }
        }
    }

    /** No hole in a dado, or into another hole. */
    private static void staysApartFromDadosAndHoles(PlacedPart placed) {
        var part = placed.part();
        var holes = part.features().stream()
                .filter(Hole.class::isInstance)
                .map(Hole.class::cast)
                .toList();
        for (var hole : holes) {
            double r = hole.diameter() / 2;
            part.features().stream()
                    .filter(Channel.class::isInstance)
                    .map(Channel.class::cast)
                    .filter(channel -> hole.depthIn(part.thickness())
                                    + (channel.face() == hole.face() ? part.thickness() : channel.depth())
                            > part.thickness())
                    .forEach(channel -> assertThat(gap(
                                    channel.area(), new Rect(hole.x() - r, hole.y() - r, hole.x() + r, hole.y() + r)))
                            .as("%s and %s in %s", hole, channel, placed.label())
                            .isGreaterThan(-1e-6));
            holes.stream()
                    .filter(other -> other != hole && other.face() == hole.face())
                    .forEach(other -> assertThat(StrictMath.hypot(other.x() - hole.x(), other.y() - hole.y()))
                            .as("%s and %s in %s", hole, other, placed.label())
                            .isGreaterThan((hole.diameter() + other.diameter()) / 2));
        }
    }

    /** The larger of the distances between two rectangles along the axes. */
    private static double gap(Rect a, Rect b) {
        return Math.max(Math.max(b.x0() - a.x1(), a.x0() - b.x1()), Math.max(b.y0() - a.y1(), a.y0() - b.y1()));
    }

    private static void fillsItsOpening(BayLayout bay, double panel) {
        double top = bay.opening().y1();
        for (var section : bay.sections()) {
            assertThat(section.opening().y1()).isCloseTo(top, within(1e-6));
            top = section.opening().y0() - panel;
            if (section instanceof SectionLayout.Divided divided) {
                divided.bays().forEach(nested -> fillsItsOpening(nested, panel));
            }
        }
        assertThat(top + panel).isCloseTo(bay.opening().y0(), within(1e-6));
    }

    static Bay bay(SplittableRandom random, int deep) {
        var contents = new ArrayList<Content>();
        for (int i = random.nextInt(1, 4); i > 0; i--) {
            contents.add(content(random, deep));
        }
        return new Bay(maybe(random, 6, 60, 400), contents);
    }

    private static Content content(SplittableRandom random, int deep) {
        return switch (random.nextInt(deep > 0 ? 9 : 8)) {
            case 0 -> new Content.GivenDrawers(List.of(random.nextDouble(70, 150), random.nextDouble(80, 200)));
            case 1 ->
                new Content.EqualDrawers(random.nextInt(1, 4), maybe(random, 3, 60, 120), maybe(random, 3, 100, 300));
            case 2 ->
                new Content.GraduatedDrawers(
                        random.nextInt(1, 4),
                        random.nextDouble(1, 1.5),
                        maybe(random, 3, 60, 120),
                        maybe(random, 3, 100, 300));
            case 3 -> random.nextInt(8) == 0 ? new Content.FillDrawers(random.nextDouble(80, 150)) : Mixed.open();
            case 4, 5 -> new Content.Open(maybe(random, 3, 30, 200), shelves(random));
            case 6 -> new Content.Clear(maybe(random, 3, 30, 200), "hose", OptionalDouble.empty());
            case 7 ->
                new Content.Door(
                        maybe(random, 3, 140, 300),
                        random.nextBoolean() ? Mixed.CONCEALED : Mixed.BUTT,
                        Hung.values()[random.nextInt(3)],
                        shelves(random));
            default -> divided(random, deep - 1);
        };
    }

    private static Content divided(SplittableRandom random, int deep) {
        var bays = new ArrayList<Bay>();
        for (int i = random.nextInt(2, 4); i > 0; i--) {
            bays.add(bay(random, deep));
        }
        return new Content.Divided(maybe(random, 4, 100, 300), bays);
    }

    private static Optional<Shelves> shelves(SplittableRandom random) {
        var kind = Shelves.Kind.values()[random.nextInt(2)];
        return random.nextBoolean() ? Optional.of(new Shelves(kind, random.nextInt(1, 4))) : Optional.empty();
    }

    private static OptionalDouble maybe(SplittableRandom random, int oneIn, double from, double to) {
        return random.nextInt(oneIn) == 0 ? OptionalDouble.of(random.nextDouble(from, to)) : OptionalDouble.empty();
    }
}
