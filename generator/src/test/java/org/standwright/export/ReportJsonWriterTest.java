package org.standwright.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.standwright.check.LoadedStand;
import org.standwright.check.rules.Checks;
import org.standwright.cutlist.CutList;
import org.standwright.design.CuttingPlan;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.FrontGrain;
import org.standwright.design.KeptTogether;
import org.standwright.design.Savings;
import org.standwright.design.StockEntry;
import org.standwright.design.StockPlan;
import org.standwright.design.kit.BreakDown;
import org.standwright.design.kit.Keep;
import org.standwright.design.kit.Saw;
import org.standwright.design.kit.Trim;
import org.standwright.design.stand.StandBuilder;
import org.standwright.packet.MixedStand;
import org.standwright.sheet.Stock;
import org.standwright.sheet.plan.SheetPlanner;
import org.standwright.solid.AssemblySolids;
import org.standwright.unit.Units;

/** Works a stand out again from nothing but its report. */
class ReportJsonWriterTest {
    private static final double ROUNDING = 1e-6;
    private static final double SHEET_UNIT = 1.0 / 3200;

    private static String text;
    private static JsonNode report;

    @BeforeAll
    static void write() throws IOException {
        var design = Designs.planerStand();
        var stand = StandBuilder.build(design);
        var cutList = CutList.of(stand.assembly(), design.unit());
        var plan = SheetPlanner.plan(Stock.of(design), cutList);
        var solids = AssemblySolids.of(stand.assembly());
        var out = new ByteArrayOutputStream();
        ReportJsonWriter.write(
                stand,
                cutList,
                plan,
                Optional.empty(),
                Checks.of(LoadedStand.of(stand, solids)),
                Optional.empty(),
                solids,
                out);
        text = out.toString(StandardCharsets.UTF_8);
        report = new JsonMapper().readTree(text);
    }

    @Test
    void saysWhatItIs() {
        assertThat(report.get("version").asInt()).isEqualTo(1);
        assertThat(report.get("kind").asText()).isEqualTo("report");
        assertThat(report.get("unit").asText()).isEqualTo("mm");
        assertThat(report.get("name").asText()).isEqualTo("planer stand");
        assertThat(report.at("/design/support/kind").asText()).isEqualTo("casters");
    }

    @Test
    void hasNeitherNegativeZerosNorCarriageReturns() {
        assertThat(text).doesNotContain("-0.0,", "-0.0 ", "-0.0\n", "\r").endsWith("}\n");
    }

    @Test
    void addsUpToTheWorkingHeight() {
        double sum = sum(report.at("/stack/terms"), "height");
        assertThat(sum).isCloseTo(900, within(ROUNDING));
        assertThat(report.at("/stack/workingHeight").asDouble()).isEqualTo(900);
    }

    @Test
    void placesEveryPartWhereItsBoxSays() {
        for (var part : report.get("parts")) {
            var placement = part.get("placement");
            var along = numbers(placement.get("along"));
            var across = numbers(placement.get("across"));
            var through = cross(along, across);
            for (int axis = 0; axis < 3; axis++) {
                double from = placement.get("origin").get(axis).asDouble();
                double to = from
                        + along[axis] * part.get("length").asDouble()
                        + across[axis] * part.get("width").asDouble()
                        + through[axis] * part.get("thickness").asDouble();
                assertThat(part.at("/box/min/" + axis).asDouble()).isCloseTo(Math.min(from, to), within(ROUNDING));
                assertThat(part.at("/box/max/" + axis).asDouble()).isCloseTo(Math.max(from, to), within(ROUNDING));
            }
        }
    }

