package org.standwright.design.door;

import java.util.List;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.DoorLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.column.DoorWidth;
import org.standwright.design.column.HingeSpan;
import org.standwright.design.frame.Exact;
import org.standwright.design.frame.Frame;
import org.standwright.design.frame.PlanChange;
import org.standwright.design.kit.Hinge;
import org.standwright.geom.Grid;
import org.standwright.geom.Rect;

/** Whether doors as laid out have room for their hinges and swing clear of what is beside them. */
public final class DoorRoom {
    private final Frame frame;
    private final DoorSwing swing;

    public DoorRoom(Frame frame) {
        this.frame = frame;
        this.swing = new DoorSwing(frame);
    }

    public void check(List<BayLayout> bays) {
        for (int bay = 0; bay < bays.size(); bay++) {
            var field = "/bays/" + bay;
            bays.get(bay).leaves(SectionLayout.Closed.class).forEach(closed -> {
                across(field, closed);
                closed.doors().forEach(door -> door(field, door, closed));
            });
        }
    }

    /** Arms and plates of the doors before one opening stand side by side. */
    private void across(String field, SectionLayout.Closed section) {
        double reach = section.doors().stream()
                .mapToDouble(door -> door.hinge() instanceof Hinge.Concealed hinge ? hinge.reach() : 0)
                .sum();
        double opening = section.opening().width();
        if (Grid.less(opening, reach)) {
            throw wider(
                    field,
                    section,
                    reach - opening,
                    "The hinges reach " + shown(reach) + " into an opening of " + shown(opening) + ".");
        }
    }

    private void door(String field, DoorLayout door, SectionLayout.Closed section) {
        double width = door.front().width();
        if (door.hinge() instanceof Hinge.Concealed hinge) {
            double least = hinge.cupFromEdge() + hinge.cup() / 2 + DoorRules.BESIDE_CUP;
            if (Grid.less(width, least)) {
                throw wider(
                        field,
                        section,
                        section.doors().size() * (least - width),
                        "Door " + door.name() + " is " + shown(width) + " wide, too narrow for a cup that reaches "
                                + shown(least) + " from its edge.");
            }
            deepEnough(hinge);
        } else {
            swings(field, door, section);
        }
        highEnough(field, door, section.opening());
    }

    private void swings(String field, DoorLayout door, SectionLayout.Closed section) {
        double gap = frame.design().drawers().gap();
        if (Grid.less(gap, swing.overreach(door))) {
            double least = DoorWidth.leastToSwing(frame.design());
            throw wider(
                    field,
                    section,
                    section.doors().size() * (least - door.front().width()),
                    "Door " + door.name() + " is " + shown(door.front().width()) + " wide: its inner corner swings "
                            + shown(swing.overreach(door)) + " out, more than the gap of "
                            + shown(gap) + ".");
        }
    }

    private void deepEnough(Hinge.Concealed hinge) {
        double behind = new ConcealedMount(frame.design(), hinge).behindEdge();
        double least = behind + Math.max(hinge.depth(), hinge.plateSetBack());
        if (Grid.less(frame.insideDepth(), least)) {
            double plan = frame.depth() + least - frame.insideDepth();
            var way = PlanChange.depth(
                    frame.design(), Exact.onTapeUp(frame.design().unit(), plan));
            throw new ImpossibleDesignException(
                    way.field(),
                    "The hinges reach " + shown(least) + " behind the carcass's front edge, more than its inside depth"
                            + " of " + shown(frame.insideDepth()) + ".",
                    List.of("Make " + way.words() + "."));
        }
    }

    /** Every hinge within the height of its opening. */
    private void highEnough(String field, DoorLayout door, Rect opening) {
        double half = HingeSpan.half(door.hinge());
        for (double height : door.hinges()) {
            double z = door.front().y0() + height;
            if (Grid.less(z - half, opening.y0()) || Grid.less(opening.y1(), z + half)) {
                throw new ImpossibleDesignException(
                        field + "/contents",
                        "A hinge of door " + door.name() + " " + shown(height) + " above its lower edge does not stay"
                                + " within the opening of " + shown(opening.height()) + ".",
                        List.of("Make the door higher, or use a hinge lower than " + shown(2 * half) + "."));
            }
        }
    }

    private ImpossibleDesignException wider(String field, SectionLayout.Closed section, double missing, String reason) {
        double opening = section.opening().width() + missing;
        return new ImpossibleDesignException(
                field,
                reason,
                List.of(
                        "Make the bay's opening " + Exact.up(frame.design().unit(), opening) + " wide.",
                        "Or use a smaller hinge."));
    }

    private String shown(double mm) {
        return frame.design().unit().length(mm);
    }
}
