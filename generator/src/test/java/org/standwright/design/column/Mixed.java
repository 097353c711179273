package org.standwright.design.column;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.standwright.design.Bay;
import org.standwright.design.Content;
import org.standwright.design.Designs;
import org.standwright.design.Draft;
import org.standwright.design.DrawerPlan;
import org.standwright.design.Hung;
import org.standwright.design.Mount;
import org.standwright.design.Shelves;
import org.standwright.design.StandDesign;
import org.standwright.design.kit.Hinge;

/** Contents and designs of mixed bays, in few words. */
public final class Mixed {
    public static final Hinge CONCEALED = concealed(16.5);
    public static final Hinge BUTT = new Hinge.Butt("butt 60", 60, 17, 1.5, 3);

    private Mixed() {}

    /**
     * 900 mm high on casters: the carcass is 593 mm high, the openings of its bays 557 mm. Its concealed hinges are made
     * for the laps of their doors: panels are 18 mm thick, the gaps 3 mm wide.
     */
    public static StandDesign stand(Mount mount, Bay... bays) {
        return Designs.stand(900, Designs.CASTERS, mount, lapping(mount, List.of(bays), true, true));
    }

    private static List<Bay> lapping(Mount mount, List<Bay> bays, boolean left, boolean right) {
        return IntStream.range(0, bays.size())
                .mapToObj(i -> new Bay(
                        bays.get(i).width(),
                        bays.get(i).contents().stream()
                                .map(content -> lapping(mount, content, left && i == 0, right && i == bays.size() - 1))
                                .toList()))
                .toList();
    }

    private static Content lapping(Mount mount, Content content, boolean left, boolean right) {
        if (content instanceof Content.Divided divided) {
            return new Content.Divided(divided.height(), lapping(mount, divided.bays(), left, right));
        }
        if (content instanceof Content.Door door && door.hinge() instanceof Hinge.Concealed) {
            boolean outer = door.hung() == Hung.RIGHT ? right : left;
            double lap = mount == Mount.INSET ? 0 : outer ? 16.5 : 7.5;
            return new Content.Door(door.height(), concealed(lap), door.hung(), door.shelves());
        }
        return content;
    }

    private static Hinge concealed(double overlay) {
        return new Hinge.Concealed("hinge 35", 35, 12, 22.5, overlay, 37, 32, 60, 80, 50, 110);
    }

    public static StandDesign rounded(StandDesign design, OptionalDouble rounding) {
        return Draft.of(design, draft -> {
            var d = draft.drawers;
            draft.drawers = new DrawerPlan(
                    d.box(), d.bottom(), d.front(), d.hang(), d.mount(), d.gap(), d.bumper(), d.grip(), rounding);
        });
    }

    public static Content open() {
        return new Content.Open(OptionalDouble.empty(), Optional.empty());
    }

    public static Content open(double height) {
        return new Content.Open(OptionalDouble.of(height), Optional.empty());
    }

    public static Content shelved(Shelves.Kind kind, int count) {
        return new Content.Open(OptionalDouble.empty(), Optional.of(new Shelves(kind, count)));
    }

    public static Content clear() {
        return new Content.Clear(OptionalDouble.empty(), "hose", OptionalDouble.empty());
    }

    public static Content door(Hung hung) {
        return new Content.Door(OptionalDouble.empty(), CONCEALED, hung, Optional.empty());
    }

    public static Content door(double height, Hung hung) {
        return new Content.Door(OptionalDouble.of(height), CONCEALED, hung, Optional.empty());
    }

    public static Content door(Hung hung, Shelves.Kind kind, int count) {
        return new Content.Door(OptionalDouble.empty(), CONCEALED, hung, Optional.of(new Shelves(kind, count)));
    }

    public static Content graduated(int count, double ratio) {
        return new Content.GraduatedDrawers(count, ratio, OptionalDouble.empty(), OptionalDouble.empty());
    }

    public static Content divided(Bay... bays) {
        return new Content.Divided(OptionalDouble.empty(), List.of(bays));
    }

    public static Content divided(double height, Bay... bays) {
        return new Content.Divided(OptionalDouble.of(height), List.of(bays));
    }
}
