package org.standwright.check.bending;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;
import org.standwright.design.built.DrawerLayout;

/** Drawers wider than one and a half times their box's length rack and bind. Common practice, no source. */
public final class WideDrawer implements Rule {
    private static final RuleText TEXT =
            RuleText.plain("wide-drawer", "Do wide drawers rack?", "common practice, no source");

    private static final double WIDEST = 1.5;

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand loaded) {
        var stand = loaded.stand();
        var units = stand.design().unit();
        return stand.bays().stream()
                .filter(bay -> bay.drawers().stream().anyMatch(WideDrawer::isWide))
                .map(bay -> Finding.note(
                        TEXT,
                        "bay " + bay.name(),
                        "Its drawers are "
                                + units.length(bay.drawers().get(0).box().width()) + " wide on "
                                + (bay.drawers().get(0).slide().isPresent() ? "slides" : "runners") + " of "
                                + units.length(bay.drawers().get(0).box().depth())
                                + ", more than 1.5 times as wide as long: they rack and bind. Use narrower bays."))
                .toList();
    }

    private static boolean isWide(DrawerLayout drawer) {
        return drawer.box().width() > WIDEST * drawer.box().depth();
    }
}
