package org.standwright.cli;

import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import org.standwright.file.FileKind;
import org.standwright.file.Preset;
import org.standwright.file.PresetLibrary;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(name = "list", description = "Lists every preset as KIND/NAME, and the file of those that are your own.")
final class PresetsListCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private Listing listing;

    @Override
    public Integer call() {
        return listing.print(spec.commandLine().getOut());
    }

    /** What 'presets' and 'presets list' have in common. */
    static final class Listing {
        @Mixin
        private PresetsFolder presets;

        @Option(names = "--json", description = "Print a JSON array instead of lines.")
        private boolean json;

        int print(PrintWriter out) {
            var found = found(presets.library());
            if (json) {
                out.println(array(found));
            } else {
                found.forEach(preset -> out.println(line(preset)));
            }
            return ExitCode.FINE;
        }

        private static List<Preset> found(PresetLibrary library) {
            return Arrays.stream(FileKind.values())
                    .flatMap(kind -> library.list(kind).stream())
                    .toList();
        }

        private static String line(Preset preset) {
            var file = preset.path().map(Path::toString);
            return preset.kind().word() + "/" + preset.name()
                    + file.map(own -> "  " + own).orElse("");
        }

        private static String array(List<Preset> found) {
            var array = new JsonMapper().createArrayNode();
            for (var preset : found) {
                var node = array.addObject().put("kind", preset.kind().word()).put("name", preset.name());
                preset.path().ifPresent(file -> node.put("file", file.toString()));
            }
            return array.toPrettyString();
        }
    }
}
