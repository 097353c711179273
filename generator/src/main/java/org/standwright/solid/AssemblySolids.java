package org.standwright.solid;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Group;
import org.standwright.assembly.PlacedPart;

/**
 * The solids of an assembly, every different one built once, in the order of the assembly's parts.
 *
 * @param name of the assembly
 */
public record AssemblySolids(String name, List<PlacedSolid> solids) {
    public AssemblySolids {
        solids = List.copyOf(solids);
    }

    /** As fine as files need it. Throws {@link SolidException} for the first part that has no solid. */
    public static AssemblySolids of(Assembly assembly) {
        return of(assembly, Fineness.FILE);
    }

    /** Builds the different solids side by side; the outcome doesn't depend on it. */
    public static AssemblySolids of(Assembly assembly, Fineness fineness) {
        var jobs = new LinkedHashMap<Shape, CompletableFuture<Solid>>();
        for (var placed : assembly.parts()) {
            var shape = Shape.of(placed.part(), fineness);
            jobs.computeIfAbsent(shape, job -> CompletableFuture.supplyAsync(() -> Solids.of(job, placed.label())));
        }
        var built = new LinkedHashMap<Shape, Solid>();
        jobs.forEach((shape, job) -> built.put(shape, result(job)));
        return new AssemblySolids(assembly.name(), placed(assembly, fineness, built));
    }

    private static Solid result(CompletableFuture<Solid> job) {
        try {
            return job.join();
        } catch (CompletionException e) {
            if (e.getCause() instanceof SolidException cause) {
                throw cause;
            }
            throw e;
        }
    }

    private static List<PlacedSolid> placed(Assembly assembly, Fineness fineness, Map<Shape, Solid> built) {
        var solids = new ArrayList<PlacedSolid>();
        for (Group group : assembly.groups()) {
            for (PlacedPart part : group.parts()) {
                solids.add(new PlacedSolid(group.name(), part, built.get(Shape.of(part.part(), fineness))));
            }
        }
        return solids;
    }

    /** kg. */
    public double mass() {
        return solids.stream().mapToDouble(PlacedSolid::mass).sum();
    }
}
