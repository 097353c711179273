package org.standwright.design.wall.holder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.Designs;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.kit.Dowel;
import org.standwright.design.stand.Clearances;
import org.standwright.design.wall.Cleat;
import org.standwright.design.wall.Holder;
import org.standwright.design.wall.Spot;
import org.standwright.design.wall.Things;
import org.standwright.design.wall.built.MadeHolder;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec3;
import org.standwright.solid.ClosedSolids;
import org.standwright.unit.Units;

/** Holders of all kinds and sizes: made right or refused with a message, never anything else. */
class RandomHoldersTest {
    private static final Optional<Spot> ANYWHERE = Optional.empty();
    private static final int KINDS = 10;

    static IntStream seeds() {
        return IntStream.range(0, 300);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void areMadeOrRefused(int seed) {
        var random = new SplittableRandom(seed);
        var maker = maker(random);
        var holder = holder(random, seed % KINDS);
        made(maker, holder).ifPresent(made -> check(maker, made, seed));
    }

    @Test
    void areMadeOfEveryKindOftenEnough() {
        for (int kind = 0; kind < KINDS; kind++) {
            int of = kind;
            long made = seeds().filter(seed -> seed % KINDS == of)
                    .filter(seed -> {
                        var random = new SplittableRandom(seed);
                        var maker = maker(random);
                        return made(maker, holder(random, of)).isPresent();
                    })
                    .count();
            assertThat(made).as("holders of kind %d made of 30", kind).isGreaterThanOrEqualTo(10);
        }
    }

    private static void check(HolderMaker maker, MadeHolder made, int seed) {
        var assembly = Workshop.assembly(maker, made);
        Clearances.check(assembly);
        if (seed % 5 < 2) {
            ClosedSolids.check(assembly);
        }
        var hanger = Workshop.part(made, "hanger");
        double cleat = hanger.part().thickness();
        for (var placed : assembly.parts()) {
            var box = placed.box();
            boolean before = placed.part().name().equals("hanger")
                    || placed.part().name().equals("spacer");
            assertThat(box.max().y()).as(placed.label()).isLessThanOrEqualTo((before ? 0 : -cleat) + Grid.STEP);
            assertThat(within(made.box(), box)).as(placed.label()).isTrue();
            assertThat(placed.label()).startsWith(made.holder().name() + " ");
        }
        assertThat(made.box().min().x()).isZero();
        assertThat(within(made.box(), point(made.thingsCentre()))).isTrue();
        var back = Workshop.part(made, "back");
        assertThat(made.back().x1()).isEqualTo(back.part().length());
        assertThat(back.box().max().z()).isCloseTo(hanger.box().max().z(), offset(Grid.STEP));
        if (maker.takesSpacer(made)) {
            double below = maker.spacer(made).box().max().z();
            assertThat(below).isLessThanOrEqualTo(-hanger.part().width() + Grid.STEP);
        }
        assertThat(locks(back)).isEqualTo(made.holder().lock() ? 2 : 0);
        assertThat(made.box().max().x()).isCloseTo(made.back().x1(), offset(Grid.STEP));
        assertThat(made.back().y0()).isLessThanOrEqualTo(-hanger.part().width() + Grid.STEP);
        assertThat(made.lip()).isGreaterThanOrEqualTo(cleat);
    }

    private static long locks(PlacedPart back) {
        return back.part().features().stream()
                .filter(feature -> feature.purpose().equals(Lock.PURPOSE))
                .count();
    }

    private static Box3 point(Vec3 at) {
        return new Box3(at, at);
    }

    private static boolean within(Box3 outer, Box3 inner) {
        var both = outer.union(inner);
        return Stream.of(both.min().minus(outer.min()), both.max().minus(outer.max()))
                .allMatch(over -> Grid.same(over.x(), 0) && Grid.same(over.y(), 0) && Grid.same(over.z(), 0));
    }

    private static Optional<MadeHolder> made(HolderMaker maker, Holder holder) {
        try {
            return Optional.of(maker.make(holder, "/holders/0"));
        } catch (ImpossibleDesignException e) {
            assertThat(e.field()).startsWith("/");
            assertThat(e.getMessage()).endsWith(".").contains(" ").doesNotContain("NaN");
            return Optional.empty();
        }
    }

    private static HolderMaker maker(SplittableRandom random) {
        var board = Designs.sheet("cleat board", of(random, 12, 15, 18, 17.6, 19.05, 24), 2440, 1220);
        var cleat = new Cleat(
                board,
                random.nextDouble(60, 130),
                of(random, 30, 37.5, 45),
                of(random, 0, 2, 3),
                OptionalDouble.empty());
        var sheet = Designs.sheet("board", of(random, 12, 15, 18, 17.6, 19.05, 21), 2440, 1220);
        var thin = Designs.sheet("thin", of(random, 3, 4, 6, 5.4, 9, 12), 2440, 1220);
        return new HolderMaker(Workshop.wall(cleat, sheet, thin, random.nextInt(4) == 0 ? Units.INCH : Units.MM));
    }

    private static Holder holder(SplittableRandom random, int kind) {
        var things = new Things(
                random.nextInt(1, 13),
                random.nextDouble(8, 200),
                random.nextDouble(8, 300),
                random.nextDouble(10, 400),
                random.nextDouble(0, 5),
                Things.Use.DAILY,
                false);
        boolean lock = random.nextBoolean();
        var width = random.nextInt(3) == 0 ? OptionalDouble.of(random.nextDouble(50, 2600)) : OptionalDouble.empty();
        double size = random.nextDouble(0, 150);
        return switch (kind) {
            case 0 -> new Holder.Shelf("a", things, ANYWHERE, lock, width, random.nextBoolean() ? 0 : size);
            case 1 -> new Holder.Bin("b", things, ANYWHERE, lock, width, size);
            case 2 -> new Holder.Tray("c", things, ANYWHERE, lock, width, size);
            case 3 -> new Holder.Slots("d", things, ANYWHERE, lock, size / 5);
            case 4 -> new Holder.Bores("e", things, ANYWHERE, lock, size / 5);
            case 5 ->
                new Holder.Pegs(
                        "f",
                        things,
                        ANYWHERE,
                        lock,
                        new Dowel("g", of(random, 8, 10, 16, 20), things.depth() + random.nextDouble(0, 60)));
            case 6 -> new Holder.ClampBar("h", things, ANYWHERE, lock, size);
            case 7 -> new Holder.Hooks("i", things, ANYWHERE, lock, "hook", 2 * size);
            case 8 ->
                new Holder.Panel(
                        "j", things, ANYWHERE, lock, random.nextDouble(80, 2000), random.nextDouble(100, 1300));
            default ->
                new Holder.Cabinet("k", things, ANYWHERE, lock, random.nextInt(1, 6), random.nextDouble(150, 1600));
        };
    }

    private static double of(SplittableRandom random, double... choices) {
        return choices[random.nextInt(choices.length)];
    }

    @Test
    void areTheSameEveryTime() {
        for (int seed : List.of(0, 1, 9)) {
            var one = new SplittableRandom(seed);
            var other = new SplittableRandom(seed);
            assertThat(made(maker(one), holder(one, seed))).isEqualTo(made(maker(other), holder(other, seed)));
        }
    }
}
