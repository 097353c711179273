package org.standwright.viewer.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import javafx.application.Platform;
import javax.imageio.ImageIO;
import org.assertj.core.api.Condition;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standwright.viewer.RealScreen;
import org.standwright.viewer.work.Opened;
import org.standwright.viewer.work.Threads;

/** Really opens the window, where there is a screen to open it on. */
@Tag("display")
class WindowTest {
    @TempDir
    private Path folder;

    @BeforeAll
    static void startTheScreen() {
        RealScreen.start();
    }

    @Test
    void drawsTheStandInManyShadesOfWood() throws IOException {
        var file = folder.resolve("stand.png");
        int exitCode = exitCode(done -> {
            var window = window(Demo.opened());
            window.show(closed -> {});
            window.picture(file, code -> {
                window.close();
                done.accept(code);
            });
        });

        assertThat(exitCode).isZero();
        var wood = wood(ImageIO.read(file.toFile()));
        assertThat(wood).hasSizeGreaterThan(25_000);
        assertThat(wood).is(new Condition<>(colours -> Set.copyOf(colours).size() > 30, "more than 30 shades"));
    }

    @Test
    void makesNoPictureOfADesignThatCannotBeRead() throws IOException {
        var broken = Files.writeString(folder.resolve("broken.json"), "{");
        var file = folder.resolve("stand.png");

        assertThat(exitCode(done -> window(Opened.fromFile(broken, "{")).picture(file, done)))
                .isOne();
        assertThat(file).doesNotExist();
    }

    @Test
    void endsWhenTheWindowIsClosed() {
        assertThat(exitCode(done -> {
                    var window = window(Demo.opened());
                    window.show(done);
                    window.close();
                }))
                .isZero();
    }

    private Window window(Opened first) {
        return new Window(
                new Setup(first, Optional.empty(), folder, Threads.ofApplication(), Runnable::run, SystemDialogs::new));
    }

    private static int exitCode(Consumer<IntConsumer> use) {
        var exitCode = new CompletableFuture<Integer>();
        Platform.runLater(() -> use.accept(exitCode::complete));
        return exitCode.join();
    }

    /** All dots that are clearly more red than blue, as neither backdrop nor machine is. */
    private static List<Integer> wood(BufferedImage picture) {
        var dots = picture.getRGB(0, 0, picture.getWidth(), picture.getHeight(), null, 0, picture.getWidth());
        return IntStream.of(dots)
                .filter(dot -> (dot >> 16 & 0xff) > (dot & 0xff) + 20)
                .boxed()
                .toList();
    }
}
