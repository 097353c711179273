package org.standwright.viewer.hand.stand;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.viewer.hand.Sample;

class FrontDeedsTest {
    private static final String PLANER = Sample.stand("planer-stand");

    private static FrontModel after(String text, FrontAction action, String key) {
        var deed = model(text).deed(action, key);
        assertThat(deed.whyNot()).isEmpty();
        return model(deed.text().orElseThrow());
    }

    private static FrontModel model(String text) {
        return HandlesTest.model(text);
    }

    /** 'bay 1: 90 3x168 | bay 2: …', heights in whole mm. */
    private static String seen(FrontModel model) {
        return model.things().stream()
                .map(thing -> thing.look().equals("bay")
                        ? "| " + Math.round(thing.area().width()) + ":"
                        : thing.look().charAt(0) + "" + Math.round(thing.area().height()))
                .collect(Collectors.joining(" "));
    }

    private static String after(FrontAction action, String key) {
        return seen(after(PLANER, action, key));
    }

    private static String whyNot(String text, FrontAction action, String key) {
        var deed = model(text).deed(action, key);
        assertThat(deed.text()).isEmpty();
        return deed.whyNot();
    }

    @Test
    void seesTheStandAsItIsWritten() {
        assertThat(seen(model(PLANER))).isEqualTo("| 400: d90 d165 d165 d166 | 267: d90 d90 d90 d90 d90 d130");
    }

    @Test
    void addsADrawerWhereTheyShareTheHeight() {
        assertThat(after(FrontAction.ADD_DRAWER, "/bays/0/cell/1"))
                .isEqualTo("| 400: d90 d123 d123 d123 d124 | 267: d90 d90 d90 d90 d90 d130");
    }

    @Test
    void makesRoomForADrawerAmongGivenOnes() {
        var given = Sample.stand("planer-stand")
                .replace(
                        "{ \"kind\": \"equal-drawers\", \"count\": 3 }",
                        "{ \"kind\": \"drawers\", \"fronts\": [200, 299] }");
        assertThat(seen(model(given))).startsWith("| 400: d90 d200 d299 |");

        var more = after(given, FrontAction.ADD_DRAWER, "/bays/0/cell/1");

        assertThat(seen(more)).startsWith("| 400: d90 d132 d166 d198 |");
    }

    @Test
    void givesTheHeightOfARemovedDrawerToTheOthers() {
        assertThat(after(FrontAction.REMOVE, "/bays/0/cell/1"))
                .isEqualTo("| 400: d90 d249 d250 | 267: d90 d90 d90 d90 d90 d130");
        assertThat(after(FrontAction.REMOVE, "/bays/0/cell/0")).startsWith("| 400: d196 d196 d197 |");
    }

    @Test
    void splitsOneDrawerAndLeavesTheOthersAsTheyAre() {
        var split =
                model(PLANER).deed(FrontAction.SPLIT, "/bays/0/cell/1").text().orElseThrow();

        assertThat(seen(model(split))).startsWith("| 400: d90 d81 d81 d165 d166 |");
        // what is left goes to the lowest, so that a higher stand still builds
        model(split.replace("\"workingHeight\": \"900 mm\"", "\"workingHeight\": \"920 mm\""));
    }

    @Test
    void joinsTwoDrawersAndTheGapBetweenThem() {
        assertThat(after(FrontAction.JOIN, "/bays/0/cell/0")).startsWith("| 400: d258 d165 d166 |");
        assertThat(whyNot(PLANER, FrontAction.JOIN, "/bays/0/cell/3")).contains("nothing below it");
    }

    @Test
    void changesPlaces() {
        assertThat(after(FrontAction.DOWN, "/bays/0/cell/0")).startsWith("| 400: d165 d90 d165 d166 |");
        assertThat(after(FrontAction.UP, "/bays/0/cell/1")).startsWith("| 400: d165 d90 d165 d166 |");
        assertThat(whyNot(PLANER, FrontAction.UP, "/bays/0/cell/0")).contains("uppermost");
        assertThat(whyNot(PLANER, FrontAction.DOWN, "/bays/0/cell/1")).contains("just like it");
        assertThat(after(FrontAction.BAY_RIGHT, "/bays/0/cell/0"))
                .isEqualTo("| 267: d90 d90 d90 d90 d90 d130 | 400: d90 d165 d165 d166");
    }

    @Test
    void makesOtherThingsOfThings() {
        assertThat(after(FrontAction.OPEN, "/bays/0/cell/0")).startsWith("| 400: o90 d158 d158 d158 |");
        var saw = Sample.stand("mitre-saw-stand");
        assertThat(seen(after(saw, FrontAction.DRAWERS, "/bays/0/cell/0")))
                .startsWith("| 406: d132 d132 d132 d132 d135 |");
        assertThat(whyNot(PLANER, FrontAction.DRAWERS, "/bays/0/cell/0")).contains("already");
    }

    @Test
    void removesAndSplitsBays() {
        assertThat(after(FrontAction.REMOVE_BAY, "/bays/1")).isEqualTo("| 685: d90 d165 d165 d166");
        assertThat(after(FrontAction.SPLIT_BAY, "/bays/0/cell/2"))
                .isEqualTo("| 191: d90 d165 d165 d166 | 191: d90 d165 d165 d166 | 267: d90 d90 d90 d90 d90 d130");
        assertThat(whyNot(Sample.stand("grinder-stand"), FrontAction.REMOVE_BAY, "/bays/0"))
                .contains("only bay");
    }

    @Test
    void addsABayOnTheRightAsItIsBuilt() {
        var mirrored = Sample.stand("mortiser-stand");
        assertThat(seen(model(mirrored))).isEqualTo("| 327: d405 | 260: d100 d100 d199");

        var wider = after(mirrored, FrontAction.ADD_BAY, "/bays/1");

        assertThat(seen(wider)).isEqualTo("| 155: d405 | 155: o411 | 260: d100 d100 d199");
    }

    @ParameterizedTest
    @MethodSource("org.standwright.viewer.hand.Sample#stands")
    void everyDeedBuildsOrIsRefusedWithWords(String name) {
        var model = model(Sample.stand(name));
        var built = new ArrayList<String>();
        for (var thing : model.things()) {
            for (var action : FrontAction.values()) {
                var deed = model.deed(action, thing.key());
                assertThat(deed.text().isPresent()).isEqualTo(deed.whyNot().isEmpty());
                deed.text().filter(FrontDeedsTest::builds).ifPresent(text -> built.add(deed.what()));
            }
        }
        assertThat(built).hasSizeGreaterThan(3);
    }

    /** A text that does not even parse throws something else. */
    private static boolean builds(String text) {
        try {
            model(text);
            return true;
        } catch (ImpossibleDesignException refusal) {
            return false;
        }
    }
}
