package org.standwright.viewer.scene.tools;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import atlantafx.base.theme.PrimerLight;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import javafx.application.Application;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.image.Image;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.paint.Color;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.standwright.file.FileKind;
import org.standwright.file.PresetLibrary;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;
import org.standwright.viewer.RealScreen;
import org.standwright.viewer.scene.AssemblyView;
import org.standwright.viewer.scene.Orbit;
import org.standwright.viewer.scene.SceneModel;
import org.standwright.viewer.work.Desk;
import org.standwright.viewer.work.Opened;
import org.standwright.viewer.work.Threads;

/** The tools at work in a real window. */
@Tag("display")
class ScenePaneTest {
    private static final String LEFT = "drawer 1.1 left side";
    private static final String RIGHT = "drawer 1.1 right side";

    private final List<WritableImage> saved = new ArrayList<>();
    private Stage stage;
    private ScenePane pane;
    private AssemblyView view;
    private SceneModel model;

    @BeforeAll
    static void startTheScreen() {
        RealScreen.start();
        assumeTrue(ScenePane.canShow3d(), "this screen's driver cannot draw in 3D");
    }

    private void open(FileKind kind, String preset) throws InterruptedException {
        RealScreen.run(() -> {
            Application.setUserAgentStylesheet(new PrimerLight().getUserAgentStylesheet());
            var text = PresetLibrary.of(Path.of(""), Optional.empty())
                    .find(kind, preset)
                    .orElseThrow()
                    .text();
            var desk = new Desk(
                    new Threads(Runnable::run, Runnable::run, slow -> {}),
                    Optional.empty(),
                    Opened.fresh(preset, text),
                    fault -> {
                        throw new AssertionError(fault);
                    });
            pane = new ScenePane(desk, saved::add);
            model = pane.model();
            stage = new Stage();
            stage.setX(0);
            stage.setY(0);
            stage.setScene(new Scene(pane, 800, 640));
            stage.show();
            view = (AssemblyView) pane.lookup(".assembly-view");
        });
        assertThat(RealScreen.becomes(() -> view.getWidth() == 800 && stage.isFocused()))
                .isTrue();
    }

    @AfterEach
    void close() {
        RealScreen.run(stage::close);
    }

    @Test
    void showsCutFacesInTheirColourUntilItIsWholeAgain() throws InterruptedException {
        open(FileKind.STAND, "planer-stand");
        assertThat(RealScreen.<Long>get(() -> count(ScenePaneTest::isCut))).isZero();

        press(KeyCode.X);
        assertThat(RealScreen.becomes(() -> count(ScenePaneTest::isCut) > 2_000))
                .isTrue();

        press(KeyCode.X);
        assertThat(RealScreen.becomes(() -> count(ScenePaneTest::isCut) == 0)).isTrue();
    }

    @Test
    void hidesWhatIsHiddenWhileItIsCutToo() throws InterruptedException {
        open(FileKind.STAND, "planer-stand");
        press(KeyCode.X);
        assertThat(RealScreen.becomes(() -> count(ScenePaneTest::isCut) > 2_000))
                .isTrue();

        RealScreen.run(() -> model.isolated().add("left side"));

        assertThat(RealScreen.becomes(() -> count(ScenePaneTest::isCut) < 1_000))
                .isTrue();
        assertThat(RealScreen.get(() -> count(ScenePaneTest::isCut))).isPositive();
    }

    @Test
    void measuresTheInsideOfADrawerWithTwoClicks() throws InterruptedException {
        open(FileKind.STAND, "planer-stand");
        RealScreen.run(() -> model.isolated().addAll(List.of(LEFT, RIGHT)));
        press(KeyCode.M);

        clickInside(LEFT, 1, -32);
        assertThat(RealScreen.becomes(() -> reading().equals("Click a second face.")))
                .as(reading())
                .isTrue();
        clickInside(RIGHT, 0, 32);

        assertThat(RealScreen.becomes(() -> reading().equals("350 mm between them, left to right")))
                .as(reading())
                .isTrue();
        assertThat(model.pickedProperty().get()).isEmpty();
        assertThat(RealScreen.get(() -> count(ScenePaneTest::isBlue))).isGreaterThan(500);
        press(KeyCode.ESCAPE);
        assertThat(RealScreen.get(() -> count(ScenePaneTest::isBlue))).isLessThan(100);
    }

