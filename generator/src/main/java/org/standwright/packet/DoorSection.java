package org.standwright.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.standwright.design.Mount;
import org.standwright.design.built.Compartment;
import org.standwright.design.built.DoorLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Hinge;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Mark;
import org.standwright.packet.page.Table;
import org.standwright.packet.page.Table.Column;
import org.standwright.unit.Units;

/** Sizes of the doors and where their hinges go. */
final class DoorSection implements Section<Stand> {
    @Override
    public void print(Contents<? extends Stand> contents, Flow flow) {
        var rows = new ArrayList<List<String>>();
        var hinges = new ArrayList<Hinge>();
        for (var compartment : Compartment.of(contents.furniture().bays())) {
            if (compartment.section() instanceof SectionLayout.Closed closed) {
                for (var door : closed.doors()) {
                    rows.add(row(door, closed, contents.units()));
                    if (!hinges.contains(door.hinge())) {
                        hinges.add(door.hinge());
                    }
                }
            }
        }
        if (rows.isEmpty()) {
            return;
        }
        flow.heading("Doors");
        flow.table(new Table(
                List.of(
                        Column.words("Door"),
                        Column.figures("Width × height"),
                        Column.words("Hung"),
                        Column.words("Hinge"),
                        Column.figures("Hinges on the door"),
                        Column.figures("On the carcass")),
                rows));
        flow.paragraph("Hinges on the door: their centres above its lower edge. On the carcass: the same centres above "
                + "the lower edge of the opening behind the door.");
        hinges.forEach(hinge -> flow.paragraph(hinge.name() + ": " + words(hinge, contents)));
        if (contents.furniture().design().drawers().mount() == Mount.INSET) {
            flow.paragraph("Inset doors are trimmed last, to the opening as it turned out, with "
                    + contents.exact(contents.furniture().design().drawers().gap()) + " of gap all round.");
            measured(contents, flow);
        }
    }

    private static void measured(Contents<? extends Stand> contents, Flow flow) {
        for (var compartment : Compartment.of(contents.furniture().bays())) {
            if (compartment.section() instanceof SectionLayout.Closed closed) {
                var opening = closed.opening();
                flow.item(
                        Mark.BOX_ONLY,
                        "Bay " + compartment.bay() + ": opening of door "
                                + closed.doors().get(0).name()
                                + " measured, width ___________ height ___________ (drawn: "
                                + contents.units().bareLength(opening.width()) + " × "
                                + contents.units().bareLength(opening.height()) + ")");
            }
        }
    }

    private static List<String> row(DoorLayout door, SectionLayout.Closed closed, Units units) {
        double up = door.front().y0() - closed.opening().y0();
        return List.of(
                door.name(),
                units.bareLength(door.front().width()) + " × "
                        + units.bareLength(door.front().height()),
                door.hung().name().toLowerCase(Locale.ROOT),
                door.hinge().name(),
                heights(door.hinges().stream().mapToDouble(Double::doubleValue), units),
                heights(door.hinges().stream().mapToDouble(height -> height + up), units));
    }

    private static String heights(DoubleStream heights, Units units) {
        return heights.mapToObj(units::bareLength).collect(Collectors.joining("\n"));
    }

    private static String from(Contents<? extends Stand> contents) {
        return contents.furniture().design().drawers().mount() == Mount.INSET
                ? "the back of the closed door"
                : "the carcass's front edge";
    }

    private static String words(Hinge hinge, Contents<? extends Stand> contents) {
        if (hinge instanceof Hinge.Concealed concealed) {
            return "cup " + contents.exact(concealed.cup()) + " wide and " + contents.exact(concealed.cupDepth())
                    + " deep in the back of the door, its centre " + contents.exact(concealed.cupFromEdge())
                    + " from the door's edge; plate screws " + contents.exact(concealed.plateSetBack())
                    + " behind " + from(contents) + ", " + contents.exact(concealed.plateSpacing())
                    + " apart, half of that above and half below its centre.";
        }
        var butt = (Hinge.Butt) hinge;
        return "leaves " + contents.exact(butt.length()) + " long and " + contents.exact(butt.leaf())
                + " wide, " + contents.exact(butt.thickness()) + " thick, " + butt.screws()
                + " screws in each. Both lie "
                + "in the gap, one on the upright's inner face and one on the door's edge, let in only where the "
                + "door's notes have a mortise; the pin stands before the fronts.";
    }
}
