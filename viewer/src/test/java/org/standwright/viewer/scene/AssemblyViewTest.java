package org.standwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import atlantafx.base.theme.PrimerLight;
import java.util.Comparator;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import javafx.application.Application;
import javafx.application.ConditionalFeature;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.image.Image;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.paint.Color;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standwright.assembly.Block;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec2;
import org.standwright.geom.Vec3;
import org.standwright.viewer.RealScreen;

/** Draws a stand in 3D and works on it with the mouse. */
@Tag("display")
class AssemblyViewTest {
    private static final int WIDTH = 900;
    private static final int HEIGHT = 650;
    private static final String FRONT = "drawer 1.4 front";
    private static Scenery planer;

    private Stage stage;
    private AssemblyView view;
    private SceneModel model;

    @BeforeAll
    static void startTheScreen() {
        RealScreen.start();
        assumeTrue(Platform.isSupported(ConditionalFeature.SCENE3D), "this screen's driver cannot draw in 3D");
        planer = Presets.scenery(Presets.stand("planer-stand"));
    }

    @BeforeEach
    void showAStand() throws InterruptedException {
        RealScreen.run(() -> {
            Application.setUserAgentStylesheet(new PrimerLight().getUserAgentStylesheet());
            view = new AssemblyView();
            model = view.model();
            stage = new Stage();
            stage.setX(0);
            stage.setY(0);
            stage.setScene(new Scene(view, WIDTH, HEIGHT));
            stage.show();
            view.show(planer);
        });
        assertThat(RealScreen.becomes(() -> view.getWidth() == WIDTH && stage.isFocused()))
                .isTrue();
    }

    @AfterEach
    void close() {
        RealScreen.run(stage::close);
    }

    @Test
    void drawsWoodIronAndGlassOnAnEmptyBackdrop() {
        var picture = picture();

        assertThat(count(picture, AssemblyViewTest::isWood)).isGreaterThan(60_000);
        assertThat(count(picture, AssemblyViewTest::isBlue)).isGreaterThan(20_000);
        assertThat(count(picture, colour -> colour.getBrightness() < 0.4)).isGreaterThan(3_000); // casters and edges
        assertThat(picture.getPixelReader().getColor(0, 0).getBrightness()).isGreaterThan(0.95);
    }

    @ParameterizedTest
    @EnumSource
    void picksThePartUnderThePointer(Lens lens) throws InterruptedException {
        RealScreen.run(() -> model.viewpoint().lensProperty().set(lens));
        for (var label : new String[] {FRONT, "drawer 2.6 front", "right side", "worktop upper layer"}) {
            clickOn(inPicture(seen(box(label))), 1);

            assertThat(RealScreen.becomes(() -> picked().equals(Optional.of(label))))
                    .as(label + ", but picked is " + picked())
                    .isTrue();
        }
    }

    @Test
    void picksNothingOnTheBackdrop() throws InterruptedException {
        RealScreen.run(() -> model.pickedProperty().set(Optional.of(FRONT)));

        clickOn(new Vec2(5, 5), 1);

        assertThat(RealScreen.becomes(() -> picked().isEmpty())).isTrue();
    }

    @Test
    void marksWhatIsPickedFromOutside() {
        var at = inPicture(seen(box(FRONT)));
        assertThat(isWood(colour(picture(), at))).isTrue();

        RealScreen.run(() -> model.pickedProperty().set(Optional.of(FRONT)));

        assertThat(isBlue(colour(picture(), at))).isTrue();
    }

    @Test
    void showsWhatIsBehindThePartThatIsHidden() {
        var at = inPicture(seen(box("right side")));
        RealScreen.run(() -> model.pickedProperty().set(Optional.of("right side")));
        var before = colour(picture(), at);

        press(KeyCode.H);

        assertThat(colour(picture(), at)).isNotEqualTo(before);
        assertThat(RealScreen.get(() -> model.hidden().contains("right side"))).isTrue();
    }

