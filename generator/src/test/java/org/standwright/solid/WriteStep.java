package org.standwright.solid;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Group;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.export.step.StepWriter;
import org.standwright.geom.Axis;
import org.standwright.geom.Vec3;
import org.standwright.part.Part;
import org.standwright.solid.exact.Cylinder;
import org.standwright.solid.exact.ExactSolids;

/**
 * Writes STEP files into a folder for judges that are not ours, and beside them in {@code expected.tsv} what they should
 * find: file, volume in mm³ and by how much it may be off, the volume's centre in mm and by how much that may be off,
 * cylindrical faces, solids, and a name that has to be in it.
 *
 * <p>Of the presets every different part and every assembly, random parts, and two boards of one name with all kinds of
 * signs in it. Where features keep clear of each other the figures are from closed formulas, else from sums over faces
 * and, for the centre, over the mesh. A part that touches itself along an edge, as parts on a lattice do, is left out:
 * whether it hangs together there is a matter of taste.
 */
final class WriteStep {
    private static final long FIRST_SEED = 70_000;
    private static final double CLOSE = 1e-6;
    /** What rounding to the grid may do to the centre of a mesh, mm. */
    private static final double GRID = 2.0 / Solid.PER_MM;

    private static final String SIGNS = "it's a 3/4\" \\ board; 木板 – Fuß \uD83E\uDE9A";

    private record Figures(double volume, Vec3 centre, double off, int cylinders, int solids) {
        static final Figures NONE = new Figures(0, Vec3.ZERO, 0, 0, 0);

        static Figures of(Part part, Solid solid) {
            var exact = ExactSolids.of(part, solid);
            int solids = Shells.count(solid);
            var known = FeatureFigures.of(part);
            if (known.isPresent()) {
                var figures = known.get();
                double off = CLOSE * (part.length() + part.width());
                return new Figures(figures.volume(), figures.centre(), off, figures.cylinders(), solids);
            }
            long cylinders = exact.shells().stream()
                    .flatMap(List::stream)
                    .filter(face -> face.surface() instanceof Cylinder)
                    .count();
            // facets in place of round faces have their areas, not their centres
            double off = exact.isExact() ? GRID : 10 * GRID;
            return new Figures(ExactVolume.of(exact), solid.centroid(), off, (int) cylinders, solids);
        }

        Figures placed(Placement placement) {
            return new Figures(volume, placement.apply(centre), off, cylinders, solids);
        }

        Figures plus(Figures other) {
            double both = volume + other.volume;
            return new Figures(
                    both,
                    centre.times(volume / both).plus(other.centre.times(other.volume / both)),
                    Math.max(off, other.off),
                    cylinders + other.cylinders,
                    solids + other.solids);
        }
    }

    private final Path folder;
    private final TreeMap<String, String> expected = new TreeMap<>();

    private WriteStep(Path folder) {
        this.folder = folder;
    }

    /** Takes a folder and how many random parts to write. */
    public static void main(String[] args) throws IOException {
        var step = new WriteStep(Path.of(args[0]));
        Files.createDirectories(step.folder);
        for (var part : DistinctParts.all().entrySet()) {
            step.write("preset " + part.getKey(), part.getValue());
        }
        for (var assembly : DistinctParts.assemblies().toList()) {
            step.write("assembly " + assembly.name(), assembly);
        }
        for (long seed : LongStream.range(0, Long.parseLong(args[1])).toArray()) {
            step.write("random " + (FIRST_SEED + seed), RandomPart.of(FIRST_SEED + seed));
        }
        step.write("signs", signs());
        Files.write(step.folder.resolve("expected.tsv"), step.expected.values());
        System.out.println(step.expected.size() + " STEP files written");
    }

    /** Two parts of one name and label but for a number. */
    private static Assembly signs() {
        var board = SampleParts.all().values().iterator().next();
        var named = new Part(SIGNS, board.material(), 200, 100, 0, board.bands(), List.of());
        var other = new Part(SIGNS, board.material(), 300, 100, 0, board.bands(), List.of());
        var group = new Group(
                SIGNS,
                Vec3.ZERO,
                List.of(
                        new PlacedPart(SIGNS + " 1", named, new Placement(Axis.X_PLUS, Axis.Y_PLUS, Vec3.ZERO)),
                        new PlacedPart(
                                SIGNS + "\n2", other, new Placement(Axis.Z_PLUS, Axis.Y_PLUS, new Vec3(500, 0, 0)))),
                List.of());
        return new Assembly(SIGNS, List.of(group), List.of());
    }

    private void write(String name, Part part) throws IOException {
        if (LayeredVolume.of(part) < 1) {
            return;
        }
        var solid = Solids.of(part);
        if (ReadBack.of(ReadBack.stl(solid)).crowdedEdges() > 0) {
            System.out.println(name + " touches itself and is left out");
            return;
        }
        var file = fileName(name);
        try (var out = Files.newOutputStream(folder.resolve(file))) {
            StepWriter.write(part.name(), part, solid, out);
        }
        expect(file, Figures.of(part, solid), part.name());
    }

    private void write(String name, Assembly assembly) throws IOException {
        var file = fileName(name);
        var solids = AssemblySolids.of(assembly);
        try (var out = Files.newOutputStream(folder.resolve(file))) {
            StepWriter.write(solids, out);
        }
        var all = Figures.NONE;
        for (var placed : solids.solids()) {
            all = all.plus(Figures.of(placed.part().part(), placed.solid())
                    .placed(placed.part().placement()));
        }
        expect(
                file,
                all,
                assembly.parts().get(assembly.parts().size() - 1).label().replace('\n', ' '));
    }

    private void expect(String file, Figures figures, String named) {
        var centre = figures.centre;
        var line = String.format(
                Locale.ROOT,
                "%s\t%.9f\t%.9f\t%.9f\t%.9f\t%.9f\t%.9f\t%d\t%d\t%s",
                file,
                figures.volume,
                CLOSE * figures.volume,
                centre.x(),
                centre.y(),
                centre.z(),
                figures.off,
                figures.cylinders,
                figures.solids,
                named);
        if (expected.put(file, line) != null) {
            throw new IllegalStateException("two parts are called " + file);
        }
    }

    private static String fileName(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9.]+", "-") + ".step";
    }
}
