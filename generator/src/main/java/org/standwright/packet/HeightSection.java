package org.standwright.packet;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.Layout;
import org.standwright.design.Support;
import org.standwright.design.built.Stand;
import org.standwright.drawing.figure.PrintedStack;
import org.standwright.drawing.figure.StackFigure;
import org.standwright.packet.page.Band;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Table;
import org.standwright.packet.page.Table.Column;
import org.standwright.packet.words.Counted;
import org.standwright.packet.words.FindingsInShort;
import org.standwright.packet.words.FoundHeight;
import org.standwright.unit.Units;

/** The first page: what it is, and the heights that add up to the working height. */
final class HeightSection implements Section<Stand> {
    private static final double FIGURE = 85;

    @Override
    public void print(Contents<? extends Stand> contents, Flow flow) {
        var stand = contents.furniture();
        flow.title(stand.design().name());
        flow.paragraph(summary(stand));
        if (stand.design().layout() == Layout.MIRRORED) {
            flow.paragraph(
                    "Mirrored: the design's left is built at the right and its right at the left. All pages show "
                            + "it as it is built; the machine itself is not mirrored.");
        }
        FindingsInShort.of(contents.findings()).ifPresent(flow::paragraph);
        flow.heading("Working height");
        flow.paragraph(FoundHeight.of(stand));
        flow.heading("Height stack");
        flow.table(stack(PrintedStack.of(stand.stack(), contents.units()), contents.units()));
        flow.paragraph(solved(stand, contents.units()));
        flow.add(Band.gap(4));
        flow.figure(StackFigure.of(stand, FIGURE, flow.measure()));
        masses(contents, flow);
    }

    private static String summary(Stand stand) {
        var units = stand.design().unit();
        long drawers =
                stand.bays().stream().mapToLong(bay -> bay.drawers().size()).sum();
        var size = stand.carcass().size();
        return "A stand for the " + stand.design().machine().name() + " with a working height of "
                + units.length(stand.stack().workingHeight()) + ": a carcass " + units.bareLength(size.x()) + " wide, "
                + units.bareLength(size.y()) + " deep and " + units.length(size.z()) + " high, "
                + Counted.of(drawers, "drawer") + doors(stand) + " in "
                + Counted.of(stand.bays().size(), "bay") + ", "
                + on(stand.design().support()) + ".";
    }

    private static String doors(Stand stand) {
        long doors = stand.bays().stream().mapToLong(bay -> bay.doors().size()).sum();
        return doors == 0 ? "" : " and " + Counted.of(doors, "door");
    }

    private static String on(Support support) {
        if (support instanceof Support.Casters) {
            return "on casters";
        }
        if (support instanceof Support.Levelers) {
            return "on levelers";
        }
        return support instanceof Support.Plinth ? "on a plinth" : "on pads";
    }

    private static Table stack(PrintedStack stack, Units units) {
        var rows = new ArrayList<List<String>>();
        stack.layers().forEach(layer -> rows.add(row(layer.name(), layer, units)));
        rows.add(row("Sum = working height", stack.sum(), units));
        return new Table(
                List.of(Column.words("From the floor up"), Column.figures("Height"), Column.figures("Adjustable")),
                rows);
    }

    private static List<String> row(String name, PrintedStack.Layer layer, Units units) {
        var range = layer.isAdjustable()
                ? units.bareLength(layer.lowest()) + " to " + units.bareLength(layer.highest())
                : "fixed";
        return List.of(name, units.bareLength(layer.height()), range);
    }

    private static String solved(Stand stand, Units units) {
        var printed =
                units.length(PrintedStack.of(stand.stack(), units).carcass().height());
        var exact = units.length(stand.carcass().size().z());
        return "The carcass is the term that was solved for: " + printed
                + " high, so that the sum is the working height"
                + (printed.equals(exact)
                        ? ""
                        : "; it takes up what the other terms were rounded by (alone: " + exact + ")")
                + ". Measure the machine and the worktop before cutting; a change in any term changes the carcass.";
    }

    private static void masses(Contents<? extends Stand> contents, Flow flow) {
        if (contents.masses().isEmpty()) {
            return;
        }
        flow.heading("Masses");
        var units = contents.units();
        var rows = contents.masses().stream()
                .map(line -> List.of(line.what(), units.mass(line.mass())))
                .toList();
        flow.table(new Table(List.of(Column.words("What"), Column.figures("Mass")), rows));
    }
}
