package org.standwright.design.column;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
    public static final Hinge CONCEALED = new Hinge.Concealed("hinge 35", 35, 12, 22.5, 37, 32, 60, 80, 50, 110);
    public static final Hinge BUTT = new Hinge.Butt("butt 60", 60, 17, 1.5, 3);

    private Mixed() {}

    /** 900 mm high on casters: the carcass is 593 mm high, the openings of its bays 557 mm. */
    public static StandDesign stand(Mount mount, Bay... bays) {
        return Designs.stand(900, Designs.CASTERS, mount, List.of(bays));
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