    /** Features may overlap, so the mass lies between the blank's and that less every feature's. */
    @Test
    void weighsEveryPart() {
        var densities = new HashMap<String, Double>();
        report.get("materials")
                .forEach(sheet -> densities.put(
                        sheet.get("name").asText(), sheet.get("density").asDouble()));
        for (var part : report.get("parts")) {
            double perVolume = densities.get(part.get("material").asText()) * 1e-9;
            double blank = perVolume
                    * part.get("length").asDouble()
                    * part.get("width").asDouble()
                    * part.get("thickness").asDouble();
            double removed = stream(part.get("features"))
                            .mapToDouble(feature ->
                                    removed(feature, part.get("thickness").asDouble()))
                            .sum()
                    * perVolume;
            double snapping = blank * 1e-4;
            assertThat(part.get("mass").asDouble()).isBetween(blank - removed - snapping, blank + snapping);
        }
        assertThat(report.get("mass").asDouble()).isCloseTo(sum(report.get("parts"), "mass"), within(1e-9));
    }

    /** Were every board as heavy everywhere, the whole would weigh down in the mean of the middles of their boxes. */
    @Test
    void saysWhereTheBoardsWeighDown() {
        for (var axis : List.of("x", "y", "z")) {
            int i = "xyz".indexOf(axis);
            double moment = 0;
            for (var part : report.get("parts")) {
                double low = part.at("/box/min/" + i).asDouble();
                double high = part.at("/box/max/" + i).asDouble();
                moment += part.get("mass").asDouble() * (low + high) / 2;
            }
            // channels and holes move a board's own centre by a few millimetres at most
            assertThat(report.at("/centreOfMass/" + i).asDouble())
                    .as(axis)
                    .isCloseTo(moment / report.get("mass").asDouble(), within(2.0));
        }
        assertThat(report.at("/inertia/zz").asDouble()).isPositive();
    }

    @Test
    void listsEveryPartInOneLineOfItsSize() {
        var parts = new HashMap<String, JsonNode>();
        report.get("parts").forEach(part -> parts.put(part.get("label").asText(), part));
        for (var line : report.get("cutList")) {
            assertThat(line.get("members")).hasSize(line.get("count").asInt());
            for (var member : line.get("members")) {
                var part = parts.remove(member.asText());
                assertThat(part).as(member.asText()).isNotNull();
                assertThat(part.get("cutLength").asDouble())
                        .isCloseTo(line.get("cutLength").asDouble(), within(ROUNDING));
                assertThat(part.get("cutWidth").asDouble())
                        .isCloseTo(line.get("cutWidth").asDouble(), within(ROUNDING));
                assertThat(part.get("material")).isEqualTo(line.get("material"));
            }
        }
        assertThat(parts).isEmpty();
    }

    @Test
    void cutsEveryPieceOfEveryLine() {
        Map<String, Integer> wanted = new HashMap<>();
        report.get("cutList")
                .forEach(line ->
                        wanted.put(line.get("label").asText(), line.get("count").asInt()));
        for (var piece : allPieces()) {
            wanted.merge(piece.get("label").asText(), -1, Integer::sum);
            var line = line(piece.get("label").asText());
            boolean turned = piece.get("turned").asBoolean();
            assertThat(turned).as("grain runs along the sheet").isFalse();
            assertThat(piece.get("length").asDouble() - line.get("roughLength").asDouble())
                    .isBetween(-ROUNDING, SHEET_UNIT);
            assertThat(piece.get("width").asDouble() - line.get("roughWidth").asDouble())
                    .isBetween(-ROUNDING, SHEET_UNIT);
        }
        assertThat(wanted.values()).containsOnly(0);
    }

    @Test
    void leavesTrimAndKerfOnEverySheet() {
        double kerf = report.at("/sheetPlan/kerf").asDouble() - ROUNDING;
        double trim = report.at("/sheetPlan/trim/left").asDouble() - ROUNDING;
        for (var material : report.at("/sheetPlan/materials")) {
            for (var sheet : material.get("sheets")) {
                var pieces = stream(sheet.get("pieces")).toList();
                for (int i = 0; i < pieces.size(); i++) {
                    var piece = pieces.get(i);
                    assertThat(start(piece, "x")).isGreaterThanOrEqualTo(trim);
                    assertThat(start(piece, "y")).isGreaterThanOrEqualTo(trim);
                    assertThat(end(piece, "x"))
                            .isLessThanOrEqualTo(sheet.get("sheetLength").asDouble() - trim);
                    assertThat(end(piece, "y"))
                            .isLessThanOrEqualTo(sheet.get("sheetWidth").asDouble() - trim);
                    pieces.subList(i + 1, pieces.size())
                            .forEach(other -> assertThat(apart(piece, other)).isGreaterThanOrEqualTo(kerf));
                }
            }
        }
    }

