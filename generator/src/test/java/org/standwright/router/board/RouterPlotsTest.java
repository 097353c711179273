package org.standwright.router.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;
import org.standwright.cutlist.TrimmedParts;
import org.standwright.design.kit.Router;
import org.standwright.design.kit.StockSheet;
import org.standwright.drawing.plot.Layer;
import org.standwright.drawing.plot.Mark;
import org.standwright.drawing.plot.Plot;
import org.standwright.export.PlotSvgWriter;
import org.standwright.export.dxf.DxfText;
import org.standwright.export.dxf.DxfWriter;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.part.Channel;
import org.standwright.part.Colour;
import org.standwright.part.Contour;
import org.standwright.part.Face;
import org.standwright.part.Grain;
import org.standwright.part.Hole;
import org.standwright.part.Material;
import org.standwright.part.Part;
import org.standwright.part.Pocket;
import org.standwright.part.Recess;
import org.standwright.router.Lie;
import org.standwright.router.RoutedPiece;
import org.standwright.router.RoutedSheet;
import org.standwright.router.SampleBoards;
import org.standwright.router.SampleRouters;
import org.standwright.router.machining.Flat;
import org.standwright.router.machining.MarkArea;
import org.standwright.solid.RandomPart;
import org.standwright.unit.Units;

class RouterPlotsTest {
    private static final boolean FULL = "full".equals(System.getProperty("standwright.random"));
    private static final Material PLY = new Material("ply", 18, 700, Grain.NONE);
    private static final Router ROUTER = SampleRouters.router(Router.Relief.DOG_BONE);

    @Test
    void saysNothingOfASecondSideWhereNoneIsWorked() {
        var plots = SampleBoards.plots("board", sheet(new Lie(false, 0, new Vec2(50, 50)), oneSided()), ROUTER);

        assertThat(plots.bottom()).isEmpty();
        assertThat(plots.top().layers())
                .extracting(Layer::name)
                .containsExactly("sheet", "bore 8 through", "pocket 9 deep", "outline through 18.2 deep", "label");
        assertThat(plots.legend()).noneMatch(line -> line.contains("TWO SIDES"));
    }

    @Test
    void cutsTheBottomFirstAndWhatIsOnItOnly() {
        var plots = SampleBoards.plots("board", sheet(new Lie(false, 1, new Vec2(400, 50)), twoSided()), ROUTER);

        assertThat(plots.bottom().orElseThrow().layers())
                .extracting(Layer::name)
                .containsExactly(
                        "sheet", "dowel 8 through", "bore 20 6 deep", "bore 8 through", "channel 6 deep", "label");
    }

    static IntStream ways() {
        return IntStream.range(0, 8);
    }

    /** Turning the board over shows what the other way of laying the part shows. */
    @ParameterizedTest
    @MethodSource("ways")
    void mirrorsTheBottom(int way) {
        var lie = new Lie(way >= 4, way % 4, new Vec2(450, 420));
        // after the turn x stays and y counts from the other side: overturned about x, turned the other way round
        var turned = new Lie(way < 4, (4 - way % 4) % 4, new Vec2(450, 900 - 420));
        var bottom = SampleBoards.plots("board", sheet(lie, twoSided()), ROUTER)
                .bottom()
                .orElseThrow();
        var top = SampleBoards.plots("board", sheet(turned, twoSided()), ROUTER).top();
        for (var layer : List.of("channel 6 deep", "bore 20 6 deep", "pocket 9 deep")) {
            boolean below = layer(bottom, layer) != null;
            assertThat(below ? text(layer(bottom, layer)) : List.of())
                    .as("%s in way %d", layer, way)
                    .isEqualTo(layer(top, layer) == null ? List.of() : text(layer(top, layer)));
        }
        assertThat(bottom.layers()).as("something is there").hasSizeGreaterThan(3);
    }

    private static Layer layer(Plot plot, String name) {
        return plot.layers().stream()
                .filter(layer -> layer.name().equals(name))
                .findFirst()
                .orElse(null);
    }

    private static List<String> text(Layer layer) {
        return layer.marks().stream()
                .map(mark -> mark.accept(new MarkArea()))
                .map(area -> String.format(
                        Locale.ROOT,
                        "%.3f %s",
                        area.getArea(),
                        area.getEnvelopeInternal().centre().toString().replaceAll("(\\.\\d{3})\\d*", "$1")))
                .sorted()
                .toList();
    }

