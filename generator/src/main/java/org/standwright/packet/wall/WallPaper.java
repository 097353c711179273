package org.standwright.packet.wall;

import java.util.List;
import org.standwright.check.Finding;
import org.standwright.cutlist.CutList;
import org.standwright.design.WallDesign;
import org.standwright.design.built.CleatWall;
import org.standwright.drawing.wall.WallLabels;
import org.standwright.packet.words.ExactLength;
import org.standwright.unit.Units;

/** All that pages about walls are printed from. */
public record WallPaper(CleatWall walls, CutList cutList, WallLabels labels, List<Finding> findings) {
    public WallPaper {
        findings = List.copyOf(findings);
    }

    WallDesign design() {
        return walls.design();
    }

    Units units() {
        return design().unit();
    }

    /** A length in the maker's units, said with its millimetres where an inch fraction would hide some. */
    String exact(double mm) {
        return ExactLength.of(mm, units());
    }
}
