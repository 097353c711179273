package org.standwright.drawing.wall;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.standwright.drawing.Fill;
import org.standwright.drawing.Lettering;
import org.standwright.drawing.Point;
import org.standwright.drawing.Polygon;
import org.standwright.drawing.Shape;
import org.standwright.drawing.Text;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.Weight;
import org.standwright.geom.Rect;

/**
 * Names of things on a figure: within the thing where there is room, else beside it on free paper, and else a letter on it and the name in a key. No
 * words lie on other words.
 */
final class Tags {
    private static final double[] SIZES = {2.6, 2.2, 1.9};
    private static final double LETTER = 2.4;
    /** White round words, mm. */
    private static final double CLEAR = 0.5;
    /** Lines of the key below the figure. */
    private final List<String> key = new ArrayList<>();

    private final List<Shape> shapes = new ArrayList<>();
    private final TextMeasure measure;
    private Predicate<Rect> paper = room -> false;
    private List<Rect> solid = List.of();
    private Lettering taken = new Lettering(List.of());

    Tags(TextMeasure measure) {
        this.measure = measure;
    }

    /**
     * Lets names stand beside their things.
     *
     * @param within which rooms lie on the paper that names may stand on
     * @param solid no name stands on them but its own thing's
     */
    void freePaper(Predicate<Rect> within, List<Rect> solid) {
        this.paper = within;
        this.solid = List.copyOf(solid);
    }

    List<Shape> shapes() {
        return List.copyOf(shapes);
    }

    /** 'A  chisel rack, ≤ 12 kg'. */
    List<String> key() {
        return List.copyOf(key);
    }

    /** The first of these words that lies on no others. */
    boolean first(Stream<Text> places) {
        var found = places.filter(text -> taken.leavesFree(grown(measure.box(text))))
                .findFirst();
        found.ifPresent(text -> put(text, false));
        return found.isPresent();
    }

    /** Keeps words off an area. */
    void keepOff(Rect area) {
        var more = new ArrayList<>(taken.texts());
        more.add(new Lettering.Placed("", area));
        taken = new Lettering(more);
    }

    /**
     * @param second what is printed under the name
     * @param rooms where the name may stand; any of the first list rather than one of the next
     * @param whole all of the thing, beside which its letter stands where there is room nowhere within
     */
    void name(String name, Optional<String> second, List<List<Rect>> rooms, Rect whole) {
        if (rooms.stream().anyMatch(some -> isNamed(name, second, some)) || isNamedBeside(name, second, whole)) {
            return;
        }
        var letter = letter(key.size());
        key.add(letter + "  " + name + second.map(words -> ", " + words).orElse(""));
        mark(letter, rooms.stream().flatMap(List::stream).toList(), whole);
    }

