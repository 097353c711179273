package org.standwright.viewer.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standwright.file.FileKind;
import org.standwright.file.PresetLibrary;
import org.standwright.file.form.Presets;
import org.standwright.file.form.Row;
import org.standwright.viewer.form.FormModel;
import org.standwright.viewer.work.Desk;
import org.standwright.viewer.work.Opened;
import org.standwright.viewer.work.Stage;
import org.standwright.viewer.work.Threads;

/** A robot types, chooses, adds, removes and moves in the form without sense or aim. */
class RobotTest {
    private static final PresetLibrary PRESETS = PresetLibrary.of(Path.of(""), Optional.empty());
    /** Reads and builds at once, and leaves checks and plans out. */
    private static final Threads ONLY_FAST = new Threads(Runnable::run, Runnable::run, work -> {});

    private final List<Throwable> faults = new ArrayList<>();

    @ParameterizedTest
    @CsvSource({"STAND, planer-stand, 1, 500", "CLEAT_WALL, bench-wall, 2, 100"})
    void canAllBeUndone(FileKind kind, String preset, long seed, int edits) {
        canBeUndone(kind, preset, seed, edits);
    }

    @Tag("nightly")
    @ParameterizedTest
    @CsvSource({
        "STAND, planer-stand, 11, 500",
        "STAND, mitre-saw-stand, 12, 500",
        "STAND, table-saw-stand, 13, 500",
        "STAND, bandsaw-stand, 14, 500",
        "CLEAT_WALL, bench-wall, 15, 500",
        "CLEAT_WALL, corner-walls, 16, 500"
    })
    void canBeUndone(FileKind kind, String preset, long seed, int edits) {
        var text = PRESETS.find(kind, preset).orElseThrow().text();
        var desk = new Desk(ONLY_FAST, Optional.empty(), Opened.fresh(preset, text), faults::add);
        var form = new FormModel(new Presets(PRESETS), new DeskEdits(desk));
        var dice = new SplittableRandom(seed);
        var made = new ArrayList<String>();

        int built = 0;
        for (int i = 0; i < edits; i++) {
            form.show(
                    desk.documentProperty().get().text(),
                    desk.problemsProperty().get());
            if (form.unreadableProperty().get().isEmpty()) {
                step(form, desk, dice);
            } else {
                desk.undo(); // there are no rows to do anything in
            }
            made.add(desk.documentProperty().get().text());
            if (desk.stageProperty().get() != Stage.REFUSED) {
                built++;
            } else if (dice.nextInt(3) > 0) {
                desk.undo();
            }
        }

        assertThat(faults).as("seed %d", seed).isEmpty();
        assertThat(built).as("designs that could be built").isGreaterThan(edits / 10);
        assertThat(Set.copyOf(made)).as("different texts").hasSizeGreaterThan(edits / 3);
        while (desk.historyProperty().get().undoes().isPresent()) {
            desk.undo();
        }
        assertThat(desk.documentProperty().get().text()).isEqualTo(text);
        assertThat(desk.changedProperty().get()).isFalse();
    }

    /** One try at a row; it may change nothing. */
    private static void step(FormModel form, Desk desk, SplittableRandom dice) {
        var rows = all(form.fileProperty().get().orElseThrow()).skip(1).toList();
        var row = rows.get(dice.nextInt(rows.size()));
        switch (dice.nextInt(8)) {
            case 0 -> form.clear(row);
            case 1 -> addTo(form, row);
            case 2 -> moveOrCopy(form, row, dice);
            case 3 -> desk.edit("Type", smudged(desk.documentProperty().get().text(), dice));
            default -> change(form, row, dice);
        }
    }

    private static Stream<Row> all(Row row) {
        return Stream.concat(Stream.of(row), row.rows().stream().flatMap(RobotTest::all));
    }

    private static void addTo(FormModel form, Row row) {
        if (row.isList() && FormModel.hasRoom(row)) {
            form.addEntry(row, row.members().stream().findFirst());
        } else if (row.mustBeAdded()) {
            form.add(row);
        }
    }

    private static void moveOrCopy(FormModel form, Row row, SplittableRandom dice) {
        if (row.isEntry()) {
            if (dice.nextBoolean()) {
                form.move(row, dice.nextBoolean() ? 1 : -1);
            } else if (FormModel.hasRoom(row.parent().orElseThrow())) {
                form.duplicate(row);
            }
        }
    }

    private static void change(FormModel form, Row row, SplittableRandom dice) {
        var choices = row.choices();
        var names = row.presetNames();
        if (!choices.isEmpty()) {
            form.choose(row, choices.get(dice.nextInt(choices.size())).json());
        } else if (!names.isEmpty()) {
            form.type(row, names.get(dice.nextInt(names.size())));
        } else if (!row.input().holdsRows()) {
            form.type(row, typed(dice));
        }
    }

    private static String typed(SplittableRandom dice) {
        return switch (dice.nextInt(8)) {
            case 0 -> "nonsense \"quoted\"";
            case 1 -> "-5";
            case 2 -> dice.nextInt(1, 60) + " 1/2 in";
            case 3 -> String.valueOf(dice.nextInt(1, 4));
            default -> dice.nextInt(1, 1200) + " mm";
        };
    }

    /** The text with one character more or less somewhere. */
    private static String smudged(String text, SplittableRandom dice) {
        int at = dice.nextInt(text.length());
        return dice.nextBoolean()
                ? text.substring(0, at) + "{},:\"x7".charAt(dice.nextInt(7)) + text.substring(at)
                : text.substring(0, at) + text.substring(at + 1);
    }
}
