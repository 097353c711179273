package org.standwright.solid;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.standwright.Presets;
import org.standwright.assembly.Assembly;
import org.standwright.design.stand.StandBuilder;
import org.standwright.export.step.StepWriter;
import org.standwright.file.FileKind;
import org.standwright.part.Part;
import org.standwright.solid.exact.Cylinder;
import org.standwright.solid.exact.ExactSolids;

final class WriteStep {
    public static void main(String[] args) throws IOException {
        var folder = Path.of(args[0]);
        Files.createDirectories(folder);
        var written = new java.util.HashSet<Workpiece>();
        for (int round = 0; round < 1; round++) {
            for (var preset : Presets.shipped().list(FileKind.STAND)) {
                Assembly assembly = StandBuilder.build(Presets.design(preset)).assembly();
                long t0 = System.nanoTime();
                var solids = AssemblySolids.of(assembly);
                long t1 = System.nanoTime();
                try (var out = new java.io.BufferedOutputStream(
                        Files.newOutputStream(folder.resolve("assembly-" + preset.name() + ".step")))) {
                    StepWriter.write(solids, out);
                }
                long t2 = System.nanoTime();
                System.out.printf(
                        Locale.ROOT,
                        "%s solids %.1f ms, step %.1f ms%n",
                        preset.name(),
                        (t1 - t0) / 1e6,
                        (t2 - t1) / 1e6);
                int n = 0;
                for (var placed : assembly.parts()) {
                    n += one(folder, preset.name() + "-" + placed.label(), placed.part(), written);
                }
            }
        }
        int facets = 0;
        int count = 0;
        for (long seed = 70000; seed < 70000 + Long.parseLong(args[1]); seed++) {
            var part = RandomPart.of(seed);
            if (LayeredVolume.of(part) > 1) {
                count++;
                facets += one(folder, "random-" + seed, part, written) > 0 ? 1 : 0;
            }
        }
        System.out.println(count + " random, " + facets + " not exact");
    }

    private static int one(Path folder, String name, Part part, java.util.Set<Workpiece> written) throws IOException {
        if (!written.add(Workpiece.of(part, Fineness.FILE))) {
            return 0;
        }
        var file = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-") + ".step";
        var solid = Solids.of(part);
        try (OutputStream out = new java.io.BufferedOutputStream(Files.newOutputStream(folder.resolve(file)))) {
            StepWriter.write(part.name(), part, solid, out);
        }
        var exact = ExactSolids.of(part, solid);
        long cylinders = exact.shells().stream()
                .flatMap(s -> s.stream())
                .filter(f -> f.surface() instanceof Cylinder)
                .count();
        Files.writeString(
                folder.resolve("expected.tsv"),
                String.format(Locale.ROOT, "%s\t%.9f\t%d\t%d%n", file, solid.volume(), cylinders, exact.facets()),
                java.nio.file.StandardOpenOption.CREATE,
                java.nio.file.StandardOpenOption.APPEND);
        if (!exact.isExact()) System.out.println(file + " facets " + exact.facets() + " of " + solid.triangleCount());
        return exact.facets();
    }
}