    @Test
    void yieldsWhatThePiecesCover() {
        for (var material : report.at("/sheetPlan/materials")) {
            double covered = stream(material.get("sheets"))
                    .flatMap(planned -> stream(planned.get("pieces")))
                    .mapToDouble(ReportJsonWriterTest::area)
                    .sum();
            double boards = stream(material.get("sheets"))
                    .mapToDouble(sheet -> sheet.get("sheetLength").asDouble()
                            * sheet.get("sheetWidth").asDouble())
                    .sum();
            var areas = material.get("yield");
            assertThat(areas.get("parts").asDouble()).isCloseTo(covered, within(1e-3));
            assertThat(areas.get("boards").asDouble()).isCloseTo(boards, within(1e-3));
            assertThat(areas.get("share").asDouble()).isCloseTo(covered / boards, within(1e-9));
            assertThat(Stream.of("parts", "kerf", "trim", "offcuts", "waste")
                            .mapToDouble(name -> areas.get(name).asDouble())
                            .sum())
                    .isCloseTo(boards, within(1e-3));
        }
    }

    @Test
    void saysWhichBoardsItTakesAndHowNearThatIsToTheLeast() {
        for (var material : report.at("/sheetPlan/materials")) {
            var proof = material.get("proof");
            int sheets = material.get("sheets").size();
            assertThat(proof.get("goal").asText()).isEqualTo("sheets");
            assertThat(proof.get("reached").asInt()).isEqualTo(sheets);
            assertThat(proof.get("least").asInt()).isBetween(1, sheets);
            assertThat(proof.get("proved").asBoolean())
                    .isEqualTo(proof.get("least").asInt() == sheets);
            assertThat(sum(material.get("stock"), "count")).isEqualTo(sheets);
            assertThat(material.at("/stock/0/source").asText()).isEqualTo("bought");
        }
    }

    /** Read again from the file alone: every cut is in one set-up of its setting, every piece falls free once. */
    @Test
    void everyCutIsInOneSetUpAndEveryPieceFallsFreeOnce() {
        for (var material : report.at("/sheetPlan/materials")) {
            var cuts = new TreeMap<String, JsonNode>();
            var left = new ArrayList<String>();
            int number = 1;
            for (var sheet : material.get("sheets")) {
                for (var cut : sheet.get("cuts")) {
                    cuts.put(number + "/" + cut.get("number").asInt(), cut);
                }
                sheet.get("pieces").forEach(piece -> left.add(piece.get("label").asText()));
                number++;
            }
            for (var setUp : material.get("setUps")) {
                for (var made : setUp.get("cuts")) {
                    var cut = cuts.remove(
                            made.get("sheet").asInt() + "/" + made.get("number").asInt());
                    assertThat(cut.get("setting")).isEqualTo(setUp.get("setting"));
                    assertThat(cut.get("direction")).isEqualTo(setUp.get("direction"));
                    assertThat(cut.get("tool")).isEqualTo(setUp.get("tool"));
                    made.get("frees")
                            .forEach(label ->
                                    assertThat(left.remove(label.asText())).isTrue());
                }
            }
            assertThat(cuts).isEmpty();
            assertThat(left).isEmpty();
        }
    }

    private static double area(JsonNode rectangle) {
        return rectangle.get("length").asDouble() * rectangle.get("width").asDouble();
    }

