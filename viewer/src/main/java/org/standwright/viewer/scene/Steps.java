package org.standwright.viewer.scene;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Block;
import org.standwright.assembly.Group;
import org.standwright.assembly.PlacedPart;

/**
 * Puts an assembly together step by step: a stand from its carcass to its fronts, a wall row by row from each wall's
 * lowest, then holder by holder. Common practice, no source.
 */
public final class Steps {
    private static final List<String> OF_A_STAND = List.of(
            "Carcass", "Slides", "Sub-top", "Back", "Support", "Worktop", "Machine", "Shelves", "Drawers", "Fronts");
    private static final Map<String, String> IN_A_CARCASS = Map.of(
            "sub-top", "Sub-top",
            "back", "Back",
            "runner", "Slides",
            "kicker", "Slides",
            "stop", "Slides",
            "adjustable shelf", "Shelves");
    private static final Pattern ROW = Pattern.compile(".* row \\d+(?= strip \\d+$|$)");
    private static final String STRIP = "strip";

    /** Labels by the step that adds them, in the order of the steps. */
    private final Map<String, Set<String>> added = new LinkedHashMap<>();

    private Steps() {}

    /** Each step adds something; with the last, all of the assembly is there. */
    public static List<Step> of(Assembly assembly) {
        var steps = new Steps();
        if (assembly.groups().stream().anyMatch(group -> group.name().equals("carcass"))) {
            OF_A_STAND.forEach(name -> steps.added.put(name, new LinkedHashSet<>()));
            assembly.groups().forEach(steps::addOfAStand);
        } else {
            assembly.groups().forEach(steps::addOfAWall);
        }
        return steps.all();
    }

    private void addOfAStand(Group group) {
        group.parts().forEach(part -> add(stepOf(group, part), part.label()));
        group.blocks().forEach(block -> add(stepOf(group, block), block.label()));
    }

    private void addOfAWall(Group group) {
        group.parts().forEach(part -> add(part.part().name().equals(STRIP) ? row(part) : group.name(), part.label()));
        group.blocks().forEach(block -> add(group.name(), block.label()));
    }

    private void add(String step, String label) {
        added.computeIfAbsent(step, name -> new LinkedHashSet<>()).add(label);
    }

    private List<Step> all() {
        var seen = new LinkedHashSet<String>();
        var steps = new ArrayList<Step>();
        added.forEach((name, labels) -> {
            if (seen.addAll(labels)) {
                steps.add(new Step(name, seen));
            }
        });
        return steps;
    }

    private static String stepOf(Group group, PlacedPart part) {
        if (group.moves()) {
            return part.part().name().equals("drawer front") ? "Fronts" : "Drawers";
        }
        return group.name().equals("carcass")
                ? IN_A_CARCASS.getOrDefault(part.part().name(), "Carcass")
                : whole(group);
    }

    private static String stepOf(Group group, Block block) {
        if (block.kind() == Block.Kind.SLIDE) {
            return "Slides";
        }
        return block.kind() == Block.Kind.HINGE ? "Fronts" : group.moves() ? "Drawers" : whole(group);
    }

    /** What is put on in one go; doors are all that has a name of its own. */
    private static String whole(Group group) {
        return switch (group.name()) {
            case "carcass" -> "Carcass";
            case "support" -> "Support";
            case "worktop" -> "Worktop";
            case "machine" -> "Machine";
            default -> "Fronts";
        };
    }

    /** 'north row 2' of 'north row 2 strip 1'. */
    private static String row(PlacedPart strip) {
        var matcher = ROW.matcher(strip.label());
        return matcher.lookingAt() ? matcher.group() : strip.label();
    }
}
