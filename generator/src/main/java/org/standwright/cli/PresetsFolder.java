package org.standwright.cli;

import java.nio.file.Path;
import java.util.Optional;
import org.standwright.file.PresetLibrary;
import picocli.CommandLine.Option;

/** Where the maker keeps presets of their own. */
final class PresetsFolder {
    @Option(
            names = "--presets",
            paramLabel = "DIR",
            description = "Folder of your own presets; they go before those that come with the program.")
    private Optional<Path> folder;

    /** Looks beside a design file first. */
    PresetLibrary besides(Path designFolder) {
        return PresetLibrary.of(designFolder, folder);
    }

    /** Looks in the folder that the command is run in first. */
    PresetLibrary library() {
        return besides(Path.of("").toAbsolutePath());
    }
}
