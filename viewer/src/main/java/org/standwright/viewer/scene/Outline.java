package org.standwright.viewer.scene;

import java.util.Optional;
import javafx.scene.Group;
import javafx.scene.shape.MeshView;
import org.standwright.solid.Solid;

/** Thick edges around the part that is pointed out; about as thick from near and far. */
final class Outline {
    private static final double PIXELS = 3.5;

    /** How much thicker or thinner they may get before they are made again. */
    private static final double TOLERANCE = 1.2;

    private final MeshView bars = new MeshView();
    private final Group node = new Group(bars);
    private Optional<Solid> drawn = Optional.empty();
    private double width;

    Outline(Palette palette) {
        bars.setMaterial(palette.glow("picked-edge"));
        bars.setMouseTransparent(true);
        bars.setVisible(false);
    }

    Group node() {
        return node;
    }

    /** Around a piece, or around none; bought things have bright edges only. */
    void around(Optional<Piece> piece, double perPixel) {
        var wanted = piece.filter(found -> found.faces().isVisible()).flatMap(Piece::solid);
        bars.setVisible(wanted.isPresent());
        wanted.ifPresent(solid -> {
            bars.getTransforms().setAll(piece.orElseThrow().place());
            draw(solid, PIXELS * perPixel);
        });
    }

    private void draw(Solid solid, double wide) {
        boolean fits = wide < width * TOLERANCE && wide > width / TOLERANCE;
        if (!fits || !drawn.equals(Optional.of(solid))) {
            bars.setMesh(EdgeMesh.bars(solid, Creases.of(solid), wide));
            drawn = Optional.of(solid);
            width = wide;
        }
    }
}
