package org.standwright.sheet;

import java.util.List;
import org.standwright.design.Saw;

/** Plans for every sheet good of one job, cut with one saw. */
public record SheetPlan(Saw saw, List<MaterialPlan> materials) {
    public SheetPlan {
        materials = List.copyOf(materials);
    }
}
