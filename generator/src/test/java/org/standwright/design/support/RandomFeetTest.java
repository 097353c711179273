package org.standwright.design.support;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.Mount;
import org.standwright.design.StandDesign;
import org.standwright.design.Support;
import org.standwright.design.frame.Frame;
import org.standwright.design.kit.Caster;
import org.standwright.design.kit.Leveler;
import org.standwright.design.kit.Range;
import org.standwright.design.kit.Side;
import org.standwright.design.kit.Size2;
import org.standwright.design.stand.Clearances;
import org.standwright.design.stand.StandBuilder;
import org.standwright.geom.Box3;
import org.standwright.part.Hole;

/** Casters and levelers of random sizes under the smallest plan that they ask for, or the smallest that drawers do. */
class RandomFeetTest {
    /** Smallest plan in which one bay's drawers run, mm. */
    private static final double DRAWERS_WIDE = 200;

    private static final double DRAWERS_DEEP = 270;
    private static final double HEIGHT = 125;

    static List<Long> seeds() {
        var seeds = new ArrayList<Long>();
        for (long seed = 0; seed < 60; seed++) {
            seeds.add(seed);
        }
        return seeds;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void casters(long seed) {
        var random = new SplittableRandom(seed);
        var near = caster("near", random);
        var far = random.nextBoolean() ? Optional.of(caster("far", random)) : Optional.<Caster>empty();
        var operator = Side.values()[random.nextInt(4)];
        var design = design(new Support.Casters(near, far, bed(random)), operator, random);

        builds(design);
        wheelsSwing(design, near, far.orElse(near), operator);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void levelers(long seed) {
        var random = new SplittableRandom(seed);
        var leveler = new Leveler(
                "leveler",
                new Range(20, 40, 60),
                random.nextDouble(8, 20),
                random.nextDouble(15, 60),
                random.nextDouble(20, 90),
                100,
                0.1);

        builds(design(new Support.Levelers(leveler, bed(random)), Side.FRONT, random));
    }

    /** Nothing stands in anything else, and no screw of the bed meets what is bored into it. */
    private static void builds(StandDesign design) {
        var stand = StandBuilder.build(design);
        Clearances.check(stand.assembly());
        var plan = stand.carcass().size();
        var frame = new Frame(
                design,
                new Size2(plan.x(), plan.y()),
                stand.carcass().min().z(),
                plan.z(),
                stand.bays().stream().map(bay -> bay.opening().width()).toList());
        var support = SupportPlan.of(design);
        var screws = support.bottomHoles(frame);
        assertThat(screws).isNotEmpty();
        for (var part : support.group(frame).parts()) {
            for (var feature : part.part().features()) {
                var bore = new Bored(part).at((Hole) feature);
                for (var screw : screws) {
                    double apart = StrictMath.hypot(screw.x() - bore.x(), screw.y() - bore.y());
                    assertThat(apart).isGreaterThan((screw.diameter() + bore.diameter()) / 2);
                }
            }
        }
    }

    /** Every wheel clears the circles and the plates of all others. */
    private static void wheelsSwing(StandDesign design, Caster near, Caster far, Side operator) {
        var plates = StandBuilder.build(design).assembly().groups().get(0).blocks().stream()
                .map(block -> block.box())
                .toList();
        double middleX = Box3.around(plates).centre().x();
        double middleY = Box3.around(plates).centre().y();
        for (var a : plates) {
            for (var b : plates) {
                if (a != b) {
                    double ra = (isNear(a, operator, middleX, middleY) ? near : far).swivelRadius();
                    double rb = (isNear(b, operator, middleX, middleY) ? near : far).swivelRadius();
                    double dx = Math.abs(a.centre().x() - b.centre().x());
                    double dy = Math.abs(a.centre().y() - b.centre().y());
                    assertThat(StrictMath.hypot(dx, dy)).isGreaterThanOrEqualTo(ra + rb - 1e-9);
                    double toPlate = StrictMath.hypot(
                            Math.max(0, dx - b.size().x() / 2),
                            Math.max(0, dy - b.size().y() / 2));
                    assertThat(toPlate).isGreaterThanOrEqualTo(ra - 1e-9);
                }
            }
        }
    }

    private static boolean isNear(Box3 plate, Side operator, double middleX, double middleY) {
        return switch (operator) {
            case FRONT -> plate.centre().y() < middleY;
            case BACK -> plate.centre().y() > middleY;
            case LEFT -> plate.centre().x() < middleX;
            case RIGHT -> plate.centre().x() > middleX;
        };
    }

    private static Caster caster(String name, SplittableRandom random) {
        double bolt = 6 + 2 * random.nextInt(4);
        var plate = new Size2(random.nextDouble(60, 140), random.nextDouble(60, 140));
        var holes = new Size2(
                plate.width() - bolt - 2 - random.nextDouble(0, 20),
                plate.depth() - bolt - 2 - random.nextDouble(0, 20));
        double swivel = random.nextBoolean() ? random.nextDouble(50, 120) : 0;
        return new Caster(name, HEIGHT, plate, holes, bolt + 1, bolt, swivel, 100, 80, swivel > 0, 0.9);
    }

    private static Support.Bed bed(SplittableRandom random) {
        return Support.Bed.values()[random.nextInt(2)];
    }

    /** Under the smallest plan, or one that is a little larger. */
    private static StandDesign design(Support support, Side operator, SplittableRandom random) {
        var design = Draft.of(
                Designs.stand(900, support, Mount.OVERLAY, List.of(bay(equal(3)))),
                draft -> draft.machine = Draft.OfMachine.of(draft.machine, machine -> machine.operator = operator));
        var roomy = Draft.of(design, draft -> draft.plan(1200, 1200));
        var least = SupportPlan.of(roomy).leastPlan();
        double more = random.nextBoolean() ? 0 : random.nextDouble(200);
        return Draft.of(
                design,
                draft -> draft.plan(
                        Math.max(DRAWERS_WIDE, least.width()) + more, Math.max(DRAWERS_DEEP, least.depth()) + more));
    }
}
