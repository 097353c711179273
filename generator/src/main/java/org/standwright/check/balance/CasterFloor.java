package org.standwright.check.balance;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.Input;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.Support;
import org.standwright.geom.Vec2;

/** Four casters stand on three where the floor is out of plane; nothing on them can be adjusted. */
public final class CasterFloor implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "caster-floor",
            "Does it rock on its casters?",
            "s = H e / a",
            "The floor is 3 mm out of plane under one caster.",
            "geometry; common practice, no source");

    /** How far a workshop's floor is out of plane, mm. */
    private static final double OUT_OF_PLANE = 3;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        return loaded.design().support() instanceof Support.Casters ? List.of(finding(loaded)) : List.of();
    }

    private static Finding finding(LoadedStand loaded) {
        var units = loaded.units();
        double height = loaded.stand().stack().workingHeight();
        double arm = fromDiagonal(new Feet(loaded.stand())
                .contacts().stream().map(foot -> foot.centre()).toList());
        double sway = height * OUT_OF_PLANE / arm;
        return Finding.note(
                        TEXT,
                        "casters",
                        "On a floor " + units.length(OUT_OF_PLANE)
                                + " out of plane four casters stand on three, and the "
                                + "work surface sways by " + Quantity.SAG.words(sway, units)
                                + " as the stand rocks from one to the other. Shim the free caster where it stands.")
                .with(
                        new Input("H", "working height", Quantity.LENGTH, height),
                        new Input("e", "floor out of plane", Quantity.LENGTH, OUT_OF_PLANE),
                        new Input("a", "caster to the diagonal of its neighbours", Quantity.LENGTH, arm));
    }

    /** From the first of four to the line through the two beside it, which lie nearer than the one opposite. */
    private static double fromDiagonal(List<Vec2> casters) {
        var first = casters.get(0);
        var beside = casters.stream()
                .sorted((a, b) ->
                        Double.compare(a.minus(first).length(), b.minus(first).length()))
                .skip(1)
                .limit(2)
                .toList();
        var diagonal = beside.get(1).minus(beside.get(0));
        return Math.abs(diagonal.cross(first.minus(beside.get(0)))) / diagonal.length();
    }
}
