package org.standwright.viewer.app;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.kordamp.ikonli.feather.Feather;
import org.standwright.unit.Units;
import org.standwright.viewer.work.Desk;

/** All actions of the window, menu by menu. */
final class Commands {
    private static final String FILE = "File";
    private static final String EDIT = "Edit";
    private static final String VIEW = "View";
    private static final String HELP = "Help";

    private final Desk desk;
    private final FileWork files;
    private final Window window;

    Commands(Desk desk, FileWork files, Window window) {
        this.desk = desk;
        this.files = files;
        this.window = window;
    }

    List<Action> all() {
        return Stream.of(file(), edit(), view(), help()).flatMap(List::stream).toList();
    }

    private List<Action> file() {
        return List.of(
                Action.of(FILE, "Begin with …", window::begin)
                        .keys("Shortcut+N")
                        .icon(Feather.FILE_PLUS),
                Action.of(FILE, "Open …", files::open).keys("Shortcut+O").icon(Feather.FOLDER),
                Action.of(FILE, "Save", files::save).keys("Shortcut+S").icon(Feather.SAVE),
                Action.of(FILE, "Save as …", files::saveAs).keys("Shortcut+Shift+S"),
                Action.of(FILE, "Write files …", window::writeFiles)
                        .keys("Shortcut+E")
                        .icon(Feather.DOWNLOAD),
                Action.of(FILE, "Print the packet …", window::print)
                        .keys("Shortcut+P")
                        .icon(Feather.PRINTER),
                Action.of(FILE, "Save a picture of the window …", window::savePicture),
                Action.of(FILE, "Close", window::requestClose).keys("Shortcut+Q"));
    }

    private List<Action> edit() {
        var history = desk.historyProperty();
        return List.of(
                Action.of(EDIT, "Undo", window::undo)
                        .keys("Shortcut+Z")
                        .icon(Feather.CORNER_UP_LEFT)
                        .offWhile(history.map(now -> now.undoes().isEmpty())),
                Action.of(EDIT, "Redo", desk::redo)
                        .keys("Shortcut+Shift+Z")
                        .icon(Feather.CORNER_UP_RIGHT)
                        .offWhile(history.map(now -> now.redoes().isEmpty())));
    }

    private List<Action> view() {
        var names = window.views().names();
        var panes = IntStream.range(0, names.size())
                .mapToObj(i -> Action.of(
                                VIEW, names.get(i), () -> window.views().show(names.get(i)))
                        .keys("Alt+" + (i + 1)));
        var look = window.appearance();
        var others = Stream.of(
                Action.of(VIEW, "Form or text", window::turnEditor).keys("Shortcut+T"),
                Action.of(VIEW, "Light or dark", look::turn).keys("Shortcut+L").icon(Feather.MOON),
                Action.of(VIEW, "Larger text", look::larger)
                        .keys("Shortcut+Plus")
                        .icon(Feather.ZOOM_IN),
                Action.of(VIEW, "Smaller text", look::smaller)
                        .keys("Shortcut+Minus")
                        .icon(Feather.ZOOM_OUT),
                Action.of(VIEW, "Millimetres or inches", this::turnUnits)
                        .keys("Shortcut+U")
                        .icon(Feather.REPEAT));
        return Stream.concat(panes, others).toList();
    }

    private List<Action> help() {
        return List.of(Action.of(HELP, "Keys", window::showKeys).keys("F1").icon(Feather.HELP_CIRCLE));
    }

    /** Reads back in inches what is in millimetres, and the other way round; the file stays as it is. */
    private void turnUnits() {
        var now = desk.shownUnits().getValue();
        desk.unitsProperty().set(java.util.Optional.of(now == Units.MM ? Units.INCH : Units.MM));
    }
}
