package org.standwright.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Between them, the complete stands use every choice that a design file has; the table says which uses which. */
class PresetOptionsTest {
    private static final PresetLibrary LIBRARY = PresetLibrary.of(Path.of("."), Optional.empty());

    @Test
    void everyOptionIsUsedByOneStandOrMore() throws IOException {
        var unused = table().entrySet().stream()
                .filter(row -> row.getValue().isEmpty())
                .map(Map.Entry::getKey)
                .toList();

        assertThat(unused).as("options that no preset stand uses").isEmpty();
    }

    @Test
    void theTableAmongThePresetsIsThisOne() throws IOException {
        var written = Files.readString(Path.of("..", "presets", "README.md"));

        assertThat(written).contains(markdown());
    }

    @Test
    void everyChoiceOfAStandIsAnOption() {
        assertThat(StandOptions.all())
                .contains(
                        "stand / layout = mirrored",
                        "content = door",
                        "content door / hung = pair",
                        "stand / place / turn = 90")
                .doesNotContain("stand / note", "stand / machine / base");
    }

    private static Map<String, List<String>> table() throws IOException {
        var table = new LinkedHashMap<String, List<String>>();
        StandOptions.all().forEach(option -> table.put(option, new ArrayList<>()));
        for (var stand : LIBRARY.list(FileKind.STAND)) {
            for (var option : new TreeSet<>(StandOptions.usedBy(tree(stand)))) {
                table.get(option).add(stand.name());
            }
        }
        return table;
    }

    private static JsonNode tree(Preset stand) throws IOException {
        return new ObjectMapper().readTree(LIBRARY.show("stand/" + stand.name()));
    }

    /** As it stands in the README of the presets. */
    private static String markdown() throws IOException {
        var lines = new StringBuilder("| option | used by |\n|---|---|\n");
        table().forEach((option, stands) -> lines.append("| ")
                .append(option)
                .append(" | ")
                .append(String.join(", ", stands))
                .append(" |\n"));
        return lines.toString();
    }
}
