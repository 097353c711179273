package org.standwright.design.wall.built;

import java.util.List;
import org.standwright.assembly.Hardware;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.wall.Holder;
import org.standwright.geom.Box3;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec3;

/**
 * A holder with its boards, not hung yet. Its frame: x to the right from its left edge, y into the wall from the wall's
 * surface, z up from the high edge of the strip that it hangs on.
 *
 * @param box around the holder and the things in it
 * @param back the board or boards that face the wall, x and z; they lie against the strips
 * @param parts hanger included, spacer not; labels start with the holder's name
 * @param thingsCentre centre of mass of the things
 * @param lip how far in front of the wall a hand may press down on it, mm
 * @param hangerScrews how many hold the hanger to the back
 */
public record MadeHolder(
        Holder holder,
        Box3 box,
        Rect back,
        List<PlacedPart> parts,
        List<Hardware> hardware,
        Vec3 thingsCentre,
        double lip,
        int hangerScrews) {
    public MadeHolder {
        parts = List.copyOf(parts);
        hardware = List.copyOf(hardware);
    }
}
