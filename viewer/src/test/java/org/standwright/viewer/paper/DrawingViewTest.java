package org.standwright.viewer.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.Test;
import org.standwright.drawing.Arc;
import org.standwright.drawing.Drawing;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Line;
import org.standwright.drawing.Pen;
import org.standwright.drawing.Point;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.export.SvgWriter;
import org.standwright.geom.Rect;
import org.standwright.viewer.MemoryScreen;
import org.testfx.util.WaitForAsyncUtils;

class DrawingViewTest {
    private static final Text WORDS = Text.level("Working height 900 mm", new Point(20, 80), 6, Text.Anchor.START);
    private static final Drawing PAPER = new Drawing(
            "a paper",
            200,
            100,
            List.of(
                    Line.between(10, 10, 190, 10, Pen.WALL),
                    Polygon.area(new Rect(50, 30, 90, 50), Fill.GRAY),
                    new Arc(new Point(150, 50), 20, 0, 360, Pen.OUTLINE),
                    WORDS,
                    new org.standwright.drawing.Group(
                            new Point(100, 0),
                            List.of(
                                    Polygon.area(new Rect(10, 30, 30, 50), Fill.LIGHT),
                                    WORDS.bold(),
                                    WORDS.upward()))));

    private DrawingView view;

    private MemoryScreen show(Drawing drawing) {
        var screen = MemoryScreen.show(this::view);
        screen.run(() -> view.drawingProperty().set(Optional.of(drawing)));
        return screen;
    }

    private DrawingView view() {
        view = new DrawingView();
        return view;
    }

    /** The colour seen at a point of the paper, mm. */
    private Color seen(MemoryScreen screen, double x, double y) {
        return screen.get(() -> {
            var sight = view.sightProperty().get();
            return view.snapshot(null, null).getPixelReader().getColor((int) Math.round(sight.x(x)), (int)
                    Math.round(sight.y(y)));
        });
    }

    @Test
    void putsInkWhereTheDrawingHasIt() {
        var screen = show(PAPER);

        assertThat(seen(screen, 100, 10).getBrightness()).isLessThan(0.3);
        assertThat(seen(screen, 70, 40).getBrightness()).isCloseTo(0.7, within(0.02));
        assertThat(seen(screen, 120, 40).getBrightness()).isCloseTo(0.86, within(0.02));
        assertThat(seen(screen, 150, 50)).isEqualTo(Color.WHITE);
    }

    @Test
    void paperStaysWhiteInTheDarkTheme() {
        var screen = MemoryScreen.showDark(this::view);
        screen.run(() -> view.drawingProperty().set(Optional.of(PAPER)));

        assertThat(seen(screen, 5, 95)).isEqualTo(Color.WHITE);
        assertThat(seen(screen, 100, 10).getBrightness()).isLessThan(0.3);
        assertThat(seen(screen, 100, 120).getBrightness()).isLessThan(0.4);
    }

    /** Letters reach as far as the layout was made for, near and far: black within their box, white right of it. */
    @Test
    void lettersAreAsWideAsTheLayoutWasMadeFor() {
        var measure = TextMeasure.shipped();
        var bars = Text.level("||||||||||||||||||||||||||||||", new Point(20, 50), 6, Text.Anchor.START);
        double end = 20 + measure.width(bars.words(), bars.size(), bars.weight());
        var screen = show(new Drawing("bars", 200, 100, List.of(bars)));

        for (int i = 0; i < 4; i++) {
            assertThat(darkest(screen, end - 1.6, end, 52)).isLessThan(0.6);
            assertThat(darkest(screen, end + 0.5, end + 3, 52)).isGreaterThan(0.9);
            screen.run(view::zoomIn);
        }
    }

    private double darkest(MemoryScreen screen, double from, double to, double y) {
        return screen.get(() -> {
            var sight = view.sightProperty().get();
            var pixels = view.snapshot(null, null).getPixelReader();
            int row = (int) Math.round(sight.y(y));
            return IntStream.range((int) Math.round(sight.x(from)), (int) Math.round(sight.x(to)))
                    .mapToDouble(x -> pixels.getColor(x, row).getBrightness())
                    .min()
                    .orElseThrow();
        });
    }

