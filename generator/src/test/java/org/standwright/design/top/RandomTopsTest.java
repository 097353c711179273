package org.standwright.design.top;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.design.Bay;
import org.standwright.design.Cutout;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.Layout;
import org.standwright.design.Mount;
import org.standwright.design.Place;
import org.standwright.design.StandDesign;
import org.standwright.design.Worktop;
import org.standwright.design.kit.Machine;
import org.standwright.design.kit.Mounting;
import org.standwright.design.kit.Point2;
import org.standwright.design.kit.Range;
import org.standwright.design.kit.Size2;
import org.standwright.design.stand.Clearances;
import org.standwright.design.stand.StandBuilder;
import org.standwright.unit.Units;

/** Machines, margins, bolts and cut-outs at random: built with everything clear, or refused with a way out that helps. */
class RandomTopsTest {
    private static final Pattern CENTRE = Pattern.compile("Put its centre at x (-?[0-9.]+) (mm|in), y (-?[0-9.]+) ");
    private static final Pattern MARGIN = Pattern.compile("(left|right|front|back) (-?[0-9.]+) (mm|in)[,.]");

    static LongStream seeds() {
        return LongStream.range(0, 400);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void buildsOrNamesAWayOut(long seed) {
        var design = design(new SplittableRandom(seed));
        for (int cure = 0; cure < 6; cure++) {
            try {
                Clearances.check(StandBuilder.build(design).assembly());
                return;
            } catch (ImpossibleDesignException refusal) {
                var next = cured(design, refusal);
                if (next.isEmpty()) {
                    return;
                }
                assertThat(trouble(next.get())).isNotEqualTo(refusal.field());
                design = next.get();
            }
        }
    }

    private static String trouble(StandDesign design) {
        try {
            StandBuilder.build(design);
            return "none";
        } catch (ImpossibleDesignException refusal) {
            return refusal.field();
        }
    }

    /** The design with its way out copied, where there is one about a place. */
    private static Optional<StandDesign> cured(StandDesign design, ImpossibleDesignException refusal) {
        var centre = CENTRE.matcher(refusal.getMessage());
        if (refusal.field().startsWith("/cutouts/") && centre.find()) {
            int index = Integer.parseInt(refusal.field().substring("/cutouts/".length()));
            var cutouts = new ArrayList<>(design.cutouts());
            var moved = (Cutout.Round) cutouts.get(index);
            cutouts.set(
                    index,
                    new Cutout.Round(
                            moved.use(),
                            moved.in(),
                            mm(centre.group(1), centre.group(2)),
                            mm(centre.group(3), centre.group(2)),
                            moved.diameter()));
            return Optional.of(Draft.of(design, draft -> draft.cutouts = cutouts));
        }
        if (refusal.getMessage().contains("make its margins")) {
            return Optional.of(withMargins(design, refusal.getMessage().split("make its margins")[1]));
        }
        assertThat(refusal.field()).doesNotStartWith("/place");
        return Optional.empty();
    }

    private static StandDesign withMargins(StandDesign design, String written) {
        var place = design.place();
        var margins = place.margins();
        OptionalDouble front = margins.front();
        OptionalDouble back = margins.back();
        OptionalDouble left = margins.left();
        OptionalDouble right = margins.right();
        Matcher margin = MARGIN.matcher(written);
        while (margin.find()) {
            var value = OptionalDouble.of(mm(margin.group(2), margin.group(3)));
            switch (margin.group(1)) {
                case "front" -> front = value;
                case "back" -> back = value;
                case "left" -> left = value;
                default -> right = value;
            }
        }
        var moved = new Place(place.turn(), new Place.Margins(front, back, left, right), place.shims());
        return Draft.of(design, draft -> draft.place = moved);
    }

    private static double mm(String value, String unit) {
        return Double.parseDouble(value) * (unit.equals("in") ? 25.4 : 1);
    }

    private static StandDesign design(SplittableRandom random) {
        var mount = random.nextBoolean() ? Mount.OVERLAY : Mount.INSET;
        double width = random.nextInt(500, 1200);
        double depth = random.nextInt(400, 700);
        int bays = random.nextInt(1, width > 700 ? 4 : 2);
        List<Bay> contents = IntStream.range(0, bays)
                .mapToObj(bay -> bay(equal(random.nextInt(2, 5))))
                .toList();
        return Draft.of(Designs.stand(1050, Designs.LEVELERS, mount, contents), draft -> {
            draft.machine = machine(random);
            draft.plan(width, depth);
            draft.unit = random.nextBoolean() ? Units.MM : Units.INCH;
            draft.layout = random.nextBoolean() ? Layout.AS_WRITTEN : Layout.MIRRORED;
            draft.place = place(random);
            draft.worktop = new Worktop(
                    Designs.BOARD_18,
                    random.nextInt(1, 3),
                    new Worktop.Overhang(random.nextInt(0, 60), random.nextInt(0, 30), random.nextInt(0, 40), 0),
                    Optional.empty());
            draft.cutouts = IntStream.range(0, random.nextInt(0, 4))
                    .mapToObj(cutout -> cutout(random, width, depth))
                    .toList();
        });
    }

    private static Cutout cutout(SplittableRandom random, double width, double depth) {
        var in = random.nextInt(3) == 0 ? Cutout.In.BACK : Cutout.In.WORKTOP;
        double diameter = random.nextInt(20, 120);
        return new Cutout.Round("hose", in, random.nextInt(0, (int) width), random.nextInt(0, (int) depth), diameter);
    }

    private static Place place(SplittableRandom random) {
        Range shims = new Range(0, 2, random.nextInt(2, 10));
        return new Place(
                90 * random.nextInt(4),
                new Place.Margins(margin(random), OptionalDouble.empty(), margin(random), OptionalDouble.empty()),
                random.nextBoolean() ? Optional.of(shims) : Optional.empty());
    }

    private static OptionalDouble margin(SplittableRandom random) {
        return random.nextBoolean() ? OptionalDouble.empty() : OptionalDouble.of(random.nextInt(-20, 200));
    }

    private static Machine machine(SplittableRandom random) {
        double width = random.nextInt(150, 500);
        double depth = random.nextInt(150, 400);
        var holes = IntStream.range(0, random.nextInt(0, 5))
                .mapToObj(
                        hole -> new Point2(random.nextInt(10, (int) width - 10), random.nextInt(10, (int) depth - 10)))
                .toList();
        double bolt = random.nextBoolean() ? 6 + 2 * random.nextInt(4) : 25.4 * 3 / 8;
        return Draft.OfMachine.of(TopDesigns.PRESS, machine -> {
            machine.base = new Size2(width, depth);
            machine.mounting = Optional.of(new Mounting(random.nextInt(3, 20), bolt, new Point2(0, 0), holes));
        });
    }
}
