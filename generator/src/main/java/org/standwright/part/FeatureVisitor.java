package org.standwright.part;

/** What one output makes of each kind of feature. */
public interface FeatureVisitor<R> {
    R channel(Channel channel);

    R hole(Hole hole);

    R pocket(Pocket pocket);

    R edgeHole(EdgeHole hole);

    R bevel(Bevel bevel);

    R contour(Contour contour);
}
