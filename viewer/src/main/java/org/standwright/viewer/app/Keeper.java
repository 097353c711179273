package org.standwright.viewer.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javafx.animation.PauseTransition;
import javafx.util.Duration;
import org.standwright.viewer.document.Remembered;
import org.standwright.viewer.document.Unsaved;
import org.standwright.viewer.work.Desk;
import org.standwright.viewer.work.Opened;

/**
 * Keeps what is not saved in the state folder, in a file of this process, so that it outlives a crash, a kill or a power
 * cut. What a process that is gone has left there is taken up by the next one.
 */
final class Keeper {
    private static final Duration REST = Duration.millis(700);
    private static final Pattern FILE = Pattern.compile("unsaved-(\\d+)\\.json");

    private final Desk desk;
    private final Remembered<Unsaved> memory;
    private final Executor disk;
    private final PauseTransition rest = new PauseTransition(REST);

    /** @param disk where files are written */
    Keeper(Desk desk, Path stateFolder, Executor disk) {
        this.desk = desk;
        this.disk = disk;
        this.memory = at(own(stateFolder));
        rest.setOnFinished(done -> keep());
        desk.historyProperty().subscribe(() -> rest.playFromStart());
        desk.changedProperty().subscribe(() -> rest.playFromStart());
    }

    /** Writes what there is to lose; forgets it when there is nothing. */
    void keep() {
        rest.stop();
        var present = desk.historyProperty().get().present();
        var unsaved = Unsaved.of(desk.fileProperty().get(), present.what(), present.text(), desk.savedText());
        boolean changed = desk.changedProperty().get();
        disk.execute(() -> write(changed, unsaved));
    }

    /** When the window was closed and everything is saved or not wanted. */
    void forget() {
        rest.stop();
        disk.execute(() -> quietly(memory::forget));
    }

    private void write(boolean changed, Unsaved unsaved) {
        quietly(changed ? () -> memory.keep(unsaved) : memory::forget);
    }

    /** A full disk must not stop the work in the window. */
    private static void quietly(DiskStep step) {
        try {
            step.run();
        } catch (IOException failure) {
            System.err.println("Unsaved work could not be kept: " + failure);
        }
    }

    @FunctionalInterface
    private interface DiskStep {
        void run() throws IOException;
    }

    /** What a process that is gone has left, the latest; it is kept on under this process's name. */
    static Optional<Opened> left(Path stateFolder) {
        var files = leftFiles(stateFolder);
        return files.stream()
                .findFirst()
                .flatMap(latest -> at(latest).recall().map(unsaved -> {
                    quietly(() ->
                            Files.move(latest, own(stateFolder))); // never nowhere: the next kill may come at once
                    return new Opened(unsaved.path(), "Take up unsaved work", unsaved.text(), unsaved.saved());
                }));
    }

    private static List<Path> leftFiles(Path stateFolder) {
        if (!Files.isDirectory(stateFolder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(stateFolder)) {
            return files.filter(Keeper::isLeft)
                    .sorted(Comparator.comparingLong(
                                    (Path file) -> file.toFile().lastModified())
                            .reversed())
                    .toList();
        } catch (IOException unreadable) {
            return List.of();
        }
    }

    private static boolean isLeft(Path file) {
        var name = FILE.matcher(file.getFileName().toString());
        return name.matches()
                && ProcessHandle.of(Long.parseLong(name.group(1)))
                        .filter(ProcessHandle::isAlive)
                        .isEmpty();
    }

    private static Path own(Path stateFolder) {
        return stateFolder.resolve("unsaved-" + ProcessHandle.current().pid() + ".json");
    }

    private static Remembered<Unsaved> at(Path file) {
        return new Remembered<>(file, Unsaved.class);
    }
}
