package org.standwright.design.wall.build;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import org.standwright.assembly.Hardware;
import org.standwright.design.WallDesign;
import org.standwright.design.wall.Framing;
import org.standwright.design.wall.built.Backing;
import org.standwright.design.wall.built.CleatedWall;
import org.standwright.design.wall.built.HungHolder;
import org.standwright.design.wall.built.Screwing;
import org.standwright.design.wall.holder.HolderMaker;

/** What is bought besides boards: screws and anchors of the strips, and what each holder asks for. */
record WallHardware(WallDesign design, Screwing screwing, HolderMaker maker) {

    List<Hardware> list(List<CleatedWall> walls, List<HungHolder> holders) {
        var all = new ArrayList<Hardware>();
        for (var wall : walls) {
            int screws = wall.strips().stream()
                    .mapToInt(strip -> strip.studs().size() * strip.screws().size())
                    .sum();
            if (screws > 0) {
                all.add(new Hardware(screw(), screws, "strips on " + wall.wall().name()));
                if (wall.wall().framing() instanceof Framing.Masonry masonry) {
                    all.add(new Hardware(
                            masonry.anchor(), screws, "strips on " + wall.wall().name()));
                }
            }
        }
        all.addAll(merged(holders));
        return all;
    }

    /** Where it goes with the names of all holders that it goes into; glue once for all of them. */
    private List<Hardware> merged(List<HungHolder> holders) {
        var counts = new LinkedHashMap<Use, Integer>();
        var names = new LinkedHashMap<Use, List<String>>();
        for (var holder : holders) {
            for (var line : bought(holder)) {
                var use = use(holder.name(), line);
                counts.merge(use, line.count(), Integer::sum);
                names.computeIfAbsent(use, first -> new ArrayList<>()).add(holder.name());
            }
        }
        return counts.entrySet().stream()
                .map(entry -> entry.getKey().line(entry.getValue(), names.get(entry.getKey())))
                .toList();
    }

    private List<Hardware> bought(HungHolder holder) {
        var bought = new ArrayList<>(holder.made().hardware());
        if (holder.backing().by() == Backing.By.SPACER) {
            bought.addAll(maker.spacerHardware(holder.made()));
        }
        return bought;
    }

    private static Use use(String holder, Hardware line) {
        var before = holder + ", ";
        var where = line.use().startsWith(before) ? line.use().substring(before.length()) : line.use();
        return line.item().equals(HolderMaker.GLUE) ? Use.GLUE : new Use(line.item(), where);
    }

    private record Use(String item, String where) {
        private static final Use GLUE = new Use(HolderMaker.GLUE, "hangers on their backs and joints of all holders");

        Hardware line(int count, List<String> holders) {
            return this == GLUE
                    ? new Hardware(item, 1, where)
                    : new Hardware(item, count, where + ": " + String.join(", ", holders));
        }
    }

    private String screw() {
        var fixing = design.fixing();
        var head = fixing.washer().isPresent()
                ? ", with washer " + design.unit().length(fixing.washer().getAsDouble())
                : "";
        return fixing.screwName() + ", " + design.unit().length(screwing.length()) + head;
    }
}
