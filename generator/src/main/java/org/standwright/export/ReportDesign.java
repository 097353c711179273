package org.standwright.export;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.standwright.design.StandDesign;

/**
 * The report's part of the decisions as their maker wrote them: a mirrored stand's left is built at the right, and a
 * working height from an elbow is not yet on a mark of the tape. Families carry their kind as a design file names it.
 */
final class ReportDesign {
    private ReportDesign() {}

    static ObjectNode of(StandDesign design) {
        var drawers = design.drawers();
        var node = JsonShapes.object();
        node.put("unit", design.unit().word());
        var height = JsonShapes.plain(design.workingHeight());
        node.set("workingHeight", height.put("height", design.workingHeight().height()));
        node.set("machine", JsonShapes.plain(design.machine()));
        node.set("place", JsonShapes.plain(design.place()));
        node.set("plan", JsonShapes.plain(design.plan()));
        node.set("layout", JsonShapes.JSON.valueToTree(design.layout()));
        node.set("support", JsonShapes.plain(design.support()));
        node.set("sheets", sheets(design));
        node.set("joint", JsonShapes.plain(design.carcass().joint()));
        node.put("housing", design.carcass().housing());
        node.put("fit", design.carcass().fit());
        node.put("backPieces", design.carcass().backPieces());
        node.put("worktopLayers", design.worktop().layers());
        node.set("overhang", JsonShapes.plain(design.worktop().overhang()));
        design.worktop().plate().ifPresent(plate -> node.set("plate", JsonShapes.plain(plate)));
        node.set("cutouts", JsonShapes.list(design.cutouts(), JsonShapes::plain));
        node.set("bays", JsonShapes.list(design.bays(), JsonShapes::plain));
        node.set("hang", JsonShapes.plain(drawers.hang()));
        node.set("mount", JsonShapes.JSON.valueToTree(drawers.mount()));
        node.put("gap", drawers.gap());
        node.put("bumper", drawers.bumper());
        drawers.rounding().ifPresent(rounding -> node.put("rounding", rounding));
        node.put("frontGrain", JsonShapes.word(drawers.frontGrain()));
        node.put("matched", drawers.matched());
        node.set("grip", JsonShapes.plain(drawers.grip()));
        node.set("edges", JsonShapes.plain(design.edges()));
        node.set("screws", JsonShapes.plain(design.screws()));
        node.set("saw", ReportCutting.saw(design.saw()));
        design.router().ifPresent(router -> node.set("router", ReportRouter.router(router)));
        node.set("stock", ReportCutting.stock(design.stock()));
        node.set("cutting", JsonShapes.plain(design.cutting()));
        node.set("loads", JsonShapes.plain(design.loads()));
        node.set("site", JsonShapes.plain(design.site()));
        node.set("steady", JsonShapes.plain(design.steady()));
        node.set("rules", JsonShapes.list(design.rules(), JsonShapes::plain));
        design.savings().ifPresent(savings -> node.set("savings", ReportCutting.savings(savings)));
        return node;
    }

    /** What each sheet is used for. */
    private static ObjectNode sheets(StandDesign design) {
        var node = JsonShapes.object();
        node.set("carcass", ReportCutting.sheet(design.carcass().sheet()));
        node.set("back", ReportCutting.sheet(design.carcass().back()));
        node.set("worktop", ReportCutting.sheet(design.worktop().sheet()));
        node.set("box", ReportCutting.sheet(design.drawers().box()));
        node.set("bottom", ReportCutting.sheet(design.drawers().bottom()));
        node.set("front", ReportCutting.sheet(design.drawers().front()));
        return node;
    }
}
