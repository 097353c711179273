package org.standwright.packet;

import java.util.ArrayList;
import java.util.List;
import org.standwright.design.built.Compartment;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.built.Stand;
import org.standwright.geom.Rect;
import org.standwright.packet.page.Table;
import org.standwright.packet.page.Table.Column;
import org.standwright.unit.Units;

/** Every front and every opening without one, with its size and its height above the floor. */
final class OpeningTable {
    private OpeningTable() {}

    /** Whether a stand has more than drawers in plain bays, so that the views cannot dimension it all. */
    static boolean isNeeded(Contents<? extends Stand> contents) {
        return contents.furniture().bays().stream()
                .flatMap(bay -> bay.sections().stream())
                .anyMatch(section -> !(section instanceof SectionLayout.Drawers));
    }

    static Table of(Contents<? extends Stand> contents) {
        var rows = new ArrayList<List<String>>();
        for (var compartment : Compartment.of(contents.furniture().bays())) {
            var section = compartment.section();
            if (section instanceof SectionLayout.Drawers drawers) {
                drawers.drawers()
                        .forEach(drawer -> rows.add(row("drawer " + drawer.name(), drawer.front(), contents.units())));
            } else if (section instanceof SectionLayout.Closed closed) {
                closed.doors().forEach(door -> rows.add(row("door " + door.name(), door.front(), contents.units())));
            } else if (section instanceof SectionLayout.Clear clear) {
                rows.add(
                        row("bay " + compartment.bay() + ", clear: " + clear.use(), clear.opening(), contents.units()));
            } else {
                rows.add(row("bay " + compartment.bay() + ", open", section.opening(), contents.units()));
            }
        }
        return new Table(
                List.of(
                        Column.words("Front or opening"),
                        Column.figures("Width"),
                        Column.figures("Height"),
                        Column.figures("Lower edge above the floor")),
                rows);
    }

    private static List<String> row(String what, Rect area, Units units) {
        return List.of(
                what, units.bareLength(area.width()), units.bareLength(area.height()), units.bareLength(area.y0()));
    }
}
