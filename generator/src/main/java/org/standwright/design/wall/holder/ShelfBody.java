package org.standwright.design.wall.holder;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.Hardware;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.wall.Holder;
import org.standwright.geom.Box3;
import org.standwright.geom.Vec3;
import org.standwright.part.Edge;
import org.standwright.part.EdgeHole;
import org.standwright.part.Face;
import org.standwright.part.Feature;
import org.standwright.part.Part;

/** A board on brackets; its lip, glued and screwed to its front edge, only keeps things from walking off. */
final class ShelfBody {
    /** Beyond the things' depth, mm; common practice, no source. */
    private static final double BEHIND = 10;
    /** Length of a lip's screws in thicknesses of its board, at most; common practice, no source. */
    private static final double LIP_SCREW = 2.5;

    private final HolderFrame frame;
    private final Holder.Shelf shelf;
    private final Ledge ledge;

    ShelfBody(HolderFrame frame, Holder.Shelf shelf) {
        this.frame = frame;
        this.shelf = shelf;
        double width = frame.width(shelf.width(), frame.leastWidth());
        this.ledge = new Ledge(
                frame,
                width,
                shelf.things().depth() + BEHIND,
                Spans.evenly(width, frame.board()),
                hasLip() ? frame.board() : 0);
    }

    Body body() {
        var things = shelf.things();
        var boards = new ArrayList<PlacedPart>(ledge.boards("shelf board", hasLip() ? pilots() : List.of()));
        var hardware = new ArrayList<Hardware>();
        if (hasLip()) {
            boards.add(lip());
            hardware.add(new Hardware(
                    frame.screwing().item(lipScrew()),
                    places().size(),
                    shelf.name() + ", lip, into the board's edge (not rated), glued too"));
        }
        double front = frame.face() - ledge.depth();
        return new Body(
                ledge.width(),
                ledge.bottom(),
                ledge.inBack(),
                boards,
                hardware,
                new Box3(
                        new Vec3(0, front, 0),
                        new Vec3(ledge.width(), frame.face(), things.height() + HolderFrame.ABOVE)),
                new Vec3(ledge.width() / 2, frame.face() - ledge.depth() / 2, things.height() / 2),
                ledge.reach(),
                hasLip() ? Ledge.GLUED + ", lip" : Ledge.GLUED);
    }

    private boolean hasLip() {
        return shelf.lip() > 0;
    }

    private PlacedPart lip() {
        var part = Part.blank("lip", frame.sheet(), ledge.width(), frame.board() + shelf.lip())
                .with(places().stream()
                        .map(x -> frame.screwing().sunk(Face.SHOW, x, frame.board() / 2, "lip screw"))
                        .toList());
        return frame.lay().facing("lip", part, 0, frame.face() - ledge.depth(), -frame.board());
    }

    private List<Feature> pilots() {
        double depth = lipScrew() - frame.board();
        double bore = frame.screwing().family().pilot();
        return places().stream()
                .<Feature>map(x -> new EdgeHole(Edge.Y0, x, frame.board() / 2, bore, depth, "pilot for lip screw"))
                .toList();
    }

    private List<Double> places() {
        return frame.screwing().places(ledge.width());
    }

    private double lipScrew() {
        double most = frame.board() + Math.min((LIP_SCREW - 1) * frame.board(), ledge.depth());
        return frame.screwing().between(frame.board() + Screwing.LEAST_BITE, most, "A lip on its board");
    }
}
