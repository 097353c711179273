package org.standwright;

import static org.standwright.RandomLengths.quoted;

import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.stand.StandBuilder;

/**
 * Design files at random, one a seed, as a maker might write them: metric or in inches, with any choice that the format
 * has. Not every one can be built; a test that needs one that can asks for the next attempt.
 */
public final class RandomStands {
    private static final String PULL =
            "{ \"name\": \"pull\", \"spacing\": \"96 mm\", \"bore\": \"4.5 mm\"," + " \"projection\": \"30 mm\" }";

    static final int ATTEMPTS = 40;

    private final SplittableRandom random;
    private final boolean metric;
    private final RandomLengths lengths;
    private final boolean inset;
    /** Wishes that change no size. */
    private final SplittableRandom wishes;

    private final String carcass;

    private RandomStands(long seed, int attempt) {
        this.random = new SplittableRandom(1_000_003 * seed + attempt);
        this.metric = random.nextBoolean();
        this.inset = random.nextBoolean();
        this.lengths = new RandomLengths(random, metric);
        this.wishes = new SplittableRandom(1_000_033 * seed + attempt);
        this.carcass = thick();
    }

    /** The text of a design file. */
    static String text(long seed, int attempt) {
        var stand = new RandomStands(seed, attempt);
        var lengths = stand.lengths;
        var saw = "{ \"kerf\": " + lengths.between(1.5, 3.5) + ", \"trim\": " + lengths.between(0, 10) + " }";
        return stand.text(name(seed, attempt), "\"saw\": " + saw);
    }

    /** The first design of a seed that can be built. */
    public static StandDesign buildable(long seed) {
        return design(buildableText(seed));
    }

    /** The text of the first design file of a seed that can be built. */
    public static String buildableText(long seed) {
        for (int attempt = 0; attempt < ATTEMPTS; attempt++) {
            var text = text(seed, attempt);
            if (refusal(text).isEmpty()) {
                return text;
            }
        }
        throw new AssertionError("seed " + seed + ": none of " + ATTEMPTS + " attempts can be built");
    }

    /** Why a design cannot be built, if it cannot. */
    static Optional<ImpossibleDesignException> refusal(String text) {
        try {
            StandBuilder.build(design(text));
            return Optional.empty();
        } catch (ImpossibleDesignException refusal) {
            return Optional.of(refusal);
        }
    }

    static StandDesign design(String text) {
        return Presets.stand("random.json", text);
    }

    /** The text of a design file that says more of boards, saws and cutting. */
    static String cut(long seed, int attempt) {
        var stand = new RandomStands(seed, attempt);
        var random = new SplittableRandom(1_000_037 * seed + attempt);
        var cutting = new RandomCutting(random, new RandomLengths(random, stand.metric), stand.carcass);
        return stand.text(
                name(seed, attempt),
                "\"saw\": " + cutting.saw() + ",\n  \"stock\": " + cutting.stock() + ",\n  \"cutting\": "
                        + cutting.cutting());
    }

    private static String name(long seed, int attempt) {
        return "random stand " + seed + "." + attempt;
    }

    private String text(String name, String cutting) {
        return """
                {
                  "version": 1,
                  "kind": "stand",
                  "name": "%s",
                  "unit": "%s",
                  "machine": %s,
                  "place": %s,
                  "workingHeight": %s,
                  "plan": { "width": %s, "depth": %s },
                  "layout": "%s",
                  "support": %s,
                  "carcass": { "sheet": %s, "back": %s, "housing": %s, "joint": %s%s },
                  "worktop": { "sheet": %s, "layers": %d, "overhang": { "front": %s, "back": %s, "left": %s, "right": %s } },
                  "cutouts": [%s],
                  "bays": [%s],
                  "drawers": { "box": %s, "bottom": %s, "front": %s, "hang": %s, "mount": "%s", "gap": %s, "grip": %s%s%s },
                  "edges": { %s },
                  "screws": { "panel": "%s", "slide": "%s" },
                  %s,
                  %s
                }
                """.formatted(
                        name,
                        metric ? "mm" : "in",
                        machine(),
                        place(),
                        workingHeight(),
                        lengths.between(420, 1400),
                        lengths.between(400, 760),
                        lengths.oneOf("as-written", "as-written", "mirrored"),
                        support(),
                        carcass,
                        thin(),
                        lengths.between(4, 6),
                        joint(),
                        wishes.nextInt(4) == 0 ? ", \"backPieces\": 2" : "",
                        thick(),
                        1 + random.nextInt(2),
                        lengths.between(0, 40),
                        lengths.between(0, 20),
                        lengths.between(0, 60),
                        lengths.between(0, 60),
                        cutouts(),
                        new RandomBays(lengths, inset).bays(3, false),
                        boxes(),
                        thin(),
                        thick(),
                        hang(),
                        inset ? "inset" : "overlay",
                        lengths.between(2, 4),
                        grip(),
                        lengths.onceIn(3, ", \"rounding\": " + lengths.oneOf("0", "\"1 mm\"", "\"1/16 in\"")),
                        figure(),
                        edges(),
                        metric ? "screw-4" : "screw-8",
                        metric ? "slide-screw-4" : "slide-screw-6",
                        bearing(),
                        cutting);
    }

