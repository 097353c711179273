package org.standwright.design.stand;

import java.util.List;
import org.standwright.design.ImpossibleDesignException;
import org.standwright.design.KeptTogether;
import org.standwright.design.StandDesign;
import org.standwright.design.built.PartsTogether;
import org.standwright.part.Part;

/** Parts that stay together as a strip or a blank must come out of one board of their material. */
final class StripFit {
    private StripFit() {}

    static void check(StandDesign design, List<PartsTogether> all) {
        for (var together : all) {
            if (!(together.as() instanceof KeptTogether.OneSheet)) {
                fits(design, together);
            }
        }
    }

    private static void fits(StandDesign design, PartsTogether strip) {
        var first = strip.parts().get(0);
        double over = strip.as() instanceof KeptTogether.OneBlank blank ? 2 * blank.over() : 0;
        var block = Part.blank(
                first.part().name(),
                first.part().material(),
                strip.stripLength(design.saw().kerf()) + over,
                strip.stripWidth(design.saw().kerf()) + over);
        var boards = new BoardChoice(design, block.material());
        if (!boards.fit(block)) {
            var last = strip.parts().get(strip.parts().size() - 1);
            throw new ImpossibleDesignException(
                    strip.field(),
                    "Parts '" + first.label() + "' to '" + last.label() + "' cut as one strip are "
                            + boards.tooLarge(block) + ".",
                    List.of("Cut them one by one, or use a sheet " + boards.leastSheet(block.length(), block.width())
                            + " or more."));
        }
    }
}
