package org.standwright.assembly;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.standwright.geom.Box3;
import org.standwright.geom.Require;
import org.standwright.geom.Vec3;

/**
 * How an assembly is looked at: drawers pulled out, and everything drawn apart.
 *
 * <p>Drawing apart moves each thing straight away from the centre of the assembly's box, by the explosion factor times the
 * way from there to the centre of the thing's own box, both taken closed: with 0 nothing moves, with 1 every thing is
 * twice as far out. Nothing turns or changes its size, so boxes that were apart stay apart. An open drawer moves by its
 * share of the travel besides.
 *
 * @param open by the name of a group that moves, 0 for closed to 1 for all its travel; groups not named are closed
 * @param explosion factor, 0 for together
 * @param centre that things are drawn away from
 */
public record Pose(Assembly assembly, Map<String, Double> open, double explosion, Vec3 centre) {
    public Pose {
        open = Collections.unmodifiableMap(new TreeMap<>(open));
        for (var entry : open.entrySet()) {
            requireMoving(assembly, entry.getKey());
            requireShare(entry.getKey(), entry.getValue());
        }
        Require.notNegative("explosion", explosion, assembly.name());
    }

    /** As it stands on the floor. */
    public static Pose closed(Assembly assembly) {
        return new Pose(assembly, Map.of(), 0, assembly.box().centre());
    }

    /** The same with one group open, 0 for closed to 1 for all its travel. */
    public Pose withOpen(String group, double share) {
        var more = new TreeMap<>(open);
        more.put(group, share);
        return new Pose(assembly, more, explosion, centre);
    }

    /** The same drawn apart by a factor, 0 for together. */
    public Pose exploded(double factor) {
        return new Pose(assembly, open, factor, centre);
    }

    /** How far a thing of {@code group} goes from where it belongs, mm; {@code box} is around it there. */
    public Vec3 shift(String group, Box3 box) {
        var slid = group(assembly, group).travel().times(open.getOrDefault(group, 0.0));
        return box.centre().minus(centre).times(explosion).plus(Vec3.ZERO).plus(slid); // 0, never -0
    }

    /** The box of a thing of {@code group} where it is now. */
    public Box3 moved(String group, Box3 box) {
        var shift = shift(group, box);
        return new Box3(box.min().plus(shift), box.max().plus(shift));
    }

    /** The box around every part and block where they are now. */
    public Box3 box() {
        return Box3.around(assembly.groups().stream()
                .flatMap(group -> group.boxes().map(box -> moved(group.name(), box)))
                .toList());
    }

    private static void requireShare(String group, double share) {
        if (!(share >= 0 && share <= 1)) {
            throw new IllegalArgumentException("group '" + group + "' is open by " + share
                    + " of its travel, but must be by 0 (closed) to 1 (all the way).");
        }
    }

    private static void requireMoving(Assembly assembly, String name) {
        if (!group(assembly, name).moves()) {
            throw new IllegalArgumentException("group '" + name + "' of '" + assembly.name()
                    + "' does not move, so it cannot be open; "
                    + named("those that move", moving(assembly)));
        }
    }

    private static Group group(Assembly assembly, String name) {
        return assembly.groups().stream()
                .filter(group -> group.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("'" + assembly.name() + "' has no group '" + name
                        + "'; " + named("its groups", assembly.groups())));
    }

    private static List<Group> moving(Assembly assembly) {
        return assembly.groups().stream().filter(Group::moves).toList();
    }

    private static String named(String which, List<Group> groups) {
        return groups.isEmpty()
                ? which + ": none."
                : which + ": "
                        + groups.stream().map(group -> "'" + group.name() + "'").collect(Collectors.joining(", "))
                        + ".";
    }
}
