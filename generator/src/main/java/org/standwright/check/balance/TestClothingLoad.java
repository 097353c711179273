package org.standwright.check.balance;

import java.util.List;
import java.util.stream.Collectors;
import org.standwright.check.Finding;
import org.standwright.check.Input;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.check.balance.statics.DrawerFill;
import org.standwright.design.built.DrawerLayout;

/** The published test with drawers full of clothing, as a benchmark. */
public final class TestClothingLoad implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "test-clothing-load",
            "Would it stand the published test with clothing in all drawers?",
            "ratio = R / O, contents = density x (height - 1/8 in) x width x depth",
            "A benchmark only: the rule was for clothing storage, not for shop furniture. All drawers and doors open, "
                    + "or of the drawers of a bay one where a lock lets no more open; drawers full, shelves empty; with "
                    + "its machine; swivel casters point the worst way.",
            "superseded rule of the US CPSC for clothing storage: 8.5 lb/ft\u00b3; test as in ASTM F2057-23, 9.2.1");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var insides = loaded.stand().bays().stream()
                .flatMap(bay -> bay.drawers().stream())
                .collect(Collectors.toMap(drawer -> "drawer " + drawer.name(), DrawerLayout::inside));
        if (insides.isEmpty()) {
            return List.of();
        }
        var standing = new Standing(loaded).filled(drawer -> DrawerFill.mass(insides.get(drawer)));
        return List.of(new Verdict(
                        TEXT,
                        "whole stand",
                        "With its drawers open and full of clothing",
                        standing,
                        standing.allOpen().full())
                .helpedByALock()
                .within(Verdict.IN_TEST)
                .with(new Input("density", "of the clothing", Quantity.DENSITY, DrawerFill.DENSITY)));
    }
}