    private String machine() {
        double width = random.nextDouble(200, 600);
        double depth = random.nextDouble(200, 500);
        double height = random.nextDouble(0, 300);
        return """
                { "name": "machine", "base": { "width": %s, "depth": %s },
                    "envelope": { "width": %s, "depth": %s, "height": %s }, "mass": %d,
                    "reference": %s, "feet": %s%s%s, "operator": "%s", "feed": "%s" }""".formatted(
                        lengths.between(width, width),
                        lengths.between(depth, depth),
                        lengths.between(600, 900),
                        lengths.between(500, 800),
                        lengths.between(300, 900),
                        10 + random.nextInt(80),
                        reference(height),
                        random.nextBoolean() ? "0" : lengths.between(1, 30),
                        lengths.onceIn(3, mounting(width, depth)),
                        weighing(width, depth),
                        lengths.oneOf("front", "left", "right"),
                        lengths.oneOf("none", "front-to-back", "left-to-right"));
    }

    /** Where its centre of mass is, and how hard it is pushed. */
    private String weighing(double width, double depth) {
        double lowest = wishes.nextDouble(50, 300);
        var centre = String.format(
                Locale.ROOT,
                ", \"centreOfMass\": { \"x\": \"%.0f mm\", \"y\": \"%.0f mm\", \"lowest\": \"%.0f mm\", \"highest\": \"%.0f mm\" }",
                wishes.nextDouble(0.3, 0.7) * width,
                wishes.nextDouble(0.3, 0.7) * depth,
                lowest,
                lowest + wishes.nextDouble(0, 100));
        var force = String.format(
                Locale.ROOT,
                ", \"workingForce\": { \"force\": \"%d N\", \"height\": \"%.0f mm\" }",
                20 + wishes.nextInt(200),
                wishes.nextDouble(50, 300));
        return (wishes.nextInt(3) > 0 ? centre : "") + (wishes.nextBoolean() ? force : "");
    }

    /** What bears on it and keeps it steady. */
    private String bearing() {
        return String.format(
                Locale.ROOT,
                "\"loads\": { \"drawers\": %d, \"shelves\": %d, \"push\": \"%d N\" },\n  \"site\": { \"slope\": %.1f,"
                        + " \"threshold\": \"%d mm\", \"fall\": \"%d mm\" },\n  \"steady\": { \"ballast\": \"%d kg\","
                        + " \"interlock\": %b, \"anchor\": \"%s\" }",
                100 + wishes.nextInt(1200),
                50 + wishes.nextInt(250),
                50 + wishes.nextInt(200),
                wishes.nextDouble(0, 4),
                wishes.nextInt(20),
                wishes.nextInt(8),
                wishes.nextInt(3) == 0 ? wishes.nextInt(60) : 0,
                wishes.nextInt(3) == 0,
                wishes.nextInt(5) == 0 ? "wall" : wishes.nextInt(8) == 0 ? "floor" : "none");
    }

    private String reference(double height) {
        var usual = "\"height\": " + lengths.between(height, height);
        return switch (random.nextInt(4)) {
            case 0 -> "{ \"kind\": \"spindle\", " + usual + " }";
            case 1 ->
                "{ \"kind\": \"movable-table\", " + usual + ", \"lowest\": 0, \"highest\": "
                        + lengths.between(height + 10, height + 200) + " }";
            default -> "{ \"kind\": \"table\", " + usual + " }";
        };
    }

    private String mounting(double width, double depth) {
        return String.format(
                Locale.ROOT,
                ", \"mounting\": { \"flange\": \"12 mm\", \"bolt\": \"8 mm\", \"origin\": { \"x\": \"30 mm\", \"y\": \"30 mm\" },"
                        + " \"holes\": [{ \"x\": 0, \"y\": 0 }, { \"x\": \"%.0f mm\", \"y\": \"%.0f mm\" }] }",
                width - 60,
                depth - 60);
    }

    private String place() {
        return "{ \"turn\": " + lengths.oneOf("0", "0", "90", "180", "270")
                + lengths.onceIn(
                        4,
                        ", \"margins\": { \"" + lengths.oneOf("left", "right") + "\": " + lengths.between(20, 120)
                                + ", \"" + lengths.oneOf("front", "back") + "\": " + lengths.between(20, 60) + " }")
                + lengths.onceIn(
                        4,
                        ", \"shims\": { \"least\": 0, \"usual\": \"5 mm\", \"most\": " + lengths.between(8, 12) + " }")
                + " }";
    }

