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

/** What doors need beside their boards: hinges, their screws by length, and what holds a door closed. */
public final class DoorHardware {
    private final StandDesign design;
    private final DoorHinges hinges;

    /** Screws of one use by their lengths, in the order in which they come up. */
    private final LinkedHashMap<String, LinkedHashMap<Double, Integer>> screws = new LinkedHashMap<>();

    private final LinkedHashMap<String, Integer> bought = new LinkedHashMap<>();
    private int catches;

    public DoorHardware(Frame frame, List<BayLayout> bays) {
        this.design = frame.design();
        this.hinges = new DoorHinges(frame, bays);
        for (var bay : bays) {
            bay.leaves().stream()
                    .filter(SectionLayout.Closed.class::isInstance)
                    .map(SectionLayout.Closed.class::cast)
                    .forEach(this::count);
        }
    }

    public List<Hardware> lines() {
        var lines = new ArrayList<Hardware>();
        bought.forEach((name, count) -> lines.add(new Hardware(name, count, "doors")));
        screws.forEach((use, lengths) -> lengths.forEach((length, count) -> lines.add(new Hardware(
                design.screws().slide().name() + " x " + design.unit().length(length), count, use))));
        if (catches > 0) {
            lines.add(new Hardware("magnetic catch", catches, "doors on butt hinges: holds them and stops them flush"));
        }
        return lines;
    }

    private void count(SectionLayout.Closed section) {
        for (var door : section.doors()) {
            int count = door.hinges().size();
            double length = hinges.screw(door.hinge(), DoorHinges.wall(door, section.opening()));
            bought.merge(door.hinge().name(), count, Integer::sum);
            if (door.hinge() instanceof Hinge.Butt butt) {
                screws("hinges on uprights", length, count * butt.screws());
                screws("hinges on door edges (not rated)", length, count * butt.screws());
                catches++;
            } else {
                screws("hinge plates on uprights", length, 2 * count);
                double thickness = design.drawers().front().material().thickness();
                screws("hinge cups on doors", new ScrewChoice(design).hingeInto(thickness), 2 * count);
            }
        }
    }

    private void screws(String use, double length, int count) {
        screws.computeIfAbsent(use, some -> new LinkedHashMap<>()).merge(length, count, Integer::sum);
    }
}
