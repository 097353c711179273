package org.standwright.design.wall.holder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.Designs;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.kit.Dowel;
import org.standwright.design.stand.Clearances;
import org.standwright.design.wall.Cleat;
import org.standwright.design.wall.Holder;
import org.standwright.design.wall.built.MadeHolder;
import org.standwright.geom.Box3;
import org.standwright.part.Contour;
import org.standwright.part.Feature;
import org.standwright.part.Hole;
import org.standwright.part.Pocket;
import org.standwright.solid.ClosedSolids;

/** Holders of 18 mm board on 100 mm cleats at 45°, their backs from 84 mm above the high edge downwards. */
class HolderMakerTest {
    private final HolderMaker maker = new HolderMaker(Workshop.wall(Workshop.CLEAT));

    @Test
    void shelfIsAsWideAsItsThingsAndTheFingersBesideThem() {
        // three cans of 80: 3 x 80 + 4 x 20; back 84 + 0.6 x (18 + 18 + 160 + 18), on the tape
        var made = make(shelf("glue shelf", 3, 80, 150, 200, OptionalDouble.empty(), 30));

        assertThat(parts(made))
                .containsExactly(
                        "glue shelf hanger: hanger 320 x 98",
                        "glue shelf back: holder back 320 x 222",
                        "glue shelf board: shelf board 320 x 166",
                        "glue shelf bracket 1: bracket 150 x 120",
                        "glue shelf bracket 2: bracket 150 x 120",
                        "glue shelf lip: lip 320 x 48");
        assertThat(made.back()).hasToString("Rect[x0=0.0, y0=-138.0, x1=320.0, y1=84.0]");
        assertThat(box(Workshop.part(made, "board"))).isEqualTo("0..320, -196..-30, -18..0");
        assertThat(box(Workshop.part(made, "lip"))).isEqualTo("0..320, -214..-196, -18..30");
        assertThat(box(Workshop.part(made, "bracket 2"))).isEqualTo("302..320, -180..-30, -138..-18");
        assertThat(text(made.box())).isEqualTo("0..320, -214..0, -138..225");
        assertThat(made.lip()).isEqualTo(214);
        assertThat(made.thingsCentre()).hasToString("Vec3[x=160.0, y=-116.0, z=100.0]");
        assertThat(hardware(made))
                .containsExactly(
                        "3 screw 4 x 30 mm: glue shelf, through the back into the hanger, glued too",
                        "3 screw 4 x 40 mm: glue shelf, lip, into the board's edge (not rated), glued too",
                        "1 wood glue: glue shelf, hanger on its back, board and brackets in dados of the back, lip");
    }

    @Test
    void hangerIsScrewedBehindItsShortFaceNoFartherApartThan200() {
        var made = make(shelf("shelf", 3, 80, 150, 200, OptionalDouble.of(700), 0));
        var back = Workshop.part(made, "back");
        var holes = holes(back, "hanger screw");
        var pilots = holes(Workshop.part(made, "hanger"), "pilot for hanger screw");

        assertThat(holes).extracting(Hole::x).containsExactly(30.0, 190.0, 350.0, 510.0, 670.0);
        assertThat(pilots).extracting(Hole::x).containsExactly(30.0, 190.0, 350.0, 510.0, 670.0);
        assertThat(pilots).extracting(Hole::y).containsOnly(41.0);
        assertThat(holes).extracting(Hole::y).containsOnly(back.part().width() - 41);
        assertThat(made.hangerScrews()).isEqualTo(5);
    }

    @Test
    void longShelfHasABracketInItsMiddle() {
        var made = make(shelf("shelf", 3, 80, 150, 200, OptionalDouble.of(700), 0));

        assertThat(Workshop.part(made, "bracket 2").box().min().x()).isEqualTo(341);
        assertThat(parts(made)).hasSize(6).last().isEqualTo("shelf bracket 3: bracket 150 x 120");
    }

    @Test
    void refusesAShelfTooNarrowForItsThings() {
        assertThatThrownBy(() -> make(shelf("shelf", 3, 80, 150, 200, OptionalDouble.of(300), 0)))
                .isInstanceOf(ImpossibleDesignException.class)
                .hasMessage("Holder 'shelf' is 300 mm wide, but its 3 things, each 80 mm wide, with room for fingers"
                        + " take 320 mm. Make it 320 mm wide or more, or leave its width out.")
                .extracting("field")
                .isEqualTo("/holders/3/width");
    }

