package org.standwright.export.dxf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standwright.drawing.plot.Layer;
import org.standwright.drawing.plot.Mark;
import org.standwright.drawing.plot.Plot;
import org.standwright.geom.Bend;
import org.standwright.geom.Loop;
import org.standwright.geom.Vec2;
import org.standwright.part.Colour;

class DxfWriterTest {
    private static final Colour RED = new Colour(200, 0, 0);

    @Test
    void saysMillimetresAndHowFarThePlotReaches() throws IOException {
        var dxf = read(plot("plain", new Mark.Spot(new Vec2(1, 2))));

        assertThat(dxf.header("$ACADVER")).isEqualTo("AC1015");
        assertThat(dxf.header("$INSUNITS")).as("4 is mm (ezdxf documentation)").isEqualTo("4");
        assertThat(dxf.header("$MEASUREMENT")).isEqualTo("1");
        assertThat(dxf.header("$EXTMIN")).isEqualTo("0.0");
        assertThat(dxf.header("$EXTMAX")).isEqualTo("300.0");
        assertThat(dxf.handles()).doesNotHaveDuplicates();
    }

    @Test
    void drawsEachMarkAsTheEntityThatProgramsExpect() throws IOException {
        var quarter = new Loop(List.of(
                new Loop.Corner(new Vec2(0, 0), 0),
                new Loop.Corner(new Vec2(10, 0), Bend.bulge(Math.PI / 2)),
                new Loop.Corner(new Vec2(0, 10), 0)));
        var dxf = read(plot(
                "pocket 9 deep",
                new Mark.Closed(quarter),
                new Mark.Open(List.of(new Vec2(1, 1), new Vec2(2, 3), new Vec2(4, 4))),
                new Mark.Circle(new Vec2(50, 60), 8),
                new Mark.Spot(new Vec2(70, 80)),
                new Mark.Words("A side", new Vec2(5, 6), 10)));

        assertThat(dxf.layers()).containsExactly("pocket 9 deep");
        assertThat(dxf.entities())
                .extracting(DxfText.Item::type)
                .containsExactly("LWPOLYLINE", "LWPOLYLINE", "CIRCLE", "POINT", "TEXT");
        assertThat(dxf.entities()).allMatch(item -> item.layer().equals("pocket 9 deep"));
        var closed = dxf.entities().get(0);
        assertThat(closed.number(70)).as("closed").isEqualTo(1);
        assertThat(closed.vertices()).hasSize(3);
        // references 8, outside rule: bulge 90° = 0.414213562 (ezdxf documentation)
        assertThat(closed.vertices().get(1)[2]).isCloseTo(0.414213562, within(1e-9));
        var open = dxf.entities().get(1);
        assertThat(open.number(70)).as("open").isEqualTo(0);
        assertThat(open.vertices().get(2)).containsExactly(4, 4, 0);
        var circle = dxf.entities().get(2);
        assertThat(circle.number(40)).isEqualTo(4);
        assertThat(circle.number(10)).isEqualTo(50);
        assertThat(circle.number(20)).isEqualTo(60);
        assertThat(dxf.entities().get(4).text(1)).hasValue("A side");
    }

    @Test
    void namesLayersSoThatEveryReaderTakesThem() throws IOException {
        var mark = List.<Mark>of(new Mark.Spot(Vec2.ZERO));
        var plot = new Plot(
                "p",
                10,
                10,
                List.of(
                        new Layer("a<b>/\\\":;?*|=,`'c", RED, mark),
                        new Layer("Bore", RED, mark),
                        new Layer("bore", RED, mark),
                        new Layer("0", RED, mark),
                        new Layer("\u00e4\ud83d\ude00\n", RED, mark),
                        new Layer("x".repeat(400), RED, mark)));
        var dxf = read(plot);

        assertThat(dxf.layers())
                .contains("Bore", "bore 2", "0 2")
                .allMatch(name -> name.matches("[A-Za-z0-9_. ]{1,250}"));
        assertThat(dxf.layers().stream().map(String::toLowerCase)).doesNotHaveDuplicates();
        assertThat(dxf.entities()).extracting(DxfText.Item::layer).isEqualTo(dxf.layers());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"S\u00e4ge", "50%%c", "a^Jb", "C:\\U+0041", "smile \ud83d\ude00", "two\nlines", "\ud800 broken"})
    void writesAnyWordsOnOneLineOfPlainLetters(String words) throws IOException {
        var text = text(plot("label", new Mark.Words(words, Vec2.ZERO, 5)));
        var item = new DxfText(text).entities().get(0);

        assertThat(text.chars()).allMatch(c -> c == '\n' || c >= ' ' && c <= '~');
        assertThat(item.text(1))
                .hasValueSatisfying(written ->
                        assertThat(written).doesNotContain("%%", "^J").matches("([^\\\\]|\\\\U\\+[0-9A-F]{4})+"));
    }

    @Test
    void writesAnUmlautByItsNumber() throws IOException {
        assertThat(read(plot("label", new Mark.Words("S\u00e4ge", Vec2.ZERO, 5)))
                        .entities()
                        .get(0)
                        .text(1))
                .hasValue("S\\U+00E4ge");
    }

    @Test
    void takesTheNearestOfTheColoursThatHaveNumbers() {
        assertThat(ColourIndex.of(new Colour(200, 0, 0))).isEqualTo(1);
        assertThat(ColourIndex.of(new Colour(200, 160, 0))).isEqualTo(2);
        assertThat(ColourIndex.of(new Colour(0, 140, 0))).isEqualTo(3);
        assertThat(ColourIndex.of(new Colour(0, 160, 180))).isEqualTo(4);
        assertThat(ColourIndex.of(new Colour(0, 0, 200))).isEqualTo(5);
        assertThat(ColourIndex.of(new Colour(200, 0, 200))).isEqualTo(6);
        assertThat(ColourIndex.of(new Colour(0, 0, 0))).isEqualTo(7);
        assertThat(ColourIndex.of(new Colour(250, 250, 250))).isEqualTo(7);
        assertThat(ColourIndex.of(new Colour(120, 120, 120))).isEqualTo(8);
        assertThat(ColourIndex.of(new Colour(170, 170, 170))).isEqualTo(9);
    }

    @Test
    void writesTheSameBytesEveryTime() throws IOException {
        var plot = plot("a", new Mark.Circle(new Vec2(1.0 / 3, 2.0 / 3), 1e-3));
        assertThat(text(plot)).isEqualTo(text(plot)).doesNotContain("E-", "\r");
    }

    private static Plot plot(String layer, Mark... marks) {
        return new Plot("plot", 300, 200, List.of(new Layer(layer, RED, List.of(marks))));
    }

    private static DxfText read(Plot plot) throws IOException {
        return new DxfText(text(plot));
    }

    static String text(Plot plot) throws IOException {
        var out = new ByteArrayOutputStream();
        DxfWriter.write(plot, out);
        return out.toString(StandardCharsets.US_ASCII);
    }
}