    private boolean isNamed(String name, Optional<String> second, List<Rect> rooms) {
        for (double size : SIZES) {
            for (var lines : wordings(name, second)) {
                if (rooms.stream().anyMatch(room -> fits(lines, size, room))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** On free paper right beside the thing. */
    private boolean isNamedBeside(String name, Optional<String> second, Rect whole) {
        return Stream.of(2.2, 1.9)
                .anyMatch(size -> wordings(name, second).stream().anyMatch(lines -> {
                    double wide = width(lines, size) + 2 * CLEAR + 0.1;
                    double high = height(lines, size) + 2 * CLEAR + 0.1;
                    double x = (whole.x0() + whole.x1() - wide) / 2;
                    double y = (whole.y0() + whole.y1() - high) / 2;
                    return Stream.of(
                                    new Rect(whole.x1() + CLEAR, y, whole.x1() + CLEAR + wide, y + high),
                                    new Rect(whole.x0() - CLEAR - wide, y, whole.x0() - CLEAR, y + high),
                                    new Rect(x, whole.y1() + CLEAR, x + wide, whole.y1() + CLEAR + high),
                                    new Rect(x, whole.y0() - CLEAR - high, x + wide, whole.y0() - CLEAR))
                            .filter(this::isFreePaper)
                            .anyMatch(room -> fits(lines, size, room));
                }));
    }

    private boolean isFreePaper(Rect room) {
        return paper.test(room) && solid.stream().noneMatch(area -> Lettering.overlap(area, room));
    }

    private static List<List<String>> wordings(String name, Optional<String> second) {
        var whole = Stream.concat(Stream.of(name), second.stream()).toList();
        var words =
                Stream.concat(Arrays.stream(name.split(" ")), second.stream()).toList();
        var line = List.of(String.join(", ", whole));
        return Stream.of(whole, line, words).distinct().toList();
    }

    private boolean fits(List<String> lines, double size, Rect room) {
        double wide = width(lines, size);
        double high = height(lines, size);
        if (wide + 2 * CLEAR > room.width() || high + 2 * CLEAR > room.height()) {
            return false;
        }
        double free = room.height() - high - 2 * CLEAR;
        return Stream.of(0.5, 0.0, 1.0, 0.25, 0.75)
                .anyMatch(share -> put(lines, size, room, room.y1() - CLEAR - share * free, wide, high));
    }

    private double width(List<String> lines, double size) {
        return lines.stream()
                .mapToDouble(line -> measure.width(line, size, Weight.REGULAR))
                .max()
                .orElse(0);
    }

    private double height(List<String> lines, double size) {
        return measure.above(size) + (lines.size() - 1) * measure.pitch(size) + measure.below(size);
    }

    private boolean put(List<String> lines, double size, Rect room, double top, double wide, double high) {
        double x = (room.x0() + room.x1()) / 2;
        var box = grown(new Rect(x - wide / 2, top - high, x + wide / 2, top));
        if (!taken.leavesFree(box)) {
            return false;
        }
        double y = top - measure.above(size);
        shapes.add(Polygon.area(box, Fill.WHITE));
        for (var line : lines) {
            put(Text.level(line, new Point(x, y), size, Text.Anchor.MIDDLE), false);
            y -= measure.pitch(size);
        }
        return true;
    }

    private void mark(String letter, List<Rect> rooms, Rect whole) {
        double half = measure.above(LETTER) / 2;
        double step = 2 * half + 2 * CLEAR;
        var middle = new Point((whole.x0() + whole.x1()) / 2, (whole.y0() + whole.y1()) / 2);
        var inside = rooms.stream().map(room -> new Point((room.x0() + room.x1()) / 2, (room.y0() + room.y1()) / 2));
        var around = Stream.of(1, 2, 3, 4)
                .flatMap(i -> Stream.of(
                        new Point(whole.x1() + i * step, middle.y()),
                        new Point(whole.x0() - i * step, middle.y()),
                        new Point(middle.x(), whole.y1() + i * step),
                        new Point(middle.x(), whole.y0() - i * step)));
        Stream.of(inside, Stream.of(middle), around)
                .flatMap(places -> places)
                .map(at -> Text.level(letter, new Point(at.x(), at.y() - half), LETTER, Text.Anchor.MIDDLE)
                        .bold())
                .filter(text -> taken.leavesFree(grown(measure.box(text))))
                .findFirst()
                .ifPresent(text -> put(text, true));
    }

    private void put(Text text, boolean onWhite) {
        if (onWhite) {
            shapes.add(Polygon.area(grown(measure.box(text)), Fill.WHITE));
        }
        shapes.add(text);
        taken = taken.and(text, measure);
    }

    private static Rect grown(Rect box) {
        return new Rect(box.x0() - CLEAR, box.y0() - CLEAR / 2, box.x1() + CLEAR, box.y1() + CLEAR / 2);
    }

    /** A to Z, then AA, AB … */
    private static String letter(int index) {
        var last = String.valueOf((char) ('A' + index % 26));
        return index < 26 ? last : letter(index / 26 - 1) + last;
    }
}
