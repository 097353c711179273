package org.standwright.check.wall;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.Input;
import org.standwright.check.Quantity;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.check.wall.statics.Knock;

/** Whether a knock from below can unhook a holder that should not fall. */
public final class HangKnock implements Rule<HungWall> {
    private static final RuleText TEXT = new RuleText(
            "hang-knock",
            "Does a knock from below unhook it?",
            "F = W over the rise of the bevel",
            "Above 5 kg, or in a row above the eyes, it takes a screw that locks it.",
            "common practice, no source");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(HungWall wall) {
        return HungBody.all(wall).stream()
                .filter(body -> !body.load().holder().made().holder().lock())
                .filter(body -> knock(wall, body).needsStop())
                .map(body -> found(wall, body))
                .toList();
    }

    private static Knock knock(HungWall wall, HungBody body) {
        boolean overhead =
                body.load().holder().rowHeight() > wall.design().person().eye();
        return new Knock(
                body.load().mass(),
                overhead ? Knock.Height.OVERHEAD : Knock.Height.WITHIN_REACH,
                body.section().bevel());
    }

    private static Finding found(HungWall wall, HungBody body) {
        var units = wall.units();
        var knock = knock(wall, body);
        return Finding.caution(
                        TEXT,
                        body.name(),
                        "A knock from below of " + units.force(knock.force()) + ", its weight, lifts it off after "
                                + units.length(knock.travel())
                                + (knock.height() == Knock.Height.OVERHEAD ? ", and it hangs overhead" : "")
                                + ". Screw it to its strip.")
                .with(
                        new Input("m", "holder and things", Quantity.MASS, knock.mass()),
                        new Input("rise", "of the bevel", Quantity.LENGTH, knock.travel()))
                .remedies(() -> List.of(new Stronger(wall).locked(body.name())));
    }
}
