package org.standwright.check;

import java.util.List;
import org.standwright.design.built.DrawerLayout;
import org.standwright.design.built.Stand;

/** Drawers wider than one and a half times their box's length rack and bind. Common practice, no source. */
final class WideDrawer implements Rule {
    private static final double WIDEST = 1.5;

    @Override
    public List<Finding> check(Stand stand, Load load) {
        var units = stand.design().unit();
        return stand.bays().stream()
                .filter(bay -> bay.drawers().stream().anyMatch(WideDrawer::isWide))
                .map(bay -> new Finding(
                        Severity.NOTE,
                        "wide-drawer",
                        "bay " + bay.name(),
                        "Its drawers are "
                                + units.length(bay.drawers().get(0).box().width()) + " wide on "
                                + (bay.drawers().get(0).slide().isPresent() ? "slides" : "runners") + " of "
                                + units.length(bay.drawers().get(0).box().depth())
                                + ", more than 1.5 times as wide as long: they rack and bind. Use narrower bays.",
                        "common practice, no source"))
                .toList();
    }

    private static boolean isWide(DrawerLayout drawer) {
        return drawer.box().width() > WIDEST * drawer.box().depth();
    }
}
