package org.standwright.router.machining;

import java.util.Optional;
import org.standwright.drawing.plot.Mark;
import org.standwright.part.Face;

/**
 * One thing that is cut, in the part's frame seen from its show face.
 *
 * @param face that the bit has to enter by; empty for what goes right through and is the same from either
 */
public record Operation(Optional<Face> face, Work work, Mark mark) {}
