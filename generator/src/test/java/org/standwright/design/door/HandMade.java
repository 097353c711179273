package org.standwright.design.door;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;
import org.standwright.assembly.Assembly;
import org.standwright.assembly.Group;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.Content;
import org.standwright.design.Designs;
import org.standwright.design.Hung;
import org.standwright.design.Mount;
import org.standwright.design.StandDesign;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.DoorLayout;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.carcass.CarcassMaker;
import org.standwright.design.drawer.DrawerMaker;
import org.standwright.design.drawer.SlideBlocks;
import org.standwright.design.drawer.SlidePilots;
import org.standwright.design.frame.Frame;
import org.standwright.design.kit.Hinge;
import org.standwright.design.kit.Side;
import org.standwright.design.kit.Size2;
import org.standwright.design.kit.Size3;
import org.standwright.geom.Rect;

/** A carcass of 720 x 560, 160 above the floor and 600 high, its two openings of 333 x 564 filled by hand. */
final class HandMade {
    static final Hinge.Concealed CONCEALED = concealed(16.5);
    static final Hinge.Butt BUTT = new Hinge.Butt("butt hinge 50", 50, 16, 2, 3);

    final Frame frame;
    final List<BayLayout> bays = new ArrayList<>();

    HandMade(StandDesign design) {
        frame = new Frame(design, new Size2(720, 560), 160, 600, List.of(333.0, 333.0));
    }

    static Hinge.Concealed concealed(double overlay) {
        return new Hinge.Concealed("concealed hinge 35", 35, 12, 22.5, overlay, 37, 32, 60, 80, 50, 110);
    }

    static StandDesign design(Mount mount, Hinge hinge) {
        var door = new Content.Door(OptionalDouble.empty(), hinge, Hung.LEFT, Optional.empty());
        return Designs.stand(900, Designs.CASTERS, mount, List.of(Designs.bay(door), Designs.bay(Designs.equal(2))));
    }

    /** The next bay behind one door, its hinges 100 from its ends. */
    HandMade door(Side hung, Hinge hinge) {
        return closed(front(), front -> List.of(layout(".1", front, hung, hinge)));
    }

    /** The next bay behind a pair of doors. */
    HandMade pair(Hinge hinge) {
        return closed(front(), front -> {
            double leaf = (front.width() - 3) / 2;
            return List.of(
                    layout(".1", new Rect(front.x0(), front.y0(), front.x0() + leaf, front.y1()), Side.LEFT, hinge),
                    layout(".2", new Rect(front.x1() - leaf, front.y0(), front.x1(), front.y1()), Side.RIGHT, hinge));
        });
    }

    /** The next bay behind one drawer as high as its opening. */
    HandMade drawer() {
        var opening = opening();
        var front = front();
        double below = Math.max(front.y0(), opening.y0()) - opening.y0();
        var slide = Designs.slide().lengths().get(4);
        var box = new Size3(opening.width() - 26, slide.length(), 500);
        var layout = new DrawerLayout(
                name() + ".1",
                front,
                opening.height(),
                box,
                box,
                Optional.of(slide),
                OptionalDouble.of(below + 10 + 30),
                OptionalDouble.of(30));
        bays.add(new BayLayout(name(), opening, List.of(new SectionLayout.Drawers(opening, List.of(layout)))));
        return this;
    }

    Assembly assembly() {
        var hinges = new DoorHinges(frame, bays);
        var blocks = Stream.concat(hinges.blocks().stream(), new SlideBlocks(frame).of(bays).stream())
                .toList();
        var groups = new ArrayList<Group>();
        var bores = Stream.concat(hinges.pilots().stream(), new SlidePilots(frame, bays).bores().stream())
                .toList();
        groups.add(new CarcassMaker(frame, filled()).carcass(List.of(), bores, blocks));
        for (var bay : bays) {
            groups.addAll(new DoorMaker(frame).doors(bay));
            groups.addAll(new DrawerMaker(frame).drawers(bay));
        }
        return new Assembly("hand-made", groups, List.of());
    }

    /** What is not filled yet stays open. */
    private List<BayLayout> filled() {
        var all = new ArrayList<>(bays);
        for (int i = all.size(); i < 2; i++) {
            var open = new SectionLayout.Open(frame.opening(i), List.of(), Optional.empty());
            all.add(new BayLayout(String.valueOf(i + 1), frame.opening(i), List.of(open)));
        }
        return all;
    }

    PlacedPart part(String label) {
        return assembly().parts().stream()
                .filter(part -> part.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    List<DoorLayout> doors() {
        return bays.stream().flatMap(bay -> bay.doors().stream()).toList();
    }

    private HandMade closed(Rect front, Function<Rect, List<DoorLayout>> doors) {
        var section = new SectionLayout.Closed(opening(), doors.apply(front), List.of(), Optional.empty());
        bays.add(new BayLayout(name(), opening(), List.of(section)));
        return this;
    }

    private DoorLayout layout(String place, Rect front, Side hung, Hinge hinge) {
        return new DoorLayout(name() + place, front, hung, hinge, List.of(100.0, front.height() - 100));
    }

    private String name() {
        return String.valueOf(bays.size() + 1);
    }

    private Rect opening() {
        return frame.opening(bays.size());
    }

    /** Gap 3 inside the opening, or up to the carcass's outside and the middle of the partition. */
    private Rect front() {
        var o = opening();
        if (frame.isInset()) {
            return new Rect(o.x0() + 3, o.y0() + 3, o.x1() - 3, o.y1() - 3);
        }
        boolean first = bays.isEmpty();
        return new Rect(o.x0() - (first ? 18 : 9) + 1.5, o.y0() - 15, o.x1() + (first ? 9 : 18) - 1.5, o.y1() + 15);
    }
}
