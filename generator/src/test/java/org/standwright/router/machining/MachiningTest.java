package org.standwright.router.machining;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standwright.design.kit.Router;
import org.standwright.drawing.plot.Mark;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.part.Banding;
import org.standwright.part.Bands;
import org.standwright.part.Bevel;
import org.standwright.part.Channel;
import org.standwright.part.Contour;
import org.standwright.part.Edge;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.Grain;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
import org.standwright.part.Recess;
import org.standwright.part.Run;
import org.standwright.router.SampleRouters;
import org.standwright.unit.Units;

class MachiningTest {
    private static final Material PLY = new Material("ply", 18, 700, Grain.NONE);
    private static final Router DOG_BONE = SampleRouters.router(Router.Relief.DOG_BONE);
    private static final Router NONE = SampleRouters.router(Router.Relief.NONE);

    @Test
    void namesLayersByWhatIsDoneAndHowDeep() {
        var machining = work(
                DOG_BONE,
                Hole.through(50, 50, 8, "bolt"),
                Hole.blind(Face.SHOW, 80, 50, 5, 12, "pin"),
                Hole.through(100, 50, 2.5, "pilot"),
                Pocket.blind(Face.SHOW, new Rect(150, 50, 250, 150), 5, 9, "plate"),
                Pocket.through(new Rect(300, 50, 400, 150), 5, "cord"),
                Channel.across(Face.BENCH, 450, 468, 300, 6));

        assertThat(machining.operations())
                .extracting(operation -> operation.work().layer())
                .containsExactly(
                        "bore 8 through",
                        "bore 5 12 deep",
                        "centre mark",
                        "pocket 9 deep",
                        "cutout through 18.2 deep",
                        "channel 6 deep",
                        "outline through 18.2 deep");
        assertThat(machining.operations())
                .extracting(Operation::face)
                .containsExactly(
                        Optional.empty(),
                        Optional.of(Face.SHOW),
                        Optional.empty(),
                        Optional.of(Face.SHOW),
                        Optional.empty(),
                        Optional.of(Face.BENCH),
                        Optional.empty());
        assertThat(machining.remarks())
                .containsExactly("1 x pilot: centre mark only; drill 2.5 mm through from the show face, at (100, 50)");
    }

    @Test
    void leavesASkinWhereTheRouterDoes() {
        var machining = SampleRouters.machining(board(), SampleRouters.skinned(), 17.8);

        assertThat(machining.operations().get(0).work().layer()).isEqualTo("outline 17.4 deep skin 0.4");
    }

    @Test
    void runsOutPastTheEdgeByHalfABit() {
        assertThat(box(work(DOG_BONE, Channel.across(Face.SHOW, 100, 118, 300, 6))))
                .isEqualTo(new Rect(100, -3, 118, 303));
        assertThat(box(work(DOG_BONE, new Channel(Face.SHOW, Run.ALONG, new Rect(0, 0, 600, 10), 6))))
                .as("a rabbet, open on three sides")
                .isEqualTo(new Rect(-3, -3, 603, 10));
    }

    @Test
    void runsOutFromWhereTheCutIsNotWhereTheFinishedEdgeWillBe() {
        var band = new Banding("strip", 2);
        var channel = Channel.across(Face.SHOW, 100, 118, 300, 6);
        var banded = board(channel).banded(Bands.atY0(Optional.of(band)));
        assertThat(box(SampleRouters.machining(banded, DOG_BONE, 18))).isEqualTo(new Rect(100, -1, 118, 303));
        assertThat(box(SampleRouters.machining(board(channel).cutOver(5), DOG_BONE, 18)))
                .isEqualTo(new Rect(100, -8, 118, 308));
    }

    @Test
    void boresTheWidePartOfACounterboreToo() {
        var hole = Hole.through(100, 100, 9, "bolt").with(new Recess.Counterbore(26, 9));
        var machining = work(DOG_BONE, hole);

        assertThat(machining.operations())
                .extracting(operation -> operation.work().layer())
                .containsExactly("bore 26 9 deep", "bore 9 through", "outline through 18.2 deep");
        assertThat(machining.operations().get(1).face())
                .as("from the same face")
                .hasValue(Face.SHOW);
    }

