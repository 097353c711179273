package org.standwright.design.door;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.standwright.design.door.HandMade.BUTT;
import static org.standwright.design.door.HandMade.CONCEALED;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.standwright.design.Content;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.Hung;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.Mount;
import org.standwright.design.StandDesign;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.DoorLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.frame.Frame;
import org.standwright.design.kit.Hinge;
import org.standwright.design.kit.Side;
import org.standwright.design.kit.Size2;
import org.standwright.geom.Rect;

class DoorRulesTest {
    @Test
    void refuseDoorsTooThinForTheCupsAndNameTheThicknessThatWorks() {
        var design = HandMade.design(Mount.OVERLAY, CONCEALED);

        refused(
                () -> new DoorRules(fronts(design, 12)).check(),
                "/drawers/front",
                "Use a sheet of 15 mm or more for the fronts.");
        assertThatCode(() -> new DoorRules(fronts(design, 15)).check()).doesNotThrowAnyException();
    }

    @Test
    void refuseButtHingesOnOverlayDoors() {
        refused(
                () -> new DoorRules(HandMade.design(Mount.OVERLAY, BUTT)).check(),
                "/bays/0/contents/0/hinge",
                "Or make the fronts \"inset\".");
        assertThatCode(() -> new DoorRules(HandMade.design(Mount.INSET, BUTT)).check())
                .doesNotThrowAnyException();
        assertThatCode(() -> new DoorRules(HandMade.design(Mount.OVERLAY, CONCEALED)).check())
                .doesNotThrowAnyException();
    }

    @Test
    void refuseALeafWiderThanTheDoorsEdge() {
        refused(
                () -> new DoorRules(HandMade.design(Mount.INSET, leaf(20))).check(),
                "/bays/0/contents/0/hinge",
                "Use a hinge whose leaf is 18 mm wide or less.");
        assertThatCode(() -> new DoorRules(HandMade.design(Mount.INSET, leaf(18))).check())
                .doesNotThrowAnyException();
    }

    @Test
    void refuseACupThatBreaksOutOfTheDoorsEdge() {
        refused(
                () -> new DoorRules(HandMade.design(Mount.OVERLAY, cupFromEdge(17))).check(),
                "/bays/0/contents/0/hinge",
                "Set its centre 20 mm from the edge or more.");
        assertThatCode(() -> new DoorRules(HandMade.design(Mount.OVERLAY, cupFromEdge(20))).check())
                .doesNotThrowAnyException();
    }

    /** A panel of 18 and a gap of 3: 18 - 1.5 over a side, 9 - 1.5 over a partition. */
    @Test
    void refuseAHingeThatIsNotMadeForTheLapAndNameTheOverlayThatIs() {
        var half = "Use a hinge for an overlay of 7.5 mm.";
        laps(Mount.OVERLAY, 16.5, Hung.RIGHT, half);
        laps(Mount.OVERLAY, 10.6, Hung.RIGHT, half);
        laps(Mount.OVERLAY, 7.5, Hung.LEFT, "Use a hinge for an overlay of 16.5 mm.");
        laps(Mount.INSET, 7.5, Hung.LEFT, "Use a hinge for an overlay of 0 mm.");
        laps(Mount.OVERLAY, 16.5, Hung.PAIR, "Hang one door on the left with a hinge for an overlay of 16.5 mm");

        assertThatCode(() -> {
                    hung(Mount.OVERLAY, 10.4, Hung.RIGHT);
                    hung(Mount.OVERLAY, 7.5, Hung.RIGHT);
                    hung(Mount.OVERLAY, 16.5, Hung.LEFT);
                    hung(Mount.INSET, 0, Hung.PAIR);
                })
                .doesNotThrowAnyException();
    }

    private static void laps(Mount mount, double overlay, Hung hung, String way) {
        refused(() -> hung(mount, overlay, hung), "/bays/0/contents/0/hinge", way);
    }

    private static void hung(Mount mount, double overlay, Hung hung) {
        var door = new Content.Door(OptionalDouble.empty(), HandMade.concealed(overlay), hung, Optional.empty());
        var bays = List.of(Designs.bay(door), Designs.bay(Designs.equal(2)));
        new DoorRules(Designs.stand(900, Designs.CASTERS, mount, bays)).check();
    }

    @Test
    void refuseHingesThatMeetInANarrowOpening() {
        refused(() -> pair(100), "/bays/0", "Make the bay's opening 120 mm wide.");
        assertThatCode(() -> pair(120)).doesNotThrowAnyException();
    }

