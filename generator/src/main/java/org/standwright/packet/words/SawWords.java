package org.standwright.packet.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.standwright.part.Edge;
import org.standwright.sheet.Cut;
import org.standwright.sheet.PlacedPiece;
import org.standwright.sheet.SetUp;

/** What cuts are called, on paper and in files alike. */
public final class SawWords {
    private static final int SHORTEST_RUN = 3;

    private SawWords() {}

    /** 'rip', or 'crosscut, trim': the direction, and what the cuts are for where they do not divide a panel. */
    public static String kind(SetUp setUp) {
        var purposes = setUp.cuts().stream()
                .map(cut -> cut.cut().purpose())
                .filter(purpose -> purpose != Cut.Purpose.DIVIDE)
                .map(SawWords::word)
                .distinct();
        return Stream.concat(Stream.of(word(setUp.direction())), purposes).collect(Collectors.joining(", "));
    }

    /** Labels of what a cut leaves at its size, blanks and rests marked, and 'offcut'. */
    public static List<String> frees(SetUp.Made made) {
        return Stream.concat(
                        made.frees().stream().map(piece -> free(piece, isRest(made.cut(), piece))),
                        made.offcuts().stream().map(offcut -> "offcut"))
                .toList();
    }

    private static String free(PlacedPiece piece, boolean rest) {
        var blank = switch (piece.parting()) {
            case NONE -> Stream.<String>empty();
            case LATER -> Stream.of("blank, parted later");
            case BEVEL -> Stream.of("blank, one bevel rip");
        };
        var marks =
                Stream.concat(blank, rest ? Stream.of("rest") : Stream.empty()).collect(Collectors.joining(", "));
        return marks.isEmpty() ? piece.label() : piece.label() + " (" + marks + ")";
    }

    /** Whether a piece lies beyond the cut that frees it, so that its size is what remains. */
    public static boolean isRest(Cut cut, PlacedPiece piece) {
        var area = piece.area();
        return switch (cut.reference()) {
            case X0 -> area.x() >= cut.kerf().endX();
            case X1 -> area.endX() <= cut.kerf().x();
            case Y0 -> area.y() >= cut.kerf().endY();
            case Y1 -> area.endY() <= cut.kerf().y();
        };
    }

    /** 'saw' or 'hand-held saw'. */
    public static String tool(Cut.Tool tool) {
        return tool == Cut.Tool.SAW ? "saw" : "hand-held saw";
    }

    /** The side of a panel as it lies on its drawing: 'left', 'lower'. */
    public static String edge(Edge edge) {
        return switch (edge) {
            case X0 -> "left";
            case X1 -> "right";
            case Y0 -> "lower";
            case Y1 -> "upper";
        };
    }

    /** '3, 5–8, 12': rising numbers with runs drawn together. */
    public static String runs(List<Integer> numbers) {
        var words = new ArrayList<String>();
        int from = 0;
        for (int to = 1; to <= numbers.size(); to++) {
            if (to < numbers.size() && numbers.get(to) == numbers.get(to - 1) + 1) {
                continue;
            }
            if (to - from >= SHORTEST_RUN) {
                words.add(numbers.get(from) + "–" + numbers.get(to - 1));
            } else {
                numbers.subList(from, to).forEach(number -> words.add(number.toString()));
            }
            from = to;
        }
        return String.join(", ", words);
    }

    /** TRIM as 'trim'. */
    public static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }
}
