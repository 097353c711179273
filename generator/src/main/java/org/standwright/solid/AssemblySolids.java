package org.standwright.solid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.function.Supplier;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Pose;

/**
 * The solids of an assembly, every different one built once, in the order of the assembly's parts.
 *
 * @param name of the assembly
 * @param fineness that they were built with
 */
public record AssemblySolids(String name, Fineness fineness, List<PlacedSolid> solids) {
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
        return begin(assembly, fineness, new HashMap<>());
    }

    /** The solids of an edited assembly: those of workpieces that are known are taken over, the others are built. */
    public AssemblySolids rebuilt(Assembly edited) {
        return beginRebuilding(edited).get();
    }

    /** Begins to build what {@link #rebuilt} has to build. */
    public Supplier<AssemblySolids> beginRebuilding(Assembly edited) {
        var known = new HashMap<Workpiece, CompletableFuture<Solid>>();
        for (var placed : solids) {
            known.put(Workpiece.of(placed.part().part(), fineness), CompletableFuture.completedFuture(placed.solid()));
        }
        return begin(edited, fineness, known);
    }

    private static Supplier<AssemblySolids> begin(
            Assembly assembly, Fineness fineness, Map<Workpiece, CompletableFuture<Solid>> running) {
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
                assembly.name(), fineness, jobs.stream().map(Job::finished).toList());
    }

    private record Job(String group, PlacedPart part, CompletableFuture<Solid> solid) {
        PlacedSolid finished() {
            try {
                return new PlacedSolid(group, part, solid.join());
            } catch (CompletionException e) {
                if (e.getCause() instanceof RuntimeException cause) {
                    throw cause;
                }
                throw e;
            }
        }
    }

    /** All of them where they stand in a pose, in assembly coordinates. */
    public List<Solid> inPlace(Pose pose) {
        return solids.stream().map(placed -> placed.inPlace(pose)).toList();
    }

    /** Of all boards together, in assembly coordinates; bought things are not in it. */
    public MassProperties massProperties() {
        return together(solids);
    }

    /** Of one group's boards where they belong, in assembly coordinates. */
    public MassProperties massProperties(String group) {
        var members =
                solids.stream().filter(placed -> placed.group().equals(group)).toList();
        if (members.isEmpty()) {
            throw new IllegalArgumentException(
                    "group '" + group + "' of '" + name + "' has no boards; ask for one that has.");
        }
        return together(members);
    }

    private static MassProperties together(List<PlacedSolid> solids) {
        return solids.stream().map(PlacedSolid::massProperties).reduce(MassProperties.NOTHING, MassProperties::plus);
    }

    /** kg. */
    public double mass() {
        return massProperties().mass();
    }
}
