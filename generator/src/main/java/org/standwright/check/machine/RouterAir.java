package org.standwright.check.machine;

import java.util.List;
import java.util.stream.Stream;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.Cutout;
import org.standwright.design.Layout;
import org.standwright.design.PlateOpening;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.built.Stand;
import org.standwright.geom.Rect;

/**
 * A router under a plate draws air and throws dust: a bay closed by a door right below the plate needs an air inlet and
 * a dust port. Cut-outs in the back count as both. Common practice, no source.
 */
public final class RouterAir implements Rule<LoadedStand> {
    private static final RuleText TEXT =
            RuleText.plain("router-air", "Does a closed router get air?", "common practice, no source");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var stand = loaded.stand();
        var design = stand.design();
        boolean open = design.cutouts().stream().anyMatch(cutout -> cutout.in() == Cutout.In.BACK);
        return design.worktop().plate().filter(plate -> !open).stream()
                .flatMap(plate -> stand.bays().stream().flatMap(bay -> closed(bay, plate, stand)))
                .map(bay -> Finding.caution(
                        TEXT,
                        "bay " + bay.name(),
                        "A door closes it under the opening for "
                                + design.worktop().plate().orElseThrow().name()
                                + ", and nothing lets air in or dust out. Cut an air inlet and a hole for a dust hose "
                                + "into the back."))
                .toList();
    }

    /** The bays that a door closes right below some of the plate. */
    private static Stream<BayLayout> closed(BayLayout bay, PlateOpening plate, Stand stand) {
        if (!isBelow(bay.opening(), plate, stand) || bay.sections().isEmpty()) {
            return Stream.empty();
        }
        var top = bay.sections().get(0);
        if (top instanceof SectionLayout.Divided divided) {
            return divided.bays().stream().flatMap(inner -> closed(inner, plate, stand));
        }
        return top instanceof SectionLayout.Closed ? Stream.of(bay) : Stream.empty();
    }

    private static boolean isBelow(Rect opening, PlateOpening plate, Stand stand) {
        double written = plate.x() - stand.design().worktop().overhang().left();
        boolean mirrored = stand.design().layout() == Layout.MIRRORED;
        double centre = mirrored ? stand.carcass().max().x() - written : written;
        return centre - plate.width() / 2 < opening.x1() && opening.x0() < centre + plate.width() / 2;
    }
}