    @Test
    void setsDowelsFarApartInTheWasteAndAtMirroredPlaces() {
        var sheet = sheet(new Lie(false, 0, new Vec2(50, 50)), twoSided());
        var plots = SampleBoards.plots("board", sheet, ROUTER);
        var top = circles(plots.top());
        var bottom = circles(plots.bottom().orElseThrow());
        double clear = 8 / 2.0 + 6 + 1.6;

        assertThat(top).hasSize(2);
        for (int i = 0; i < 2; i++) {
            assertThat(bottom.get(i).centre().x()).isCloseTo(top.get(i).centre().x(), within(1e-9));
            assertThat(bottom.get(i).centre().y())
                    .isCloseTo(900 - top.get(i).centre().y(), within(1e-9));
            var at = top.get(i).centre();
            assertThat(Flat.of(sheet.pieces().get(0).outline()).distance(Flat.point(at)))
                    .isGreaterThanOrEqualTo(clear);
            assertThat(Math.min(Math.min(at.x(), 1200 - at.x()), Math.min(at.y(), 900 - at.y())))
                    .isGreaterThanOrEqualTo(clear);
        }
        assertThat(top.get(0).centre().minus(top.get(1).centre()).length()).isGreaterThan(1000);
        assertThat(plots.legend()).anyMatch(line -> line.startsWith("dowels: two holes of 8 mm"));
    }

    /** A board with one part in its middle has its farthest corners point-symmetric: those two would fit both ways. */
    @Test
    void setsDowelsThatMissABoardTurnedEndOverEnd() {
        var sheet = sheet(new Lie(false, 0, new Vec2(350, 300)), twoSided());
        var plots = SampleBoards.plots("board", sheet, ROUTER);
        var dowels = circles(plots.top()).stream().map(Mark.Circle::centre).toList();
        var turned =
                dowels.stream().map(at -> new Vec2(1200 - at.x(), 900 - at.y())).toList();

        assertThat(Math.max(
                        turned.get(0).minus(dowels.get(0)).length(),
                        turned.get(1).minus(dowels.get(1)).length()))
                .isGreaterThanOrEqualTo(20);
        assertThat(Math.max(
                        turned.get(0).minus(dowels.get(1)).length(),
                        turned.get(1).minus(dowels.get(0)).length()))
                .isGreaterThanOrEqualTo(20);
        assertThat(plots.legend())
                .anyMatch(line -> line.startsWith("a board turned end over end lies"))
                .noneMatch(line -> line.contains("point-symmetric"));
    }

    /** Room in two opposite corners only, of 5 x 5 mm each: no two places there are 20 mm off each other's image. */
    @Test
    void cautionsOfDowelsThatFitBothWays() {
        double clear = 8 / 2.0 + 6 + 1.6 + 0.1;
        double hole = 2 * clear + 5;
        var outline = new Outline(List.of(
                new Vec2(hole, 0),
                new Vec2(500, 0),
                new Vec2(500, 300 - hole),
                new Vec2(500 - hole, 300 - hole),
                new Vec2(500 - hole, 300),
                new Vec2(0, 300),
                new Vec2(0, hole),
                new Vec2(hole, hole)));
        var part = twoSided().with(new Contour(outline, "corners"));
        var board = SampleBoards.board(PLY, 500, 300);
        var plots = SampleBoards.plots(
                "board",
                new RoutedSheet(board, List.of(new RoutedPiece("A", part, new Lie(false, 0, Vec2.ZERO)))),
                ROUTER);

        assertThat(circles(plots.top())).hasSize(2);
        assertThat(plots.legend())
                .anyMatch(line -> line.startsWith("  - the dowels lie point-symmetric"))
                .noneMatch(line -> line.startsWith("a board turned end over end lies"));
    }

    @Test
    void tellsTheHolesInTheBedFromThoseThroughTheBoard() {
        var plots = SampleBoards.plots("board", sheet(new Lie(false, 0, new Vec2(50, 50)), twoSided()), ROUTER);

        assertThat(plots.bottom().orElseThrow().layers())
                .extracting(Layer::name)
                .contains("dowel 8 through");
        assertThat(plots.top().layers())
                .extracting(Layer::name)
                .contains("bed dowel 8 12 deep")
                .doesNotContain("dowel 8 through");
        assertThat(plots.legend())
                .anyMatch(line ->
                        line.startsWith("dowels: two holes of 8 mm; with the bottom up bore them through the board"))
                .anyMatch(line ->
                        line.contains("12 mm deep into the bare bed") && line.contains("do not run this layer again"))
                .anyMatch(line -> line.contains("set no new zero after turning"))
                .noneMatch(line -> line.contains("into the bed below"));
    }

