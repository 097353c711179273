package org.standwright.viewer.scene.tools;

import org.standwright.assembly.Pose;
import org.standwright.solid.PlacedSolid;
import org.standwright.solid.Solid;
import org.standwright.viewer.scene.measure.Face;
import org.standwright.viewer.scene.measure.FaceAt;

/**
 * A face that was clicked.
 *
 * @param label of the board
 * @param solid of the board
 * @param triangle of the solid, by which the face is found again
 */
record Mark(String label, Solid solid, int triangle) {
    /** Whether the board has not changed but for its place. */
    boolean isOn(PlacedSolid board) {
        return board.solid() == solid;
    }

    /** Where it stands now that the board stands there. */
    Face face(PlacedSolid board, Pose pose) {
        return FaceAt.of(board.inPlace(pose), triangle);
    }
}