    @Test
    void refusesAShelfLongerThanItsSheet() {
        assertThatThrownBy(() -> make(shelf("shelf", 30, 80, 150, 200, OptionalDouble.empty(), 0)))
                .isInstanceOf(ImpossibleDesignException.class)
                .hasMessageContaining("larger than any sheet of board 18 after trimming")
                .hasMessageContaining("3030 mm long")
                .extracting("field")
                .isEqualTo("/holders/3");
    }

    @Test
    void binFallsFromItsBackToItsFront() {
        // floor 6 + 6 above the lower edge; back 84 + max(98 + 40, 0.6 x (36 + 120 + 18))
        var made = make(new Holder.Bin(
                "bin", Workshop.things(2, 100, 100, 120), Optional.empty(), false, OptionalDouble.empty(), 60));

        assertThat(parts(made))
                .containsExactly(
                        "bin hanger: hanger 296 x 98",
                        "bin back: holder back 296 x 222",
                        "bin left side: holder side 144 x 222",
                        "bin right side: holder side 144 x 222",
                        "bin front: holder front 272 x 72",
                        "bin bottom: holder bottom 131 x 271");
        assertThat(Workshop.part(made, "left side").part().contour())
                .map(Contour::purpose)
                .contains("sloped top");
        assertThat(box(Workshop.part(made, "bottom"))).isEqualTo("12.5..283.5, -161.5..-30.5, -132..-126");
        assertThat(text(made.box())).isEqualTo("0..296, -174..0, -138..84");
        assertThat(made.lip()).isEqualTo(174);
    }

    @Test
    void bottomRunsItsGrainAlongTheShorterSpanUnlessNoSheetIsSoWide() {
        // 5.5 into each groove; a sheet is 1220 less 10 wide
        assertThat(parts(wideTray(1190))).contains("tray bottom: holder bottom 231 x 1201");
        assertThat(parts(wideTray(1210))).contains("tray bottom: holder bottom 1221 x 231");
    }

    private MadeHolder wideTray(double inner) {
        return make(new Holder.Tray(
                "tray", Workshop.things(1, 300, 200, 100), Optional.empty(), false, OptionalDouble.of(inner), 40));
    }

    @Test
    void trayHasARimOfOneHeight() {
        var made = make(new Holder.Tray(
                "tray", Workshop.things(1, 300, 200, 100), Optional.empty(), false, OptionalDouble.empty(), 40));

        assertThat(box(Workshop.part(made, "left side"))).isEqualTo("0..18, -274..-30, -165..-113");
        assertThat(box(Workshop.part(made, "front"))).isEqualTo("12..364, -274..-256, -165..-113");
        assertThat(Workshop.part(made, "left side").part().contour()).isEmpty();
    }

    @Test
    void slotsAreOpenAtTheFrontAndEndUnderTheMiddleOfEachThing() {
        var made = make(new Holder.Slots("chisels", Workshop.things(6, 30, 50, 260), Optional.empty(), false, 12));
        var slots = features(Workshop.part(made, "board"), Pocket.class);

        // 18 + 5 + 5 + 15 to the first, then every 40; from the front 50 / 2 + 10
        assertThat(slots)
                .extracting(slot -> slot.area().toString())
                .hasSize(6)
                .startsWith("Rect[x0=37.0, y0=0.0, x1=49.0, y1=35.0]", "Rect[x0=77.0, y0=0.0, x1=89.0, y1=35.0]");
        assertThat(Workshop.part(made, "board").part().length()).isEqualTo(286);
        assertThat(text(made.box())).isEqualTo("0..286, -106..0, -130..155");
    }

    @Test
    void boresStandBehindEachOtherByTheWidthOfTheirThings() {
        var made = make(new Holder.Bores("drivers", Workshop.things(8, 35, 35, 240), Optional.empty(), false, 10));
        var bores = holes(Workshop.part(made, "board"), "bore for a thing");

        assertThat(bores).extracting(Hole::x).startsWith(45.5, 90.5).hasSize(8);
        // 35 / 2 + 10 from the back's face of a board 60 deep
        assertThat(bores).extracting(Hole::y).containsOnly(32.5);
        assertThat(made.thingsCentre().y()).isEqualTo(-36 - 27.5);
    }

    @Test
    void refusesThingsThatFallThroughTheirBores() {
        assertThatThrownBy(() ->
                        make(new Holder.Bores("drivers", Workshop.things(8, 35, 35, 240), Optional.empty(), false, 40)))
                .isInstanceOf(ImpossibleDesignException.class)
                .hasMessageContaining("fall through")
                .hasMessageContaining("Bore 31 mm or less");
    }

