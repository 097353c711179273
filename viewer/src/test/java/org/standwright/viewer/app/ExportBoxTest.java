package org.standwright.viewer.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Optional;
import java.util.concurrent.Executor;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standwright.file.FileKind;
import org.standwright.make.Format;
import org.standwright.make.Product;
import org.standwright.viewer.MemoryScreen;
import org.standwright.viewer.work.Desk;
import org.standwright.viewer.work.Threads;

class ExportBoxTest {
    private static MemoryScreen screen;
    private static Desk desk;

    @TempDir
    private Path folder;

    private final AnsweringDialogs dialogs = new AnsweringDialogs();
    private ExportBox box;

    @BeforeAll
    static void workADesignOut() {
        screen = MemoryScreen.show(javafx.scene.layout.Pane::new);
        desk = screen.get(
                () -> new Desk(Threads.none(), Optional.empty(), Demo.preset(FileKind.STAND, "sander-stand"), fault -> {
                    throw new IllegalStateException(fault);
                }));
    }

    private void show(Executor worker) {
        screen.run(() -> {
            box = new ExportBox(desk, dialogs, worker);
            screen.scene().setRoot(box);
        });
    }

    @Test
    void writesTheVeryFilesThatTheCommandLineWrites() throws IOException {
        show(work -> new Thread(work).start());
        var target = folder.resolve("files");

        screen.run(() -> box.writeTo(target));
        screen.await(() -> !box.isRunning());

        assertThat(screen.get(box::said)).contains("files are in");
        var design = desk.builtProperty().get().orElseThrow().furniture().design();
        for (var file : Format.files(Format.usual(), Product.of(design))) {
            var bytes = new ByteArrayOutputStream();
            file.content().writeTo(bytes);
            assertThat(target.resolve(file.name())).hasBinaryContent(bytes.toByteArray());
        }
    }

    @Test
    void changesNothingWhenItIsCancelled() {
        var waiting = new ArrayDeque<Runnable>();
        show(waiting::add);
        var target = folder.resolve("files");

        screen.run(() -> box.writeTo(target));
        screen.run(box::cancel);
        waiting.remove().run();
        screen.await(() -> !box.isRunning());

        assertThat(target).doesNotExist();
        assertThat(screen.get(box::said)).isEqualTo("Cancelled. The folder is as it was, or whole.");
    }

    @Test
    void leavesAFolderOfOthersAlone() throws IOException {
        show(work -> new Thread(work).start());
        Files.writeString(folder.resolve("letter.txt"), "Dear");

        screen.run(() -> box.writeTo(folder));
        screen.await(() -> !box.isRunning());

        assertThat(screen.get(box::said)).startsWith("Nothing was written: ");
        assertThat(new ArrayList<>(Files.list(folder).toList())).containsExactly(folder.resolve("letter.txt"));
        assertThat(dialogs.said).isEmpty();
    }
}
