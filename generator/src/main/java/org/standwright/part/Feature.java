package org.standwright.part;

/** Something that a tool removes from one part. */
public sealed interface Feature permits Channel, Hole {
    /** The face that the tool enters by. */
    Face face();

    <R> R accept(FeatureVisitor<R> visitor);
}
