package org.standwright.design.wall.holder;

import java.util.ArrayList;
import java.util.List;
import org.standwright.assembly.PlacedPart;
import org.standwright.design.frame.Exact;
import org.standwright.design.wall.Holder;
import org.standwright.geom.Box3;
import org.standwright.geom.Grid;
import org.standwright.geom.Vec3;
import org.standwright.part.Face;
import org.standwright.part.Part;

/**
 * A bar on edge before brackets, whose front ends are glued into dados of it. Its upper edge is level with the high edge of
 * the strip; clamps hang from there, their middle at the bar's front face or farther out.
 */
final class ClampBarBody {
    /** Clear space behind the bar for the jaws of clamps, mm; common practice, no source. */
    static final double JAWS = 60;
    /** The lowest bar that a clamp holds on, mm; common practice, no source. */
    private static final double LEAST_BAR = 30;

    private final HolderFrame frame;
    private final Holder.ClampBar bar;

    ClampBarBody(HolderFrame frame, Holder.ClampBar bar) {
        this.frame = frame;
        this.bar = bar;
    }

    Body body() {
        if (Grid.less(bar.bar(), LEAST_BAR)) {
            throw frame.refused(
                    "/bar",
                    "has a bar " + frame.length(bar.bar()) + " high, too low for clamps.",
                    "Make it " + Exact.up(frame.design().unit(), LEAST_BAR) + " high or more.");
        }
        var things = bar.things();
        var spans = Spans.of(
                things.count(),
                things.width() + HolderFrame.BESIDE,
                HolderFrame.BESIDE,
                frame.board(),
                frame.leastWidth());
        double reach = -frame.face() + JAWS + frame.board();
        double bottom = frame.bottom(reach, bar.bar());
        var posts = new Posts(
                frame, spans.width(), spans.posts(), JAWS + frame.housing(), bottom, 0, Math.min(bar.bar(), -bottom));
        var boards = new ArrayList<PlacedPart>(posts.boards());
        boards.add(board(posts));
        double out = reach + Math.max(things.depth() / 2, things.depth() - JAWS - frame.board());
        return new Body(
                spans.width(),
                bottom,
                posts.dados(),
                boards,
                List.of(),
                new Box3(
                        new Vec3(0, -out, Math.min(-bar.bar(), -things.height())),
                        new Vec3(spans.width(), frame.face(), HolderFrame.ABOVE)),
                new Vec3(SlotsBody.mean(spans.centres()), -out + things.depth() / 2, -things.height() / 2),
                reach,
                "hanger on its back, brackets in dados of back and bar");
    }

    private PlacedPart board(Posts posts) {
        var part = Part.blank("clamp bar", frame.sheet(), posts.width(), bar.bar())
                .with(posts.dadosIn(Face.BENCH, posts.width(), bar.bar()));
        return frame.lay().facing("bar", part, 0, frame.face() - JAWS, -bar.bar());
    }
}
