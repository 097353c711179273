package org.standwright.viewer.scene;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.transform.Scale;
import org.standwright.assembly.Block;
import org.standwright.assembly.Pose;
import org.standwright.geom.Box3;

/** All things on the screen, each kept for as long as it has the same label. Everything is in the assembly's frame. */
final class Pieces {
    /** How much nearer than the faces edges are drawn, so as not to drown in them; share of the picture's height. */
    private static final double LIFT = 0.0012;

    private final Palette palette;
    private final Meshes meshes = new Meshes();
    private final Meshes.Drawn cube = UnitCube.drawn();
    private final Map<String, Piece> boards = new LinkedHashMap<>();
    private final Map<String, Piece> bought = new LinkedHashMap<>();
    private final Group solid = new Group();
    private final Group lines = new Group();
    private final Group glass = new Group();
    private final Scale lift = new Scale();
    private final Group caps = new Group();
    private final Outline outline;
    private Optional<Cuts> cuts = Optional.empty();

    Pieces(Palette palette) {
        this.palette = palette;
        this.outline = new Outline(palette);
        lines.getTransforms().add(lift);
        outline.node().getTransforms().add(lift);
    }

    /** In the order in which they are to be drawn: what is looked through comes last. */
    List<Node> nodes() {
        return List.of(solid, caps, outline.node(), lines, glass);
    }

    /** Keeps the pieces of what is still there, and their meshes where these are the same. */
    void show(Scenery scenery) {
        retain(boards, scenery.boards().stream().map(Scenery.Board::label).collect(Collectors.toSet()));
        retain(bought, scenery.bought().stream().map(Scenery.Bought::key).collect(Collectors.toSet()));
        var added = new ArrayList<Piece>();
        scenery.boards().forEach(board -> piece(boards, board.label(), added).draw(board, meshes));
        scenery.bought().forEach(thing -> piece(bought, thing.key(), added).draw(thing, cube));
        bought.values().forEach(piece -> piece.faces().setMouseTransparent(isMachine(piece)));
        solid.getChildren().addAll(added.stream().map(Piece::faces).toList());
        lines.getChildren().addAll(added.stream().map(Piece::lines).toList());
        cut();
        meshes.retain(
                scenery.boards().stream().map(board -> board.placed().solid()).collect(Collectors.toSet()));
    }

    /** Shows what a section leaves, until it is told another one or none; what is shown later is cut away until then. */
    void cut(Optional<Cuts> wanted) {
        cuts = wanted;
        cut();
    }

    private void cut() {
        boards.forEach((label, piece) -> {
            if (cuts.isEmpty() || cuts.get().whole().contains(label)) {
                piece.keep();
            } else {
                Optional.ofNullable(cuts.get().cut().get(label)).ifPresentOrElse(piece::keep, piece::leaveOut);
            }
        });
        caps.getChildren()
                .setAll(boards.values().stream()
                        .filter(Piece::isCut)
                        .map(Piece::cap)
                        .toList());
    }

    /** Moves everything to where it stands in a pose. */
    void place(Scenery scenery, Pose pose) {
        scenery.boards().forEach(board -> boards.get(board.label()).place(board, pose));
        scenery.bought().forEach(thing -> bought.get(thing.key()).place(kept(thing, pose)));
    }

    private Optional<Box3> kept(Scenery.Bought thing, Pose pose) {
        var box = pose.moved(thing.group(), thing.block().box());
        return cuts.map(Cuts::plane).map(plane -> plane.kept(box)).orElse(Optional.of(box));
    }

    /** Gives everything the look that the model says. */
    void paint(SceneModel model) {
        boards.values().forEach(piece -> paint(piece, model, "edge"));
        bought.values().forEach(piece -> paint(piece, model, "bought-edge"));
    }

    /** The eye is somewhere else. */
    void face(Sight sight, Optional<String> picked) {
        double factor = 1 - LIFT * sight.orbit().span() / sight.distance(); // towards the eye: nothing moves sideways
        var eye = sight.eye();
        lift.setPivotX(eye.x());
        lift.setPivotY(eye.y());
        lift.setPivotZ(eye.z());
        lift.setX(factor);
        lift.setY(factor);
        lift.setZ(factor);
        outline.around(picked.map(boards::get), sight.perPixel());
        all().filter(piece -> piece.faces().getParent() == glass).forEach(piece -> piece.order(eye));
    }

    void showLines(boolean shown) {
        lines.setVisible(shown);
    }

    /** The machine under a point of the picture, which is looked through as long as anything is behind it. */
    Optional<Hit> machine(Sight sight, double x, double y) {
        return bought.values().stream()
                .filter(piece -> isMachine(piece) && piece.faces().isVisible())
                .flatMap(piece -> hit(piece, sight, x, y).stream())
                .min(Comparator.comparingDouble(hit ->
                        Orbit.dot(hit.point().minus(sight.eye()), sight.orbit().forward())));
    }

    private void paint(Piece piece, SceneModel model, String edge) {
        boolean picked = model.pickedProperty().get().equals(Optional.of(piece.label()));
        boolean through = model.isGlass(piece.label());
        boolean seen = model.isSeen(piece.label());
        piece.cap().setMaterial(palette.material(Tone.CAP));
        var tone = picked ? Tone.PICKED : piece.tone();
        piece.paint(
                through ? palette.glass(tone) : palette.material(tone), palette.glow(picked ? "picked-edge" : edge));
        piece.show(seen, picked || model.edgesProperty().get());
        var wanted = through || isMachine(piece) && !picked ? glass : solid;
        if (piece.faces().getParent() != wanted) {
            ((Group) piece.faces().getParent()).getChildren().remove(piece.faces());
            wanted.getChildren().add(piece.faces());
        }
    }

    private static Optional<Hit> hit(Piece piece, Sight sight, double x, double y) {
        var way = sight.hit(piece.box(), x, y);
        return way.isEmpty()
                ? Optional.empty()
                : Optional.of(new Hit(
                        piece.label(), sight.eye().plus(sight.towards(x, y).times(way.getAsDouble()))));
    }

    private static boolean isMachine(Piece piece) {
        return piece.tone().name().equals(Block.Kind.MACHINE.name());
    }

    private static Piece piece(Map<String, Piece> known, String key, List<Piece> added) {
        return known.computeIfAbsent(key, wanted -> {
            var piece = new Piece();
            added.add(piece);
            return piece;
        });
    }

    private void retain(Map<String, Piece> known, Set<String> keys) {
        var gone = known.entrySet().stream()
                .filter(entry -> !keys.contains(entry.getKey()))
                .map(Map.Entry::getValue)
                .toList();
        known.keySet().retainAll(keys);
        var faces = gone.stream().map(Piece::faces).toList();
        solid.getChildren().removeAll(faces);
        glass.getChildren().removeAll(faces);
        lines.getChildren().removeAll(gone.stream().map(Piece::lines).toList());
    }

    private Stream<Piece> all() {
        return Stream.concat(boards.values().stream(), bought.values().stream());
    }
}
