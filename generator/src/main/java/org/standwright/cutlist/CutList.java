package org.standwright.cutlist;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.standwright.assembly.Assembly;
import org.standwright.design.built.Furniture;
import org.standwright.part.Material;
import org.standwright.unit.Units;

/** What to cut and what to buy for one assembly; parts of sheets and of bars alike. */
public record CutList(List<CutLine> lines, List<HardwareLine> hardware, Cutting cutting) {
    public CutList {
        lines = List.copyOf(lines);
        hardware = List.copyOf(hardware);
    }

    /** A list that asks nothing beyond sizes and grain. */
    public CutList(List<CutLine> lines, List<HardwareLine> hardware) {
        this(lines, hardware, Cutting.PLAIN);
    }

    /**
     * Merges parts that are equal by rotation, and hardware of one name.
     *
     * @param units of the sizes in the machining notes
     */
    public static CutList of(Assembly assembly, Units units) {
        var lines = new LineMerger(units).lines(assembly.parts());
        var hardware = new ArrayList<>(HardwareLine.merged(assembly.hardware()));
        EdgingRun.of(lines).forEach(run -> hardware.add(run.hardware(units)));
        return new CutList(lines, hardware);
    }

    /** The same of a piece of furniture, with what its design asks of the cutting. */
    public static CutList of(Furniture furniture) {
        var list = of(furniture.assembly(), furniture.design().unit());
        return new CutList(list.lines, list.hardware, new FurnitureCutting(furniture, list.lines).asked());
    }

    /** What is cut from sheets: all that a sheet plan knows. */
    public List<CutLine> sheetLines() {
        return lines.stream().filter(line -> !line.material().isBar()).toList();
    }

    /** What is cut from each sheet material, in order of first use. */
    public Map<Material, List<CutLine>> linesBySheetMaterial() {
        return sheetLines().stream()
                .filter(line -> line.count() > 0)
                .collect(Collectors.groupingBy(CutLine::material, LinkedHashMap::new, Collectors.toList()));
    }

    /** The groups whose pieces are cut from this sheet material; one whose labels are no lines is in none. */
    public List<Together> together(Material material) {
        var labels = sheetLines().stream()
                .filter(line -> line.material().equals(material))
                .map(CutLine::label)
                .collect(Collectors.toSet());
        return cutting.together().stream()
                .filter(group -> labels.contains(group.labels().get(0)))
                .toList();
    }

    /**
     * For those who tell pieces by their label.
     *
     * @throws IllegalArgumentException if two lines have one label
     */
    public void requireOwnLabels() {
        var seen = new HashSet<String>();
        for (var line : lines) {
            if (!seen.add(line.label())) {
                throw new IllegalArgumentException(
                        "two lines of the cut list are labelled '" + line.label() + "'; give each its own label.");
            }
        }
    }

    /** What is cut from bars, section by section. */
    public List<BarRun> bars() {
        var sections = new LinkedHashMap<Material, List<CutLine>>();
        lines.stream()
                .filter(line -> line.material().isBar())
                .forEach(line -> sections.computeIfAbsent(line.material(), first -> new ArrayList<>())
                        .add(line));
        return sections.entrySet().stream()
                .map(section -> new BarRun(section.getKey(), section.getValue()))
                .toList();
    }

    /** Tapes and lippings that cover edges, in order of first use; they are in {@link #hardware} too. */
    public List<EdgingRun> edgings() {
        return EdgingRun.of(lines);
    }
}