    /** In the strip of 6 + 1.6 - 3 mm along the edges, which nothing is cut in. */
    @Test
    void lettersWhichLongEdgeLiesTowardsThePerson() {
        var plots = SampleBoards.plots("board", sheet(new Lie(false, 0, new Vec2(50, 50)), twoSided()), ROUTER);
        var bottom = words(plots.bottom().orElseThrow());
        var top = words(plots.top());

        assertThat(bottom).extracting(Mark.Words::words).contains("BOTTOM UP, FIRST: this edge towards you");
        assertThat(top).extracting(Mark.Words::words).contains("TOP UP, THEN: this edge towards you");
        for (var words : List.of(bottom, top)) {
            assertThat(words)
                    .filteredOn(word -> word.words().contains("towards you")
                            && !word.words().contains("lower edge"))
                    .hasSize(2)
                    .anyMatch(word -> word.words().contains("this edge")
                            && word.at().y() > 0
                            && word.at().y() + word.size() < 4.7)
                    .anyMatch(word -> !word.words().contains("this edge")
                            && word.at().y() > 895.4
                            && word.at().y() + word.size() < 900.5);
        }
        assertThat(bottom)
                .filteredOn(word -> word.words().equals("BOTTOM UP, FIRST: lower edge towards you"))
                .singleElement()
                .satisfies(word -> assertThat(word.size()).isEqualTo(40))
                .satisfies(word -> assertThat(Flat.of(Outline.of(new Rect(50, 550, 550, 850)))
                                .intersects(Flat.of(Outline.of(new Rect(
                                        word.at().x(),
                                        word.at().y(),
                                        word.at().x() + 100,
                                        word.at().y() + 40)))))
                        .as("on the part, which lies there with the bottom up")
                        .isFalse());
        var single = SampleBoards.plots("board", sheet(new Lie(false, 0, new Vec2(50, 50)), oneSided()), ROUTER);
        assertThat(words(single.top())).noneMatch(word -> word.words().contains("towards you"));
    }

    private static List<Mark.Words> words(Plot plot) {
        return layer(plot, "label").marks().stream().map(Mark.Words.class::cast).toList();
    }

    @Test
    void saysWhereToLayWasteUnderWithASkinToo() {
        var waste = "through cuts go 0.2 mm below the board: lay waste under it";
        assertThat(legend(SampleRouters.skinned(), oneSided())).contains(waste);
        assertThat(legend(SampleRouters.skinned(), Part.blank("plain", PLY, 500, 300)))
                .as("nothing goes through")
                .doesNotContain(waste);
        assertThat(legend(ROUTER, Part.blank("plain", PLY, 500, 300))).contains(waste);
    }

    @Test
    void saysWhichToolBoresForADowelNarrowerThanTheBit() {
        var wide = new Router(12, 1.6, 5, 0.2, 0, Optional.empty(), Router.Relief.NONE, 8);
        var tool = "narrower than the bit: bore it with a tool of 8 mm";
        assertThat(legend(wide, twoSided()))
                .anyMatch(line -> line.startsWith("  dowel 8 through") && line.endsWith(tool))
                .anyMatch(line -> line.startsWith("  bed dowel 8 12 deep") && line.endsWith(tool));
        assertThat(legend(ROUTER, twoSided())).noneMatch(line -> line.contains("dowel 8") && line.endsWith(tool));
    }

    @Test
    void saysInWhichOrderToWork() {
        var order = "order of work: marks, bores, pockets and channels first, cutouts next, outlines last";
        assertThat(legend(ROUTER, oneSided())).contains(order);
        assertThat(legend(ROUTER, twoSided())).contains(order + "; the bottom before the top");
    }

    /** 18.2 mm are more than 5 x 3 mm, less than 5 x 6 mm. */
    @Test
    void cautionsOfABitThatHardlyReachesThrough() {
        var thin = new Router(3, 1.6, 3, 0.2, 0, Optional.empty(), Router.Relief.NONE, 8);
        assertThat(legend(thin, oneSided()))
                .anyMatch(line -> line.startsWith("  - outlines are 18.2 mm deep, more than 5 times the bit of 3 mm"));
        assertThat(legend(ROUTER, oneSided())).noneMatch(line -> line.startsWith("  - outlines are"));
    }

