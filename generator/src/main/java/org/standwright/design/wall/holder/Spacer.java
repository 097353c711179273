package org.standwright.design.wall.holder;

import java.util.List;
import java.util.Optional;
import org.standwright.assembly.Hardware;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.WallDesign;
import org.standwright.design.frame.ScrewChoice;
import org.standwright.design.wall.built.MadeHolder;
import org.standwright.part.Face;
import org.standwright.part.Part;

/**
 * A strip as thick as the cleats between the lower edge of a back and the wall. It is pressed only, so it is glued; screws
 * that stay behind the housings in the back hold it while that sets, where their family has so short ones.
 */
final class Spacer {
    private static final double LEAST_BITE = 4;

    private final HolderFrame frame;
    private final MadeHolder made;

    Spacer(WallDesign design, MadeHolder made) {
        this.frame = new HolderFrame(design, made.holder(), "");
        this.made = made;
    }

    PlacedPart placed() {
        double length = made.back().width();
        var blank = Part.blank("spacer", frame.section().sheet().material(), length, HolderFrame.SPACER);
        var part = screw().isEmpty()
                ? blank
                : blank.with(frame.screwing().places(length).stream()
                        .map(x -> frame.screwing().sunk(Face.BENCH, x, HolderFrame.SPACER / 2, "spacer screw"))
                        .toList());
        return frame.lay().facing("spacer", part, 0, 0, made.back().y0());
    }

    List<Hardware> hardware() {
        int count = frame.screwing().places(made.back().width()).size();
        return screw()
                .map(length -> new Hardware(
                        frame.screwing().item(length), count, made.holder().name() + ", spacer, glued too"))
                .stream()
                .toList();
    }

    private Optional<Double> screw() {
        double behind = frame.cleat() + frame.board() - frame.housing();
        return frame.screwing().longest(frame.cleat() + LEAST_BITE, behind - ScrewChoice.SHORT_OF_FACE);
    }
}
