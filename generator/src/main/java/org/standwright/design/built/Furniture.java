package org.standwright.design.built;

import java.util.List;
import java.util.Set;
import org.standwright.assembly.Assembly;
import org.standwright.design.Design;

/** A piece of furniture worked out from its design, as far as every kind of it has it. */
public interface Furniture {
    /** As its maker wrote it. */
    Design design();

    /** Everything at its place. */
    Assembly assembly();

    /** Parts that leave the sheet as one block. */
    List<PartsTogether> together();

    /** Labels of the placed parts that are cut in a second stage, when what they go into was measured. */
    Set<String> later();

    <R> R accept(FurnitureVisitor<R> visitor);
}
