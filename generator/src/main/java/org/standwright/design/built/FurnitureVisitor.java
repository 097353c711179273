package org.standwright.design.built;

/** What one output or calculation makes of each kind of furniture. */
public interface FurnitureVisitor<R> {
    R stand(Stand stand);

    R wall(CleatWall wall);
}
