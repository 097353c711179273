package org.standwright.design.wall.build;

import java.util.ArrayList;
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
        for (var holder : holders) {
            all.addAll(holder.made().hardware());
            if (holder.backing().by() == Backing.By.SPACER) {
                all.addAll(maker.spacerHardware(holder.made()));
            }
        }
        return all;
    }

    private String screw() {
        var fixing = design.fixing();
        var head = fixing.washer().isPresent()
                ? ", washer head " + design.unit().length(fixing.washer().getAsDouble())
                : "";
        return fixing.screw().name() + ", " + design.unit().length(screwing.length()) + head;
    }
}
