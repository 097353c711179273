package org.standwright.export;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.standwright.design.Layout;
import org.standwright.design.built.HeightStack;
import org.standwright.design.built.MachineLayout;
import org.standwright.design.built.Stand;

/** The report's part of a stand's heights and its machine. */
final class ReportStand {
    private static final String NOTE =
            "'design' is as written: a mirrored stand has its left at the right, and a height "
                    + "from an elbow goes to the nearest mark of the tape. All else in this report is as built.";

    private ReportStand() {}

    /** What became of the written decisions that a mirrored layout or the tape changes. */
    static ObjectNode built(Stand stand) {
        var carcass = stand.carcass();
        var top = stand.worktop();
        var node = JsonShapes.object()
                .put("note", NOTE)
                .put("mirrored", stand.design().layout() == Layout.MIRRORED)
                .put("workingHeight", stand.stack().workingHeight());
        node.set(
                "overhang",
                JsonShapes.object()
                        .put("front", carcass.min().y() - top.min().y())
                        .put("back", top.max().y() - carcass.max().y())
                        .put("left", carcass.min().x() - top.min().x())
                        .put("right", top.max().x() - carcass.max().x()));
        node.set("box", JsonShapes.box(stand.assembly().box()));
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

    static ObjectNode machine(MachineLayout machine) {
        var node = JsonShapes.object();
        node.set("base", JsonShapes.box(machine.base()));
        node.set("whole", JsonShapes.box(machine.whole()));
        node.put("operator", JsonShapes.word(machine.operator()));
        machine.infeed().ifPresent(side -> node.put("infeed", JsonShapes.word(side)));
        node.set("bolts", JsonShapes.list(machine.bolts(), JsonShapes::plain));
        node.set("centreOfMass", JsonShapes.point(machine.centreOfMass()));
        return node;
    }
}
