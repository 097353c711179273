package org.standwright.viewer.app;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Function;
import org.standwright.viewer.work.Opened;
import org.standwright.viewer.work.Threads;

/**
 * What a window is opened with.
 *
 * @param first what lies on the desk
 * @param presets folder of the maker's own
 * @param state folder where the window remembers things
 * @param disk where small files are written
 * @param dialogs boxes that belong to the window
 */
record Setup(
        Opened first,
        Optional<Path> presets,
        Path state,
        Threads threads,
        Executor disk,
        Function<javafx.stage.Window, Dialogs> dialogs) {}