    @Test
    void fitsEveryDrawerBetweenItsSlides() {
        double side = report.at("/design/hang/slide/sideSpace").asDouble();
        for (var bay : report.get("bays")) {
            double opening =
                    bay.at("/opening/x1").asDouble() - bay.at("/opening/x0").asDouble();
            for (var drawer : bay.get("drawers")) {
                assertThat(drawer.at("/box/width").asDouble()).isCloseTo(opening - 2 * side, within(ROUNDING));
                assertThat(drawer.at("/box/depth").asDouble())
                        .isCloseTo(drawer.at("/slide/length").asDouble(), within(ROUNDING));
            }
        }
    }

    @Test
    void reportsEverySectionDoorBoltAndBar() throws IOException {
        var stand = MixedStand.in(Units.MM);
        var cutList = CutList.of(stand.assembly(), Units.MM);
        var plan = SheetPlanner.plan(Stock.of(stand.design()), cutList);
        var out = new ByteArrayOutputStream();
        ReportJsonWriter.write(
                stand,
                cutList,
                plan,
                Optional.empty(),
                List.of(),
                Optional.empty(),
                AssemblySolids.of(stand.assembly()),
                out);
        var mixed = new JsonMapper().readTree(out.toByteArray());

        assertThat(mixed.at("/design/workingHeight/kind").asText()).isEqualTo("beside");
        assertThat(mixed.at("/design/workingHeight/height").asDouble()).isEqualTo(900);
        assertThat(mixed.at("/design/layout").asText()).isEqualTo("mirrored");
        assertThat(mixed.at("/design/joint/kind").asText()).isEqualTo("dowels");
        assertThat(mixed.at("/design/hang/kind").asText()).isEqualTo("runners");
        assertThat(mixed.at("/design/grip/kind").asText()).isEqualTo("notch");
        assertThat(mixed.at("/design/bays/0/contents/1/kind").asText()).isEqualTo("door");
        assertThat(mixed.at("/design/bays/0/contents/1/hinge/style").asText()).isEqualTo("concealed");
        assertThat(mixed.at("/design/bays/1/contents/0/kind").asText()).isEqualTo("divided");
        assertThat(mixed.at("/bays/0/sections/1/doors/0/hung").asText()).isEqualTo("left");
        assertThat(mixed.at("/bays/0/sections/2/kind").asText()).isEqualTo("open");
        assertThat(mixed.at("/bays/1/sections/0/bays/1/name").asText()).isEqualTo("2b");
        assertThat(mixed.at("/bays/1/sections/1/use").asText()).isEqualTo("vacuum");
        assertThat(mixed.at("/machine/infeed").asText()).isEqualTo("left");
        assertThat(mixed.at("/machine/bolts")).hasSize(4);
        assertThat(mixed.at("/bars/0/length").asDouble()).isCloseTo(1972.8, within(ROUNDING));
        assertThat(mixed.at("/edgings/0/name").asText()).isEqualTo("birch tape");
    }