    private String workingHeight() {
        return switch (random.nextInt(6)) {
            case 0 ->
                "{ \"kind\": \"elbow\", \"elbow\": " + lengths.between(950, 1190) + ", \"work\": \""
                        + lengths.oneOf("precise", "light", "heavy") + "\" }";
            case 1 ->
                "{ \"kind\": \"beside\", \"surface\": \"bench\", \"surfaceHeight\": " + lengths.between(700, 1200)
                        + ", \"below\": " + lengths.between(0, 3) + ", \"fall\": " + lengths.between(0, 4) + " }";
            default -> lengths.between(560, 1250);
        };
    }

    private String support() {
        var bed = ", \"bed\": \"" + lengths.oneOf("strips", "doubled-bottom") + "\"";
        return switch (random.nextInt(4)) {
            case 0 ->
                "{ \"kind\": \"casters\", \"caster\": \"caster-100\"" + bed
                        + lengths.onceIn(2, ", \"others\": { \"preset\": \"caster-100\", \"brake\": false }") + " }";
            case 1 -> "{ \"kind\": \"levelers\", \"leveler\": \"leveler-m10\"" + bed + " }";
            case 2 ->
                "{ \"kind\": \"plinth\", \"height\": " + lengths.between(60, 150) + ", \"toeSpace\": "
                        + lengths.between(40, 90) + " }";
            default -> "{ \"kind\": \"none\" }";
        };
    }

    private String joint() {
        return lengths.oneOf(
                "{ \"kind\": \"dado\" }",
                "{ \"kind\": \"dado\" }",
                "{ \"kind\": \"screws\" }",
                "{ \"kind\": \"dowels\", \"dowel\": { \"name\": \"dowel\", \"diameter\": \"8 mm\", \"length\": \"30 mm\" } }",
                "{ \"kind\": \"connectors\", \"connector\": { \"name\": \"connector\", \"length\": \"50 mm\","
                        + " \"thread\": \"5 mm\", \"shank\": \"7 mm\", \"head\": \"10 mm\", \"headDepth\": \"4 mm\" } }");
    }

    private String cutouts() {
        return lengths.onceIn(
                3,
                lengths.oneOf(
                        "{ \"kind\": \"round\", \"use\": \"hose\", \"in\": \"back\", \"x\": " + lengths.between(90, 400)
                                + ", \"y\": " + lengths.between(90, 300) + ", \"diameter\": " + lengths.between(30, 110)
                                + " }",
                        "{ \"kind\": \"rectangular\", \"use\": \"cord\", \"in\": \"worktop\", \"x\": "
                                + lengths.between(90, 400) + ", \"y\": " + lengths.between(330, 400) + ", \"width\": "
                                + lengths.between(30, 60) + ", \"height\": " + lengths.between(20, 40)
                                + ", \"radius\": \"5 mm\" }"));
    }

    private String hang() {
        return random.nextInt(3) == 0
                ? "{ \"kind\": \"runners\", \"bar\": { \"name\": \"bar\", \"width\": \"20 mm\", \"thickness\": \"15 mm\","
                        + " \"density\": 700, \"length\": \"2400 mm\" } }"
                : "{ \"kind\": \"slides\", \"slide\": \"" + (metric ? "slide-45-full" : "slide-1-3-4-full-inch")
                        + "\" }";
    }

    private String grip() {
        return random.nextBoolean()
                ? "{ \"kind\": \"pull\", \"pull\": " + PULL + " }"
                : "{ \"kind\": \"notch\", \"width\": " + lengths.between(60, 100) + ", \"depth\": "
                        + lengths.between(12, 25) + " }";
    }

    private String figure() {
        var grain = wishes.nextInt(3) == 0 ? ", \"frontGrain\": \"upright\"" : "";
        return grain + (wishes.nextInt(3) == 0 ? ", \"matched\": true" : "");
    }

    private String edges() {
        var tape = "{ \"name\": \"tape\", \"style\": \"tape\", \"thickness\": \"0.6 mm\" }";
        return lengths.oneOf(
                "",
                "\"carcass\": " + tape,
                "\"fronts\": " + tape,
                "\"carcass\": " + tape + ", \"fronts\": " + tape + ", \"worktop\": { \"front\": " + tape + " }");
    }

    /** A panel sheet, often measured off its preset's thickness. */
    private String thick() {
        return measured(metric ? "birch-18" : "ply-23-32", metric ? 17.1 : 17.5, metric ? 18.7 : 19.0);
    }

    private String boxes() {
        return measured(metric ? "birch-12" : "ply-15-32", metric ? 11.6 : 11.6, metric ? 12.5 : 12.6);
    }

    private String thin() {
        return measured(metric ? "birch-6.5" : "ply-1-4", metric ? 6.0 : 5.0, metric ? 6.8 : 6.4);
    }

    private String measured(String preset, double least, double most) {
        return random.nextInt(3) == 0
                ? quoted(preset)
                : "{ \"preset\": \"" + preset + "\", \"thickness\": "
                        + quoted(String.format(Locale.ROOT, "%.2f mm", random.nextDouble(least, most))) + " }";
    }
}
