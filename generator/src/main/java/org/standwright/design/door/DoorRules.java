package org.standwright.design.door;

import java.util.List;
import org.standwright.design.Bay;
import org.standwright.design.Content;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.Mount;
import org.standwright.design.StandDesign;
import org.standwright.design.frame.Exact;
import org.standwright.design.kit.Hinge;
import org.standwright.geom.Grid;

/** Whether the hinges that were chosen can carry doors of this sheet, mounted like this. */
public final class DoorRules {
    /** Wood that a cup leaves before the door's outer face, mm; common practice, no source. */
    private static final double UNDER_CUP = 3;
    /** Wood that a cup leaves beside it, mm; common practice, no source. */
    static final double BESIDE_CUP = 2;

    private final StandDesign design;
    private final double thickness;
    private final HingeLap lap;

    public DoorRules(StandDesign design) {
        this.design = design;
        this.thickness = design.drawers().front().material().thickness();
        this.lap = new HingeLap(design);
    }

    public void check() {
        bays("/bays", design.bays(), new HingeLap.Outer(true, true));
    }

    private void bays(String field, List<Bay> bays, HingeLap.Outer outer) {
        for (int i = 0; i < bays.size(); i++) {
            var contents = bays.get(i).contents();
            for (int j = 0; j < contents.size(); j++) {
                content(field + "/" + i + "/contents/" + j, contents.get(j), outer.across(i, bays.size()));
            }
        }
    }

    private void content(String field, Content content, HingeLap.Outer outer) {
        if (content instanceof Content.Divided divided) {
            bays(field + "/bays", divided.bays(), outer);
        } else if (content instanceof Content.Door door) {
            if (door.hinge() instanceof Hinge.Concealed concealed) {
                concealed(field + "/hinge", concealed);
                lap.check(field + "/hinge", door, concealed, outer);
            } else {
                butt(field + "/hinge", (Hinge.Butt) door.hinge());
            }
        }
    }

    private void concealed(String field, Hinge.Concealed hinge) {
        double least = hinge.cupDepth() + UNDER_CUP;
        if (Grid.less(thickness, least)) {
            throw new ImpossibleDesignException(
                    "/drawers/front",
                    "Doors of " + shown(thickness) + " are too thin for the cups of " + hinge.name() + ", "
                            + shown(hinge.cupDepth()) + " deep, which leave " + shown(UNDER_CUP) + " of wood.",
                    List.of("Use a sheet of " + Exact.up(design.unit(), least) + " or more for the fronts."));
        }
        double rim = hinge.cupFromEdge() - hinge.cup() / 2;
        if (Grid.less(rim, BESIDE_CUP)) {
            throw new ImpossibleDesignException(
                    field,
                    "The cup of " + hinge.name() + " leaves " + shown(rim) + " of wood at the door's edge, less than "
                            + shown(BESIDE_CUP) + ".",
                    List.of("Set its centre " + Exact.up(design.unit(), hinge.cup() / 2 + BESIDE_CUP)
                            + " from the edge or more."));
        }
    }

    private void butt(String field, Hinge.Butt hinge) {
        if (design.drawers().mount() == Mount.OVERLAY) {
            throw new ImpossibleDesignException(
                    field,
                    "Overlay doors cover the uprights' edges; " + hinge.name() + " needs a door between the uprights.",
                    List.of("Use a concealed hinge.", "Or make the fronts \"inset\"."));
        }
        if (Grid.less(thickness, hinge.leaf())) {
            throw new ImpossibleDesignException(
                    field,
                    "A leaf of " + hinge.name() + " is " + shown(hinge.leaf()) + " wide, more than the door's edge of "
                            + shown(thickness) + ".",
                    List.of("Use a hinge whose leaf is " + shown(Exact.onTapeDown(design.unit(), thickness))
                            + " wide or less."));
        }
    }

    private String shown(double mm) {
        return design.unit().length(mm);
    }
}
