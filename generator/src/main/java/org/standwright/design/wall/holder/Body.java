package org.standwright.design.wall.holder;

import java.util.List;
import org.standwright.assembly.Hardware;
import org.standwright.assembly.PlacedPart;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;
import org.standwright.part.Feature;

/**
 * What a kind of holder has before its back, and what that asks of the back.
 *
 * @param width of the back, mm
 * @param bottom height of the back's lower edge, below 0
 * @param inBack features of the back, in its own frame: x as the holder's, y up from its lower edge
 * @param things the room of all that it holds, fingers included
 * @param centre centre of mass of the things
 * @param reach how far in front of the wall a hand may press down on it, mm
 * @param glued which joints take glue beside that of the hanger
 */
record Body(
        double width,
        double bottom,
        List<Feature> inBack,
        List<PlacedPart> boards,
        List<Hardware> hardware,
        Box3 things,
        Vec3 centre,
        double reach,
        String glued) {
    Body {
        inBack = List.copyOf(inBack);
        boards = List.copyOf(boards);
        hardware = List.copyOf(hardware);
    }
}
