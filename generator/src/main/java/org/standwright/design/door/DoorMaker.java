package org.standwright.design.door;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.Group;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.DoorLayout;
import org.standwright.design.column.DrawerFit;
import org.standwright.design.drawer.FrontPanel;
import org.standwright.design.frame.Frame;
import org.standwright.geom.Axis;
import org.standwright.geom.Vec3;
import org.standwright.part.Feature;
import org.standwright.part.Part;

/**
 * The doors of a stand, each a group of its own: one panel with its grain upright, bored for its hinges. A group moves
 * straight only, so a door stays closed; {@link DoorSwing} says where it opens to.
 */
public final class DoorMaker {
    private final Frame frame;
    private final FrontPanel fronts;

    public DoorMaker(Frame frame) {
        this.frame = frame;
        this.fronts = new FrontPanel(frame.design());
    }

    /** The doors of one bay, from top to bottom, with those of the bays within it. */
    public List<Group> doors(BayLayout bay) {
        return bay.doors().stream().map(this::door).toList();
    }

    private Group door(DoorLayout door) {
        var name = "door " + door.name();
        var front = door.front();
        // its bench face is the inner one; x runs up, y to the left
        var place =
                new Placement(Axis.Z_PLUS, Axis.X_MINUS, new Vec3(front.x1(), DrawerFit.boxFront(frame), front.y0()));
        return Group.fixed(name, List.of(new PlacedPart(name, panel(door), place)), List.of());
    }

    private Part panel(DoorLayout door) {
        var blank = fronts.door(door.front().width(), door.front().height());
        var mount = HingeMount.of(frame.design(), door.hinge());
        var features = new ArrayList<Feature>();
        for (double height : door.hinges()) {
            features.addAll(mount.inDoor(blank, door.hung(), height));
        }
        return blank.with(features);
    }
}
