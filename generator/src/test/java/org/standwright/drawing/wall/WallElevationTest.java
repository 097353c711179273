package org.standwright.drawing.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.design.built.CleatWall;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.drawing.Arc;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Lettering;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.figure.Figure;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;

class WallElevationTest {
    private static final TextMeasure MEASURE = TextMeasure.shipped();
    private static final double WIDTH = 249;
    private static final double HEIGHT = 150;
    /** No letters that are smaller can be read at arm's length, mm. */
    private static final double LEAST = 1.8;

    static Stream<CleatWall> walls() {
        return BuiltWalls.NAMES.stream().map(BuiltWalls::of);
    }

    private static Figure figure(CleatWall walls, CleatedWall wall) {
        return WallElevation.of(walls, wall, BuiltWalls.labels(walls), WIDTH, HEIGHT, MEASURE);
    }

    @ParameterizedTest
    @MethodSource("walls")
    void fitsAndHasNoLettersThatAreSmallOrLieOnOthers(CleatWall walls) {
        for (var wall : walls.walls()) {
            var figure = figure(walls, wall);

            assertThat(figure.width()).isLessThanOrEqualTo(WIDTH);
            assertThat(figure.height()).isLessThanOrEqualTo(HEIGHT);
            assertThat(Ink.of(figure.shapes(), Text.class)).allMatch(text -> text.size() > LEAST);
            assertNoneOverlap(figure);
        }
    }

    private static void assertNoneOverlap(Figure figure) {
        var texts = Lettering.of(figure.shapes(), MEASURE).texts();
        for (int i = 0; i < texts.size(); i++) {
            for (int j = 0; j < i; j++) {
                assertThat(Lettering.overlap(texts.get(i).box(), texts.get(j).box()))
                        .as("'%s' on '%s'", texts.get(i), texts.get(j))
                        .isFalse();
            }
        }
    }

    @ParameterizedTest
    @MethodSource("walls")
    void eachStripIsDrawnOnceWhereItIs(CleatWall walls) {
        double height = walls.design().cleat().height();
        for (var wall : walls.walls()) {
            var figure = figure(walls, wall);
            double scale = scale(figure);
            var drawn = Ink.of(figure.shapes(), Polygon.class)
                    .filter(polygon -> polygon.fill() == Fill.LIGHT
                            && polygon.pen().filter(Pen.OUTLINE::equals).isPresent())
                    .map(WallElevationTest::box)
                    .toList();

            assertThat(drawn).hasSameSizeAs(wall.strips());
            for (var strip : wall.strips()) {
                assertThat(drawn)
                        .filteredOn(box -> near(box.x0(), strip.along().from() / scale)
                                && near(box.x1(), strip.along().to() / scale)
                                && near(box.y0(), (strip.top() - height) / scale)
                                && near(box.y1(), strip.top() / scale))
                        .as(strip.label())
                        .hasSize(1);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("walls")
    void everyScrewIsACircleOnTheCentreLineOfAStud(CleatWall walls) {
        for (var wall : walls.walls()) {
            var figure = figure(walls, wall);
            double scale = scale(figure);
            var circles = Ink.of(figure.shapes(), Arc.class).toList();
            int screws = wall.strips().stream()
                    .mapToInt(strip -> strip.studs().size() * strip.screws().size())
                    .sum();

            assertThat(circles).hasSize(screws + 1); // and one in the key
            assertThat(circles)
                    .filteredOn(circle -> wall.studs().stream()
                            .anyMatch(stud -> near(circle.centre().x(), stud.x() / scale)))
                    .hasSizeGreaterThanOrEqualTo(screws);
        }
    }

    @ParameterizedTest
    @MethodSource("walls")
    void palePatchesAreTheBareAreaWithItsHolesFilledIn(CleatWall walls) {
        for (var wall : walls.walls()) {
            var figure = figure(walls, wall);
            double scale = scale(figure);
            double pale = Ink.of(figure.shapes(), Polygon.class)
                    .filter(polygon ->
                            polygon.fill() == Fill.PALE && polygon.pen().isEmpty())
                    .mapToDouble(WallElevationTest::area)
                    .sum();
            double holes = wall.bare().patches().stream()
                    .flatMap(patch -> patch.holes().stream())
                    .mapToDouble(Outline::area)
                    .sum();

            assertThat(pale * scale * scale).isCloseTo(wall.bare().size() + holes, within(1.0));
        }
    }

    /** The design has rows at 700, 1000, 1200 … above the floor and its level line at 1000. */
    @Test
    void rowsHaveTheirHeightsFromTheLevelLineBesideThem() {
        var walls = BuiltWalls.of("door-wall");

        assertThat(words(figure(walls, walls.wall(1))))
                .contains("row 1  −300", "row 2  ±0", "row 3  +200", "level line")
                .noneMatch(words -> words.startsWith("row") && words.contains("1200 "));
    }

    @Test
    void namesObstaclesHoldersAndLimitsOnTheFigureOrInTheKey() {
        for (var name : BuiltWalls.NAMES) {
            var walls = BuiltWalls.of(name);
            for (var wall : walls.walls()) {
                var all = String.join(" ", words(figure(walls, wall)));
                wall.zones()
                        .forEach(zone -> assertThat(all).contains(zone.name().split(" ")));
                walls.holders().stream()
                        .filter(holder -> holder.wall() == wall.number())
                        .forEach(
                                holder -> assertThat(all).contains(holder.name().split(" ")));
            }
        }
    }

    /** Shown from the room, hinged on the right: the V meets at the right side of the door, 350 + 860 mm. */
    @Test
    void theDashedVPointsAtTheHinges() {
        var walls = BuiltWalls.of("door-wall");
        var figure = figure(walls, walls.wall(1));
        double hinges = (350 + 860) / scale(figure);

        assertThat(Ink.of(figure.shapes(), Line.class)
                        .filter(line -> line.pen() == Pen.HIDDEN)
                        .filter(line ->
                                near(line.from().x(), hinges) && near(line.to().x(), 350 / scale(figure))))
                .hasSize(2);
    }

    @Test
    void aSheetOfItsOwnSaysWhatItIsAndHoldsTheWholeFigure() {
        var walls = BuiltWalls.of("door-wall");
        var sheet = ElevationSheet.of(walls, walls.wall(1), WallLabels.NONE, MEASURE);

        assertThat(sheet.title()).startsWith("Door and window wall: yard side, 7 rows, bare area ");
        assertThat(Lettering.of(sheet.shapes(), MEASURE).texts())
                .allMatch(text -> text.box().x0() >= 0
                        && text.box().y0() >= 0
                        && text.box().x1() <= sheet.width()
                        && text.box().y1() <= sheet.height());
    }

    private static double scale(Figure figure) {
        var caption = words(figure).stream()
                .filter(words -> words.contains("scale 1:"))
                .findFirst()
                .orElseThrow();
        return Double.parseDouble(caption.replaceAll(".*scale 1:(\\d+).*", "$1"));
    }

    private static List<String> words(Figure figure) {
        return Ink.of(figure.shapes(), Text.class).map(Text::words).toList();
    }

    private static boolean near(double a, double b) {
        return Math.abs(a - b) < 1e-6;
    }

    private static Rect box(Polygon polygon) {
        return outline(polygon).bounds();
    }

    private static double area(Polygon polygon) {
        return outline(polygon).area();
    }

    private static Outline outline(Polygon polygon) {
        return new Outline(polygon.points().stream()
                .map(point -> new Vec2(point.x(), point.y()))
                .toList());
    }
}
