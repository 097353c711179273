package org.standwright.check.handling;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.check.LoadedStand;
import org.standwright.check.Rule;
import org.standwright.check.RuleText;

/** Whether the stand passes the doorway that its maker measured: upright, laid down, or in parts. */
public final class Doorway implements Rule<LoadedStand> {
    private static final RuleText TEXT = new RuleText(
            "doorway",
            "Does the stand pass the doorway?",
            WayThrough.FORMULA,
            "Clear sizes as entered, no room for hands added. Upright either side goes first; laid down, an end. Drawers"
                    + " and worktop may come off, the carcass only where connecting screws hold it.",
            "geometry of the boxes around it");

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public List<Finding> check(LoadedStand stand) {
        return stand.design().site().doorway().stream()
                .flatMap(doorway -> new WayThrough(TEXT, "the doorway", doorway, stand)
                        .findings(new EmptyStand(stand).loads()).stream())
                .toList();
    }
}
