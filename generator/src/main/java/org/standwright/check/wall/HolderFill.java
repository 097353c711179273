package org.standwright.check.wall;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoublePredicate;

/** The most things that a holder takes for its own sake, whatever its strips hold. */
record HolderFill(HungWall wall, HungBody body) {
    private static final String TIPS = "a hand on its front tips it";

    /** By its hanger's screws, by riding out with a hand on it or without, and by its shelf; none where nothing limits it. */
    List<MostHung> limits() {
        var limits = new ArrayList<MostHung>();
        var holder = body.load().holder();
        var screws = new HolderScrews(wall, holder);
        screws.hanger()
                .filter(screw -> screw.withdrawal() > 0)
                .ifPresent(screw -> add(
                        factor -> screw.use(body.times(factor)
                                                .section()
                                                .hanger(body.times(factor).hanging(), screws.overStrips())
                                                .perScrew())
                                        .most()
                                <= 1,
                        "the hanger's screws give",
                        limits));
        add(factor -> rides(body.times(factor)) <= 1, "it rides up its bevel and out", limits);
        add(factor -> tips(body.times(factor)) <= HangLip.STOP, TIPS, limits);
        if (HolderShelfSag.isShelf(holder)) {
            add(factor -> HolderShelfSag.used(holder, body.thingsAt(factor)) <= 1, "its shelf sags", limits);
        }
        return limits;
    }

    /** The limit itself, or nothing at all where a hand tips it with so little in it. */
    MostHung steady(MostHung limit) {
        return tips(body.holding(limit.mass())) <= HangLip.STOP ? limit : new MostHung(0, TIPS);
    }

    private void add(DoublePredicate willDo, String weakest, List<MostHung> limits) {
        double most = Largest.of(willDo);
        if (most < Largest.BEYOND_ALL) {
            limits.add(new MostHung(body.thingsAt(most), weakest));
        }
    }

    private double tips(HungBody some) {
        return rides(HangLip.pressed(some));
    }

    private double rides(HungBody some) {
        var riding = new RideOut(wall, some);
        return riding.ratio() / riding.limit();
    }
}
