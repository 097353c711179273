package org.standwright.solid;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.standwright.Presets;
import org.standwright.assembly.Assembly;
import org.standwright.design.stand.StandBuilder;
import org.standwright.file.FileKind;
import org.standwright.part.Part;

/**
 * Writes solids as STL files into a folder for judges that are not ours, and beside them in {@code expected.tsv} what
 * they should find: file, volume in mm³ by the independent sum, handles less what falls apart (genus), and shells.
 *
 * <p>Of the presets every different part, the sample parts, and random parts in general position. One that touches
 * itself along an edge, as parts on a lattice do, is left out: an STL file can't tell which two of the four faces there
 * belong together, so a reader may well close it in another way.
 */
final class WriteSolids {
    /** Others than the random tests take. */
    private static final LongStream SEEDS = LongStream.range(70_000, 70_100);

    private final Path folder;
    private final Set<Workpiece> written = new HashSet<>();
    private final TreeMap<String, String> expected = new TreeMap<>();

    private WriteSolids(Path folder) {
        this.folder = folder;
    }

    public static void main(String[] args) throws IOException {
        var solids = new WriteSolids(Path.of(args[0]));
        for (var preset : Presets.shipped().list(FileKind.STAND)) {
            solids.write(
                    "presets/" + preset.name(),
                    StandBuilder.build(Presets.design(preset)).assembly());
        }
        for (var part : samples().toList()) {
            solids.write("samples/" + fileName(part.name()), part);
        }
        solids.write("samples/cabinet", SampleCabinet.pile(60));
        for (long seed : SEEDS.toArray()) {
            solids.write("random/" + 2 * seed, RandomPart.of(2 * seed));
        }
        Files.write(solids.folder.resolve("expected.tsv"), solids.expected.values());
        System.out.println(solids.expected.size() + " solids written");
    }

    private static Stream<Part> samples() {
        return Stream.concat(SampleParts.all().values().stream(), SampleParts.measured().stream());
    }

    private void write(String name, Assembly assembly) throws IOException {
        for (var placed : assembly.parts()) {
            write(name + "/" + fileName(placed.label()), placed.part());
        }
    }

    private static String fileName(String label) {
        return label.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }

    private void write(String name, Part part) throws IOException {
        double volume = LayeredVolume.of(part);
        if (volume < 1 || !written.add(Workpiece.of(part, Fineness.FILE))) {
            return;
        }
        var file = name + ".stl";
        var solid = Solids.of(part);
        var stl = ReadBack.stl(solid);
        if (ReadBack.of(stl).crowdedEdges() > 0) {
            System.out.println(name + " touches itself and is left out");
            return;
        }
        Files.createDirectories(folder.resolve(file).getParent());
        Files.write(folder.resolve(file), stl);
        int euler = solid.vertexCount() - solid.triangleCount() / 2;
        var line = String.format(Locale.ROOT, "%s\t%.6f\t%d\t%d", file, volume, 1 - euler / 2, Shells.count(solid));
        if (expected.put(file, line) != null) {
            throw new IllegalStateException("two parts are called " + name);
        }
    }
}