    @Test
    void showsTheWallThatCleatsHangOn() throws InterruptedException {
        open(FileKind.CLEAT_WALL, "door-wall");
        assertThat(RealScreen.becomes(() -> count(ScenePaneTest::isPlaster) > 50_000))
                .isTrue();

        press(KeyCode.W);

        assertThat(RealScreen.get(() -> count(ScenePaneTest::isPlaster))).isLessThan(20_000);
    }

    @Test
    void seesAsMuchWithSurroundingsAsWithout() throws InterruptedException {
        open(FileKind.CLEAT_WALL, "door-wall");
        assertThat(RealScreen.becomes(() -> count(ScenePaneTest::isPlaster) > 50_000))
                .isTrue();
        var before = model.viewpoint().orbitProperty().get();

        RealScreen.run(model::fit);

        assertThat(model.viewpoint().orbitProperty().get()).isEqualTo(before);
    }

    @Test
    void takesPicturesTwiceAsLargeAndLooksAsBefore() throws InterruptedException {
        open(FileKind.STAND, "planer-stand");
        var orbit = model.viewpoint().orbitProperty().get();
        double height = view.getHeight();
        long wood = RealScreen.get(() -> count(ScenePaneTest::isWood));

        press(KeyCode.C);

        assertThat(saved).hasSize(1);
        assertThat(saved.get(0).getWidth()).isEqualTo(1600);
        assertThat(saved.get(0).getHeight()).isEqualTo(2 * height);
        assertThat(count(saved.get(0), ScenePaneTest::isWood)).isBetween((long) (3.8 * wood), (long) (4.2 * wood));
        assertThat(model.viewpoint().orbitProperty().get()).isEqualTo(orbit);
        assertThat(RealScreen.becomes(() -> view.getWidth() == 800 && view.getHeight() == height))
                .isTrue();
    }

    @Test
    void allButtonsFitIntoTwoRows() throws InterruptedException {
        open(FileKind.STAND, "planer-stand");

        assertThat(RealScreen.get(() -> pane.lookup(".tools").getLayoutBounds().getHeight()))
                .isLessThan(90);
    }

    private void clickInside(String label, double side, double azimuth) throws InterruptedException {
        var board = model.solid(label).orElseThrow();
        Box3 box = board.part().box();
        var size = box.size();
        var at = box.min().plus(new Vec3(side * size.x(), 0.5 * size.y(), 0.8 * size.z()));
        RealScreen.run(() -> {
            model.viewpoint().orbitProperty().set(new Orbit(at, azimuth, 30, 900));
            var point = model.viewpoint().sight().getValue().project(at);
            var robot = new Robot();
            robot.mouseMove(view.localToScreen(point.x(), point.y()));
        });
        Thread.sleep(100);
        RealScreen.run(() -> new Robot().mouseClick(MouseButton.PRIMARY));
    }

    private String reading() {
        return ((Label) pane.lookup(".reading")).getText();
    }

    private void press(KeyCode key) {
        RealScreen.run(() ->
                view.fireEvent(new KeyEvent(KeyEvent.KEY_PRESSED, "", key.getName(), key, false, false, false, false)));
    }

    /** On the screen's thread: dots of the view as it is now. */
    private long count(Predicate<Color> wanted) {
        return count(view.snapshot((int) view.getWidth(), (int) view.getHeight()), wanted);
    }

    private static long count(Image picture, Predicate<Color> wanted) {
        var reader = picture.getPixelReader();
        return IntStream.range(0, (int) picture.getHeight())
                .mapToLong(y -> IntStream.range(0, (int) picture.getWidth())
                        .filter(x -> wanted.test(reader.getColor(x, y)))
                        .count())
                .sum();
    }

    private static boolean isCut(Color colour) {
        return colour.getRed() > 1.7 * colour.getGreen() && colour.getRed() > 0.4;
    }

    private static boolean isWood(Color colour) {
        return colour.getRed() > colour.getBlue() + 0.1;
    }

    private static boolean isBlue(Color colour) {
        return colour.getBlue() > colour.getRed() + 0.3;
    }

    /** Light, and hardly yellow. */
    private static boolean isPlaster(Color colour) {
        double yellow = colour.getRed() - colour.getBlue();
        return colour.getBrightness() > 0.6 && yellow > 0.015 && yellow < 0.08;
    }
}
