package org.standwright.check.bending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;
import static org.standwright.check.bending.Asked.about;
import static org.standwright.check.bending.Asked.cured;
import static org.standwright.check.bending.Asked.figure;
import static org.standwright.check.bending.Asked.severity;
import static org.standwright.design.Designs.BOARD_12;
import static org.standwright.design.Designs.BOARD_18;
import static org.standwright.design.Designs.bay;
import static org.standwright.design.Designs.equal;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standwright.check.Finding;
import org.standwright.check.Severity;
import org.standwright.check.Stands;
import org.standwright.design.CarcassPlan;
import org.standwright.design.Cutout;
import org.standwright.design.Draft;
import org.standwright.design.Joint;
import org.standwright.design.Place;
import org.standwright.design.StandDesign;
import org.standwright.design.Support;
import org.standwright.design.Worktop;
import org.standwright.design.kit.CentreOfMass;
import org.standwright.design.kit.Dowel;
import org.standwright.design.kit.Mounting;
import org.standwright.design.kit.Point2;
import org.standwright.part.Board;
import org.standwright.part.SheetGood;

class TopSagTest {
    private static final TopSag RULE = new TopSag();
    private static final Support PLINTH = new Support.Plinth(80, 60, 5);
    /** N·mm² of 360 mm of a board of 6500 N/mm². */
    private static final double LAYER = 6500.0 * 360 * 18 * 18 * 18 / 12.0;

    /**
     * Two equal loads at a from both supports: P a (3 L² - 4 a²) / (24 E I); even load 5 w L⁴ / (384 E I): any table of beams.
     * Machine of 38 kg, base 560 wide in the middle of 720; 684 between the sides, its corners 62 from them.
     */
    @Test
    void addsUpTheMachineAtItsCornersAndTheTopItself() {
        double span = 684;
        double stiffness = 8 * LAYER + LAYER;
        double foot = 38 * 9.80665 / 2;
        double own = 3 * 18 * 680e-9 * 9.80665 * 360;
        double corners = foot * 62 * (3 * span * span - 4 * 62 * 62) / (24 * stiffness);
        double itself = 5 * own * Math.pow(span, 4) / (384 * stiffness);

        var finding = about("top", RULE, Stands.plain(draft -> {}));

        assertThat(figure(finding)).isCloseTo(1.8 * (corners + itself), withPercentage(1e-6));
        assertThat(finding.severity()).isEqualTo(Severity.FINE);
    }

    @Test
    void cautionsAboveHalfAMillimetreAndStopsAboveOneAndAHalf() {
        var weak = layers(BOARD_12, 1, heavy(40));
        var weaker = layers(BOARD_12, 1, heavy(150));

        assertThat(severity("top", RULE, weak)).isEqualTo(Severity.CAUTION);
        assertThat(severity("top", RULE, weaker)).isEqualTo(Severity.STOP);
        assertThat(severity("top", RULE, layers(BOARD_18, 2, heavy(40)))).isEqualTo(Severity.FINE);
    }

    @Test
    void offersChangesThatEachLetItSagLess() {
        var weak = layers(BOARD_12, 1, heavy(150));
        var finding = about("top", RULE, weak);

        assertThat(finding.remedies())
                .extracting(remedy -> remedy.words())
                .containsExactly(
                        "a second worktop layer",
                        "bay 1 in two halves with a partition",
                        "the worktop of board 18",
                        "the carcass of the same board 21 mm thick",
                        "a second worktop layer, and bay 1 in two halves with a partition");
        for (var remedy : finding.remedies()) {
            assertThat(figure(about("top", RULE, cured(remedy.words(), finding, weak))))
                    .as(remedy.words())
                    .isLessThan(figure(finding));
        }
    }

    @Test
    void hasNoSecondLayerToOfferWhereThereAreTwo() {
        var two = Stands.plain(draft -> {});
        Finding finding = about("top", RULE, two);

        assertThat(finding.remedies().get(0).change().apply(two)).isEmpty();
    }

    @Test
    void bearsMoreOnTheFeetBesideTheCentreOfMass() {
        var even = Stands.withMachine(machine -> machine.mounting = bolts());
        var oneSided = Stands.withMachine(machine -> {
            machine.mounting = bolts();
            machine.centreOfMass = Optional.of(new CentreOfMass(300, 180, 100, 100));
        });

        double inTheMiddle = figure(about("top", RULE, even));

        assertThat(figure(about("top", RULE, oneSided))).isGreaterThan(inTheMiddle);
        assertThat(inTheMiddle).isGreaterThan(figure(about("top", RULE, Stands.plain(draft -> {}))));
    }

    /** Creep of MDF.LA 3.25, of plywood 1.8 times; 2200 instead of 6500 N/mm². */
    @Test
    void takesTheBoardsModulusAndCreep() {
        var plywood = Stands.plain(draft -> {});
        var mdf = layers(
                of(BOARD_18, Board.MDF),
                2,
                Draft.of(
                        plywood,
                        draft -> draft.carcass = draft.carcass.of(of(BOARD_18, Board.MDF), draft.carcass.back())));

        assertThat(figure(about("top", RULE, mdf)) / figure(about("top", RULE, plywood)))
                .isCloseTo(3.25 / 1.8 * 6500 / 2200, withPercentage(1e-6));
    }

