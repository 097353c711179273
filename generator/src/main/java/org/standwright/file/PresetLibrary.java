package org.standwright.file;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.standwright.file.text.DesignFileException;
import org.standwright.file.text.FileProblem;
import org.standwright.file.text.Folder;
import org.standwright.file.text.NearestName;

/**
 * Where presets are looked up: beside the design file, then in a folder of the maker's own, then among those that come
 * with the program. In a folder, a preset is NAME.json, or NAME.json in the sub-folder of its kind.
 */
public final class PresetLibrary {
    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9.-]*");

    private final List<Path> folders;
    private final Map<Preset, Known> known = new ConcurrentHashMap<>();

    /** What came of a preset's text; presets name no other presets, so that it depends on nothing else. */
    private record Known(String text, ReadFile file) {}

    private PresetLibrary(List<Path> folders) {
        this.folders = folders;
    }

    /**
     * @param designFolder the folder of the design file
     * @param presetsFolder a folder of the maker's own presets
     * @throws DesignFileException when {@code presetsFolder} is no folder
     */
    public static PresetLibrary of(Path designFolder, Optional<Path> presetsFolder) {
        presetsFolder.filter(folder -> !Files.isDirectory(folder)).ifPresent(folder -> {
            throw new DesignFileException(
                    FileProblem.whole(folder.toString(), "is no folder", "Name the folder that holds your presets."));
        });
        return new PresetLibrary(
                Stream.concat(Stream.of(designFolder), presetsFolder.stream()).toList());
    }

    /** The presets of one kind that can be named, sorted by name. */
    public List<Preset> list(FileKind kind) {
        var names = new TreeSet<>(BuiltInPresets.published().names(kind));
        for (var folder : folders) {
            names.addAll(Folder.jsonNames(folder.resolve(kind.folder())));
            Folder.jsonNames(folder).stream()
                    .filter(name -> DeclaredKind.of(file(folder, name)).equals(Optional.of(kind.word())))
                    .forEach(names::add);
        }
        return names.stream().flatMap(name -> find(kind, name).stream()).toList();
    }

    /** The preset that a design file means by {@code name}; the nearest to the design file wins. */
    public Optional<Preset> find(FileKind kind, String name) {
        if (!NAME.matcher(name).matches()) {
            return Optional.empty();
        }
        return folders.stream()
                .flatMap(folder -> in(folder, kind, name).stream())
                .map(path -> new Preset(kind, name, Optional.of(path)))
                .findFirst()
                .or(() -> builtIn(kind, name));
    }

    /**
     * The text of a preset.
     *
     * @param given kind and name such as {@code sheet/birch-18}; the name alone when only one preset is called so
     * @throws DesignFileException when there is no such preset, or more than one
     */
    public String show(String given) {
        int slash = given.indexOf('/');
        if (slash < 0) {
            return only(given).text();
        }
        var word = given.substring(0, slash);
        var name = given.substring(slash + 1);
        var kind = FileKind.of(word)
                .orElseThrow(() -> unknown(given, "must start with a kind", NearestName.hint(word, FileKind.words())));
        return find(kind, name)
                .orElseThrow(() -> unknown(given, "is no preset", guess(name, Stream.of(kind))))
                .text();
    }

    private Preset only(String name) {
        var found = Stream.of(FileKind.values())
                .flatMap(kind -> find(kind, name).stream())
                .toList();
        if (found.isEmpty()) {
            throw unknown(name, "is no preset", guess(name, Stream.of(FileKind.values())));
        }
        if (found.size() > 1) {
            var choices = found.stream().map(PresetLibrary::full).toList();
            throw unknown(name, "is the name of several", "Use " + NearestName.either(choices) + ".");
        }
        return found.get(0);
    }

    /** What was probably meant, written so that it can be shown. */
    private String guess(String name, Stream<FileKind> kinds) {
        var same = Stream.of(FileKind.values()).flatMap(kind -> find(kind, name).stream());
        var known = kinds.flatMap(kind -> list(kind).stream()).toList();
        var nearest = NearestName.to(name, known.stream().map(Preset::name).toList());
        return Stream.concat(same, known.stream().filter(preset -> nearest.equals(Optional.of(preset.name()))))
                .findFirst()
                .map(preset -> "Did you mean \"" + full(preset) + "\"?")
                .orElse("List them to see what there is.");
    }

    private static String full(Preset preset) {
        return preset.kind().word() + "/" + preset.name();
    }

    /** A machine's file. */
    ReadFile machine(String name) {
        var preset = find(FileKind.MACHINE, name)
                .orElseThrow(() -> unknown(name, "is no machine preset", hint(FileKind.MACHINE, name)));
        return read(preset);
    }

    /** Reads a preset, anew only where its text has changed. Throws as {@link ReadFile#of} does. */
    ReadFile read(Preset preset) {
        var source = preset.source();
        var before = known.get(preset);
        if (before != null && before.text().equals(source.text())) {
            return before.file();
        }
        var file = ReadFile.of(source, List.of(preset.kind()), this);
        known.put(preset, new Known(source.text(), file));
        return file;
    }

    /** What to write instead of a name that is no preset of this kind. */
    String hint(FileKind kind, String name) {
        return Stream.of(FileKind.values())
                .filter(other -> find(other, name).isPresent())
                .findFirst()
                .map(other -> "\"" + name + "\" is " + other.oneOf() + ".")
                .orElseGet(() -> NearestName.hint(
                        name, list(kind).stream().map(Preset::name).toList()));
    }

    private static Optional<Path> in(Path folder, FileKind kind, String name) {
        var inKind = folder.resolve(kind.folder());
        if (Folder.jsonNames(folder).contains(name) && !isOfAnotherKind(file(folder, name), kind)) {
            return Optional.of(file(folder, name));
        }
        return Folder.jsonNames(inKind).contains(name) ? Optional.of(file(inKind, name)) : Optional.empty();
    }

    /** A design may lie beside presets and share its name with one of them. */
    private static boolean isOfAnotherKind(Path file, FileKind kind) {
        return DeclaredKind.of(file)
                .flatMap(FileKind::of)
                .filter(other -> other != kind)
                .isPresent();
    }

    private static Optional<Preset> builtIn(FileKind kind, String name) {
        return BuiltInPresets.published().has(kind, name)
                ? Optional.of(new Preset(kind, name, Optional.empty()))
                : Optional.empty();
    }

    private static Path file(Path folder, String name) {
        return folder.resolve(name + ".json");
    }

    private static DesignFileException unknown(String name, String rule, String wayOut) {
        return new DesignFileException(FileProblem.whole("preset \"" + name + "\"", rule, wayOut));
    }
}
