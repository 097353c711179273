package org.standwright.part;

/** Something that a tool removes from one part. */
public sealed interface Feature permits Channel, Hole, Pocket, EdgeHole {
    <R> R accept(FeatureVisitor<R> visitor);
}
