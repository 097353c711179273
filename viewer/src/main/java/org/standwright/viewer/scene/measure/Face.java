package org.standwright.viewer.scene.measure;

import java.util.List;

/** A face of a solid as its maker sees it: one plane, or all the way round a hole. */
public sealed interface Face permits FlatFace, RoundFace {
    /** All triangles that it is made of. */
    List<Triangle> triangles();
}
