package org.standwright.check.bending;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.Gauge;
import org.standwright.check.Input;
import org.standwright.check.Limit;
import org.standwright.check.LoadedStand;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.Joint;
import org.standwright.design.kit.WorkingForce;

/** Whether a push from the side pushes the open front out of square: the back has to stand against it. */
public final class Racking implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "racking",
            "Does a push from the side rack the carcass?",
            "flow = F / b",
            "The back alone keeps the front square, fixed along all four edges; the greater one of the machine's working"
                    + " force and a person's push acts above it. From front to back the sides stand edgeways. How far the"
                    + " back gives is not worked out: no modulus of shear with a source was found.",
            "shear flow of a panel, any book on strength of materials; 1 N/mm along a glue line: our own choice");

    private static final Limit LIMIT = Limit.cautionAbove(1);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var design = loaded.design();
        double force = Math.max(
                design.loads().push(),
                design.machine().workingForce().map(WorkingForce::force).orElse(0.0));
        double width = loaded.stand().carcass().size().x();
        double flow = force / width;
        var units = loaded.units();
        return List.of(Finding.judged(
                        TEXT,
                        "back",
                        new Gauge(Quantity.LINE_LOAD, flow, LIMIT),
                        "A push of " + units.force(force) + " from the side asks "
                                + Quantity.LINE_LOAD.words(flow, units) + " of each of its edges, " + fixed(loaded)
                                + ".")
                .with(
                        new Input("F", "push", Quantity.FORCE, force),
                        new Input("b", "width of the carcass", Quantity.LENGTH, width)));
    }

    private static String fixed(LoadedStand loaded) {
        return loaded.design().carcass().joint() instanceof Joint.Housed
                ? "glued into the rabbets of the sides and over the other edges"
                : "which lie over the panels' edges: glue them, as screws into edges are not rated";
    }
}
