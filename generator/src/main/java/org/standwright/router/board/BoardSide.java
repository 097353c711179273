package org.standwright.router.board;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.standwright.design.kit.StockSheet;
import org.standwright.drawing.plot.Layer;
import org.standwright.drawing.plot.Mark;
import org.standwright.drawing.plot.Plot;
import org.standwright.geom.Loop;
import org.standwright.geom.Outline;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.part.Colour;
import org.standwright.router.machining.Kind;
import org.standwright.router.machining.Work;

/** One side of a board while its layers are filled: all work of one kind to one depth on one of them. */
final class BoardSide {
    private static final Colour SHEET = new Colour(170, 170, 170);
    private static final Colour LABEL = new Colour(90, 90, 90);
    private static final Colour DOWEL = new Colour(120, 0, 120);
    private static final double[] NOTE_SIZES = {40, 30, 22, 16, 12};
    /** Height of lettering along the edges, mm, where the strip there has room for it. */
    private static final double EDGE_SIZE = 6;

    private static final double EDGE_SHARE = 0.7;
    /** What of letters reaches below their baseline. */
    private static final double DESCENT = 0.2;

    private static final double[] LABEL_SIZES = {16, 12, 9, 7, 5, 4};

    private final StockSheet board;
    private final UnaryOperator<Vec2> image;
    private final List<Mark> dowels = new ArrayList<>();
    private final Map<Work, List<Mark>> marks =
            new TreeMap<>(Comparator.comparing(Work::kind).thenComparing(Work::layer));
    private String dowelLayer = "";
    private final List<Mark> labels = new ArrayList<>();

    /**
     * An empty side.
     *
     * @param image where a point of the board as it was planned lies when this side is up
     */
    BoardSide(StockSheet board, UnaryOperator<Vec2> image) {
        this.board = board;
        this.image = image;
    }

    /**
     * Holes for dowels.
     *
     * @param layer that says where they are bored
     */
    void addDowels(List<Vec2> places, double diameter, String layer) {
        dowelLayer = layer;
        places.forEach(at -> dowels.add(new Mark.Circle(image.apply(at), diameter)));
    }

    /** What is done to a piece here, with its label if anything is. */
    void add(Worked piece, List<Worked.Placing> placings) {
        var mover = new Placed(image);
        var own = placings.stream()
                .map(placing ->
                        new Worked.Placing(placing.work(), placing.mark().accept(mover)))
                .toList();
        own.forEach(placing ->
                marks.computeIfAbsent(placing.work(), key -> new ArrayList<>()).add(placing.mark()));
        if (!own.isEmpty()) {
            labels.add(label(piece, own));
        }
    }

    /**
     * Which long edge lies towards the person, lettered along both in the strip that parts keep clear of.
     *
     * @param strip width of what is not cut along the edges, mm
     */
    void addEdges(String lower, String upper, double strip) {
        double size = Math.min(EDGE_SIZE, EDGE_SHARE * strip);
        double low = (strip - size) / 2 + DESCENT * size;
        labels.add(new Mark.Words(lower, new Vec2(2 * strip, low), size));
        labels.add(new Mark.Words(upper, new Vec2(2 * strip, board.width() - strip + low), size));
    }

    /** The same again as large as it fits somewhere in the waste, if it does: who looks at the whole board reads that. */
    void addNote(String words, List<Worked> pieces) {
        var taken = Stream.concat(
                pieces.stream().map(piece -> outline(piece.piece().outline().moved(image))), dowels.stream());
        var whole = Outline.of(new Rect(0, 0, board.length(), board.width()));
        new LabelPlace(whole, taken).of(words, NOTE_SIZES).ifPresent(labels::add);
    }

    private static Mark outline(Outline outline) {
        return new Mark.Closed(Loop.of(outline));
    }

    Plot plot(String title) {
        var layers = new ArrayList<Layer>();
        var edge = new Mark.Closed(Loop.of(new Rect(0, 0, board.length(), board.width())));
        layers.add(new Layer("sheet", SHEET, List.of(edge)));
        if (!dowels.isEmpty()) {
            layers.add(new Layer(dowelLayer, DOWEL, dowels));
        }
        marks.forEach((work, all) -> layers.add(
                work.kind() == Kind.TAB
                        ? Layer.heavy(work.layer(), work.kind().colour(), all)
                        : new Layer(work.layer(), work.kind().colour(), all)));
        layers.add(new Layer("label", LABEL, labels));
        return new Plot(title, board.length(), board.width(), layers);
    }

    private Mark label(Worked piece, List<Worked.Placing> own) {
        var outline = piece.piece().outline().moved(image);
        var place = new LabelPlace(
                outline,
                own.stream()
                        .filter(placing -> placing.work().kind() != Kind.OUTLINE)
                        .map(Worked.Placing::mark));
        var corner = new Vec2(outline.bounds().x0() + 1, outline.bounds().y0() + 1);
        var label = piece.piece().label();
        return place.of(piece.name(), LABEL_SIZES)
                .or(() -> place.of(label, LABEL_SIZES))
                .orElseGet(() -> new Mark.Words(label, corner, LABEL_SIZES[LABEL_SIZES.length - 1]));
    }
}
