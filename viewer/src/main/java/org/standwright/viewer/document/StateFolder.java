package org.standwright.viewer.document;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Where the window remembers things between two runs: the folder that each system has for that. */
public final class StateFolder {
    /** Names another folder, for tests and for trying things out. */
    public static final String PROPERTY = "standwright.state";

    private StateFolder() {}

    public static Path ofUser() {
        return Optional.ofNullable(System.getProperty(PROPERTY))
                .map(Path::of)
                .orElseGet(() ->
                        of(System.getProperty("os.name"), Path.of(System.getProperty("user.home")), System.getenv()));
    }

    static Path of(String system, Path home, Map<String, String> environment) {
        var name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            return given(environment, "APPDATA")
                    .orElse(home.resolve("AppData/Roaming"))
                    .resolve("Standwright");
        }
        if (name.startsWith("mac")) {
            return home.resolve("Library/Application Support/Standwright");
        }
        return given(environment, "XDG_STATE_HOME")
                .orElse(home.resolve(".local/state"))
                .resolve("standwright");
    }

    private static Optional<Path> given(Map<String, String> environment, String variable) {
        return Optional.ofNullable(environment.get(variable))
                .filter(folder -> !folder.isBlank())
                .map(Path::of);
    }
}
