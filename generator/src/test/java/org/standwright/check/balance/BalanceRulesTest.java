package org.standwright.check.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.standwright.check.Stands.loaded;
import static org.standwright.check.Stands.plain;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Remedy;
import org.standwright.check.Rule;
import org.standwright.check.Severity;
import org.standwright.check.Stands;
import org.standwright.check.Weight;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.Loads;
import org.standwright.design.Place;
import org.standwright.design.Plan;
import org.standwright.design.Site;
import org.standwright.design.StandDesign;
import org.standwright.design.Steady;
import org.standwright.design.Support;
import org.standwright.design.WorkingHeight;
import org.standwright.design.kit.Caster;
import org.standwright.design.kit.CentreOfMass;
import org.standwright.design.kit.Feed;
import org.standwright.design.kit.Reference;
import org.standwright.design.kit.WorkingForce;
import org.standwright.design.support.Castered;
import org.standwright.geom.Vec3;

/**
 * The rules of stability on the stand of the tests: 720 x 560 with three drawers. Its levelers stand 50 mm behind the
 * front edge, so at y = 50 and y = 510. Where a test puts one lump of mass there instead of everything, a reader can
 * add up.
 */
class BalanceRulesTest {
    private static final double G = 9.80665;

    /** 100 kg 230 mm behind the front levelers and 1000 mm high: atan(230 / 1000) = 12.953 degrees. */
    @Test
    void tellsHowFarAStandLeansBeforeItFalls() {
        var finding = only(new TipClosed(), lump(100, new Vec3(360, 280, 1000)));

        assertThat(figure(finding)).isEqualTo(12.953, within(1e-3));
        assertThat(finding.severity()).isEqualTo(Severity.FINE);
        assertThat(only(new TipClosed(), lump(100, new Vec3(360, 220, 1000))).severity())
                .isEqualTo(Severity.CAUTION);
        assertThat(only(new TipClosed(), lump(100, new Vec3(360, 220, 1000))).message())
                .contains("front edge", "9.6\u00b0");
    }

