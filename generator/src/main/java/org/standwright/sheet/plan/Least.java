package org.standwright.sheet.plan;

import org.standwright.part.Material;
import org.standwright.sheet.Proof;

/** What no plan of one material can do without, counted as its plan's proof counts. */
public record Least(Material material, Proof.Goal goal, long amount) {}