    @Test
    void pegsStandAThingsWidthApart() {
        var made = make(new Holder.Pegs(
                "saws", Workshop.things(3, 60, 40, 400), Optional.empty(), true, new Dowel("beech", 12, 80)));
        var pegs = holes(Workshop.part(made, "back"), "bore for a dowel");

        // 20 + 6 to the first, 60 to its other, then every 92
        assertThat(pegs).extracting(Hole::x).containsExactly(26.0, 86.0, 118.0, 178.0, 210.0, 270.0);
        assertThat(pegs).extracting(hole -> hole.depth().getAsDouble()).containsOnly(14.0);
        assertThat(made.lip()).isEqualTo(18 + 18 + 80 - 14);
        assertThat(hardware(made))
                .contains("6 dowel beech, 12 mm x 80 mm: saws, pegs, glued into the back")
                .contains(
                        "2 screw 4 x 30 mm: saws, through the back into the strip once it hangs, against being lifted");
        // halfway between screws at 2 + 41 and a lock at -49: -3
        assertThat(text(made.box())).isEqualTo("0..296, -102..0, -396.5..84");
    }

    @Test
    void locksWithAScrewAtEachQuarterClearOfTheWallScrews() {
        var made = make(new Holder.Panel("panel", Workshop.things(1, 50, 50, 50), Optional.empty(), true, 400, 300));
        var lock = holes(Workshop.part(made, "back"), "screw into the strip against being lifted");

        // the back ends 300 - 84 below the high edge; the wall screws' heads are at 41 of 98, 5 in radius: 2 + 3 from
        // there
        assertThat(lock).extracting(Hole::x).containsExactly(100.0, 300.0);
        assertThat(lock).extracting(Hole::y).containsOnly(216.0 - 98 + 50);
    }

    /** The bar stands 60 before the back: a screwdriver comes through it. */
    @Test
    void reachesALockThroughABarThatStandsBeforeIt() {
        var made = make(new Holder.ClampBar("clamps", Workshop.things(4, 40, 120, 400), Optional.empty(), true, 80));
        var lock = holes(Workshop.part(made, "back"), "screw into the strip against being lifted");
        var reach = holes(Workshop.part(made, "bar"), "reach for the lock screw");

        assertThat(reach).hasSameSizeAs(lock);
        assertThat(reach).extracting(Hole::diameter).containsOnly(12.0);
    }

    @Test
    void clampBarStandsClearOfTheBackByTheJaws() {
        var made = make(new Holder.ClampBar("clamps", Workshop.things(5, 40, 150, 500), Optional.empty(), false, 70));

        assertThat(parts(made))
                .containsExactly(
                        "clamps hanger: hanger 356 x 98",
                        "clamps back: holder back 356 x 182",
                        "clamps bracket 1: bracket 72 x 98",
                        "clamps bracket 2: bracket 72 x 98",
                        "clamps bar: clamp bar 356 x 70");
        assertThat(box(Workshop.part(made, "bar"))).isEqualTo("0..356, -114..-96, -70..0");
        assertThat(text(made.box())).isEqualTo("0..356, -189..0, -500..84");
    }

    @Test
    void hooksHangEachThingByItself() {
        var made = make(
                new Holder.Hooks("mugs", Workshop.things(4, 90, 80, 110), Optional.empty(), false, "cup hook", 40));

        assertThat(holes(Workshop.part(made, "back"), "pilot for a hook"))
                .extracting(Hole::x)
                .containsExactly(55.0, 165.0, 275.0, 385.0);
        assertThat(hardware(made)).contains("4 cup hook: mugs, one for each thing");
        assertThat(made.thingsCentre()).hasToString("Vec3[x=220.0, y=-76.0, z=-57.5]");
    }

    @Test
    void refusesAPanelThatDoesNotCoverItsStrip() {
        assertThatThrownBy(() -> make(
                        new Holder.Panel("panel", Workshop.things(1, 50, 50, 50), Optional.empty(), false, 400, 150)))
                .isInstanceOf(ImpossibleDesignException.class)
                .hasMessage("Holder 'panel' is 150 mm high, but must cover its hanger and the strip below it, 182 mm."
                        + " Make it 182 mm high or more.");
    }

