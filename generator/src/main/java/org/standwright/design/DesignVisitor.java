package org.standwright.design;

/** What one output or calculation makes of each kind of design. */
public interface DesignVisitor<R> {
    R stand(StandDesign design);

    R wall(WallDesign design);
}