    /** 18 mm thick, gap 2 mm: (18² - 2²) / (2 · 2) = 80 mm at least. */
    @Test
    void refuseAnInsetDoorTooNarrowToSwingOutOfItsGap() {
        refused(() -> swinging(70), "/bays/0", "Make the bay's opening 84 mm wide.");
        assertThatCode(() -> swinging(84)).doesNotThrowAnyException();
    }

    @Test
    void refuseAHingeThatLeavesItsOpening() {
        var made = new HandMade(HandMade.design(Mount.OVERLAY, CONCEALED)).door(Side.LEFT, CONCEALED);
        var door = made.doors().get(0);
        var low = new DoorLayout("1.1", door.front(), Side.LEFT, CONCEALED, List.of(35.0, 300.0));

        refused(
                () -> new DoorRoom(made.frame).check(List.of(bay(made.frame.opening(0), low))),
                "/bays/0/contents",
                "Make the door higher");
    }

    @Test
    void listHingesWithTheirScrews() {
        var made = new HandMade(HandMade.design(Mount.OVERLAY, CONCEALED))
                .door(Side.LEFT, CONCEALED)
                .door(Side.LEFT, CONCEALED);

        assertThat(lines(made)).isEqualTo("""
                        4 concealed hinge 35: doors
                        4 slide screw 4 x 16 mm: hinge plates on uprights
                        4 slide screw 4 x 8 mm: hinge plates on uprights
                        8 slide screw 4 x 16 mm: hinge cups on doors""");
        assertThat(lines(new HandMade(HandMade.design(Mount.INSET, BUTT)).door(Side.LEFT, BUTT)))
                .isEqualTo("""
                        2 butt hinge 50: doors
                        6 screw 4 x 16 mm: hinges on uprights
                        6 screw 4 x 16 mm: hinges on door edges (not rated)
                        1 magnetic catch: doors on butt hinges: holds them and stops them flush""");
    }

    private static String lines(HandMade made) {
        return new DoorHardware(made.frame, made.bays)
                .lines().stream()
                        .map(line -> line.count() + " " + line.item() + ": " + line.use())
                        .collect(Collectors.joining("\n"));
    }

    /** A pair of inset doors before an opening of this width. */
    private static void pair(double width) {
        var frame = frame(HandMade.design(Mount.INSET, CONCEALED), width);
        var opening = frame.opening(0);
        double middle = opening.x0() + width / 2;
        var left = new Rect(opening.x0() + 3, opening.y0() + 3, middle - 1.5, opening.y1() - 3);
        var right = new Rect(middle + 1.5, opening.y0() + 3, opening.x1() - 3, opening.y1() - 3);
        new DoorRoom(frame)
                .check(List.of(bay(
                        opening,
                        new DoorLayout("1.1", left, Side.LEFT, CONCEALED, List.of(100.0)),
                        new DoorLayout("1.2", right, Side.RIGHT, CONCEALED, List.of(100.0)))));
    }

    /** One inset door on butt hinges, gap 2, before an opening of this width. */
    private static void swinging(double width) {
        var design = Draft.of(HandMade.design(Mount.INSET, BUTT), draft -> draft.gap(2));
        var frame = frame(design, width);
        var opening = frame.opening(0);
        var front = new Rect(opening.x0() + 2, opening.y0() + 2, opening.x1() - 2, opening.y1() - 2);
        new DoorRoom(frame).check(List.of(bay(opening, new DoorLayout("1.1", front, Side.LEFT, BUTT, List.of(100.0)))));
    }

    private static Frame frame(StandDesign design, double opening) {
        return new Frame(design, new Size2(opening + 36, 560), 160, 600, List.of(opening));
    }

    private static BayLayout bay(Rect opening, DoorLayout... doors) {
        return new BayLayout(
                "1", opening, List.of(new SectionLayout.Closed(opening, List.of(doors), List.of(), Optional.empty())));
    }

    private static StandDesign fronts(StandDesign design, double thickness) {
        return Draft.of(design, draft -> draft.front(Designs.sheet("front " + thickness, thickness, 2440, 1220)));
    }

    private static Hinge leaf(double width) {
        return new Hinge.Butt("butt hinge", 50, width, 2, 3);
    }

    private static Hinge cupFromEdge(double from) {
        return new Hinge.Concealed("concealed hinge", 35, 12, from, 16.5, 37, 32, 60, 80, 50, 110);
    }

    private static void refused(ThrowingCallable build, String field, String way) {
        assertThatThrownBy(build)
                .isInstanceOfSatisfying(
                        ImpossibleDesignException.class,
                        refusal -> assertThat(refusal.field()).isEqualTo(field))
                .hasMessageContaining(way);
    }
}