    @Test
    void letsLightThroughAllButThePicked() {
        RealScreen.run(() -> model.pickedProperty().set(Optional.of(FRONT)));
        var front = inPicture(seen(box(FRONT)));
        var caster = inPicture(seen(frontCaster()));
        var before = picture();
        assertThat(colour(before, caster).getBrightness()).isLessThan(0.5);

        press(KeyCode.T);

        var through = picture();
        assertThat(colour(through, front)).isEqualTo(colour(before, front));
        assertThat(colour(through, caster).getBrightness()).isGreaterThan(0.6);
    }

    @Test
    void picksTheMachineWhereNothingIsBehindIt() throws InterruptedException {
        var machine = planer.assembly().blocks().stream()
                .filter(block ->
                        block.kind() == Block.Kind.MACHINE && !block.label().startsWith("base"))
                .findFirst()
                .orElseThrow();
        var corner = machine.box().max();

        clickOn(inPicture(new Vec3(corner.x() - 30, machine.box().min().y(), corner.z() - 30)), 1);

        assertThat(RealScreen.becomes(() -> picked().equals(Optional.of(machine.label()))))
                .isTrue();
    }

    @Test
    void looksTheSameAfterItWasDrawnRoughly() {
        var before = picture();
        RealScreen.run(() -> {
            view.drawRoughly(true);
            view.drawRoughly(false);
        });

        var after = picture();
        assertThat(count(after, AssemblyViewTest::isWood)).isEqualTo(count(before, AssemblyViewTest::isWood));
    }

    @Test
    void drawsThingsApart() {
        RealScreen.run(() -> model.viewpoint().zoom(0.5, planer.assembly().box().centre()));
        double before = spread(picture());

        RealScreen.run(() -> model.explosionProperty().set(0.5));

        assertThat(spread(picture())).isGreaterThan(1.2 * before);
    }

    @Test
    void slidesADrawerOpenOnADoubleClick() throws InterruptedException {
        RealScreen.run(() -> model.viewpoint().zoom(0.6, planer.assembly().box().centre()));
        clickOn(inPicture(seen(box(FRONT))), 2);
        assertThat(RealScreen.becomes(() -> model.isOpen())).isTrue();
        Thread.sleep(600); // it takes a quarter of a second

        var box = box(FRONT);
        var travel = planer.assembly().groups().stream()
                .filter(group -> group.name().equals("drawer 1.4"))
                .findFirst()
                .orElseThrow()
                .travel();
        RealScreen.run(() -> model.pickedProperty().set(Optional.empty()));
        clickOn(inPicture(seen(new Box3(box.min().plus(travel), box.max().plus(travel)))), 1);
        assertThat(RealScreen.becomes(() -> picked().equals(Optional.of(FRONT))))
                .isTrue();
    }

    @Test
    void zoomsTowardsThePointer() throws InterruptedException {
        var corner = seen(box(FRONT));
        var before = inPicture(corner);
        double span =
                RealScreen.get(() -> model.viewpoint().orbitProperty().get().span());
        moveTo(before);

        RealScreen.run(() -> new Robot().mouseWheel(-5));

        assertThat(RealScreen.becomes(
                        () -> model.viewpoint().orbitProperty().get().span() < span / 1.2))
                .isTrue();
        assertThat(inPicture(corner).x()).isCloseTo(before.x(), within(1.5)); // the pointer is on whole pixels
        assertThat(inPicture(corner).y()).isCloseTo(before.y(), within(1.5));
    }

    @Test
    void keepsParallelWhatIsParallelWhereTheLensDoes() {
        RealScreen.run(() -> {
            model.isolated().add("left side");
            model.viewpoint().orbitProperty().set(new Orbit(box("left side").centre(), 90, 40, 1200));
        });
        assertThat(widthAt(0.6) - widthAt(0.4)).isGreaterThan(-100).isLessThan(-8);

        press(KeyCode.P);

        assertThat(widthAt(0.6) - widthAt(0.4)).isCloseTo(0, within(1.01));
    }

