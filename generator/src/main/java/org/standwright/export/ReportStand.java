package org.standwright.export;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import org.standwright.design.BayLayout;
import org.standwright.design.DrawerLayout;
import org.standwright.design.HeightStack;
import org.standwright.design.StandDesign;
import org.standwright.design.Support;

/** The report's part of a stand: what was decided and how it came out. */
final class ReportStand {
    private ReportStand() {}

    static ObjectNode design(StandDesign design) {
        var drawers = design.drawers();
        var node = JsonShapes.object();
        node.set("machine", JsonShapes.plain(design.machine()));
        node.set("plan", JsonShapes.plain(design.plan()));
        node.set("support", support(design.support()));
        node.put("housing", design.carcass().housing());
        node.put("fit", design.carcass().fit());
        node.put("worktopLayers", design.worktop().layers());
        node.set("overhang", JsonShapes.plain(design.worktop().overhang()));
        node.set("slide", JsonShapes.plain(drawers.slide()));
        node.set("mount", JsonShapes.JSON.valueToTree(drawers.mount()));
        node.put("gap", drawers.gap());
        node.put("bumper", drawers.bumper());
        node.set("screws", JsonShapes.plain(design.screws()));
        return node;
    }

    static ObjectNode stack(HeightStack stack) {
        var node = JsonShapes.object()
                .put("workingHeight", stack.workingHeight())
                .put("lowest", stack.lowest())
                .put("highest", stack.highest());
        node.set(
                "terms",
                JsonShapes.list(
                        stack.terms(),
                        term -> JsonShapes.object()
                                .put("name", term.name())
                                .put("height", term.height())
                                .put("less", term.less())
                                .put("more", term.more())
                                .put("adjustable", term.isAdjustable())));
        return node;
    }

    static ObjectNode bay(BayLayout bay) {
        var node = JsonShapes.object().put("number", bay.number());
        node.set("opening", JsonShapes.frontView(bay.opening()));
        node.set("drawers", JsonShapes.list(bay.drawers(), ReportStand::drawer));
        return node;
    }

    private static ObjectNode drawer(DrawerLayout drawer) {
        var node = JsonShapes.object().put("name", drawer.name());
        node.set("front", JsonShapes.frontView(drawer.front()));
        node.put("cell", drawer.cell());
        node.set("box", JsonShapes.plain(drawer.box()));
        node.set("inside", JsonShapes.plain(drawer.inside()));
        node.set("slide", JsonShapes.plain(drawer.slide()));
        return node.put("slideLineOnSide", drawer.slideLineOnSide()).put("slideLineOnBox", drawer.slideLineOnBox());
    }

    private static ObjectNode support(Support support) {
        var node = JsonShapes.object().put("kind", kind(support));
        node.setAll(JsonShapes.plain(support));
        return node;
    }

    /** The records are called what a design file calls their kinds. */
    private static String kind(Support support) {
        return support.getClass().getSimpleName().toLowerCase(Locale.ROOT);
    }
}
