package org.standwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import javafx.application.Platform;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Node;
import javafx.scene.paint.Color;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.standwright.viewer.scene.around.Around;
import org.standwright.viewer.scene.around.AroundNodes;
import org.standwright.viewer.scene.measure.FaceAt;
import org.standwright.viewer.scene.measure.Measure;
import org.standwright.viewer.scene.measure.MeasureNodes;

/** Draws what measuring and looking around make; the pictures stay in target/pictures to be looked at. */
@Tag("display")
class LooksTest {
    private static final Path PICTURES = Path.of("target", "pictures");

    private final Studio studio = new Studio();

    @BeforeAll
    static void startTheScreen() throws IOException {
        assumeTrue(
                !System.getProperty("os.name").startsWith("Linux") || System.getenv("DISPLAY") != null,
                "there is no screen (DISPLAY is not set): nothing is drawn");
        Files.createDirectories(PICTURES);
        var started = new CompletableFuture<Void>();
        try {
            Platform.startup(() -> started.complete(null));
            started.join();
        } catch (IllegalStateException e) {
            // another test has started it
            assertThat(e).hasMessageContaining("already");
        }
        Platform.setImplicitExit(false);
    }

    @Test
    void drawsAPickedFaceAndTheLineAcross() throws IOException {
        var planer = Sample.stand("planer-stand");
        var side = planer.part("worktop upper layer").inPlace();
        var top = FaceAt.of(
                side,
                IntStream.range(0, side.triangleCount())
                        .filter(triangle -> side.normal(triangle).z() == 1)
                        .findFirst()
                        .orElseThrow());
        var bottom = FaceAt.of(
                side,
                IntStream.range(0, side.triangleCount())
                        .filter(triangle -> side.normal(triangle).z() == -1)
                        .findFirst()
                        .orElseThrow());
        var nodes = new MeasureNodes(studio::paint);
        var drawn = new ArrayList<Node>();
        planer.solids().solids().forEach(placed -> drawn.add(studio.wood(placed)));
        drawn.addAll(List.of(nodes.face(top), nodes.line(Measure.between(bottom, top), 4)));

        var picture = Studio.picture(drawn, planer.furniture().assembly().box(), -32, 40);
        ImageIO.write(picture, "png", PICTURES.resolve("measure.png").toFile());

        assertThat(dots(picture, LooksTest::isBlue)).isGreaterThan(5000);
    }

    @Test
    void drawsAPersonAndTheWayOfTheBoardsBesideAStand() throws IOException {
        var planer = Sample.stand("planer-stand");
        var around = Around.of(planer.furniture());
        var nodes = new AroundNodes(studio::paint, styleClass -> new SimpleObjectProperty<>(Color.BLACK));
        var drawn = new ArrayList<Node>(List.of(nodes.floor(around.floor()), nodes.figure(around.figure())));
        planer.solids().solids().forEach(placed -> drawn.add(studio.wood(placed)));
        var feed = around.feed().orElseThrow();
        drawn.add(nodes.feed(feed));

        var picture = Studio.picture(drawn, feed.box().union(around.figure().box()), -32, 18);
        ImageIO.write(picture, "png", PICTURES.resolve("around-stand.png").toFile());

        assertThat(dots(picture, LooksTest::isGreen)).isGreaterThan(1000);
    }

    @Test
    void drawsAWallWithWhatIsOnItAndBeforeIt() throws IOException {
        var door = Sample.wall("door-wall");
        var around = Around.of(door.furniture());
        var nodes = new AroundNodes(studio::paint, styleClass -> new SimpleObjectProperty<>(Color.BLACK));
        var drawn = new ArrayList<Node>(List.of(nodes.floor(around.floor()), nodes.figure(around.figure())));
        door.solids().solids().forEach(placed -> drawn.add(studio.wood(placed)));
        var withoutWall =
                Studio.picture(List.copyOf(drawn), door.furniture().assembly().box(), -32, 18);
        around.walls().forEach(wall -> drawn.add(nodes.wall(wall)));

        var picture = Studio.picture(drawn, door.furniture().assembly().box(), -32, 18);
        ImageIO.write(picture, "png", PICTURES.resolve("around-wall.png").toFile());

        // the wall hides no strip: as much wood is seen with it as without, but for what obstacles stand before
        assertThat(dots(picture, LooksTest::isWood)).isGreaterThan(dots(withoutWall, LooksTest::isWood) * 8 / 10);
        assertThat(dots(picture, rgb -> rgb == dot(withoutWall, 0, 0)))
                .isLessThan(dots(withoutWall, rgb -> rgb == dot(withoutWall, 0, 0)) * 9 / 10);
    }

    private static int dot(BufferedImage picture, int x, int y) {
        return picture.getRGB(x, y);
    }

    private static long dots(BufferedImage picture, IntPredicate which) {
        int[] all = picture.getRGB(0, 0, picture.getWidth(), picture.getHeight(), null, 0, picture.getWidth());
        return IntStream.of(all).filter(which).count();
    }

    private static boolean isBlue(int rgb) {
        return blue(rgb) > 2 * red(rgb);
    }

    private static boolean isGreen(int rgb) {
        return green(rgb) > red(rgb) + 12 && green(rgb) > blue(rgb) + 12;
    }

    private static boolean isWood(int rgb) {
        return red(rgb) > blue(rgb) + 20;
    }

    private static int red(int rgb) {
        return rgb >> 16 & 0xff;
    }

    private static int green(int rgb) {
        return rgb >> 8 & 0xff;
    }

    private static int blue(int rgb) {
        return rgb & 0xff;
    }
}