    @Test
    void reportsWhatItsMakerDecidedOnBoardsAndSawing() {
        var none = new Savings.Give(0, 0);
        var node = ReportDesign.of(Draft.of(Designs.planerStand(), draft -> {
            draft.matched(FrontGrain.UPRIGHT);
            draft.saw = new Saw(
                    3.2,
                    new Trim(10, 0, 5, 5),
                    OptionalInt.of(3),
                    Saw.First.RIP,
                    OptionalDouble.empty(),
                    OptionalDouble.of(900),
                    250,
                    Optional.of(new BreakDown(2.5, 5)));
            draft.stock = new StockPlan(new Keep(400, 120), List.of(offcut()));
            draft.cutting =
                    new CuttingPlan(List.of("bottom"), List.of(new KeptTogether.OneBlank(List.of("drawer side"), 4)));
            draft.savings = Optional.of(new Savings(
                    none,
                    new Savings.Give(10, 0),
                    none,
                    1,
                    List.of(new Savings.OtherSheet(Designs.BOARD_12, Designs.BOARD_18)),
                    true,
                    List.of(Designs.BOARD_6)));
        }));

        assertThat(node.get("frontGrain").asText()).isEqualTo("upright");
        assertThat(node.get("matched").asBoolean()).isTrue();
        assertThat(node.get("saw"))
                .hasToString("{\"kerf\":3.2,\"trim\":{\"left\":10.0,\"right\":0.0,\"bottom\":5.0,\"top\":5.0},"
                        + "\"stages\":3,\"first\":\"rip\",\"longestCrosscut\":900.0,\"smallestPiece\":250.0,"
                        + "\"breakDown\":{\"kerf\":2.5,\"allowance\":5.0}}");
        assertThat(node.at("/stock/keep")).hasToString("{\"length\":400.0,\"width\":120.0}");
        assertThat(node.at("/stock/sheets/0"))
                .hasToString(
                        "{\"sheet\":{\"name\":\"" + Designs.BOARD_18.material().name()
                                + "\",\"thickness\":18.0},\"name\":\"rest\",\"length\":900.0,\"width\":400.0,"
                                + "\"thickness\":17.8,\"atHand\":true}");
        assertThat(node.get("cutting"))
                .hasToString("{\"anyGrain\":[\"bottom\"],\"together\":"
                        + "[{\"kind\":\"one-blank\",\"parts\":[\"drawer side\"],\"over\":4.0}]}");
        assertThat(node.at("/savings/depth/less").asDouble()).isEqualTo(10);
        assertThat(node.at("/savings/sheets/0/sheet/sheetLength").asDouble()).isEqualTo(Designs.BOARD_18.length());
        assertThat(node.at("/savings/freeGrain/0/thickness").asDouble())
                .isEqualTo(Designs.BOARD_6.material().thickness());
    }

    private static StockEntry offcut() {
        return new StockEntry(
                Designs.BOARD_18,
                Optional.of("rest"),
                OptionalDouble.of(900),
                OptionalDouble.of(400),
                OptionalInt.empty(),
                OptionalDouble.of(17.8),
                Optional.empty(),
                true);
    }

    private static double removed(JsonNode feature, double thickness) {
        double depth = feature.has("depth") ? feature.get("depth").asDouble() : thickness;
        if (feature.has("diameter")) {
            double radius = feature.get("diameter").asDouble() / 2;
            return Math.PI * radius * radius * depth;
        }
        return (feature.get("x1").asDouble() - feature.get("x0").asDouble())
                * (feature.get("y1").asDouble() - feature.get("y0").asDouble())
                * depth;
    }

    private static List<JsonNode> allPieces() {
        var pieces = new ArrayList<JsonNode>();
        report.at("/sheetPlan/materials")
                .forEach(material -> material.get("sheets")
                        .forEach(sheet -> sheet.get("pieces").forEach(pieces::add)));
        return pieces;
    }

    private static JsonNode line(String label) {
        return stream(report.get("cutList"))
                .filter(line -> line.get("label").asText().equals(label))
                .findFirst()
                .orElseThrow();
    }

    private static double start(JsonNode piece, String axis) {
        return piece.get(axis).asDouble();
    }

    private static double end(JsonNode piece, String axis) {
        return start(piece, axis)
                + piece.get(axis.equals("x") ? "length" : "width").asDouble();
    }

    /** The larger of the two gaps between two pieces. */
    private static double apart(JsonNode a, JsonNode b) {
        return Math.max(gap(a, b, "x"), gap(a, b, "y"));
    }

    private static double gap(JsonNode a, JsonNode b, String axis) {
        return Math.max(start(b, axis) - end(a, axis), start(a, axis) - end(b, axis));
    }

    private static Stream<JsonNode> stream(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false);
    }

    private static double sum(JsonNode array, String field) {
        return stream(array).mapToDouble(node -> node.get(field).asDouble()).sum();
    }

    private static double[] numbers(JsonNode array) {
        return stream(array).mapToDouble(JsonNode::asDouble).toArray();
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }
}
