package org.standwright.export;

import com.fasterxml.jackson.databind.node.ObjectNode;
import org.standwright.design.built.HeightStack;
import org.standwright.design.built.MachineLayout;

/** The report's part of a stand's heights and its machine. */
final class ReportStand {
    private ReportStand() {}

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
        return node;
    }
}
