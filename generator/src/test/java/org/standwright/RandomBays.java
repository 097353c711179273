package org.standwright;

import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Bays with contents of every kind, at random, and bays within them. */
record RandomBays(RandomLengths lengths, boolean inset) {
    String bays(int most, boolean nested) {
        int count = nested ? 2 : 1 + lengths.random().nextInt(most);
        return IntStream.range(0, count)
                .mapToObj(i -> i > 0 && lengths.random().nextInt(3) == 0
                        ? "{ \"width\": " + lengths.between(180, 450) + ", \"contents\": [" + contents(nested) + "] }"
                        : "{ \"contents\": [" + contents(nested) + "] }")
                .collect(Collectors.joining(", "));
    }

    private String contents(boolean nested) {
        var random = lengths.random();
        var above = lengths.onceIn(3, "{ \"kind\": \"drawers\", \"fronts\": [" + lengths.between(90, 160) + "] }, ");
        if (random.nextInt(4) == 0) {
            return above + "{ \"kind\": \"filled-drawers\", \"front\": " + lengths.between(80, 200) + " }";
        }
        var first = sharing(nested);
        return above + (random.nextInt(3) == 0 ? first + ", " + sharing(nested) : first);
    }

    /** Something that shares the height that is left, or has one of its own beside something that does. */
    private String sharing(boolean nested) {
        return switch (lengths.random().nextInt(nested ? 6 : 8)) {
            case 0, 1 ->
                "{ \"kind\": \"equal-drawers\", \"count\": "
                        + (1 + lengths.random().nextInt(5))
                        + lengths.onceIn(5, ", \"least\": " + lengths.between(60, 90))
                        + lengths.onceIn(5, ", \"most\": " + lengths.between(200, 400)) + " }";
            case 2 ->
                "{ \"kind\": \"graduated-drawers\", \"count\": "
                        + (2 + lengths.random().nextInt(3)) + ", \"ratio\": 1."
                        + (1 + lengths.random().nextInt(4)) + " }";
            case 3 -> "{ \"kind\": \"open\"" + height() + shelves() + " }";
            case 4 ->
                "{ \"kind\": \"clear\", \"use\": \"hose\""
                        + lengths.onceIn(2, ", \"hose\": " + lengths.between(30, 100)) + height() + " }";
            case 5 ->
                "{ \"kind\": \"door\", \"hinge\": " + hinge() + ", \"hung\": \""
                        + lengths.oneOf("left", "right", "pair") + "\"" + shelves() + " }";
            default -> "{ \"kind\": \"divided\", \"bays\": [" + bays(2, true) + "] }";
        };
    }

    private String height() {
        return lengths.onceIn(3, ", \"height\": " + lengths.between(120, 240));
    }

    private String shelves() {
        return lengths.onceIn(
                2,
                ", \"shelves\": { \"kind\": \"" + lengths.oneOf("fixed", "adjustable") + "\", \"count\": "
                        + (1 + lengths.random().nextInt(2)) + " }");
    }

    private String overlay() {
        return inset ? "0 mm" : lengths.oneOf("16.5 mm", "7.5 mm");
    }

    private String hinge() {
        return inset && lengths.random().nextBoolean()
                ? "{ \"name\": \"butt hinge\", \"style\": \"butt\", \"length\": \"50 mm\", \"leaf\": \"18 mm\","
                        + " \"thickness\": \"1.5 mm\", \"screws\": 3 }"
                : "{ \"name\": \"cup hinge\", \"style\": \"concealed\", \"cup\": \"35 mm\", \"cupDepth\": \"12.5 mm\","
                        + " \"cupFromEdge\": \"22.5 mm\", \"overlay\": \"" + overlay()
                        + "\", \"plateSetBack\": \"37 mm\", \"plateSpacing\": \"32 mm\","
                        + " \"reach\": \"20 mm\", \"depth\": \"60 mm\", \"height\": \"55 mm\", \"opening\": 110 }";
    }
}