    @Test
    void cabinetSharesItsHeightAmongItsDrawers() {
        // 6 things in three drawers: 2 each beside each other; 220 inside + 36 walls + 2 play + 36 sides
        var made = make(new Holder.Cabinet("bits", Workshop.things(6, 80, 150, 60), Optional.empty(), false, 3, 294));

        assertThat(parts(made))
                .hasSize(6 + 3 * 5)
                .contains(
                        "bits back: holder back 294 x 303",
                        "bits left side: cabinet side 303 x 215",
                        "bits right side: cabinet side 303 x 215",
                        "bits top: cabinet end 270 x 209",
                        "bits drawer 1 bottom: drawer bottom 206 x 268",
                        "bits drawer 1 front: drawer front 256 x 65",
                        "bits drawer 3 left side: drawer side 182 x 65");
        // the front is flush with the carcass, 36 + 209 before the wall
        assertThat(box(Workshop.part(made, "drawer 1 front"))).isEqualTo("19..275, -245..-227, -177..-112");
        assertThat(made.lip()).isEqualTo(245 + 206 * 2 / 3.0, within(1e-9));
    }

    @Test
    void refusesDrawersTooNarrowForTheirThings() {
        assertThatThrownBy(() -> make(
                        new Holder.Cabinet("bits", Workshop.things(4, 230, 150, 60), Optional.empty(), false, 2, 294)))
                .isInstanceOf(ImpossibleDesignException.class)
                .hasMessageContaining("220 mm inside its drawers, but takes 230 mm there.")
                .hasMessageContaining("Make it 304 mm wide or more.");
    }

    /** Two beside each other, three ranks of 150 and 20 around them: 470. */
    @Test
    void refusesDrawersThatStandOutTooFar() {
        assertThatThrownBy(() -> make(
                        new Holder.Cabinet("bits", Workshop.things(6, 80, 150, 60), Optional.empty(), false, 1, 294)))
                .isInstanceOf(ImpossibleDesignException.class)
                .hasMessageContaining("drawers 470 mm deep inside for its 6 things each, but 400 mm is the most");
    }

    /** What refusals in this test propose, made. */
    @Test
    void makesWhatItProposesInsteadOfWhatItRefuses() {
        make(shelf("shelf", 3, 80, 150, 200, OptionalDouble.of(320), 0));
        make(new Holder.Bores("drivers", Workshop.things(8, 35, 35, 240), Optional.empty(), false, 31));
        make(new Holder.Panel("panel", Workshop.things(1, 50, 50, 50), Optional.empty(), false, 400, 182));
        make(new Holder.Cabinet("bits", Workshop.things(4, 230, 150, 60), Optional.empty(), false, 2, 304));
        make(new Holder.Cabinet("bits", Workshop.things(6, 80, 150, 60), Optional.empty(), false, 2, 294));
        make(pegs(new Dowel("beech", 12, 54)));
        make(pegs(new Dowel("beech", 12, 194)));
        make(bin(210));
        make(new Holder.Hooks("mugs", Workshop.things(4, 90, 80, 110), Optional.empty(), false, "cup hook", 40));
    }

    @Test
    void refusesDowelsTooShortForTheThingsOrTooSlender() {
        assertThatThrownBy(() -> make(pegs(new Dowel("beech", 12, 53))))
                .isInstanceOf(ImpossibleDesignException.class)
                .hasMessageContaining("Use dowels 54 mm long or more.");
        assertThatThrownBy(() -> make(pegs(new Dowel("beech", 12, 195))))
                .isInstanceOf(ImpossibleDesignException.class)
                .hasMessageContaining("cut them to 194 mm or less.");
    }

    @Test
    void refusesDowelsThatMeetTheScrews() {
        // 46 mm from the dowels to the hanger's screws and to those of a lock
        assertThatThrownBy(() -> make(new Holder.Pegs(
                        "pipes",
                        Workshop.things(1, 200, 60, 200),
                        Optional.empty(),
                        false,
                        new Dowel("pole", 80, 100))))
                .isInstanceOf(ImpossibleDesignException.class)
                .hasMessageContaining("no wood left between them, or between them and the screws");
    }

    @Test
    void refusesAFrontHigherThanTheBack() {
        assertThatThrownBy(() -> make(bin(211)))
                .isInstanceOf(ImpossibleDesignException.class)
                .hasMessageContaining("Make it 210 mm or less.");
    }

    @Test
    void refusesHooksThatHoldThingsAgainstTheBoard() {
        assertThatThrownBy(() -> make(new Holder.Hooks(
                        "mugs", Workshop.things(4, 90, 80, 110), Optional.empty(), false, "cup hook", 39)))
                .isInstanceOf(ImpossibleDesignException.class)
                .hasMessageContaining("Use hooks that reach 40 mm or more.");
    }

    @Test
    void refusesSlotsThatThingsFallThrough() {
        assertThatThrownBy(() ->
                        make(new Holder.Slots("chisels", Workshop.things(6, 30, 50, 260), Optional.empty(), false, 30)))
                .isInstanceOf(ImpossibleDesignException.class)
                .hasMessageContaining("fall through")
                .hasMessageContaining("Make the slots 27 mm wide");
    }

