package org.standwright.packet;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.standwright.design.Mount;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.column.Running;
import org.standwright.design.kit.Size3;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Mark;
import org.standwright.packet.page.Table;
import org.standwright.packet.page.Table.Column;
import org.standwright.unit.Units;

/** Sizes of the drawers, and the lines to fill in before their boxes are cut. */
final class DrawerSection implements Section {
    /** Opening widths at front and back that differ by more are put right first, mm; common practice, no source. */
    private static final double OUT_OF_PARALLEL = 0.5;
    /** Where drawers run on runners. */
    private static final String NONE = "–";

    @Override
    public void print(Contents contents, Flow flow) {
        var bays = contents.stand().bays().stream()
                .filter(bay -> !bay.drawers().isEmpty())
                .toList();
        if (bays.isEmpty()) {
            return;
        }
        flow.heading("Drawers");
        flow.table(table(bays, contents.units()));
        flow.paragraph("Box: outside width × height × length. Slide line on the side: centre of the slide above the "
                + "top face of the bottom panel. On the box: above its lower edge.");
        var running = Running.of(contents.design());
        flow.paragraph((running.slideLine().isPresent() ? "Slides: " : "Runners: ") + running.name() + ", set back "
                + contents.units().length(running.setBack()) + " from the "
                + (inset(contents) ? "back of the front" : "front edge") + ", "
                + contents.exact(running.sideSpace()) + " a side.");
        flow.heading("Measure, then cut");
        flow.paragraph("The drawer boxes are a second stage: cut them after the carcass is glued and measured. "
                + "If front and back differ by more than " + contents.exact(OUT_OF_PARALLEL)
                + ", stop and put the carcass right first.");
        for (var bay : bays) {
            flow.item(Mark.BOX_ONLY, measured(bay, contents));
        }
        if (inset(contents)) {
            flow.paragraph("Inset fronts are trimmed last, to the opening as it turned out.");
        }
    }

    private static boolean inset(Contents contents) {
        return contents.design().drawers().mount() == Mount.INSET;
    }

    private static String measured(BayLayout bay, Contents contents) {
        double both = 2 * Running.of(contents.design()).sideSpace();
        return "Bay " + bay.name() + ": opening measured, front ___________ back ___________; box width = smaller − "
                + contents.exact(both) + " = ___________ (drawn: opening "
                + contents.units().bareLength(bay.opening().width()) + ", box "
                + contents.units().bareLength(bay.drawers().get(0).box().width()) + ")";
    }

    private static Table table(List<BayLayout> bays, Units units) {
        var rows = new ArrayList<List<String>>();
        bays.forEach(bay -> bay.drawers().forEach(drawer -> rows.add(row(drawer, units))));
        return new Table(
                List.of(
                        Column.words("Drawer"),
                        Column.figures("Front height"),
                        Column.figures("Opening"),
                        Column.figures("Box"),
                        Column.figures("Usable height"),
                        Column.figures("Slide"),
                        Column.figures("Line on side"),
                        Column.figures("Line on box")),
                rows);
    }

    private static List<String> row(DrawerLayout drawer, Units units) {
        return List.of(
                drawer.name(),
                units.bareLength(drawer.front().height()),
                units.bareLength(drawer.cell()),
                box(drawer.box(), units),
                units.bareLength(drawer.inside().height()),
                drawer.slide().map(slide -> units.bareLength(slide.length())).orElse(NONE),
                line(drawer.slideLineOnSide(), units),
                line(drawer.slideLineOnBox(), units));
    }

    private static String line(OptionalDouble line, Units units) {
        return line.isPresent() ? units.bareLength(line.getAsDouble()) : NONE;
    }

    private static String box(Size3 box, Units units) {
        return units.bareLength(box.width()) + " × " + units.bareLength(box.height()) + " × "
                + units.bareLength(box.depth());
    }
}