    @ParameterizedTest
    @ValueSource(ints = {300, 1600})
    void makesAPictureOfAnySize(int width) {
        var picture = RealScreen.get(() -> view.snapshot(width, 400));

        assertThat(picture.getWidth()).isEqualTo(width);
        assertThat(picture.getHeight()).isEqualTo(400);
        assertThat(count(picture, AssemblyViewTest::isWood)).isGreaterThan(10_000);
        assertThat(RealScreen.get(() -> view.getWidth())).isEqualTo(WIDTH);
    }

    /** How wide the wood is at a share of the picture's height, pixels. */
    private double widthAt(double share) {
        var picture = picture();
        int y = (int) (share * HEIGHT);
        return IntStream.range(0, WIDTH)
                .filter(x -> isWood(picture.getPixelReader().getColor(x, y)))
                .count();
    }

    /** How far wood reaches from left to right, pixels. */
    private static double spread(Image picture) {
        var columns = IntStream.range(0, WIDTH)
                .filter(x -> IntStream.range(0, HEIGHT)
                        .anyMatch(y -> isWood(picture.getPixelReader().getColor(x, y))))
                .summaryStatistics();
        return columns.getMax() - columns.getMin();
    }

    private Image picture() {
        return RealScreen.get(() -> view.snapshot(WIDTH, HEIGHT));
    }

    private Optional<String> picked() {
        return model.pickedProperty().get();
    }

    private void press(KeyCode key) {
        RealScreen.run(() ->
                view.fireEvent(new KeyEvent(KeyEvent.KEY_PRESSED, "", key.getName(), key, false, false, false, false)));
    }

    private void clickOn(Vec2 at, int times) {
        moveTo(at);
        for (int i = 0; i < times; i++) {
            RealScreen.run(() -> new Robot().mouseClick(MouseButton.PRIMARY));
        }
    }

    private void moveTo(Vec2 at) {
        RealScreen.run(() -> new Robot().mouseMove(view.localToScreen(at.x(), at.y())));
    }

    private Vec2 inPicture(Vec3 point) {
        return RealScreen.get(() -> model.viewpoint().sight().getValue().project(point));
    }

    private static Box3 box(String label) {
        return planer.assembly().parts().stream()
                .filter(part -> part.label().equals(label))
                .findFirst()
                .orElseThrow()
                .box();
    }

    private static Box3 frontCaster() {
        return planer.assembly().blocks().stream()
                .filter(block -> block.kind() == Block.Kind.CASTER)
                .map(Block::box)
                .min(Comparator.comparingDouble(box -> box.min().y() - box.max().x()))
                .orElseThrow();
    }

    /** A point of the box's surface that is seen from the right, from the front and from above, clear of a grip. */
    private static Vec3 seen(Box3 box) {
        var size = box.size();
        if (size.x() < size.y() && size.x() < size.z()) {
            return new Vec3(
                    box.max().x(),
                    at(0.5, box.min().y(), box.max().y()),
                    box.centre().z());
        }
        return size.y() < size.z()
                ? new Vec3(
                        at(0.7, box.min().x(), box.max().x()),
                        box.min().y(),
                        at(0.3, box.min().z(), box.max().z()))
                : new Vec3(
                        at(0.97, box.min().x(), box.max().x()),
                        at(0.03, box.min().y(), box.max().y()),
                        box.max().z());
    }

    private static double at(double share, double from, double to) {
        return from + share * (to - from);
    }

    private static Color colour(Image picture, Vec2 at) {
        return picture.getPixelReader().getColor((int) at.x(), (int) at.y());
    }

    private static boolean isWood(Color colour) {
        return colour.getRed() > colour.getBlue() + 0.1;
    }

    private static boolean isBlue(Color colour) {
        return colour.getBlue() > colour.getRed() + 0.04;
    }

    private static long count(Image picture, Predicate<Color> wanted) {
        return IntStream.range(0, (int) picture.getHeight())
                .mapToLong(y -> IntStream.range(0, (int) picture.getWidth())
                        .filter(x -> wanted.test(picture.getPixelReader().getColor(x, y)))
                        .count())
                .sum();
    }
}