    /** W a³ / (3 E I), any table of beams: two corners 150 before the carcass, glued layers of 560 mm across the grain. */
    @Test
    void bendsAnOverhangUnderTheFeetOnIt() {
        var onOverhang = overhanging(38, 200);
        double stiffness = 3000.0 * 560 * 36 * 36 * 36 / 12;
        double sag = 1.8 * 38 * 9.80665 / 2 * Math.pow(150, 3) / (3 * stiffness);
        var finding = about("overhang at the front", RULE, onOverhang);

        assertThat(figure(finding)).isCloseTo(sag, withPercentage(1e-6));
        assertThat(finding.severity()).isEqualTo(Severity.FINE);
        assertThat(severity("overhang at the front", RULE, overhanging(1200, 200)))
                .isEqualTo(Severity.STOP);
    }

    private static StandDesign overhanging(double mass, double overhang) {
        return Draft.of(heavy(mass), draft -> {
            draft.worktop = new Worktop(BOARD_18, 2, new Worktop.Overhang(overhang, 0, 0, 0), draft.worktop.plate());
            draft.place = new Place(
                    0,
                    new Place.Margins(
                            OptionalDouble.of(50),
                            OptionalDouble.empty(),
                            OptionalDouble.empty(),
                            OptionalDouble.empty()),
                    Optional.empty());
        });
    }

    @Test
    void sagsLessOverAPartitionThatIsHeld() {
        var one = Stands.plain(draft -> draft.support = PLINTH);
        var two = twoBays(one);

        assertThat(figure(about("top", RULE, two))).isLessThan(figure(about("top", RULE, one)) / 2);
    }

    /** On levelers a partition with screws in its edges only presses on a bottom that hangs free: the top bears by itself. */
    @Test
    void bearsAloneOverAPartitionThatSinks() {
        var screwed = screwed(twoBays(Stands.plain(draft -> {})));
        var finding = about("top", RULE, screwed);

        assertThat(figure(finding))
                .isCloseTo(figure(about("top", RULE, Stands.plain(draft -> {}))), withPercentage(1e-6));
        assertThat(finding.message()).contains("what stands between them is not held from below");
        assertThat(figure(about("top", RULE, cured("plinth", finding, screwed))))
                .isLessThan(figure(finding) / 2);
    }

    @Test
    void bendsTogetherWithABottomThatItIsTiedTo() {
        var dowels = new Joint.Doweled(new Dowel("dowel 8 x 30", 8, 30));
        var tied = joined(twoBays(Stands.plain(draft -> {})), dowels);
        var finding = about("top", RULE, tied);

        assertThat(figure(finding)).isCloseTo(figure(about("bottom", new BottomSag(), tied)), withPercentage(1e-6));
        assertThat(finding.message()).contains("together with the bottom, which hangs free under its partitions");
    }

    @Test
    void onlyCautionsOverWhatSinks() {
        var one = layers(BOARD_12, 1, heavy(150));

        assertThat(severity("top", RULE, one)).isEqualTo(Severity.STOP);
        assertThat(severity("top", RULE, screwed(twoBays(one)))).isEqualTo(Severity.CAUTION);
    }

    /** Of 360 mm under the machine 100 and 60 are cut out over the same place: 200 are left of the stiffness, all the load. */
    @Test
    void losesTheWidestOfWhatIsCutOut() {
        var whole = Stands.plain(draft -> {});
        var holed = Draft.of(
                whole,
                draft -> draft.cutouts = List.of(
                        new Cutout.Rectangular("chips", Cutout.In.WORKTOP, 360, 220, 100, 100, 10),
                        new Cutout.Round("hose", Cutout.In.WORKTOP, 340, 340, 60)));

        assertThat(figure(about("top", RULE, holed)) / figure(about("top", RULE, whole)))
                .isCloseTo(360 / 200.0, withPercentage(1e-6));
    }

    private static StandDesign twoBays(StandDesign from) {
        return Draft.of(from, draft -> draft.bays = List.of(bay(equal(3)), bay(equal(3))));
    }

    private static StandDesign screwed(StandDesign from) {
        return joined(from, new Joint.Screwed());
    }

    private static StandDesign joined(StandDesign from, Joint joint) {
        return Draft.of(from, draft -> {
            var now = draft.carcass;
            draft.carcass = new CarcassPlan(now.sheet(), now.back(), now.housing(), now.fit(), joint);
        });
    }

    private static Optional<Mounting> bolts() {
        return Optional.of(new Mounting(
                10,
                8,
                new Point2(100, 40),
                List.of(new Point2(0, 0), new Point2(300, 0), new Point2(300, 240), new Point2(0, 240))));
    }

    private static StandDesign heavy(double mass) {
        return Stands.withMachine(machine -> machine.mass = mass);
    }

    private static StandDesign layers(SheetGood sheet, int layers, StandDesign from) {
        return Draft.of(
                from,
                draft -> draft.worktop = new Worktop(sheet, layers, draft.worktop.overhang(), draft.worktop.plate()));
    }

    private static SheetGood of(SheetGood sheet, Board board) {
        return new SheetGood(
                sheet.material().stiff(board.usual()), sheet.length(), sheet.width(), sheet.nominal(), sheet.price());
    }
}
