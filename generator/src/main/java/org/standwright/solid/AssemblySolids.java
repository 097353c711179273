package org.standwright.solid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;
import org.standwright.assembly.Assembly;
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
        return begin(assembly, fineness).get();
    }

    /** Begins to build, so that the caller can do something else before it asks for the outcome and waits for it. */
    public static Supplier<AssemblySolids> begin(Assembly assembly, Fineness fineness) {
        var running = new HashMap<Workpiece, CompletableFuture<Solid>>();
        var jobs = new ArrayList<Job>();
        for (var group : assembly.groups()) {
            for (var placed : group.parts()) {
                var solid = running.computeIfAbsent(
                        Workpiece.of(placed.part(), fineness),
                        workpiece -> CompletableFuture.supplyAsync(() -> Solids.of(workpiece, placed.label())));
                jobs.add(new Job(group.name(), placed, solid));
            }
        }
        return () -> new AssemblySolids(
                assembly.name(), jobs.stream().map(Job::finished).toList());
    }

    private record Job(String group, PlacedPart part, CompletableFuture<Solid> solid) {
        PlacedSolid finished() {
            try {
                return new PlacedSolid(group, part, solid.join());
            } catch (CompletionException e) {
                if (e.getCause() instanceof SolidException cause) {
                    throw cause;
                }
                throw e;
            }
        }
    }

    /** kg. */
    public double mass() {
        return solids.stream().mapToDouble(PlacedSolid::mass).sum();
    }
}