    @Test
    void stopsAStandThatFallsByItself() {
        assertThat(only(new TipClosed(), lump(100, new Vec3(360, 20, 500)))).satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.STOP);
            assertThat(finding.message()).contains("over its front edge by itself");
        });
    }

    /**
     * 40 kg 210 mm behind the levelers, 100 N at 900 mm: 40 x 9.80665 x 210 / 90 000 = 0.9153; 150 N as much over 1.5.
     */
    @Test
    void tellsWhetherAPushTipsIt() {
        assertThat(figure(only(new TipPush(), lump(40, new Vec3(360, 260, 500)))))
                .isEqualTo(40 * G * 210 / (150 * 900), within(1e-9));
    }

    /** tan of the tip angle over tan of the slope: (230 / 1000) / tan 2 degrees. */
    @Test
    void tellsWhetherItStandsOnASlope() {
        assertThat(figure(only(new TipSlope(), lump(100, new Vec3(360, 280, 1000)))))
                .isEqualTo(0.23 / Math.tan(Math.toRadians(2)), within(1e-9));
    }

    /**
     * Levelers 40 mm from the sides, the worktop flush there and 20 mm over the front: -20 + 50 is 20 mm before them.
     */
    @Test
    void tellsWhetherItTipsUnderAPersonThatLeansOnIt() {
        var findings = new TipLean().check(lump(100, new Vec3(360, 280, 500)));

        assertThat(findings).singleElement().satisfies(finding -> {
            assertThat(figure(finding)).isEqualTo(100 * G * 230 / (750 * 20), within(1e-9));
            assertThat(finding.message()).contains("front edge");
        });
    }

    /** EN 16122 asks for 350 N down and 50 N outwards above 1000 mm. */
    @Test
    void pullsAHighStandBesides() {
        assertThat(new TipLean().check(loaded(plain(draft -> draft.workingHeight = new WorkingHeight.Given(1100)))))
                .hasSize(2)
                .last()
                .satisfies(finding -> assertThat(finding.message()).contains("350 N", "50 N"));
    }

    /** Along the feed the stand is 720 - 2 x 40 mm wide, across it 460 mm deep. */
    @Test
    void feedsTheMachineTheWayItStandsTurned() {
        Consumer<Draft> lengthwise = draft -> draft.machine = Draft.OfMachine.of(draft.machine, machine -> {
            machine.feed = Feed.LEFT_TO_RIGHT;
            machine.workingForce = Optional.of(new WorkingForce(100, 110));
        });
        var straight = plain(lengthwise);
        var turned = plain(
                lengthwise.andThen(draft -> draft.place = new Place(90, draft.place.margins(), draft.place.shims())));

        assertThat(figure(only(new TipFeed(), weighing(straight, 100, new Vec3(360, 280, 500)))))
                .isEqualTo(100 * G * 320 / (100 * 900), within(1e-9));
        assertThat(figure(only(new TipFeed(), weighing(turned, 100, new Vec3(360, 280, 500)))))
                .isEqualTo(100 * G * 230 / (100 * 900), within(1e-9));
        assertThat(new TipFeed().check(loaded(plain(draft -> {})))).isEmpty();
    }

    /** 100 N at 10 mm above the worktop, whose upper face is the working height, 900 mm. */
    @Test
    void feedsAMachineThatHangsInTheWorktopFromItsUpperFace() {
        var design = plain(draft -> {
            draft.machine = Draft.OfMachine.of(draft.machine, machine -> {
                machine.reference = Reference.fixed(Reference.Kind.WORKTOP, 0);
                machine.feed = Feed.RIGHT_TO_LEFT;
                machine.mounting = Optional.empty();
                machine.workingForce = Optional.of(new WorkingForce(100, 10));
            });
            draft.plan = new Plan(OptionalDouble.of(720), OptionalDouble.of(560));
            draft.place = new Place(
                    0,
                    new Place.Margins(
                            OptionalDouble.empty(),
                            OptionalDouble.empty(),
                            OptionalDouble.empty(),
                            OptionalDouble.empty()),
                    Optional.empty());
        });
        var hung = weighing(design, 100, new Vec3(360, 280, 500));

        assertThat(hung.stand().machine()).isEmpty();
        assertThat(figure(only(new TipFeed(), hung))).isEqualTo(100 * G * 320 / (100 * 910), within(1e-9));
    }

    @Test
    void aLockForDrawersHelpsAsMuchAsTheWorstDrawerAlone() {
        var locked = loaded(plain(draft -> draft.steady = Steady.BY_ITSELF.interlocked()));
        var free = loaded(plain(draft -> {}));

        assertThat(figure(only(new TipOpen(), locked))).isEqualTo(figure(only(new TipLargest(), free)), within(1e-9));
        assertThat(figure(only(new TipOpen(), free))).isLessThan(figure(only(new TipOpen(), locked)));
    }

    /** What holds and what tips are told; with an anchor at the height h of the carcass's top, P = (1.5 O - R) / h. */
    @Test
    void saysWhatAnAnchorHasToTakeInsteadOfStopping() {
        var free = only(new TipOpen(), loaded(plain(draft -> {})));
        var anchored = loaded(plain(draft -> draft.steady = Steady.BY_ITSELF.anchored(Steady.Anchor.WALL)));
        var finding = only(new TipOpen(), anchored);
        double pull = (1.5 * input(free, "O") - input(free, "R"))
                / anchored.stand().carcass().max().z();

        assertThat(free.severity()).isEqualTo(Severity.STOP);
        assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
        assertThat(finding.message())
                .contains(
                        anchored.units().force(pull), "top of the carcass", "never in drywall alone", "maker's figure")
                .doesNotContain(". ");
    }

    /** 40 kg lean 20 mm inside the left levelers: what 1.5 asks is missing, over half of 720 mm. */
    @Test
    void anAnchorAtTheWallHoldsASideWithHalfTheWidth() {
        var design = plain(draft -> draft.steady = Steady.BY_ITSELF.anchored(Steady.Anchor.WALL));
        var finding = only(new TipPush(), weighing(design, 40, new Vec3(60, 280, 500)));
        double pull = (1.5 * 150 * 900 - 40 * G * 20) / 360;

        assertThat(finding.message())
                .contains("left edge", loaded(design).units().force(pull), "at a lever of half its width");
    }

    @Test
    void whatRollsIsAnchoredOnlyWhileItIsFixed() {
        var stand = loaded(plain(draft -> {
            draft.support = Designs.CASTERS;
            draft.steady = Steady.BY_ITSELF.anchored(Steady.Anchor.WALL);
        }));

        assertThat(only(new TipOpen(), stand)).satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
            assertThat(finding.message()).endsWith("while it is fixed; released, it is judged as it stands.");
        });
    }

    @Test
    void anAnchorToTheFloorLiftsAtTheFarEdge() {
        var free = only(new TipOpen(), loaded(plain(draft -> {})));
        var anchored = loaded(plain(draft -> draft.steady = Steady.BY_ITSELF.anchored(Steady.Anchor.FLOOR)));
        double pull = (1.5 * input(free, "O") - input(free, "R")) / 460;

        assertThat(only(new TipOpen(), anchored).message())
                .contains(anchored.units().force(pull), "upwards");
    }

    /** r = 50, h = 10: k = 0.75; casters trail 35 mm: b / (0.75 x (900 - 50)), so it tips from 50 + b / 0.75 up. */
    @Test
    void tipsOverAThresholdAtTheHandlesHeight() {
        var stand = weighing(plain(draft -> draft.support = Designs.CASTERS), 100, new Vec3(360, 280, 500));
        double b = 280 - frontWheels(stand) - 35;
        var finding = only(new TipThreshold(), stand);

        assertThat(figure(finding)).isEqualTo(b / (0.75 * 850), within(1e-9));
        assertThat(finding.severity()).isEqualTo(Severity.NOTE);
        assertThat(finding.message())
                .contains(
                        "It tips from " + stand.units().length(50 + b / 0.75) + " up: push or pull it well below that");
        assertThat(new TipThreshold().check(loaded(plain(draft -> {})))).isEmpty();
    }

    /** As far behind the leading wheels as a push at the carcass's bottom asks, and 1 mm nearer. */
    @Test
    void watchesOutWhereEvenAPushAtTheBottomTipsItOverAThreshold() {
        var design = plain(draft -> draft.support = Designs.CASTERS);
        var stand = loaded(design);
        double least = 0.75 * (stand.stand().carcass().min().z() - 50);
        double y = frontWheels(stand) + 35 + least;

        assertThat(only(new TipThreshold(), weighing(design, 100, new Vec3(360, y, 500)))
                        .severity())
                .isEqualTo(Severity.NOTE);
        assertThat(only(new TipThreshold(), weighing(design, 100, new Vec3(360, y - 1, 500))))
                .satisfies(finding -> {
                    assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
                    assertThat(finding.message()).contains("Even a push at the carcass's bottom tips it");
                });
    }

    @Test
    void noAnchorHoldsAStandThatRollsOverAThreshold() {
        var free = plain(draft -> draft.support = Designs.CASTERS);
        var anchored = plain(draft -> {
            draft.support = Designs.CASTERS;
            draft.steady = Steady.BY_ITSELF.anchored(Steady.Anchor.FLOOR);
        });

        assertThat(only(new TipThreshold(), loaded(anchored)).message())
                .isEqualTo(only(new TipThreshold(), loaded(free)).message())
                .doesNotContain("anchor");
    }

    @Test
    void doesNotRollOverAThresholdAsHighAsItsAxles() {
        var stand = loaded(plain(draft -> {
            draft.support = Designs.CASTERS;
            draft.site = new Site(2, 50, 0, Optional.empty(), Optional.empty());
        }));

        assertThat(only(new TipThreshold(), stand)).satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.STOP);
            assertThat(finding.message()).contains("as high as their axles");
        });
    }

    @Test
    void publishedTestsAreBenchmarksThatStopNothing() {
        var light = weighing(plain(draft -> {}), 1, new Vec3(360, 280, 500));
        for (Rule<LoadedStand> rule : List.of(new TestTopLoad(), new TestOpenParts(), new TestClothingLoad())) {
            assertThat(rule.text().assumptions()).contains("benchmark", "not for shop furniture");
            assertThat(rule.check(light)).isNotEmpty().noneMatch(Finding::isStop);
        }
        assertThat(new TestOpenParts().check(light))
                .extracting(Finding::subject)
                .containsExactly("all open", "one open, empty", "one open, full", "locked");
    }

    /** Levelers from 25 to 60 mm take up 35 mm: 30 mm of fall and 5 mm more. */
    @Test
    void levelsAFloorThatFallsLessThanItsLevelersReach() {
        assertThat(only(new LevelRange(), falling(30)).severity()).isEqualTo(Severity.FINE);
        assertThat(only(new LevelRange(), falling(31))).satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
            assertThat(worst(new LevelRange(), cured(finding, falling(31), 0))).isEqualTo(Severity.FINE);
        });
        assertThat(only(new LevelRange(), falling(0)).severity()).isEqualTo(Severity.NOTE);
    }

    /** Levelers from 25 to 60 mm; the table's 200 mm of travel level nothing. */
    @Test
    void aTableThatMovesLevelsNothing() {
        var moving = new Reference(Reference.Kind.MOVABLE_TABLE, 300, OptionalDouble.of(200), OptionalDouble.of(400));
        Consumer<Draft> high = draft -> {
            draft.machine = Draft.OfMachine.of(draft.machine, machine -> machine.reference = moving);
            draft.workingHeight = new WorkingHeight.Given(1100);
            draft.site = new Site(2, 10, 20, Optional.empty(), Optional.empty());
        };
        var finding = only(new LevelRange(), loaded(plain(high)));

        assertThat(figure(finding)).isEqualTo(35, within(1e-9));
        assertThat(finding.message()).contains("levelers set the working height from 1085 mm to 1120 mm");
        assertThat(only(
                                new LevelRange(),
                                loaded(plain(high.andThen(draft -> draft.support = new Support.Plinth(90, 0, 5)))))
                        .message())
                .contains("Nothing in the height stack levels it");
    }

    @Test
    void doubtsAMachineWhoseCentreOfMassNobodyMeasured() {
        assertThat(only(new MachineCentre(), loaded(plain(draft -> {})))).satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
            assertThat(finding.subject()).isEqualTo("planer");
            assertThat(finding.message()).contains("Assumed are its place in the plan", "and its height");
        });
        assertThat(new MachineCentre()
                        .check(loaded(plain(draft -> draft.machine = Draft.OfMachine.of(
                                draft.machine,
                                machine -> machine.centreOfMass = Optional.of(new CentreOfMass(280, 180, 200, 200)))))))
                .isEmpty();
    }

    /** 3 mm at the corner of a rectangle a x b, a b / sqrt(a2 + b2) from its diagonal. */
    @Test
    void rocksOnFourCasters() {
        var stand = loaded(plain(draft -> draft.support = Designs.CASTERS));
        var box = new Feet(stand.stand()).contacts();
        double a = box.get(1).centre().x() - box.get(0).centre().x();
        double b = box.get(2).centre().y() - box.get(0).centre().y();
        double sway = 900 * 3 / (a * b / Math.hypot(a, b));

        assertThat(only(new CasterFloor(), stand).message()).contains(String.format(Locale.ROOT, "%.2f mm", sway));
        assertThat(new CasterFloor().check(loaded(plain(draft -> {})))).isEmpty();
    }

    @Test
    void offersTheCheapestCureFirst() {
        var light = new Loads(120, 195, 750, 150);
        var plinth = loaded(plain(draft -> {
            draft.support = new Support.Plinth(90, 75, 5);
            draft.loads = light;
        }));

        assertThat(only(new TipOpen(), plinth).remedies())
                .extracting(Remedy::words)
                .satisfiesExactly(
                        words -> assertThat(words).isEqualTo("a plinth without toe space"),
                        words -> assertThat(words).contains("kg of ballast"),
                        words -> assertThat(words).contains("lock"),
                        words -> assertThat(words).contains("anchor"),
                        words -> assertThat(words).isEqualTo("the carcass 50 mm deeper"),
                        words -> assertThat(words).isEqualTo("the carcass 100 mm deeper"),
                        words -> assertThat(words).isEqualTo("the carcass 200 mm deeper"));
    }

    @Test
    void theBallastOfACureCuresTheStandThatIsBuiltWithIt() {
        var before = loaded(plain(draft -> draft.loads = new Loads(200, 195, 750, 150)));
        var finding = only(new TipOpen(), before);

        assertThat(finding.severity()).isEqualTo(Severity.STOP);
        assertThat(finding.remedies().get(0).words()).contains("kg of ballast");
        assertThat(worst(new TipOpen(), cured(finding, before, 0))).isEqualTo(Severity.FINE);
    }

    @Test
    void aWiderBaseNeverTipsSooner() {
        var toes = plain(draft -> draft.support = new Support.Plinth(90, 75, 5));
        var flush = plain(draft -> draft.support = new Support.Plinth(90, 0, 5));
        var swivels = plain(draft -> draft.support = Castered.with(Castered.SWIVEL));
        var fixed = plain(draft -> draft.support = Castered.with(unswivelled(Castered.SWIVEL)));

        for (Rule<LoadedStand> rule :
                List.of(new TipClosed(), new TipOpen(), new TipLargest(), new TipLean(), new TipPush())) {
            assertThat(figure(only(rule, loaded(flush)))).isGreaterThanOrEqualTo(figure(only(rule, loaded(toes))));
            assertThat(figure(only(rule, loaded(fixed)))).isGreaterThanOrEqualTo(figure(only(rule, loaded(swivels))));
        }
    }

    /**
     * Levelers at 40 and 680, 50 and 510 mm: their middle is (360, 280). Over it 120 kg are 40 kg by the rule of thumb and
     * 30 by statics; 160 mm aside and 115 mm behind, 3/4 x 3/4 of 120 kg are 67.5 kg.
     */
    @Test
    void oneFootBearsMoreThanAThirdOfALoadThatLiesNearIt() {
        var over = only(new FootLoad(), lump(120, new Vec3(360, 280, 500)));
        var aside = only(new FootLoad(), lump(120, new Vec3(520, 395, 500)));

        assertThat(figure(over)).isEqualTo(40, within(1e-9));
        assertThat(over.message()).contains("a third of 120 kg");
        assertThat(figure(aside)).isEqualTo(67.5, within(1e-9));
        assertThat(aside.message())
                .contains("By statics", "160 mm aside", "115 mm before or behind", "everything closed");
        assertThat(over.text().assumptions()).contains("clear weighs nothing");
    }

    /** The contents of all drawers out by their travel; with a lock those of one. */
    @Test
    void openDrawersLoadTheFrontFeet() {
        var heavy = new Loads(100, 195, 750, 150);
        var free = only(new FootLoad(), loaded(plain(draft -> draft.loads = heavy)));
        var locked = only(new FootLoad(), loaded(plain(draft -> {
            draft.loads = heavy;
            draft.steady = Steady.BY_ITSELF.interlocked();
        })));

        assertThat(free.message()).contains("all drawers open");
        assertThat(figure(locked)).isLessThan(figure(free));
    }

    /** A door 200 mm wide stands open square before its hinges. */
    @Test
    void anOpenDoorStandsBeforeItsHinges() {
        var left = new Opening("door", "1", false, new Vec3(300, -18, 700), Vec3.ZERO, new Vec3(100, -18, 100));
        var right = new Opening("door", "1", false, new Vec3(100, -18, 700), Vec3.ZERO, new Vec3(300, -18, 100));

        assertThat(left.open(new Vec3(200, -9, 400))).isEqualTo(new Vec3(109, -118, 400));
        assertThat(right.open(new Vec3(200, -9, 400))).isEqualTo(new Vec3(291, -118, 400));
        assertThat(left.openGrip()).isEqualTo(new Vec3(100, -218, 700));
    }

    private static Caster unswivelled(Caster caster) {
        return new Caster(
                caster.name(),
                caster.height(),
                caster.plate(),
                caster.holes(),
                caster.holeDiameter(),
                caster.bolt(),
                0,
                caster.wheel(),
                caster.rating(),
                caster.brake(),
                caster.mass());
    }

    private static double frontWheels(LoadedStand stand) {
        return new Feet(stand.stand())
                .contacts().stream()
                        .mapToDouble(foot -> foot.centre().y())
                        .min()
                        .orElseThrow();
    }

    private static LoadedStand falling(double fall) {
        return loaded(plain(draft -> draft.site = new Site(2, 10, fall, Optional.empty(), Optional.empty())));
    }

    private static Severity worst(Rule<LoadedStand> rule, LoadedStand stand) {
        return rule.check(stand).stream()
                .map(Finding::severity)
                .min(Severity::compareTo)
                .orElseThrow();
    }

    private static LoadedStand cured(Finding finding, LoadedStand before, int remedy) {
        return loaded(Stands.changed(before.design(), finding.remedies().get(remedy)));
    }

    private static LoadedStand lump(double mass, Vec3 centre) {
        return weighing(plain(draft -> {}), mass, centre);
    }

    private static LoadedStand weighing(StandDesign design, double mass, Vec3 centre) {
        var lump = new Weight("lump", Weight.Kind.BOARD, "carcass", mass, centre);
        return new LoadedStand(loaded(design).stand(), List.of(lump));
    }

    private static Finding only(Rule<LoadedStand> rule, LoadedStand stand) {
        var findings = rule.check(stand);
        assertThat(findings).as(rule.text().name()).hasSize(1);
        return findings.get(0);
    }

    private static double figure(Finding finding) {
        return finding.gauge().orElseThrow().figure();
    }

    private static double input(Finding finding, String symbol) {
        return finding.inputs().stream()
                .filter(input -> input.symbol().equals(symbol))
                .findFirst()
                .orElseThrow()
                .value();
    }
}
