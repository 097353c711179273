package org.standwright.viewer.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RememberedTest {
    @TempDir
    private Path folder;

    @Test
    void givesUnsavedWorkBackAsItWas() throws IOException {
        var work = Unsaved.of(Optional.of(Path.of("/tmp/stand.json")), "Change height", "{ \"a\":\t1 }\r\n", "{}");
        var kept = new Remembered<>(folder.resolve("state/unsaved.json"), Unsaved.class);

        kept.keep(work);

        assertThat(kept.recall()).contains(work);
        assertThat(work.path()).contains(Path.of("/tmp/stand.json"));
    }

    @Test
    void forgetsWhatItCannotRead() throws IOException {
        var file = Files.writeString(folder.resolve("recent.json"), "{ \"files\": [");

        assertThat(new Remembered<>(file, Recent.class).recall()).isEmpty();
    }

    @Test
    void readsWhatANewerProgramWrote() throws IOException {
        var file = Files.writeString(folder.resolve("recent.json"), "{ \"files\": [\"/a\"], \"colours\": 3 }");

        assertThat(new Remembered<>(file, Recent.class).recall()).contains(new Recent(java.util.List.of("/a")));
    }

    @Test
    void remembersNothingAnyMoreOnceItWasTold() throws IOException {
        var kept = new Remembered<>(folder.resolve("recent.json"), Recent.class);
        kept.keep(Recent.none());

        kept.forget();

        assertThat(kept.recall()).isEmpty();
    }

    @Test
    void putsTheLatestFileFirstAndEachOnce() {
        var recent = Recent.none().with(Path.of("/a")).with(Path.of("/b")).with(Path.of("/a"));

        assertThat(recent.files()).containsExactly("/a", "/b");
        assertThat(recent.without(Path.of("/a")).files()).containsExactly("/b");
    }

    @Test
    void usesTheFolderThatEachSystemHasForIt() {
        var home = Path.of("/home/maker");

        assertThat(StateFolder.of("Linux", home, Map.of())).isEqualTo(home.resolve(".local/state/standwright"));
        assertThat(StateFolder.of("Linux", home, Map.of("XDG_STATE_HOME", "/state")))
                .isEqualTo(Path.of("/state/standwright"));
        assertThat(StateFolder.of("Mac OS X", home, Map.of()))
                .isEqualTo(home.resolve("Library/Application Support/Standwright"));
        assertThat(StateFolder.of("Windows 11", home, Map.of("APPDATA", "/roaming")))
                .isEqualTo(Path.of("/roaming/Standwright"));
    }

    @Test
    void leavesTheOldTextWhereTheNewOneCannotBeWritten() throws IOException {
        var file = Files.writeString(folder.resolve("stand.json"), "old");

        DesignText.write(file, "new");

        assertThat(file).hasContent("new");
        assertThat(Files.list(folder)).containsExactly(file);
    }
}