    @Test
    void namesPartsUnderTheirCaution() {
        assertThat(legend(ROUTER, Part.blank("lid", PLY, 500, 300).with(Hole.through(100, 100, 50, "hose"))))
                .containsSequence(
                        "CAUTIONS:",
                        "  - A lid: waste comes free in it: 1 x 38 mm across; hold it with"
                                + " double-sided tape or a screw, or clear it as a pocket");
        assertThat(legend(ROUTER, Part.blank("lid", PLY, 500, 300))).doesNotContain("CAUTIONS:");
    }

    @Test
    void leavesWhatIsMadeAfterTheTrimOffTheBoard() {
        var layer = Part.blank("worktop upper layer", PLY, 500, 300)
                .with(Hole.through(50, 50, 9, "bolt"))
                .cutOver(3);
        var plots = RouterPlots.of(
                "board", sheet(new Lie(false, 0, new Vec2(50, 50)), layer), ROUTER, Units.MM, piece -> "parts/A.dxf");

        assertThat(plots.top().layers())
                .extracting(Layer::name)
                .containsExactly("sheet", "outline through 18.2 deep", "label");
        assertThat(plots.legend()).contains("    - made after the trim, by its own drawing parts/A.dxf");
    }

    @Test
    void saysTheSizesInTheDesignsUnitsTooAndTheBoardsSizeOnce() {
        var oak = new Material("oak ply", 18, 700, Grain.ALONG_LENGTH);
        var board = new StockSheet(
                "oak ply, 1200 mm x 900 mm",
                oak,
                1200,
                900,
                18,
                OptionalInt.empty(),
                Optional.empty(),
                StockSheet.Source.BOUGHT);
        var show = new RoutedPiece("A", Part.blank("lid", oak, 300, 200), new Lie(false, 0, new Vec2(50, 50)));
        var bench = new RoutedPiece("B", Part.blank("base", oak, 300, 200), new Lie(true, 0, new Vec2(400, 400)));
        var quarter = new Router(6.35, 1.6, 5, 0.2, 0, Optional.empty(), Router.Relief.NONE, 8);
        var lines = RouterPlots.of(
                        "board", new RoutedSheet(board, List.of(show, bench)), quarter, Units.INCH, piece -> "x")
                .legend();

        assertThat(lines)
                .contains("board: oak ply, 1200 mm x 900 mm, 18 mm thick as measured; measure it again before cutting")
                .anyMatch(line -> line.startsWith("bit: 6.35 mm (1/4 in);"))
                .anyMatch(line -> line.endsWith("; the grain runs along x"))
                .anyMatch(line -> line.startsWith("show face down on this board: B; all others lie show face up"));
        assertThat(legend(ROUTER, oneSided()))
                .contains("board: board, 1200 x 900 mm, 18 mm thick as measured; measure it again before cutting")
                .noneMatch(line -> line.contains("grain runs") || line.contains("show face down"));
    }

    @Test
    void drawsTabsHeavyAndRed() throws IOException {
        var plain = Part.blank("plain", PLY, 500, 300);
        var plot = SampleBoards.plots(
                        "board", sheet(new Lie(false, 0, new Vec2(50, 50)), plain), SampleRouters.tabbed())
                .top();
        var tab = layer(plot, "tab 3 high 8 long");

        assertThat(tab.colour()).isEqualTo(new Colour(255, 0, 0));
        assertThat(tab.stroke()).isGreaterThan(2 * layer(plot, "sheet").stroke());
        var svg = new ByteArrayOutputStream();
        PlotSvgWriter.write(plot, svg);
        assertThat(svg.toString(StandardCharsets.UTF_8))
                .contains("data-layer=\"tab 3 high 8 long\" fill=\"none\" stroke=\"#ff0000\" stroke-width=\"1.2\"")
                .contains("data-layer=\"sheet\" fill=\"none\" stroke=\"#aaaaaa\" stroke-width=\"0.35\"");
        // group 62: 1 is red
        assertThat(dxf(plot).replaceAll("[ \r]", "")).containsPattern("2\ntab3high8long\n(70\n0\n)?62\n1\n");
    }

    private static List<String> legend(Router router, Part part) {
        return SampleBoards.plots("board", sheet(new Lie(false, 0, new Vec2(50, 50)), part), router)
                .legend();
    }

