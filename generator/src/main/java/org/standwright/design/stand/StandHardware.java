package org.standwright.design.stand;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.Group;
import org.standwright.assembly.Hardware;
import org.standwright.design.Grip;
import org.standwright.design.Hang;
import org.standwright.design.StandDesign;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.carcass.ButtJoints;
import org.standwright.design.column.Running;
import org.standwright.design.door.DoorHardware;
import org.standwright.design.frame.Frame;
import org.standwright.design.frame.ScrewChoice;
import org.standwright.design.support.SupportPlan;
import org.standwright.part.Part;

/** What a stand needs beside its boards: screws counted by their holes, those of the back by their spacing. */
public final class StandHardware {
    /** Spacing of the screws around the back, mm; common practice, no source. */
    private static final double BACK_SPACING = 150;
    /** A worktop screw ends this far below the top, mm (shop practice, common practice, no source). */
    private static final double BELOW_TOP = 5;
    /** Washer under a front screw's head, mm. */
    private static final double WASHER = 1.5;

    /** Pins under one adjustable shelf. */
    private static final int PINS = 4;

    private final Frame frame;
    private final StandDesign design;
    private final ScrewChoice screws;

    StandHardware(Frame frame) {
        this.frame = frame;
        this.design = frame.design();
        this.screws = new ScrewChoice(design);
    }

    List<Hardware> list(List<Group> groups, List<BayLayout> bays, SupportPlan support) {
        var parts = groups.stream()
                .flatMap(group -> group.parts().stream())
                .map(placed -> placed.part())
                .toList();
        var drawers = bays.stream().flatMap(bay -> bay.drawers().stream()).toList();
        var joints = new ButtJoints(frame);
        var list = new ArrayList<Hardware>(support.hardware(frame));
        list.addAll(joints.hardware(parts));
        slides(list, parts, drawers);
        runners(list, parts);
        worktop(list, parts);
        plinth(list, parts);
        back(list, parts);
        fronts(list, parts, drawers);
        doors(list, bays);
        pins(list, parts);
        list.add(new Hardware("wood glue", 1, joints.glued()));
        list.addAll(new SteadyHardware(design).list(bays));
        return list;
    }

    private void slides(List<Hardware> list, List<Part> parts, List<DrawerLayout> drawers) {
        for (var drawer : drawers) {
            drawer.slide()
                    .ifPresent(slide -> list.add(new Hardware(
                            "pair of " + Running.of(design).name() + ", "
                                    + design.unit().length(slide.length()),
                            1,
                            "drawer " + drawer.name())));
        }
        if (design.drawers().hang() instanceof Hang.Slides && !drawers.isEmpty()) {
            slideScrews(list, parts);
        }
    }

    private void slideScrews(List<Hardware> list, List<Part> parts) {
        screws(
                list,
                parts,
                "drawer side",
                screws.slideInto(design.drawers().box().material().thickness()),
                "on drawer boxes");
        screws(list, parts, "side", screws.slideInto(frame.panel()), "on sides");
        if (holes(parts, "partition", "slide pilot") > 0) {
            screws(list, parts, "partition", screws.slideIntoShared(frame.panel()), "on partitions");
        }
    }

    private void screws(List<Hardware> list, List<Part> parts, String part, double length, String where) {
        int count = holes(parts, part, "slide pilot");
        if (count > 0) {
            list.add(new Hardware(screw(design.screws().slide().name(), length), count, "slides " + where));
        }
    }

    /** Drawers without slides: screws of what they run on. */
    private void runners(List<Hardware> list, List<Part> parts) {
        if (design.drawers().hang() instanceof Hang.Runners runners) {
            int bars = holes(parts, "runner", "runner screw") + holes(parts, "kicker", "kicker screw");
            if (bars > 0) {
                var screw = screw(design.screws().panel().name(), screws.runner(runners.bar()));
                list.add(new Hardware(screw, bars, "runners and kickers, through their width into the uprights"));
                double two = 2 * runners.bar().thickness() - ScrewChoice.SHORT_OF_FACE;
                list.add(new Hardware(
                        screw(design.screws().panel().name(), screws.panel(two, "a stop on its runner")),
                        holes(parts, "stop", "stop screw"),
                        "stops, down into the runners"));
            }
        }
    }