    @Test
    void saysWhatToCountersinkByHand() {
        var hole = Hole.through(100, 100, 6, "screw").with(new Recess.Countersink(10, 90));
        assertThat(work(DOG_BONE, hole).remarks())
                .containsExactly(
                        "1 x screw: bored only; countersink it to 10 mm at 90 degrees from the show face, at (100, 100)");
    }

    @Test
    void saysWhetherAStoppedChannelTakesASquareMate() {
        var channel = new Channel(Face.SHOW, Run.ACROSS, new Rect(100, 40, 118, 300), 6);

        assertThat(work(DOG_BONE, channel).remarks())
                .containsExactly(
                        "stopped channel at (100, 40): its square ends are relieved, so that a square mate goes in");
        assertThat(work(NONE, channel).remarks())
                .singleElement()
                .asString()
                .startsWith(
                        "stopped channel at (100, 40): round end or notched mate: round or notch the mate's corners by 3 mm");
    }

    @Test
    void givesNoReliefWhereItWouldMeetAnotherOrLeaveThePartOrCutIntoSomethingElse() {
        var thin = new Channel(Face.SHOW, Run.ACROSS, new Rect(100, 40, 107, 300), 6);
        assertThat(work(DOG_BONE, thin).remarks())
                .as("reliefs in each other's way")
                .singleElement()
                .asString()
                .contains("round end or notched mate")
                .contains("(100, 40), (107, 40)");

        var atEdge = Pocket.blind(Face.SHOW, new Rect(0.5, 100, 60, 160), 0, 9, "lock");
        assertThat(work(DOG_BONE, atEdge).remarks())
                .as("too near to the edge")
                .singleElement()
                .asString()
                .contains("corners stay round by 3 mm")
                .contains("(0.5, 100)")
                .doesNotContain("(60, 100)");

        var lock = Pocket.blind(Face.SHOW, new Rect(100, 100, 160, 160), 0, 9, "lock");
        var pin = Hole.blind(Face.SHOW, 162, 162, 6, 10, "pin");
        assertThat(work(DOG_BONE, lock, pin).remarks())
                .as("a hole beside the corner")
                .singleElement()
                .asString()
                .contains("(160, 160)")
                .doesNotContain("(100, 100)");
        var below = Hole.blind(Face.BENCH, 162, 162, 6, 8, "pin");
        assertThat(work(DOG_BONE, lock, below).remarks())
                .as("a hole from the other face that does not reach")
                .isEmpty();
    }

    @Test
    void needsNoReliefInACornerThatPointsIntoThePocketOrLiesInADeeperOne() {
        var corner = new Outline(List.of(
                new Vec2(100, 100),
                new Vec2(200, 100),
                new Vec2(200, 150),
                new Vec2(150, 150),
                new Vec2(150, 200),
                new Vec2(100, 200)));
        var machining = work(DOG_BONE, new Pocket(Face.SHOW, corner, 0, OptionalDouble.of(9), "lock"));
        var arcs = ((Mark.Closed) machining.operations().get(0).mark())
                .loop().sides().stream().filter(side -> side.isArc());
        assertThat(arcs).as("five corners that a bit does not reach into").hasSize(5);

        var across = Channel.across(Face.SHOW, 300, 330, 300, 9);
        var into = new Channel(Face.SHOW, Run.ALONG, new Rect(0, 100, 310, 118), 6);
        assertThat(work(DOG_BONE, across, into).remarks())
                .as("ends in the other channel")
                .isEmpty();
    }