    @Test
    void saysSoWhereThereIsNoRoomForDowels() {
        var board = SampleBoards.board(PLY, 520, 320);
        var piece = new RoutedPiece("A", twoSided(), new Lie(false, 0, new Vec2(10, 10)));
        var plots = SampleBoards.plots("board", new RoutedSheet(board, List.of(piece)), ROUTER);

        assertThat(circles(plots.top())).isEmpty();
        assertThat(plots.legend()).anyMatch(line -> line.startsWith("no room for two dowels"));
    }

    private static List<Mark.Circle> circles(Plot plot) {
        return plot.layers().stream()
                .filter(layer -> layer.name().contains("dowel"))
                .flatMap(layer -> layer.marks().stream())
                .map(Mark.Circle.class::cast)
                .toList();
    }

    static LongStream seeds() {
        return LongStream.range(0, FULL ? 1000 : 50);
    }

    /** All areas keep their size in all eight ways, and read back from the file they are where the model's are. */
    @ParameterizedTest
    @MethodSource("seeds")
    void drawsTheSamePartInAnyWayAndTheFileHoldsIt(long seed) throws IOException {
        var part = RandomPart.of(seed);
        int way = (int) (seed % 8);
        var straight = SampleBoards.plots("a", sheet(new Lie(way >= 4, 0, new Vec2(400, 500)), part), ROUTER)
                .top();
        var turned = SampleBoards.plots("a", sheet(new Lie(way >= 4, way % 4, new Vec2(400, 500)), part), ROUTER)
                .top();

        assertThat(areas(turned)).isEqualTo(areas(straight));
        var dxf = new DxfText(dxf(turned));
        assertThat(dxf.layers())
                .isEqualTo(turned.layers().stream().map(Layer::name).toList());
        assertThat(dxf.entities())
                .hasSize(turned.layers().stream()
                        .mapToInt(layer -> layer.marks().size())
                        .sum());
        var loops = turned.layers().stream()
                .flatMap(layer -> layer.marks().stream())
                .filter(Mark.Closed.class::isInstance)
                .map(mark -> ((Mark.Closed) mark).loop())
                .toList();
        var read = dxf.entities().stream()
                .filter(item -> item.type().equals("LWPOLYLINE") && item.number(70) == 1)
                .toList();
        assertThat(read).hasSameSizeAs(loops);
        for (int i = 0; i < loops.size(); i++) {
            assertThat(area(read.get(i).vertices())).isCloseTo(loops.get(i).area(), within(0.01));
        }
    }

    /** Each part in one way of the eight in turn, in all of them at night: holes by turning them about the corner. */
    @Test
    void boresTheHolesOfEveryPresetPartWhereItLies() {
        var parts = SampleBoards.presetParts();
        for (int i = 0; i < parts.size() * (FULL ? 8 : 1); i++) {
            var part = parts.get(i % parts.size());
            if (part.oversize() > 0 && TrimmedParts.boredAfter(part)) {
                continue;
            }
            int way = FULL ? i / parts.size() : i % 8;
            boolean over = way >= 4;
            var plot = SampleBoards.plots("a", sheet(new Lie(over, way % 4, new Vec2(3000, 3000)), part), ROUTER)
                    .top();
            double angle = Math.PI / 2 * (way % 4);
            var expected = part.features().stream()
                    .filter(Hole.class::isInstance)
                    .map(Hole.class::cast)
                    .filter(hole ->
                            hole.depth().isEmpty() && hole.recess().isEmpty() || (hole.face() == Face.BENCH) == over)
                    .map(hole -> {
                        double y = over ? -hole.y() : hole.y();
                        return at(
                                3000 + hole.x() * Math.cos(angle) - y * Math.sin(angle),
                                3000 + hole.x() * Math.sin(angle) + y * Math.cos(angle));
                    })
                    .toList();
            var drawn = plot.layers().stream()
                    .flatMap(layer -> layer.marks().stream())
                    .filter(mark -> mark instanceof Mark.Circle || mark instanceof Mark.Spot)
                    .map(mark -> mark instanceof Mark.Circle circle ? circle.centre() : ((Mark.Spot) mark).at())
                    .map(centre -> at(centre.x(), centre.y()))
                    .toList();
            assertThat(drawn).as("%s in way %d", part.name(), way).containsAll(expected);
        }
    }

