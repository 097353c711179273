package org.standwright.viewer.app;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.file.DesignFiles;
import org.standwright.file.PresetLibrary;
import org.standwright.file.text.DesignFileException;
import org.standwright.make.Built;
import org.standwright.solid.Fineness;
import org.standwright.solid.SolidException;

/** Loads, on another core, what the first design needs, while JavaFX starts: else the window would wait for it. */
final class EarlyStart {
    private EarlyStart() {}

    /** Returns at once; nothing waits for the outcome. */
    static void begin(String text) {
        CompletableFuture.runAsync(() -> {
            try {
                var presets = PresetLibrary.of(Path.of(""), Optional.empty());
                Built.of(DesignFiles.parse("early", text, presets).design(), Fineness.SCREEN);
            } catch (DesignFileException | ImpossibleDesignException | SolidException refusal) {
                // the window says so when it reads the text itself
            }
        });
    }
}
