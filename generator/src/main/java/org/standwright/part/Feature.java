package org.standwright.part;

/** Something that a tool removes from one part. */
public sealed interface Feature permits Channel, Hole, Pocket, EdgeHole, Bevel, Contour {
    /** What it is for, as the machining notes say it: 'caster bolt', 'motor plate'. */
    String purpose();

    <R> R accept(FeatureVisitor<R> visitor);
}
