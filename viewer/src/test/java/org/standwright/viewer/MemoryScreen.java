package org.standwright.viewer;

import atlantafx.base.theme.PrimerDark;
import atlantafx.base.theme.PrimerLight;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import javafx.application.Application;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** A window in memory for the panes under test, with somebody at mouse and keyboard. */
public final class MemoryScreen {
    private static final int WIDTH = 1000;
    private static final int HEIGHT = 700;

    private final Stage stage;
    private final FxRobot hands = new FxRobot();

    private MemoryScreen(Stage stage) {
        this.stage = stage;
    }

    /** A window with this in it, shown and laid out. */
    public static MemoryScreen show(Supplier<Parent> pane) {
        return show(pane, new PrimerLight().getUserAgentStylesheet());
    }

    /** The same in the dark theme. */
    public static MemoryScreen showDark(Supplier<Parent> pane) {
        return show(pane, new PrimerDark().getUserAgentStylesheet());
    }

    private static MemoryScreen show(Supplier<Parent> pane, String theme) {
        try {
            var screen = new MemoryScreen(FxToolkit.registerPrimaryStage());
            screen.run(() -> {
                Application.setUserAgentStylesheet(theme);
                screen.stage.setScene(new Scene(pane.get(), WIDTH, HEIGHT));
                screen.stage.hide(); // a window of another test may have had the focus
                screen.stage.show();
                screen.stage.requestFocus();
            });
            return screen;
        } catch (TimeoutException e) {
            throw new IllegalStateException("there is no window in memory; is Monocle on the class path?", e);
        }
    }

    /** Does something on the screen's thread and waits until all that comes of it is done. */
    public void run(Runnable action) {
        get(() -> {
            action.run();
            return "";
        });
    }

    /** Looks at something on the screen's thread. */
    public <T> T get(Callable<T> look) {
        var value = WaitForAsyncUtils.waitForAsyncFx(20_000, look);
        WaitForAsyncUtils.waitForFxEvents();
        return value;
    }

    /** Waits for something that comes from another thread. */
    public void await(Callable<Boolean> there) {
        try {
            WaitForAsyncUtils.waitFor(20, TimeUnit.SECONDS, () -> get(there));
        } catch (TimeoutException e) {
            throw new AssertionError("it did not come within 20 seconds", e);
        }
    }

    public FxRobot hands() {
        return hands;
    }

    public Scene scene() {
        return stage.getScene();
    }
}