    @Test
    void namesRadiiThatTheBitCannotCut() {
        var tight = Pocket.blind(Face.SHOW, new Rect(100, 100, 160, 160), 2, 9, "lock");
        assertThat(work(DOG_BONE, tight).remarks())
                .singleElement()
                .asString()
                .startsWith(
                        "lock at (100, 100) has inside radii of 2 mm, smaller than the bit's 3 mm: finish them with a bit of at most 4 mm");
        assertThat(work(DOG_BONE, Pocket.blind(Face.SHOW, new Rect(100, 100, 160, 160), 3, 9, "lock"))
                        .remarks())
                .isEmpty();
    }

    @Test
    void putsWhatIsNarrowerThanTheBitOnALayerThatSaysSo() {
        var machining = work(DOG_BONE, Channel.across(Face.SHOW, 100, 104, 300, 6));
        assertThat(machining.operations().get(0).work().layer()).isEqualTo("narrow channel 6 deep bit at most 4");
        assertThat(machining.remarks())
                .singleElement()
                .asString()
                .isEqualTo(
                        "channel at (100, 0) is narrower than the bit of 6 mm: cut it with a bit of at most 4 mm, or with a saw or chisel");
        assertThat(work(DOG_BONE, Channel.across(Face.SHOW, 100, 106, 300, 6)).remarks())
                .as("as wide as the bit")
                .isEmpty();
        assertThat(work(DOG_BONE, Channel.across(Face.SHOW, 0, 4, 300, 6)).remarks())
                .as("a rabbet")
                .isEmpty();
    }

    @Test
    void survivesABitWiderThanEverything() {
        var giant = new Router(500, 1, 500, 0.2, 0, Optional.of(new Router.Tabs(3, 8)), Router.Relief.T_BONE, 8);
        var machining = SampleRouters.machining(
                board(
                        Hole.through(50, 50, 8, "bolt"),
                        Channel.across(Face.SHOW, 100, 118, 300, 6),
                        Pocket.through(new Rect(300, 50, 400, 150), 0, "cord")),
                giant,
                18);
        assertThat(machining.operations())
                .extracting(operation -> operation.work().kind())
                .containsExactly(Kind.CENTRE_MARK, Kind.NARROW, Kind.NARROW, Kind.OUTLINE);
        assertThat(machining.cautions()).anyMatch(caution -> caution.startsWith("no room for a tab"));
    }

    @Test
    void listsWhatCannotBeCutFromAbove() {
        var machining = work(
                DOG_BONE,
                new EdgeHole(Edge.X0, 50, 9, 3, 40, "screw pilot"),
                new EdgeHole(Edge.X0, 150, 9, 3, 40, "screw pilot"),
                new Bevel(Edge.Y1, Face.SHOW, 45, 18));
        assertThat(machining.operations()).as("only the outline").hasSize(1);
        assertThat(machining.byHand())
                .containsExactly(
                        "2 x screw pilot, 3 mm wide, 40 mm deep, into the end at x = 0, 9 mm above the bench face, at y 50, 150:"
                                + " drill them with the part's template or a jig",
                        "bevel along the far edge along y, blade tilted 45 degrees from square, 18 mm off the show face,"
                                + " 0 mm of the edge left flat: saw it after routing");
    }

    @Test
    void warnsOfPartsWithLittleToHoldThemBy() {
        assertThat(SampleRouters.machining(Part.blank("strip", PLY, 600, 74), SampleRouters.tabbed(), 18)
                        .remarks())
                .containsExactly("small: little holds it down, so screw or tape it besides; cut it last and slowly");
        assertThat(SampleRouters.machining(Part.blank("strip", PLY, 600, 74), NONE, 18)
                        .remarks())
                .singleElement()
                .asString()
                .startsWith("small: ");
        assertThat(SampleRouters.machining(Part.blank("block", PLY, 140, 140), NONE, 18)
                        .remarks())
                .hasSize(1);
        assertThat(SampleRouters.machining(Part.blank("shelf", PLY, 600, 76), NONE, 18)
                        .remarks())
                .isEmpty();
    }

