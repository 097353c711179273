package org.standwright.sheet.sawing;

import java.util.List;
import java.util.Set;
import org.standwright.part.Edge;
import org.standwright.sheet.Area;
import org.standwright.sheet.Cut.Purpose;
import org.standwright.sheet.Cut.Tool;

/** Writes down the cuts of one board. */
final class Bench {
    private final int sheet;
    private final Set<String> later;
    private final List<Step> steps;

    /**
     * @param sheet index of the board
     * @param later labels of the pieces that wait
     * @param steps of the boards before; takes those of this one
     */
    Bench(int sheet, Set<String> later, List<Step> steps) {
        this.sheet = sheet;
        this.later = later;
        this.steps = steps;
    }

    /**
     * @param before index of the step that made the panel
     * @param parted what is in the panel
     * @return index of this step
     */
    int cut(int before, List<Goal> parted, Area panel, Area kerf, Tool tool, Purpose purpose, Edge fence) {
        int setting = switch (fence) {
            case Y0 -> kerf.y() - panel.y();
            case Y1 -> panel.endY() - kerf.endY();
            case X0 -> kerf.x() - panel.x();
            case X1 -> panel.endX() - kerf.endX();
        };
        boolean waits = parted.stream().allMatch(this::waits);
        steps.add(new Step(sheet, before, waits, Rims.along(fence), kerf, tool, purpose, fence, setting));
        return steps.size() - 1;
    }

    /** What nobody asked for has no say in it. */
    private boolean waits(Goal goal) {
        if (goal instanceof Goal.Item item) {
            return item.piece().parts().stream().allMatch(part -> later.contains(part.label()));
        }
        return !(goal instanceof Goal.Strips strips) || strips.nodes().stream().allMatch(this::waits);
    }
}
