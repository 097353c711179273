package org.standwright.export.mesh;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import org.standwright.export.SafeNames;
import org.standwright.geom.Vec3;
import org.standwright.solid.AssemblySolids;
import org.standwright.solid.PlacedSolid;
import org.standwright.solid.Solid;

/**
 * Writes meshes into a folder for judges that are not ours: every preset as a whole in every format, each different part
 * of it as STL, parts at random and hard names in every format. Beside them {@code expected.tsv}: file, parts, triangles,
 * volume in mm³ and centroid in mm with z up, all worked out from the solids without any writer. Needs no library but the
 * program's own.
 */
final class WriteMeshes {
    private final Path folder;
    private final List<String> expected = new ArrayList<>();

    private WriteMeshes(Path folder) {
        this.folder = folder;
    }

    /** Folder, and how many parts at random there shall be. */
    public static void main(String[] args) throws IOException {
        var meshes = new WriteMeshes(Path.of(args[0]));
        for (var preset : MeshSamples.presets().toList()) {
            var name = "presets/" + SafeNames.plain(preset.name());
            meshes.write(name, preset);
            meshes.writeParts(name, preset);
        }
        for (var part : MeshSamples.randomParts(Integer.parseInt(args[1])).toList()) {
            meshes.write("random/" + SafeNames.plain(part.name()), part);
        }
        meshes.write("names", MeshNames.hard());
        Files.write(meshes.folder.resolve("expected.tsv"), meshes.expected);
        System.out.println(meshes.expected.size() + " files written");
    }

    private void write(String name, AssemblySolids assembly) throws IOException {
        for (var format : MeshFormat.values()) {
            var solids = assembly.solids().stream().map(PlacedSolid::inPlace).toList();
            write(name + "/assembly" + format.ending(), format, assembly, solids, format.shift(assembly));
        }
        try (var out = Files.newOutputStream(folder.resolve(name + "/assembly-mm.mtl"))) {
            MtlWriter.write(assembly, out);
        }
    }

    private void writeParts(String name, AssemblySolids assembly) throws IOException {
        var written = new HashSet<Solid>();
        var names = SafeNames.ofPlainLetters();
        for (var placed : assembly.solids()) {
            if (written.add(placed.solid())) {
                var file = name + "/parts/" + names.of(placed.label()) + "-mm.stl";
                Files.createDirectories(folder.resolve(file).getParent());
                try (var out = Files.newOutputStream(folder.resolve(file))) {
                    StlWriter.write(placed.solid(), out);
                }
                expect(file, List.of(placed.solid()), Vec3.ZERO);
            }
        }
    }

    private void write(String file, MeshFormat format, AssemblySolids assembly, List<Solid> solids, Vec3 shift)
            throws IOException {
        Files.createDirectories(folder.resolve(file).getParent());
        Files.write(folder.resolve(file), format.bytes(assembly));
        expect(file, solids, shift);
    }

    private void expect(String file, List<Solid> solids, Vec3 shift) {
        int triangles = solids.stream().mapToInt(Solid::triangleCount).sum();
        double volume = solids.stream().mapToDouble(Solid::volume).sum();
        var moment = Vec3.ZERO;
        for (var solid : solids) {
            moment = moment.plus(solid.centroid().times(solid.volume()));
        }
        var centroid = moment.times(1 / volume).plus(shift);
        expected.add(String.format(
                Locale.ROOT,
                "%s\t%d\t%d\t%.6f\t%.6f\t%.6f\t%.6f",
                file,
                solids.size(),
                triangles,
                volume,
                centroid.x(),
                centroid.y(),
                centroid.z()));
    }
}
