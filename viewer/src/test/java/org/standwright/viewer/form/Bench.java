package org.standwright.viewer.form;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.standwright.file.DesignFiles;
import org.standwright.file.FileKind;
import org.standwright.file.PresetLibrary;
import org.standwright.file.form.Presets;
import org.standwright.file.form.Row;
import org.standwright.file.text.DesignFileException;
import org.standwright.file.text.FileProblem;

/** A form at work: each of its edits makes a new text, which it is shown with what is wrong in it. */
final class Bench {
    static final PresetLibrary LIBRARY = PresetLibrary.of(Path.of("no-such-folder"), Optional.empty());

    final List<String> steps = new ArrayList<>();
    final FormModel model = new FormModel(new Presets(LIBRARY), new TextEdits(this::text, (what, text) -> {
        steps.add(what);
        show(text);
    }));
    private String text;

    Bench(String text) {
        show(text);
    }

    static Bench of(FileKind kind, String preset) {
        return new Bench(LIBRARY.find(kind, preset).orElseThrow().text());
    }

    void show(String now) {
        text = now;
        model.show(now, problems(now));
    }

    String text() {
        return text;
    }

    /** The row of a value. */
    Row row(String path) {
        var row = model.fileProperty().get().orElseThrow();
        for (var name : path.substring(1).split("/")) {
            row = row.row(name).orElseThrow(() -> new AssertionError(path));
        }
        return row;
    }

    static Stream<Row> rows(Row around) {
        return Stream.concat(Stream.of(around), around.rows().stream().flatMap(Bench::rows));
    }

    private static List<FileProblem> problems(String text) {
        try {
            DesignFiles.parse("design.json", text, LIBRARY);
            return List.of();
        } catch (DesignFileException e) {
            return e.problems();
        }
    }
}
