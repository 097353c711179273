package org.standwright.design.door;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import org.standwright.assembly.Hardware;
import org.standwright.design.StandDesign;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.frame.Frame;
import org.standwright.design.frame.ScrewChoice;
import org.standwright.design.kit.Hinge;
import org.standwright.design.kit.Screw;

/** What doors need beside their boards: hinges, their screws by length, and what holds a door closed. */
public final class DoorHardware {
    private final StandDesign design;
    private final DoorHinges hinges;

    /** Screws of one use by their family and length, in the order in which they come up. */
    private final LinkedHashMap<String, LinkedHashMap<String, Integer>> screws = new LinkedHashMap<>();

    private final LinkedHashMap<String, Integer> bought = new LinkedHashMap<>();
    private int catches;

    public DoorHardware(Frame frame, List<BayLayout> bays) {
        this.design = frame.design();
        this.hinges = new DoorHinges(frame, bays);
        for (var bay : bays) {
            bay.leaves(SectionLayout.Closed.class).forEach(this::count);
        }
    }

    public List<Hardware> lines() {
        var lines = new ArrayList<Hardware>();
        bought.forEach((name, count) -> lines.add(new Hardware(name, count, "doors")));
        screws.forEach((use, items) -> items.forEach((item, count) -> lines.add(new Hardware(item, count, use))));
        if (catches > 0) {
            lines.add(new Hardware("magnetic catch", catches, "doors on butt hinges: holds them and stops them flush"));
        }
        return lines;
    }

    private void count(SectionLayout.Closed section) {
        for (var door : section.doors()) {
            int count = door.hinges().size();
            double length = hinges.screw(door, DoorHinges.wall(door, section.opening()));
            bought.merge(door.hinge().name(), count, Integer::sum);
            if (door.hinge() instanceof Hinge.Butt butt) {
                var panel = design.screws().panel();
                double edge = new ButtMount(design, butt).screw();
                screws("hinges on uprights", panel, length, count * butt.screws());
                screws("hinges on door edges (not rated)", panel, edge, count * butt.screws());
                catches++;
            } else {
                var slide = design.screws().slide();
                screws("hinge plates on uprights", slide, length, 2 * count);
                double thickness = design.drawers().front().material().thickness();
                screws("hinge cups on doors", slide, new ScrewChoice(design).hingeInto(thickness), 2 * count);
            }
        }
    }

    private void screws(String use, Screw family, double length, int count) {
        var item = family.name() + " x " + design.unit().length(length);
        screws.computeIfAbsent(use, some -> new LinkedHashMap<>()).merge(item, count, Integer::sum);
    }
}
