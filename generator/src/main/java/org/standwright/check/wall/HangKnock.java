package org.standwright.check.wall;

import java.util.List;
import java.util.Optional;
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
            "Above 5 kg, or in a row above the eyes, it takes a screw that locks it; a lock takes two screws in a strip.",
            "common practice, no source");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(HungWall wall) {
        return HungBody.all(wall).stream()
                .flatMap(body -> about(wall, body).stream())
                .toList();
    }

    private static Optional<Finding> about(HungWall wall, HungBody body) {
        if (!body.load().holder().made().holder().lock()) {
            return knock(wall, body).needsStop() ? Optional.of(found(wall, body)) : Optional.empty();
        }
        int locking = new HolderScrews(wall, body.load().holder()).locking();
        return locking < HolderScrews.LOCKING ? Optional.of(missed(wall, body, locking)) : Optional.empty();
    }

    private static Finding missed(HungWall wall, HungBody body, int locking) {
        return Finding.caution(
                        TEXT,
                        body.name(),
                        (locking == 0 ? "Its lock screws meet no strip" : "One of its lock screws meets no strip")
                                + ", or only its very end. Hang it where both meet one.")
                .remedies(
                        () -> new Stronger(wall).elsewhere(body.load()).stream().toList());
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
