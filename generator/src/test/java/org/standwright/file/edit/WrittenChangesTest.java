package org.standwright.file.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.HashSet;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.standwright.Presets;
import org.standwright.RandomStands;
import org.standwright.check.Finding;
import org.standwright.check.Stands;
import org.standwright.check.rules.Checks;
import org.standwright.check.wall.HungWall;
import org.standwright.design.Design;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.WallDesign;
import org.standwright.design.wall.build.WallBuilder;
import org.standwright.file.DesignFiles;
import org.standwright.file.FileKind;
import org.standwright.file.Preset;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.Fineness;

/** Every change that any rule proposes is read back from the text that it is written into. */
class WrittenChangesTest {
    private static final boolean FULL = "full".equals(System.getProperty("standwright.random"));
    private static final Pattern NUMBER = Pattern.compile("-?\\d+\\.\\d+(?:E-?\\d+)?");

    static Stream<Preset> designs() {
        return Stream.of(FileKind.STAND, FileKind.CLEAT_WALL).flatMap(kind -> Presets.shipped().list(kind).stream());
    }

    @ParameterizedTest
    @MethodSource("designs")
    void everyProposalInAPresetIsWritten(Preset preset) {
        var bad = preset.kind() == FileKind.STAND ? worseStand(preset.text()) : worseWall(preset.text());
        assertThat(written(preset.text()) + written(bad)).isPositive();
    }

    /** What gives rules something to say. */
    private static String worseStand(String text) {
        var thin = JsonEdit.set(text, "/worktop/layers", "1");
        var loaded = JsonEdit.set(thin, "/loads/drawers", "1500");
        var screwed = JsonEdit.set(loaded, "/carcass/joint", "{ \"kind\": \"screws\" }");
        return JsonEdit.set(screwed, "/steady", "{}");
    }

    private static String worseWall(String text) {
        var brief = JsonEdit.set(text, "/fixing/length", "\"40 mm\"");
        var heavy = JsonEdit.set(brief, "/holders/0/things/mass", "\"15 kg\"");
        return JsonEdit.set(heavy, "/holders/0/lock", "false");
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, FULL ? 300 : 2);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyProposalInARandomStandIsWritten(long seed) {
        assertThat(written(RandomStands.buildableText(seed))).isNotNegative();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anyStandIsWrittenOverAnyOther(long seed) {
        var text = RandomStands.buildableText(seed);
        var stand = Presets.stand("stand.json", text);
        requireWritten(text, stand, RandomStands.buildable(seed + 1).readIn(stand.unit()));
        designs()
                .filter(preset -> preset.kind() == FileKind.STAND)
                .forEach(preset ->
                        requireWritten(text, stand, Presets.design(preset).readIn(stand.unit())));
    }

    @Test
    void anyWallIsWrittenOverAnyOtherUnlessAStandStandsBeforeIt() {
        var walls = Presets.shipped().list(FileKind.CLEAT_WALL);
        int written = 0;
        for (var one : walls) {
            for (var other : walls) {
                if (!other.text().contains("\"stand\": \"")) {
                    var wall = Presets.wall(one.name(), one.text());
                    requireWritten(
                            one.text(),
                            wall,
                            Presets.wall(other.name(), other.text()).readIn(wall.unit()));
                    written++;
                }
            }
        }
        assertThat(written).isGreaterThan(20);
    }

    /** How many changes rules propose; each is written. */
    private static int written(String text) {
        var design = design(text);
        var changes = new HashSet<Design>();
        findings(design)
                .forEach(finding -> finding.remedies()
                        .forEach(remedy -> remedy.change().apply(design).ifPresent(changes::add)));
        changes.forEach(change -> requireWritten(text, design, change));
        return changes.size();
    }

    private static List<Finding> findings(Design design) {
        try {
            if (design instanceof StandDesign stand) {
                return Checks.of(Stands.loaded(stand));
            }
            var wall = WallBuilder.build((WallDesign) design);
            return Checks.of(HungWall.of(wall, AssemblySolids.of(wall.assembly(), Fineness.FILE)));
        } catch (ImpossibleDesignException refusal) {
            return List.of(); // made too bad to be built
        }
    }

    private static void requireWritten(String text, Design before, Design after) {
        var edited = DesignEdit.of(text, before, after, Presets.shipped());
        var read = design(edited);
        if (!read.equals(after)) {
            assertThat(withoutNoise(read)).as(edited).isEqualTo(withoutNoise(after));
        }
        var old = RecordTree.of(before);
        var now = RecordTree.of(after);
        old.fieldNames().forEachRemaining(field -> {
            if (old.get(field).equals(now.get(field))) {
                assertThat(JsonEdit.get(edited, "/" + field)).isEqualTo(JsonEdit.get(text, "/" + field));
            }
        });
    }

    /** All that a design is, its numbers to a millionth of a millimetre: sums of doubles are no more exact. */
    private static String withoutNoise(Design design) {
        return NUMBER.matcher(design.toString())
                .replaceAll(number -> new BigDecimal(number.group())
                        .setScale(6, RoundingMode.HALF_UP)
                        .toString());
    }

    private static Design design(String text) {
        return DesignFiles.parse("design.json", text, Presets.shipped()).design();
    }
}