    private void worktop(List<Hardware> list, List<Part> parts) {
        double stack = frame.panel()
                + design.worktop().layers()
                        * design.worktop().sheet().material().thickness();
        double length = screws.panel(stack - BELOW_TOP, "a worktop screwed up through the sub-top");
        list.add(new Hardware(
                screw(design.screws().panel().name(), length),
                holes(parts, "sub-top", "worktop screw"),
                "worktop, from inside"));
    }

    private void plinth(List<Hardware> list, List<Part> parts) {
        int count = holes(parts, "bottom", "plinth screw");
        if (count > 0) {
            double length = screws.panel(3 * frame.panel(), "the plinth screwed to the bottom");
            list.add(new Hardware(
                    screw(design.screws().panel().name(), length),
                    count,
                    "plinth, down through the bottom into its edges (not rated)"));
        }
    }

    private void back(List<Hardware> list, List<Part> parts) {
        double levels = lengths(parts, "divider") + lengths(parts, "shelf");
        double joints = (design.carcass().backPieces() - 1) * frame.height();
        double around = 2 * frame.height() + 2 * frame.width() + lengths(parts, "partition") + levels + joints;
        double into = frame.back() + 2 * frame.panel();
        list.add(new Hardware(
                screw(design.screws().panel().name(), screws.panel(into, "the back")),
                (int) StrictMath.ceil(around / BACK_SPACING),
                "back, every " + design.unit().length(BACK_SPACING) + " into panel edges (not rated)"));
    }

    private void fronts(List<Hardware> list, List<Part> parts, List<DrawerLayout> drawers) {
        if (drawers.isEmpty()) {
            return;
        }
        double most = WASHER
                + design.drawers().box().material().thickness()
                + design.drawers().front().material().thickness()
                - ScrewChoice.SHORT_OF_FACE;
        int count = holes(parts, "box front", "front screw, oversize");
        if (count == 0) {
            return;
        }
        var screw = screw(design.screws().panel().name(), screws.panel(most, "drawer fronts"));
        list.add(new Hardware(screw, count, "drawer fronts, from inside the box"));
        list.add(new Hardware("washer for " + design.screws().panel().name(), count, "drawer fronts"));
        pulls(list, drawers.size(), "drawer fronts");
        bumpers(list, drawers.size(), "behind drawer fronts");
    }

    private void doors(List<Hardware> list, List<BayLayout> bays) {
        int doors = bays.stream().mapToInt(bay -> bay.doors().size()).sum();
        list.addAll(new DoorHardware(frame, bays).lines());
        pulls(list, doors, "doors");
        bumpers(list, doors, "behind doors");
    }

    /** Two behind each overlay front. */
    private void bumpers(List<Hardware> list, int fronts, String where) {
        if (!frame.isInset() && design.drawers().bumper() > 0 && fronts > 0) {
            list.add(new Hardware(
                    "bumper " + design.unit().length(design.drawers().bumper()) + " thick", 2 * fronts, where));
        }
    }

    private static void pins(List<Hardware> list, List<Part> parts) {
        int shelves = (int) parts.stream()
                .filter(part -> part.name().equals("adjustable shelf"))
                .count();
        if (shelves > 0) {
            list.add(new Hardware("shelf pin 5 mm", PINS * shelves, "adjustable shelves"));
        }
    }

    /** One on each front, none where a notch is the grip. */
    private void pulls(List<Hardware> list, int count, String where) {
        if (design.drawers().grip() instanceof Grip.Bought bought && count > 0) {
            var pull = bought.pull();
            var spacing = pull.spacing() > 0 ? " " + design.unit().length(pull.spacing()) + " apart" : "";
            list.add(new Hardware(pull.name(), count, where + ", bored" + spacing + " after they are set"));
        }
    }

    private static double lengths(List<Part> parts, String name) {
        return parts.stream()
                .filter(part -> part.name().equals(name))
                .mapToDouble(Part::length)
                .sum();
    }

    private String screw(String family, double length) {
        return family + " x " + design.unit().length(length);
    }

    private static int holes(List<Part> parts, String part, String purpose) {
        return (int) parts.stream()
                .filter(candidate -> candidate.name().equals(part))
                .flatMap(candidate -> candidate.features().stream())
                .filter(feature -> feature.purpose().equals(purpose))
                .count();
    }
}