    private static String at(double x, double y) {
        return String.format(Locale.ROOT, "%.3f %.3f", x, y);
    }

    /** By the shoelace formula, and for each arc r² (a - sin a) / 2. */
    private static double area(List<double[]> vertices) {
        double area = 0;
        for (int i = 0; i < vertices.size(); i++) {
            var a = vertices.get(i);
            var b = vertices.get((i + 1) % vertices.size());
            area += (a[0] * b[1] - b[0] * a[1]) / 2;
            if (a[2] != 0) {
                double angle = 4 * Math.atan(a[2]);
                double r = Math.hypot(b[0] - a[0], b[1] - a[1]) / 2 / Math.sin(Math.abs(angle) / 2);
                area += r * r / 2 * (angle - Math.sin(angle));
            }
        }
        return area;
    }

    private static List<String> areas(Plot plot) {
        return plot.layers().stream()
                .filter(layer -> !layer.name().equals("label"))
                .map(layer -> layer.name() + " " + layer.marks().size() + " "
                        + Math.round(layer.marks().stream()
                                .mapToDouble(mark -> mark instanceof Mark.Closed closed
                                        ? closed.loop().area()
                                        : 1)
                                .sum()))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"a\nb", "\ud83d\ude00", "<&>\"'", "%%c ^J \\U+0041", "..."})
    void takesAnyName(String name) {
        var part = Part.blank(name, new Material(name, 18, 700, Grain.NONE), 400, 200)
                .with(Hole.through(50, 50, 8, name));
        assertThatCode(() -> {
                    var plots = SampleBoards.plots(name, sheet(new Lie(false, 0, new Vec2(50, 50)), part), ROUTER);
                    new DxfText(dxf(plots.top()));
                    assertThat(plots.legend()).noneMatch(line -> line.contains("\n"));
                })
                .doesNotThrowAnyException();
    }

    @Test
    void keepsLabelsOffHolesAndInTheirParts() {
        var part = oneSided();
        var plot = SampleBoards.plots("board", sheet(new Lie(false, 0, new Vec2(50, 50)), part), ROUTER)
                .top();
        var words = (Mark.Words) layer(plot, "label").marks().get(0);

        assertThat(words.words()).isEqualTo("A plate");
        assertThat(words.at().x()).isBetween(50.0, 550.0);
        Geometry start = Flat.point(words.at());
        assertThat(plot.layers())
                .filteredOn(
                        layer -> layer.name().startsWith("bore") || layer.name().startsWith("pocket"))
                .allMatch(layer -> layer.marks().stream()
                        .noneMatch(mark -> mark.accept(new MarkArea()).intersects(start)));
    }

    /** References 9 and vector 57: tool of 1/4 in and 1/16 in more: 7.95 mm; 100 mm parts pitch 107.95 mm; 11 fit in 1220. */
    @Test
    void leavesTheBitAndTheMarginBetweenParts() {
        double spacing = new Router(6.35, 1.6, 5, 0.2, 0, Optional.empty(), Router.Relief.NONE, 8).spacing();
        assertThat(spacing).isCloseTo(7.95, within(1e-9));
        assertThat(100 + spacing).isCloseTo(107.95, within(1e-9));
        assertThat((int) ((1220 - 2 * spacing + spacing) / (100 + spacing))).isEqualTo(11);
    }

    private static Part oneSided() {
        return Part.blank("plate", PLY, 500, 300)
                .with(
                        Hole.through(250, 150, 8, "bolt"),
                        Pocket.blind(Face.SHOW, new Rect(50, 50, 150, 150), 5, 9, "lock"));
    }

    private static Part twoSided() {
        return oneSided()
                .with(
                        Channel.across(Face.BENCH, 400, 418, 300, 6),
                        Hole.through(300, 250, 8, "bolt").with(new Recess.Counterbore(12, 4)),
                        new Hole(
                                Face.BENCH,
                                330,
                                60,
                                8,
                                OptionalDouble.empty(),
                                Optional.of(new Recess.Counterbore(20, 6)),
                                "nut"));
    }

    private static RoutedSheet sheet(Lie lie, Part part) {
        return new RoutedSheet(SampleBoards.board(PLY, 1200, 900), List.of(new RoutedPiece("A", part, lie)));
    }

    private static String dxf(Plot plot) throws IOException {
        var out = new ByteArrayOutputStream();
        DxfWriter.write(plot, out);
        return out.toString(StandardCharsets.US_ASCII);
    }
}
