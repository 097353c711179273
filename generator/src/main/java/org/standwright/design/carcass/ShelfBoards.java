package org.standwright.design.carcass;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standwright.assembly.PlacedPart;
import org.standwright.assembly.Placement;
import org.standwright.design.Shelves;
import org.standwright.design.built.BayLayout;
import org.standwright.design.built.SectionLayout;
import org.standwright.design.frame.Frame;
import org.standwright.geom.Axis;
import org.standwright.geom.Vec3;
import org.standwright.part.Part;

/** Adjustable shelves: loose boards on pins. All figures common practice, no source. */
final class ShelfBoards {
    /** Between the board and the upright at each end, mm. */
    private static final double PLAY = 1;
    /** How much less deep than the carcass a board is, mm. */
    private static final double SHALLOWER = 20;
    /** How far behind a door a board lies, mm. */
    private static final double BEHIND_DOOR = 10;

    private final Frame frame;

    ShelfBoards(Frame frame) {
        this.frame = frame;
    }

    /** Undersides of the shelves in a section above its opening's lower edge, rising. */
    static List<Double> undersides(SectionLayout section) {
        if (section instanceof SectionLayout.Open open) {
            return open.shelves();
        }
        return section instanceof SectionLayout.Closed closed ? closed.shelves() : List.of();
    }

    static Optional<Shelves.Kind> kind(SectionLayout section) {
        if (section instanceof SectionLayout.Open open) {
            return open.kind();
        }
        return section instanceof SectionLayout.Closed closed ? closed.kind() : Optional.empty();
    }

    /** Those of one bay and the bays within it, numbered in one series with its fixed shelves. */
    List<PlacedPart> boards(BayLayout bay) {
        var boards = new ArrayList<PlacedPart>();
        int number = 1;
        for (var section : bay.sections()) {
            var undersides = undersides(section);
            for (int i = undersides.size() - 1; i >= 0; i--) {
                if (kind(section).equals(Optional.of(Shelves.Kind.ADJUSTABLE))) {
                    boards.add(board("shelf " + bay.name() + "." + number, section, undersides.get(i)));
                }
                number++;
            }
            if (section instanceof SectionLayout.Divided divided) {
                divided.bays().forEach(within -> boards.addAll(boards(within)));
            }
        }
        return boards;
    }

    private PlacedPart board(String label, SectionLayout section, double underside) {
        var opening = section.opening();
        double front = frame.isInset() && section instanceof SectionLayout.Closed
                ? frame.design().drawers().front().material().thickness()
                : 0;
        double setBack = section instanceof SectionLayout.Closed ? front + BEHIND_DOOR : 0;
        var part = Part.blank(
                "adjustable shelf",
                frame.design().carcass().sheet().material(),
                opening.width() - 2 * PLAY,
                frame.insideDepth() - front - SHALLOWER);
        var origin = new Vec3(opening.x0() + PLAY, setBack, opening.y0() + underside);
        return new PlacedPart(label, part, new Placement(Axis.X_PLUS, Axis.Y_PLUS, origin));
    }
}