    @Test
    void zoomsToThePointerAndFitsAgain() {
        var screen = show(PAPER);
        var fitted = screen.get(() -> view.sightProperty().get());
        var bounds = screen.get(() -> view.localToScreen(view.getBoundsInLocal()));
        screen.hands().moveTo(bounds.getMinX() + 300, bounds.getMinY() + 320);
        screen.hands().scroll(3, javafx.geometry.VerticalDirection.UP);
        WaitForAsyncUtils.waitForFxEvents();
        var near = screen.get(() -> view.sightProperty().get());

        assertThat(near.scale()).isNotEqualTo(fitted.scale());
        assertThat(near.paper(300, 320).x()).isCloseTo(fitted.paper(300, 320).x(), within(0.01));
        assertThat(near.paper(300, 320).y()).isCloseTo(fitted.paper(300, 320).y(), within(0.01));
        screen.run(view::requestFocus);
        screen.hands().type(KeyCode.DIGIT0);
        assertThat(screen.get(() -> view.sightProperty().get())).isEqualTo(fitted);
    }

    @Test
    void keysZoomAndMoveThePaper() {
        var screen = show(PAPER);
        var fitted = screen.get(() -> view.sightProperty().get());
        screen.run(view::requestFocus);
        screen.hands().type(KeyCode.PLUS);
        var near = screen.get(() -> view.sightProperty().get());
        screen.hands().type(KeyCode.LEFT);
        var moved = screen.get(() -> view.sightProperty().get());
        screen.hands().type(KeyCode.MINUS);

        assertThat(near.scale()).isGreaterThan(fitted.scale());
        assertThat(moved.left()).isEqualTo(near.left() + 60);
        assertThat(screen.get(() -> view.sightProperty().get().scale())).isCloseTo(fitted.scale(), within(1e-9));
    }

    @Test
    void tellsWhichPointOfThePaperIsClickedOn() {
        var clicked = new ArrayList<Point>();
        var screen = show(PAPER);
        screen.run(() -> view.onClicked(clicked::add));
        var sight = screen.get(() -> view.sightProperty().get());
        var at = screen.get(() -> view.localToScreen(sight.x(120), sight.y(40)));
        screen.hands().clickOn(at.getX(), at.getY(), MouseButton.PRIMARY);
        WaitForAsyncUtils.waitForFxEvents();

        assertThat(clicked).hasSize(1);
        assertThat(clicked.get(0).x()).isCloseTo(120, within(0.5));
        assertThat(clicked.get(0).y()).isCloseTo(40, within(0.5));
    }

    @Test
    void printedNodesAreThoseOfTheSvgAndItsTextsAreAsWide() throws IOException {
        var screen = show(PAPER);
        var svg = new ByteArrayOutputStream();
        SvgWriter.write(PAPER, svg);
        var text = svg.toString(StandardCharsets.UTF_8);
        var leaves = screen.get(() -> leaves(ShapeNodes.of(PAPER)));
        var wordsWidths = screen.get(() -> leaves.stream()
                .filter(javafx.scene.text.Text.class::isInstance)
                .map(node -> node.getLayoutBounds().getWidth() * 25.4 / 72)
                .toList());
        var svgWidths = Pattern.compile("textLength=\"([0-9.]+)\"")
                .matcher(text)
                .results()
                .map(found -> Double.parseDouble(found.group(1)))
                .toList();

        assertThat(leaves).hasSize(count("<(path|polygon|text) ", text));
        assertThat(wordsWidths).hasSameSizeAs(svgWidths);
        for (int i = 0; i < svgWidths.size(); i++) {
            assertThat(wordsWidths.get(i)).isCloseTo(svgWidths.get(i), within(0.02 * svgWidths.get(i)));
        }
    }

    private static int count(String pattern, String text) {
        return (int) Pattern.compile(pattern).matcher(text).results().count();
    }

    private static List<Node> leaves(Node node) {
        return node instanceof Group group
                ? group.getChildren().stream()
                        .flatMap(child -> leaves(child).stream())
                        .toList()
                : List.of(node);
    }
}