    @Test
    void refusesBoresThatNobodyBores() {
        assertThatThrownBy(() ->
                        make(new Holder.Bores("pins", Workshop.things(8, 35, 35, 240), Optional.empty(), false, 0)))
                .isInstanceOf(ImpossibleDesignException.class)
                .hasMessageContaining("Bore 2 mm or more.");
    }

    /** What stands at z -18 to 0 leaves no room for screws 18 mm below the high edge. */
    @Test
    void refusesALockWhereAShelfIsInItsWay() {
        var low = new HolderMaker(Workshop.wall(new Cleat(Designs.BOARD_18, 42, 45, 2, OptionalDouble.empty())));
        var shelf = new Holder.Shelf(
                "shelf", Workshop.things(1, 80, 50, 50), Optional.empty(), true, OptionalDouble.empty(), 0);

        assertThatThrownBy(() -> low.make(shelf, "/holders/0"))
                .isInstanceOf(ImpossibleDesignException.class)
                .hasMessageContaining("Use a wider cleat or leave the lock off.")
                .extracting("field")
                .isEqualTo("/holders/0/lock");
    }

    @Test
    void refusesAHangerTooNarrowForItsScrews() {
        var low = new HolderMaker(Workshop.wall(new Cleat(Designs.BOARD_18, 40, 45, 2, OptionalDouble.empty())));

        assertThatThrownBy(() -> low.make(bin(60), "/holders/0"))
                .isInstanceOf(ImpossibleDesignException.class)
                .hasMessage("A hanger's short face is 22 mm wide, but its screws take 24 mm. Make the long face 42 mm"
                        + " or more.");
    }

    @Test
    void leavesTheSpacerOutWhereItsOwnStripBacksIt() {
        var shallow =
                make(new Holder.Hooks("keys", Workshop.things(4, 20, 10, 60), Optional.empty(), false, "hook", 20));
        var deep = make(shelf("shelf", 3, 80, 150, 200, OptionalDouble.empty(), 30));

        assertThat(maker.takesSpacer(shallow)).isFalse();
        assertThatThrownBy(() -> maker.spacer(shallow)).hasMessageContaining("leave the spacer out");
        assertThat(box(maker.spacer(deep))).isEqualTo("0..320, -18..0, -138..-98");
    }

    private static Holder pegs(Dowel dowel) {
        return new Holder.Pegs("saws", Workshop.things(3, 60, 40, 400), Optional.empty(), true, dowel);
    }

    /** Its back 222 high, its floor 12 above the lower edge. */
    private static Holder bin(double front) {
        return new Holder.Bin(
                "bin", Workshop.things(2, 100, 100, 120), Optional.empty(), false, OptionalDouble.empty(), front);
    }

    private MadeHolder make(Holder holder) {
        var made = maker.make(holder, "/holders/3");
        var assembly = Workshop.assembly(maker, made);
        Clearances.check(assembly);
        ClosedSolids.check(assembly);
        return made;
    }

    private static Holder shelf(
            String name, int count, double width, double depth, double height, OptionalDouble given, double lip) {
        return new Holder.Shelf(
                name, Workshop.things(count, width, depth, height), Optional.empty(), false, given, lip);
    }

    private static List<String> parts(MadeHolder made) {
        return made.parts().stream()
                .map(placed -> placed.label() + ": " + placed.part().name() + " "
                        + number(placed.part().length()) + " x "
                        + number(placed.part().width()))
                .toList();
    }

    private static List<String> hardware(MadeHolder made) {
        return made.hardware().stream()
                .map(line -> line.count() + " " + line.item() + ": " + line.use())
                .toList();
    }

    private static List<Hole> holes(PlacedPart placed, String purpose) {
        return features(placed, Hole.class).stream()
                .filter(hole -> hole.purpose().equals(purpose))
                .toList();
    }

    private static <F extends Feature> List<F> features(PlacedPart placed, Class<F> kind) {
        return placed.part().features().stream()
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    private static String box(PlacedPart placed) {
        return text(placed.box());
    }

    private static String text(Box3 box) {
        var a = box.min();
        var b = box.max();
        return String.format(
                Locale.ROOT,
                "%s..%s, %s..%s, %s..%s",
                number(a.x()),
                number(b.x()),
                number(a.y()),
                number(b.y()),
                number(a.z()),
                number(b.z()));
    }

    private static String number(double mm) {
        double settled = Math.round(mm * 1000) / 1000.0 + 0.0;
        return settled == Math.rint(settled) ? Long.toString((long) settled) : Double.toString(settled);
    }
}
