package org.standwright.router.board;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.standwright.design.kit.Router;
import org.standwright.drawing.plot.Layer;
import org.standwright.drawing.plot.Mark;
import org.standwright.drawing.plot.Plot;
import org.standwright.geom.Loop;
import org.standwright.geom.Rect;
import org.standwright.geom.Vec2;
import org.standwright.part.Colour;
import org.standwright.part.Face;
import org.standwright.router.RoutedPiece;
import org.standwright.router.RoutedSheet;
import org.standwright.router.machining.Kind;
import org.standwright.router.machining.Machining;
import org.standwright.router.machining.Mm;
import org.standwright.router.machining.Work;

/**
 * One board as its router's program sees it.
 *
 * @param top everything that is cut with the board lying as it was planned; last, as it frees the parts
 * @param bottom what is cut first, with the board turned over side to side, where some part is worked on both faces
 * @param legend what the operator has to know, as lines of text
 */
public record RouterPlots(Plot top, Optional<Plot> bottom, List<String> legend) {
    static final Colour SHEET = new Colour(170, 170, 170);
    static final Colour LABEL = new Colour(90, 90, 90);
    static final Colour DOWEL = new Colour(120, 0, 120);
    private static final double[] LABEL_SIZES = {16, 12, 9, 7, 5, 4};

    public RouterPlots {
        legend = List.copyOf(legend);
    }

    /**
     * Draws a board.
     *
     * @param title what the board is called: 'Planer stand: birch 18, sheet 1 of 2'
     */
    public static RouterPlots of(String title, RoutedSheet sheet, Router router) {
        var worked = sheet.pieces().stream()
                .map(piece -> new Worked(
                        piece, Machining.of(piece.part(), router, sheet.from().thickness())))
                .toList();
        var below = worked.stream().flatMap(Worked::below).toList();
        var dowels = below.isEmpty() ? List.<Vec2>of() : Dowels.of(sheet, router);
        var top = plot(title + ", top", sheet, router, dowels, worked, Worked::above, UnaryOperator.identity());
        var turning = new Turning(sheet.from().width());
        Optional<Plot> bottom = below.isEmpty()
                ? Optional.empty()
                : Optional.of(plot(title + ", bottom", sheet, router, dowels, worked, Worked::below, turning));
        return new RouterPlots(top, bottom, new Legend(title, sheet, router, worked, dowels, top, bottom).lines());
    }

    /** A piece and what is done to it. */
    record Worked(RoutedPiece piece, Machining machining) {
        /** What is cut as it lies. */
        Stream<Placing> above() {
            return placed(up(), true);
        }

        /** What is cut when the board is turned over. */
        Stream<Placing> below() {
            return placed(up().opposite(), false);
        }

        Face up() {
            return piece.lie().overturned() ? Face.BENCH : Face.SHOW;
        }

        private Stream<Placing> placed(Face face, boolean first) {
            var mover = new Placed(piece.lie());
            return machining.on(face, first).stream()
                    .map(operation ->
                            new Placing(operation.work(), operation.mark().accept(mover)));
        }

        /** Label and name. */
        String name() {
            return piece.label() + " " + piece.part().name();
        }
    }

    /** One mark on the board. */
    record Placing(Work work, Mark mark) {}

    private interface Side {
        Stream<Placing> of(Worked worked);
    }

    private static Plot plot(
            String title,
            RoutedSheet sheet,
            Router router,
            List<Vec2> dowels,
            List<Worked> worked,
            Side side,
            UnaryOperator<Vec2> image) {
        var mover = new Placed(image);
        var works = new LinkedHashMap<String, Work>();
        Map<String, List<Mark>> marks = new TreeMap<>();
        var labels = new ArrayList<Mark>();
        for (var one : worked) {
            var own = side.of(one)
                    .map(placing -> new Placing(placing.work, placing.mark.accept(mover)))
                    .toList();
            for (var placing : own) {
                works.putIfAbsent(placing.work.layer(), placing.work);
                marks.computeIfAbsent(placing.work.layer(), key -> new ArrayList<>())
                        .add(placing.mark);
            }
            if (!own.isEmpty()) {
                labels.add(label(one, own, image));
            }
        }
        double length = sheet.from().length();
        double width = sheet.from().width();
        var layers = new ArrayList<Layer>();
        layers.add(new Layer("sheet", SHEET, List.of(new Mark.Closed(Loop.of(new Rect(0, 0, length, width))))));
        if (!dowels.isEmpty()) {
            layers.add(new Layer(
                    dowelLayer(router),
                    DOWEL,
                    dowels.stream()
                            .<Mark>map(at -> new Mark.Circle(image.apply(at), router.dowel()))
                            .toList()));
        }
        works.values().stream()
                .sorted(Comparator.comparing(Work::kind).thenComparing(Work::layer))
                .forEach(work -> layers.add(new Layer(work.layer(), work.kind().colour(), marks.get(work.layer()))));
        layers.add(new Layer("label", LABEL, labels));
        return new Plot(title, length, width, layers);
    }

    static String dowelLayer(Router router) {
        return "dowel " + Mm.of(router.dowel()) + " through";
    }

    private static Mark label(Worked worked, List<Placing> marks, UnaryOperator<Vec2> image) {
        var outline = worked.piece().outline().moved(image);
        var place = new LabelPlace(
                outline,
                marks.stream().filter(mark -> mark.work.kind() != Kind.OUTLINE).map(Placing::mark));
        var bounds = outline.bounds();
        return place.of(worked.name(), LABEL_SIZES)
                .or(() -> place.of(worked.piece().label(), LABEL_SIZES))
                .orElseGet(() -> new Mark.Words(
                        worked.piece().label(), new Vec2(bounds.x0() + 1, bounds.y0() + 1), LABEL_SIZES[5]));
    }
}
