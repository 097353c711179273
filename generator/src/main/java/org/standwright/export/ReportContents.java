package org.standwright.export;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.standwright.design.Shelves;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.DoorLayout;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.built.SectionLayout;

/** The report's part of the bays as built: sections, divided ones with bays of their own. */
final class ReportContents {
    private ReportContents() {}

    /** All drawers and doors of a bay are listed beside its sections too, with those of the bays within it. */
    static ObjectNode bay(BayLayout bay) {
        var node = JsonShapes.object().put("name", bay.name());
        node.set("opening", JsonShapes.frontView(bay.opening()));
        node.set("sections", JsonShapes.list(bay.sections(), ReportContents::section));
        node.set("drawers", JsonShapes.list(bay.drawers(), ReportContents::drawer));
        node.set("doors", JsonShapes.list(bay.doors(), ReportContents::door));
        return node;
    }

    private static ObjectNode section(SectionLayout section) {
        var node = JsonShapes.object().put("kind", kind(section));
        node.set("opening", JsonShapes.frontView(section.opening()));
        if (section instanceof SectionLayout.Drawers drawers) {
            node.set("drawers", JsonShapes.list(drawers.drawers(), ReportContents::drawer));
        } else if (section instanceof SectionLayout.Closed closed) {
            node.set("doors", JsonShapes.list(closed.doors(), ReportContents::door));
            shelves(closed.shelves(), closed.kind(), node);
        } else if (section instanceof SectionLayout.Open open) {
            shelves(open.shelves(), open.kind(), node);
        } else if (section instanceof SectionLayout.Clear clear) {
            node.put("use", clear.use());
        } else if (section instanceof SectionLayout.Divided divided) {
            node.set("bays", JsonShapes.list(divided.bays(), ReportContents::bay));
        }
        return node;
    }

    private static void shelves(List<Double> undersides, Optional<Shelves.Kind> kind, ObjectNode node) {
        node.set("shelves", numbers(undersides));
        kind.ifPresent(known -> node.put("shelfKind", JsonShapes.word(known)));
    }

    /** The records are called what they hold. */
    private static String kind(SectionLayout section) {
        return section.getClass().getSimpleName().toLowerCase(Locale.ROOT);
    }

    private static ObjectNode drawer(DrawerLayout drawer) {
        var node = JsonShapes.object().put("name", drawer.name());
        node.set("front", JsonShapes.frontView(drawer.front()));
        node.put("cell", drawer.cell());
        node.set("box", JsonShapes.plain(drawer.box()));
        node.set("inside", JsonShapes.plain(drawer.inside()));
        drawer.slide().ifPresent(slide -> node.set("slide", JsonShapes.plain(slide)));
        drawer.slideLineOnSide().ifPresent(line -> node.put("slideLineOnSide", line));
        drawer.slideLineOnBox().ifPresent(line -> node.put("slideLineOnBox", line));
        return node;
    }

    private static ObjectNode door(DoorLayout door) {
        var node = JsonShapes.object().put("name", door.name());
        node.set("front", JsonShapes.frontView(door.front()));
        node.put("hung", JsonShapes.word(door.hung()));
        node.put("hinge", door.hinge().name());
        node.set("hinges", numbers(door.hinges()));
        return node;
    }

    private static ArrayNode numbers(List<Double> values) {
        var array = JsonShapes.JSON.createArrayNode();
        values.forEach(array::add);
        return array;
    }
}
