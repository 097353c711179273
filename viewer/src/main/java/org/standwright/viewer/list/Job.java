package org.standwright.viewer.list;

import org.standwright.cutlist.CutList;
import org.standwright.design.built.Furniture;
import org.standwright.sheet.SheetPlan;

/** A piece of furniture with its cut list and the plan of its sheets: three that belong together. */
public record Job(Furniture furniture, CutList cutList, SheetPlan plan) {}