    @Test
    void leavesWhatIsInAWorktopLayerForAfterItsTrim() {
        var layer = Part.blank("worktop upper layer", PLY, 600, 300)
                .with(Hole.through(50, 50, 9, "bolt"))
                .cutOver(3);
        var machining = SampleRouters.machining(layer, NONE, 18);
        assertThat(machining.operations())
                .extracting(operation -> operation.work().layer())
                .containsExactly("after trim bore 9 through", "outline through 18.2 deep");
        assertThat(machining.remarks())
                .singleElement()
                .asString()
                .contains("made after the trim, from the part's own drawing");
        assertThat(machining.on(Face.SHOW, true))
                .as("on the board")
                .extracting(operation -> operation.work().layer())
                .containsExactly("outline through 18.2 deep");
        assertThat(machining.goesOnAfterTrim()).isTrue();
    }

    @Test
    void cutsNothingIntoThePartFromAChannelThatEndsAtItsContourFromOutside() {
        var low = new Contour(Outline.of(new Rect(0, 0, 600, 140)), "low");
        var machining = work(DOG_BONE, low, new Channel(Face.BENCH, Run.ALONG, new Rect(60, 140, 260, 160), 9));
        assertThat(machining.operations())
                .extracting(operation -> operation.work().kind())
                .containsExactly(Kind.OUTLINE);
    }

    @Test
    void cutsNothingBeyondTheContourButHalfABit() {
        var sloped = new Contour(
                new Outline(List.of(new Vec2(0, 0), new Vec2(600, 0), new Vec2(600, 100), new Vec2(0, 300))), "slope");
        var machining = work(DOG_BONE, sloped, Channel.across(Face.SHOW, 500, 518, 300, 6));
        var reach = Flat.grown(Flat.of(sloped.outline()), 3.001);
        assertThat(reach.covers(machining.operations().get(0).mark().accept(new MarkArea())))
                .isTrue();
    }

    /** A bit of 6 mm leaves 2 x 6 mm less of each cutout; bores no wider than the bit leave none. */
    @Test
    void namesTheWasteThatComesFree() {
        var machining = work(
                DOG_BONE,
                Pocket.through(new Rect(100, 100, 200, 150), 6, "cord"),
                Hole.through(300, 100, 50, "hose"),
                Hole.through(350, 200, 8, "bolt"),
                Pocket.blind(Face.SHOW, new Rect(400, 100, 500, 150), 6, 9, "lock"));
        assertThat(machining.cautions())
                .containsExactly(
                        "waste comes free in it: 1 x 88 x 38 mm, 1 x 38 mm across; hold it with double-sided tape"
                                + " or a screw, or clear it as a pocket");
    }

    /** 2 x 300 mm of 1800 mm are open below, as the show face is up. */
    @Test
    void saysHowMuchOfTheOutlineHasNoSkin() {
        var open = new Channel(Face.BENCH, Run.ALONG, new Rect(0, 0, 600, 10), 6);
        var top = new Channel(Face.SHOW, Run.ALONG, new Rect(0, 290, 600, 300), 6);
        assertThat(SampleRouters.machining(board(top, open), SampleRouters.skinned(), 18)
                        .cautions())
                .singleElement()
                .asString()
                .startsWith("no skin is left along 34 % of its outline");
        var narrow = Channel.across(Face.BENCH, 100, 118, 300, 6);
        var little = SampleRouters.machining(board(top, narrow), SampleRouters.skinned(), 18);
        assertThat(little.cautions()).isEmpty();
        assertThat(little.remarks()).anyMatch(remark -> remark.startsWith("no skin is left along 2 % of its outline"));
        assertThat(SampleRouters.machining(board(top), SampleRouters.skinned(), 18)
                        .remarks())
                .as("from above")
                .isEmpty();
    }

