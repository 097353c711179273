package org.standwright.export;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import org.standwright.design.Bay;
import org.standwright.design.Content;
import org.standwright.design.Hang;
import org.standwright.design.StandDesign;
import org.standwright.design.Support;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.built.HeightStack;
import org.standwright.design.frame.PlanSize;
import org.standwright.part.SheetGood;

/** The report's part of a stand: what was decided and how it came out. */
final class ReportStand {
    private ReportStand() {}

    static ObjectNode design(StandDesign design) {
        var drawers = design.drawers();
        var node = JsonShapes.object();
        node.put("workingHeight", design.workingHeight().height());
        node.set("machine", JsonShapes.plain(design.machine()));
        node.set("plan", JsonShapes.plain(PlanSize.of(design)));
        node.set("support", support(design.support()));
        node.set("sheets", sheets(design));
        node.put("housing", design.carcass().housing());
        node.put("fit", design.carcass().fit());
        node.put("worktopLayers", design.worktop().layers());
        node.set("overhang", JsonShapes.plain(design.worktop().overhang()));
        node.set("bays", JsonShapes.list(design.bays(), ReportStand::bay));
        if (drawers.hang() instanceof Hang.Slides slides) {
            node.set("slide", JsonShapes.plain(slides.slide()));
        } else if (drawers.hang() instanceof Hang.Runners runners) {
            node.set("runners", JsonShapes.plain(runners.bar()));
        }
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
        var node = JsonShapes.object().put("name", bay.name());
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
        drawer.slide().ifPresent(slide -> node.set("slide", JsonShapes.plain(slide)));
        drawer.slideLineOnSide().ifPresent(line -> node.put("slideLineOnSide", line));
        drawer.slideLineOnBox().ifPresent(line -> node.put("slideLineOnBox", line));
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
        node.set("contents", JsonShapes.list(bay.contents(), ReportStand::content));
        return node;
    }

    private static ObjectNode content(Content content) {
        var node = JsonShapes.plain(content);
        if (content instanceof Content.GivenDrawers) {
            return node.put("kind", "drawers");
        }
        return node.put("kind", content instanceof Content.EqualDrawers ? "equal-drawers" : "filled-drawers");
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
