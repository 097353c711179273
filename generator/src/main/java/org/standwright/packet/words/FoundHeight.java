package org.standwright.packet.words;

import java.util.Locale;
import org.standwright.design.Work;
import org.standwright.design.WorkingHeight;
import org.standwright.design.built.HeightStack;
import org.standwright.design.built.Stand;
import org.standwright.geom.Grid;
import org.standwright.unit.Units;

/** How the working height was found. */
public final class FoundHeight {
    /** What must be left to adjust beside the floor's fall, mm (shop practice, no source). */
    private static final double SPARE = 5;

    private final Units units;
    private final HeightStack stack;

    private FoundHeight(Stand stand) {
        units = stand.design().unit();
        stack = stand.stack();
    }

    /** One sentence or a few: 'As given: 900 mm.' */
    public static String of(Stand stand) {
        return new FoundHeight(stand).words(stand.design().workingHeight());
    }

    private String words(WorkingHeight height) {
        if (height instanceof WorkingHeight.Elbow elbow) {
            return fromElbow(elbow);
        }
        return height instanceof WorkingHeight.Beside beside
                ? beside(beside)
                : "As given: " + units.length(height.height()) + ".";
    }

    private String fromElbow(WorkingHeight.Elbow elbow) {
        var work = elbow.work();
        double elbowHeight = elbow.elbow() + elbow.shoes();
        return "From the elbow: " + units.length(elbow.elbow()) + " without shoes and " + units.length(elbow.shoes())
                + " for them; for " + word(work) + " work the surface lies between "
                + units.bareLength(work.lowest(elbowHeight)) + " and " + units.length(work.highest(elbowHeight))
                + " (" + against(work.lowest(0)) + " to " + against(work.highest(0)) + " the elbow); the middle is "
                + units.length(elbow.height()) + onTape(elbow.height()) + ".";
    }

    /** Where the middle lies between two marks of the tape. */
    private String onTape(double middle) {
        return Grid.same(middle, stack.workingHeight())
                ? ""
                : ", built to the nearest mark of the tape, " + units.length(stack.workingHeight());
    }

    private static String word(Work work) {
        return work.name().toLowerCase(Locale.ROOT);
    }

    private String against(double mm) {
        return units.length(Math.abs(mm)) + (mm < 0 ? " below" : " above");
    }

    private String beside(WorkingHeight.Beside beside) {
        var where = beside.below() == 0
                ? "Level with the " + beside.surface()
                : units.length(beside.below()) + " below the " + beside.surface();
        return where + ", which stands " + units.length(beside.surfaceHeight()) + " above the floor: nominally "
                + units.length(beside.height()) + ", to be set from " + units.bareLength(stack.lowest()) + " to "
                + units.length(stack.highest()) + ". The floor falls " + units.length(beside.fall())
                + " over the stand's plan; it takes that and " + units.length(SPARE)
                + " more to level it. Set it with a straightedge on both surfaces, never above the one beside it.";
    }
}