    @Test
    void runsAChannelOutIntoOneAsDeepThatItEndsAt() {
        var level = new Channel(Face.BENCH, Run.ALONG, new Rect(0, 100, 600, 118), 3);
        var upright = new Channel(Face.BENCH, Run.ACROSS, new Rect(100, 0, 118, 100), 3);
        var machining = work(NONE, upright, level);
        assertThat(box(machining)).isEqualTo(new Rect(100, -3, 118, 103));
        assertThat(machining.remarks()).isEmpty();

        var shallow = new Channel(Face.BENCH, Run.ALONG, new Rect(0, 100, 600, 118), 2);
        assertThat(box(work(NONE, upright, shallow))).isEqualTo(new Rect(100, -3, 118, 100));
        assertThat(work(NONE, upright, shallow).remarks())
                .singleElement()
                .asString()
                .startsWith("stopped channel at (100, 0): round end");
        var other = new Channel(Face.SHOW, Run.ALONG, new Rect(0, 100, 600, 118), 3);
        assertThat(box(work(NONE, upright, other))).as("on the other face").isEqualTo(new Rect(100, -3, 118, 100));
    }

    /** Six of twelve chords to a corner take nothing of a rounding wider than the bit. */
    @Test
    void callsARoundedCutoutNarrowOnlyWhereItIs() {
        var wide = new Router(16, 1.6, 5, 0.2, 0, Optional.empty(), Router.Relief.NONE, 8);
        for (double radius : new double[] {8, 10, 25, 40}) {
            var plate = Pocket.through(new Rect(100, 50, 400, 250), radius, "plate");
            assertThat(SampleRouters.machining(board(plate), wide, 18).remarks())
                    .as("radius %s", radius)
                    .isEmpty();
        }
        var key = new Outline(List.of(
                new Vec2(100, 100),
                new Vec2(200, 100),
                new Vec2(200, 110),
                new Vec2(260, 110),
                new Vec2(260, 120),
                new Vec2(200, 120),
                new Vec2(200, 150),
                new Vec2(100, 150)));
        var keyed = new Pocket(Face.SHOW, key, 0, OptionalDouble.of(9), "key");
        assertThat(SampleRouters.machining(board(keyed), wide, 18).remarks())
                .anyMatch(remark -> remark.startsWith("key at (100, 100) is narrower than the bit of 16 mm in places"));
    }

    /** A radius of 1.03 x 3 mm. */
    @Test
    void saysThatHalfOfATBoneStaysVisible() {
        var channel = new Channel(Face.SHOW, Run.ACROSS, new Rect(100, 40, 118, 300), 6);
        assertThat(work(SampleRouters.router(Router.Relief.T_BONE), channel).remarks())
                .singleElement()
                .asString()
                .endsWith("a half-moon of radius 3.09 mm stays visible beside it");
    }

    @Test
    void saysWhatCoversSeveralEdgesInOneLine() {
        var tape = Optional.of(new Banding("tape", 0.6));
        var banded = board().banded(new Bands(tape, tape, tape, tape));
        assertThat(SampleRouters.machining(banded, NONE, 18).remarks())
                .containsExactly("cut 0.6 mm smaller, where 'tape' comes on, at x = 0, the far end along x, y = 0,"
                        + " the far edge along y");
    }

    @Test
    void saysInchesBesideWhatIsDrilledByHand() {
        var part = board(Hole.blind(Face.SHOW, 100, 50, 2.78125, 12.7, "pilot"));
        assertThat(Machining.of(part, NONE, 18, Face.SHOW, new Sizes(Units.INCH))
                        .remarks())
                .containsExactly("1 x pilot: centre mark only; drill 2.78 mm (7/64 in), 12.7 mm (1/2 in) deep from the"
                        + " show face, at (100, 50)");
    }

    private static Rect box(Machining machining) {
        var bounds = ((Mark.Closed) machining.operations().get(0).mark()).loop().bounds();
        return new Rect(round(bounds.x0()), round(bounds.y0()), round(bounds.x1()), round(bounds.y1()));
    }

    private static double round(double value) {
        return Math.rint(value * 1e6) / 1e6;
    }

    private static Part board(Feature... features) {
        return Part.blank("board", PLY, 600, 300).with(features);
    }

    private static Machining work(Router router, Feature... features) {
        return SampleRouters.machining(board(features), router, 18);
    }
}
