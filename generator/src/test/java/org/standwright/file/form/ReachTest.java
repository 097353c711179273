package org.standwright.file.form;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standwright.file.FileKind;
import org.standwright.file.PresetLibrary;
import org.standwright.file.SchemaPlace;

/** Adding what is left out and choosing kinds leads to every field that the schema has for a piece of furniture. */
class ReachTest {
    private static final int DEEPEST = 3;
    private static final PresetLibrary LIBRARY = PresetLibrary.of(Path.of("no-such-folder"), Optional.empty());

    private final Presets presets = new Presets(LIBRARY);
    private final Set<String> reached = new TreeSet<>();
    private final Set<String> explored = new HashSet<>();

    @ParameterizedTest
    @CsvSource({"stand, table-saw-stand", "cleat-wall, door-wall"})
    void leadsToEveryField(String kind, String preset) {
        var text = LIBRARY.find(FileKind.of(kind).orElseThrow(), preset)
                .orElseThrow()
                .text();
        explore(text, "", 0);

        var known = new TreeSet<String>();
        collect(SchemaPlace.ofFile().schema().at("/$defs/" + kind), known, new HashSet<>());
        assertThat(known).hasSizeGreaterThan(100);
        assertThat(reached).containsAll(known);
    }

    /** All rows around one path, and what they become when groups are added and kinds are chosen. */
    private void explore(String text, String path, int depth) {
        var file = Form.of(text, presets);
        FormTest.everyRow(path.isEmpty() ? file : FormTest.along(file, path)).forEach(row -> {
            reached.add(row.name());
            if (depth < DEEPEST) {
                changes(row)
                        .forEach(change -> explore(
                                FormTest.applied(text, change),
                                row.isChooser() ? row.parent().orElseThrow().path() : row.path(),
                                depth + 1));
            }
        });
    }

    private Stream<Change> changes(Row row) {
        if (!explored.add(row.path().replaceAll("\\d+", "") + row.parent().flatMap(Row::json))) {
            return Stream.of();
        }
        boolean isFileKind = row.path().equals("/kind");
        if (row.isChooser() && !isFileKind) {
            return row.choices().stream().map(choice -> row.choose(choice.json()));
        }
        if (row.isList() && row.members().isEmpty()) {
            return Stream.of(row.set("[" + row.newEntry() + "]"));
        }
        return row.isList()
                ? row.members().stream().map(member -> row.set("[" + row.newEntry(member) + "]"))
                : Stream.of(row).filter(Row::mustBeAdded).map(Row::add);
    }

    private static void collect(JsonNode place, Set<String> names, Set<JsonNode> seen) {
        if (!seen.add(place)) {
            return;
        }
        place.path("properties").fieldNames().forEachRemaining(names::add);
        place.path("properties").forEach(field -> collect(field, names, seen));
        place.path("allOf").forEach(member -> collect(member, names, seen));
        Stream.of("then", "else", "items").map(place::path).forEach(inside -> collect(inside, names, seen));
        if (place.has("$ref")) {
            collect(SchemaPlace.ofFile().schema().at(place.get("$ref").asText().substring(1)), names, seen);
        }
    }
}
