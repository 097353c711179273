package org.standwright.export;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.standwright.design.Bay;
import org.standwright.design.Content;
import org.standwright.design.DrawerPlan;
import org.standwright.design.Edges;
import org.standwright.design.Hang;
import org.standwright.design.StandDesign;
import org.standwright.design.frame.PlanSize;
import org.standwright.part.SheetGood;

/** The report's part of the decisions; families carry their kind as a design file names it. */
final class ReportDesign {
    private ReportDesign() {}

    static ObjectNode of(StandDesign design) {
        var drawers = design.drawers();
        var node = JsonShapes.object();
        node.set("workingHeight", JsonShapes.family(design.workingHeight()));
        node.set("machine", JsonShapes.plain(design.machine()));
        node.set("place", JsonShapes.plain(design.place()));
        node.set("plan", JsonShapes.plain(PlanSize.of(design)));
        node.set("layout", JsonShapes.JSON.valueToTree(design.layout()));
        node.set("support", JsonShapes.family(design.support()));
        node.set("sheets", sheets(design));
        node.set("joint", JsonShapes.family(design.carcass().joint()));
        node.put("housing", design.carcass().housing());
        node.put("fit", design.carcass().fit());
        node.put("worktopLayers", design.worktop().layers());
        node.set("overhang", JsonShapes.plain(design.worktop().overhang()));
        design.worktop().plate().ifPresent(plate -> node.set("plate", JsonShapes.plain(plate)));
        node.set("cutouts", JsonShapes.list(design.cutouts(), JsonShapes::family));
        node.set("bays", JsonShapes.list(design.bays(), ReportDesign::bay));
        node.set("hang", JsonShapes.family(drawers.hang()));
        slide(drawers, node);
        node.set("mount", JsonShapes.JSON.valueToTree(drawers.mount()));
        node.put("gap", drawers.gap());
        node.put("bumper", drawers.bumper());
        drawers.rounding().ifPresent(rounding -> node.put("rounding", rounding));
        node.set("grip", JsonShapes.family(drawers.grip()));
        node.set("edges", edges(design.edges()));
        node.set("screws", JsonShapes.plain(design.screws()));
        node.set("saw", JsonShapes.plain(design.saw()));
        return node;
    }

    private static void slide(DrawerPlan drawers, ObjectNode node) {
        if (drawers.hang() instanceof Hang.Slides slides) {
            node.set("slide", JsonShapes.plain(slides.slide()));
        }
    }

    private static ObjectNode edges(Edges edges) {
        var node = JsonShapes.object();
        edges.carcass().ifPresent(edging -> node.set("carcass", JsonShapes.plain(edging)));
        edges.fronts().ifPresent(edging -> node.set("fronts", JsonShapes.plain(edging)));
        node.set("worktop", JsonShapes.plain(edges.worktop()));
        return node;
    }

    /** What each sheet is used for: two may share a name when one was measured off its preset. */
    private static ObjectNode sheets(StandDesign design) {
        var node = JsonShapes.object();
        node.set("carcass", sheet(design.carcass().sheet()));
        node.set("back", sheet(design.carcass().back()));
        node.set("worktop", sheet(design.worktop().sheet()));
        node.set("box", sheet(design.drawers().box()));
        node.set("bottom", sheet(design.drawers().bottom()));
        node.set("front", sheet(design.drawers().front()));
        return node;
    }

    private static ObjectNode sheet(SheetGood sheet) {
        return JsonShapes.object()
                .put("name", sheet.material().name())
                .put("thickness", sheet.material().thickness());
    }

    private static ObjectNode bay(Bay bay) {
        var node = JsonShapes.object();
        bay.width().ifPresent(width -> node.put("width", width));
        node.set("contents", JsonShapes.list(bay.contents(), ReportDesign::content));
        return node;
    }

    private static ObjectNode content(Content content) {
        if (content instanceof Content.Divided divided) {
            var node = JsonShapes.object().put("kind", "divided");
            divided.height().ifPresent(height -> node.put("height", height));
            node.set("bays", JsonShapes.list(divided.bays(), ReportDesign::bay));
            return node;
        }
        if (content instanceof Content.Door door) {
            var node = JsonShapes.family(door);
            node.set("hinge", JsonShapes.family(door.hinge()));
            return node;
        }
        return JsonShapes.family(content);
    }
}
