package org.standwright;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.check.Finding;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.built.CleatWall;
import org.standwright.file.text.DesignFileException;
import org.standwright.make.Product;

/** Walls as makers get them wrong: refused at the field, with a way out; or built, and said what is wrong. */
class BadWallsTest {
    private static final String WALL = """
            {
              "version": 1,
              "kind": "cleat-wall",
              "name": "Wall",
              "unit": "mm",
              "walls": [
                {
                  "name": "north",
                  "width": 3000,
                  "height": 2400,
                  "framing": { "kind": "wood-studs", "spacing": 400, "first": 200 },
                  "obstacles": []
                }
              ],
              "cleat": { "sheet": "birch-18" },
              "rows": { "kind": "even", "lowest": 900, "highest": 2100, "about": 300 },
              "fixing": { "screw": "screw-5" },
              "making": { "sheet": "birch-12", "thin": "birch-6.5", "screw": "screw-4" },
              "holders": []
            }
            """;

    private static final String OUTLET =
            "{ \"kind\": \"outlet\", \"x\": %s, \"bottom\": %s, \"width\": 80, \"height\": 80 }";

    static Stream<Arguments> refused() {
        return Stream.of(
                arguments(obstacles(OUTLET.formatted(2960, 1000)), "/walls/0/obstacles/0", "outlet"),
                arguments(obstacles(OUTLET.formatted(1000, 2350)), "/walls/0/obstacles/0", "outlet"),
                arguments(
                        obstacles("{ \"kind\": \"window\", \"x\": 1000, \"bottom\": 1000, \"width\": 80 }"),
                        "/walls/0/obstacles/0",
                        "height"),
                arguments(
                        obstacles("{ \"kind\": \"bench\", \"x\": 0, \"width\": 800, \"height\": 800,"
                                + " \"swing\": { \"hinges\": \"left\" } }"),
                        "/walls/0/obstacles/0",
                        "door"),
                arguments(
                        with("\"spacing\": 400, \"first\": 200", "\"positions\": [400, 200, 800]"),
                        "/walls/0/framing/positions",
                        "200"),
                arguments(with("\"spacing\": 400, \"first\": 200", "\"first\": 0"), "/walls/0/framing", "spacing"),
                arguments(with("\"width\": 3000", "\"width\": 500"), "/walls/0/framing", "stud"),
                arguments(with("\"height\": 2400", "\"height\": 200"), "/rows", "high"),
                arguments(with("\"height\": 2400,", ""), "/walls/0", "height"),
                arguments(
                        with(
                                "\"kind\": \"even\", \"lowest\": 900, \"highest\": 2100, \"about\": 300",
                                "\"kind\": \"fixed\", \"lowest\": 900, \"highest\": 2100, \"spacing\": 150"),
                        "/rows/spacing",
                        "203"),
                arguments(with("\"highest\": 2100", "\"highest\": 800"), "/rows", "lowest"),
                arguments(with("screw-5", "slide-screw-4"), "/fixing", "screw"),
                arguments(
                        holder("\"place\": { \"wall\": \"south\", \"row\": 1, \"x\": 500 }"),
                        "/holders/0/place",
                        "north"),
                arguments(
                        holder("\"place\": { \"wall\": \"north\", \"row\": 9, \"x\": 500 }"), "/holders/0/place", "5"),
                arguments(
                        holder("\"place\": { \"wall\": \"north\", \"row\": 2, \"x\": 2800 }"),
                        "/holders/0/place",
                        "x"));
    }

    @ParameterizedTest
    @MethodSource("refused")
    void isRefusedAtItsFieldWithAWayOut(String text, String field, String word) {
        assertThatThrownBy(() -> Product.of(Presets.wall("wall", text)))
                .isInstanceOfSatisfying(ImpossibleDesignException.class, refusal -> {
                    assertThat(refusal.field()).startsWith(field);
                    assertThat(refusal.getMessage()).contains(word).endsWith(".");
                });
    }

    @Test
    void aStandThatCannotBeReadIsToldAtItsName() {
        assertThatThrownBy(() -> Presets.wall(
                        "wall", obstacles("{ \"kind\": \"stand\", \"x\": 0, \"stand\": \"planar-stand\" }")))
                .isInstanceOf(DesignFileException.class)
                .hasMessageContaining("obstacles[0].stand")
                .hasMessageContaining("Did you mean \"planer-stand\"?");
    }

    @Test
    void overlappingObstaclesAreTakenAsOneAndSaid() {
        var text = obstacles(OUTLET.formatted(1000, 1000) + ", " + OUTLET.formatted(1060, 1000));
        var product = Product.of(Presets.wall("wall", text));

        assertThat(((CleatWall) product.furniture()).wall(1).notes()).hasSize(1);
        assertThat(product.findings())
                .filteredOn(finding -> finding.rule().equals("wall-left-out"))
                .extracting(Finding::message)
                .anySatisfy(message -> assertThat(message).contains("overlap"));
    }

    /** A stop, and what would hold it. */
    @Test
    void aHolderTooHeavyForAnyStripIsStopped() {
        var product = Product.of(Presets.wall("wall", holder("").replace("\"mass\": 1 ", "\"mass\": 60 ")));

        assertThat(product.stops()).isNotEmpty();
        assertThat(product.stops()).extracting(Finding::rule).contains("cleat-combined");
    }

    /** Higher than the wall is: listed, not dropped. */
    @Test
    void whatFindsNoPlaceIsListed() {
        var product = Product.of(Presets.wall("wall", holder("").replace("\"height\": 200", "\"height\": 2400")));
        var wall = (CleatWall) product.furniture();

        assertThat(wall.unplaced()).hasSize(1);
        assertThat(product.findings())
                .filteredOn(finding -> finding.subject().equals("shelf"))
                .extracting(Finding::rule)
                .contains("wall-left-out");
    }

    private static String with(String old, String other) {
        assertThat(WALL).contains(old);
        return WALL.replace(old, other);
    }

    private static String obstacles(String some) {
        return with("\"obstacles\": []", "\"obstacles\": [" + some + "]");
    }

    private static String holder(String more) {
        return with(
                "\"holders\": []",
                "\"holders\": [{ \"kind\": \"shelf\", \"name\": \"shelf\", \"things\": { \"count\": 3, \"width\": 80,"
                        + " \"depth\": 80, \"height\": 200, \"mass\": 1 }" + (more.isEmpty() ? "" : ", " + more)
                        + " }]");
    }
}
