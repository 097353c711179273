package org.standwright.design.support;

import java.util.List;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.StandDesign;
import org.standwright.design.Support;
import org.standwright.design.frame.Exact;
import org.standwright.design.kit.Caster;
import org.standwright.geom.Grid;

/** Whether casters go together: a hole pattern on the plate, bolts that go through it, four of one height. */
final class CasterFit {
    private final StandDesign design;

    CasterFit(StandDesign design) {
        this.design = design;
    }

    void check(Support.Casters casters) {
        plate("/support/caster", casters.caster());
        casters.others().ifPresent(others -> {
            plate("/support/others", others);
            asHigh(casters.caster(), others);
        });
    }

    private void plate(String field, Caster caster) {
        var units = design.unit();
        var holes = caster.holes();
        var plate = caster.plate();
        if (Grid.less(plate.width(), holes.width() + caster.holeDiameter())
                || Grid.less(plate.depth(), holes.depth() + caster.holeDiameter())) {
            throw new ImpossibleDesignException(
                    field,
                    "The bolt holes of " + caster.name() + " reach over its plate of " + units.length(plate.width())
                            + " x " + units.length(plate.depth()) + ".",
                    List.of("Measure the plate and the distances between the holes' centres again."));
        }
        if (Grid.less(caster.holeDiameter(), caster.bolt())) {
            throw new ImpossibleDesignException(
                    field,
                    "A bolt of " + units.length(caster.bolt()) + " does not go through the holes of "
                            + units.length(caster.holeDiameter()) + " in " + caster.name() + ".",
                    List.of("Use a thinner bolt, " + Exact.length(units, caster.holeDiameter()) + " at most."));
        }
    }

    private void asHigh(Caster caster, Caster others) {
        if (!Grid.same(caster.height(), others.height())) {
            var units = design.unit();
            throw new ImpossibleDesignException(
                    "/support/others",
                    others.name() + " is " + Exact.length(units, others.height()) + " high, " + caster.name() + " "
                            + Exact.length(units, caster.height()) + ": the stand would not be level.",
                    List.of(
                            "Use two that are " + Exact.length(units, caster.height()) + " high.",
                            "Or leave them out and use four of " + caster.name() + "."));
        }
    }
}
