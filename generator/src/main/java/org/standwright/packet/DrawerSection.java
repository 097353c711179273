package org.standwright.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.standwright.design.Hang;
import org.standwright.design.Mount;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.Compartment;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.built.Stand;
import org.standwright.design.kit.Bar;
import org.standwright.design.kit.Size3;
import org.standwright.design.kit.Slide;
import org.standwright.packet.page.Flow;
import org.standwright.packet.page.Mark;
import org.standwright.packet.page.Table;
import org.standwright.packet.page.Table.Column;
import org.standwright.unit.Units;

/** Sizes of the drawers, and the lines to fill in before their boxes are cut. */
final class DrawerSection implements Section<Stand> {
    /** Opening widths at front and back that differ by more are put right first, mm; common practice, no source. */
    private static final double OUT_OF_PARALLEL = 0.5;

    @Override
    public void print(Contents<? extends Stand> contents, Flow flow) {
        var drawers = contents.furniture().bays().stream()
                .map(BayLayout::drawers)
                .flatMap(List::stream)
                .toList();
        if (drawers.isEmpty()) {
            return;
        }
        flow.heading("Drawers");
        var hang = contents.furniture().design().drawers().hang();
        flow.table(table(drawers, hang instanceof Hang.Slides, contents.units()));
        flow.paragraph("Box: outside width × height × length."
                + (hang instanceof Hang.Slides slides ? slides(slides.slide(), contents) : "")
                + (hang instanceof Hang.Runners runners ? runners(runners.bar(), contents) : ""));
        flow.heading("Measure, then cut");
        flow.paragraph("The drawer boxes are a second stage: cut them after the carcass is glued and measured. "
                + "If front and back differ by more than " + contents.exact(OUT_OF_PARALLEL)
                + ", stop and put the carcass right first.");
        sectionsByBay(contents).forEach((bay, section) -> flow.item(Mark.BOX_ONLY, measured(bay, section, contents)));
        if (isInset(contents)) {
            flow.paragraph("Inset fronts are trimmed last, to the opening as it turned out.");
        }
    }

    private static boolean isInset(Contents<? extends Stand> contents) {
        return contents.furniture().design().drawers().mount() == Mount.INSET;
    }

    private static String slides(Slide slide, Contents<? extends Stand> contents) {
        return " Slide line on the side: centre of the slide above the top face of the bottom panel. On the box: above "
                + "its lower edge. Slides: " + slide.name() + ", set back "
                + contents.units().length(slide.setBack()) + " from the "
                + (isInset(contents) ? "back of the front" : "front edge") + ", "
                + contents.exact(slide.sideSpace()) + " a side.";
    }

    private static String runners(Bar bar, Contents<? extends Stand> contents) {
        return " Runners under the box, kickers above it and stops behind it, cut from " + bar.name() + ", "
                + contents.units().bareLength(bar.width()) + " × "
                + contents.units().length(bar.thickness()) + "; their lines are in the notes of the panels that carry "
                + "them." + stops(contents)
                + " Rub paraffin wax on runners and edges; plane the box until it runs freely.";
    }

    /** All boxes and all runners begin in one plane and are equally long, so that one distance serves all stops. */
    private static String stops(Contents<? extends Stand> contents) {
        var runner = front(contents, " left runner");
        var stop = front(contents, " left stop");
        return runner.isEmpty() || stop.isEmpty()
                ? ""
                : " The front end of each stop lies " + contents.exact(stop.getAsDouble() - runner.getAsDouble())
                        + " behind that of its runner.";
    }

    private static OptionalDouble front(Contents<? extends Stand> contents, String piece) {
        return contents.furniture().assembly().parts().stream()
                .filter(part -> part.label().endsWith(piece))
                .mapToDouble(part -> part.box().min().y())
                .min();
    }

    /** The openings of one bay are equally wide, so that one measurement serves all its drawers. */
    private static Map<String, SectionLayout.Drawers> sectionsByBay(Contents<? extends Stand> contents) {
        var sections = new LinkedHashMap<String, SectionLayout.Drawers>();
        for (var compartment : Compartment.of(contents.furniture().bays())) {
            if (compartment.section() instanceof SectionLayout.Drawers drawers
                    && !drawers.drawers().isEmpty()) {
                sections.putIfAbsent(compartment.bay(), drawers);
            }
        }
        return sections;
    }

    private static String measured(String bay, SectionLayout.Drawers section, Contents<? extends Stand> contents) {
        double opening = section.opening().width();
        double box = section.drawers().get(0).box().width();
        return "Bay " + bay + ": opening measured, front ___________ back ___________; box width = smaller − "
                + contents.exact(opening - box) + " = ___________ (drawn: opening "
                + contents.units().bareLength(opening) + ", box "
                + contents.units().bareLength(box) + ")";
    }

    private static Table table(List<DrawerLayout> drawers, boolean slides, Units units) {
        var columns = new ArrayList<>(List.of(
                Column.words("Drawer"),
                Column.figures("Front height"),
                Column.figures("Opening"),
                Column.figures("Box"),
                Column.figures("Usable height")));
        if (slides) {
            columns.addAll(
                    List.of(Column.figures("Slide"), Column.figures("Line on side"), Column.figures("Line on box")));
        }
        return new Table(
                columns,
                drawers.stream().map(drawer -> row(drawer, slides, units)).toList());
    }

    private static List<String> row(DrawerLayout drawer, boolean slides, Units units) {
        var row = new ArrayList<>(List.of(
                drawer.name(),
                units.bareLength(drawer.front().height()),
                units.bareLength(drawer.cell()),
                box(drawer.box(), units),
                units.bareLength(drawer.inside().height())));
        if (slides) {
            row.add(drawer.slide()
                    .map(slide -> units.bareLength(slide.length()))
                    .orElse(""));
            row.add(line(drawer.slideLineOnSide(), units));
            row.add(line(drawer.slideLineOnBox(), units));
        }
        return row;
    }

    private static String line(OptionalDouble height, Units units) {
        return height.isPresent() ? units.bareLength(height.getAsDouble()) : "";
    }

    private static String box(Size3 box, Units units) {
        return units.bareLength(box.width()) + " × " + units.bareLength(box.height()) + " × "
                + units.bareLength(box.depth());
    }
}
