package org.standwright.viewer.scene.around;

import java.util.function.Function;
import javafx.beans.value.ObservableValue;
import javafx.geometry.VPos;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.paint.Color;
import javafx.scene.paint.Material;
import javafx.scene.shape.Mesh;
import javafx.scene.shape.MeshView;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import javafx.scene.transform.Affine;
import javafx.scene.transform.Rotate;
import org.standwright.geom.Axis;
import org.standwright.geom.Box3;
import org.standwright.viewer.scene.surface.Surface;
import org.standwright.viewer.scene.surface.SurfaceBuilder;
import org.standwright.viewer.scene.surface.SurfaceMesh;

/**
 * Draws what stands around furniture, in the frame of the assembly. The mouse goes through all of it. What is translucent
 * must be put into the scene after all that is seen through it.
 */
public final class AroundNodes {
    /** Style classes of colours; obstacles have one for each kind ({@link Obstruction#styleClass}). */
    public static final String FLOOR_LINE = "floor-line";

    public static final String HEAVY_FLOOR_LINE = "floor-line-heavy";
    public static final String FIGURE = "figure";
    public static final String INFEED = "infeed";
    public static final String OUTFEED = "outfeed";
    public static final String WALL = "wall-surface";
    public static final String STUD = "wall-stud";
    public static final String CASING = "wall-casing";
    public static final String SWING = "door-swing";

    /** Style class of the colour of the words on obstacles. */
    public static final String LABEL = "around-label";

    private static final double LARGEST_LETTERS = 80;
    private static final double SMALLEST_LETTERS = 18;

    /** How much larger words must come out to be worth tilting one's head. */
    private static final double MUCH = 1.5;

    /** Share of a block that its words take at most. */
    private static final double SHARE = 0.7;

    private final Function<String, Material> paint;
    private final Function<String, ObservableValue<Color>> colour;

    /**
     * @param paint the material of a style class
     * @param colour the same as a plain colour
     */
    public AroundNodes(Function<String, Material> paint, Function<String, ObservableValue<Color>> colour) {
        this.paint = paint;
        this.colour = colour;
    }

    public Node floor(FloorGrid floor) {
        return through(new Group(
                view(SurfaceMesh.flat(floor.lines()), FLOOR_LINE),
                view(SurfaceMesh.flat(floor.heavyLines()), HEAVY_FLOOR_LINE)));
    }

    public Node figure(Figure figure) {
        return through(new Group(view(SurfaceMesh.smooth(figure.surface()), FIGURE)));
    }

    /** Translucent. */
    public Node feed(FeedWay feed) {
        return through(new Group(box(feed.infeed(), INFEED), box(feed.outfeed(), OUTFEED)));
    }

    /** The wall with all that is on it and before it. */
    public Node wall(WallFace wall) {
        var group = new Group(flat(wall.slab(), WALL), flat(wall.studs(), STUD));
        for (var obstruction : wall.obstructions()) {
            group.getChildren().add(flat(obstruction.itself(), obstruction.styleClass()));
            group.getChildren().add(flat(obstruction.casing(), CASING));
        }
        wall.obstructions().forEach(obstruction -> group.getChildren().add(words(obstruction.sign())));
        return through(group);
    }

    /** What doors in the wall pass over. Translucent. */
    public Node swings(WallFace wall) {
        var group = new Group();
        wall.swings().forEach(swing -> group.getChildren().add(flat(swing.surface(), SWING)));
        return through(group);
    }

    private static Node through(Group group) {
        group.setMouseTransparent(true);
        return group;
    }

    private Node box(Box3 box, String styleClass) {
        return flat(new SurfaceBuilder().box(box).build(), styleClass);
    }

    private Node flat(Surface surface, String styleClass) {
        return view(SurfaceMesh.flat(surface), styleClass);
    }

    private Node view(Mesh mesh, String styleClass) {
        var view = new MeshView(mesh);
        view.setMaterial(paint.apply(styleClass));
        return view;
    }

    /** As large as there is room, upwards where that makes them much larger; read from the room, whichever way the wall looks. */
    private Node words(Sign sign) {
        var text = new Text(sign.words());
        text.fillProperty().bind(colour.apply(LABEL));
        text.setTextOrigin(VPos.CENTER);
        text.setFont(Font.font(LARGEST_LETTERS));
        double wide = text.getLayoutBounds().getWidth();
        double level = letters(wide, sign.width(), sign.height());
        double upwards = letters(wide, sign.height(), sign.width());
        boolean turned = upwards > MUCH * level;
        text.setFont(Font.font(Math.max(SMALLEST_LETTERS, turned ? upwards : level)));
        text.setX(-text.getLayoutBounds().getWidth() / 2);
        text.getTransforms().addAll(upright(sign), new Rotate(turned ? -90 : 0));
        return text;
    }

    /** How large letters may be. */
    private static double letters(double wide, double along, double across) {
        return Math.min(LARGEST_LETTERS, Math.min(SHARE * across, LARGEST_LETTERS * SHARE * along / wide));
    }

    /** A text's x runs along the wall, its y down, so that its front looks into the room. */
    private static Affine upright(Sign sign) {
        var right = sign.right().unit();
        var into = Axis.Z_PLUS.cross(sign.right()).unit();
        var at = sign.centre();
        return new Affine(
                right.x(), 0, into.x(), at.x(), right.y(), 0, into.y(), at.y(), right.z(), -1, into.z(), at.z());
    }
}
