package org.standwright;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What a shop may have and ask for when it cuts a stand, at random: a saw with limits, boards of several sizes, offcuts,
 * blocks.
 *
 * @param sheet text of the sheet that the carcass is made of
 */
record RandomCutting(SplittableRandom random, RandomLengths lengths, String sheet) {
    private static final List<String> NAMES =
            List.of("side", "drawer side", "drawer bottom", "bottom", "sub-top", "back", "box front", "drawer front");

    String saw() {
        var fields = new ArrayList<String>();
        fields.add("\"kerf\": " + lengths.between(1.5, 3.5));
        fields.add("\"trim\": " + (random.nextInt(3) == 0 ? trims() : lengths.between(0, 10)));
        fields.add("\"first\": \"" + lengths.oneOf("either", "either", "rip", "crosscut") + "\"");
        if (random.nextInt(2) == 0) {
            fields.add("\"stages\": " + lengths.oneOf("2", "3"));
        }
        if (random.nextInt(2) == 0) {
            fields.add("\"longestRip\": " + lengths.between(600, 2000));
        }
        if (random.nextInt(2) == 0) {
            fields.add("\"longestCrosscut\": " + lengths.between(400, 1100));
        }
        if (random.nextInt(4) > 0) {
            fields.add("\"breakDown\": { \"kerf\": " + lengths.between(1, 4) + ", \"allowance\": "
                    + lengths.oneOf("0", "\"5 mm\"", lengths.between(1, 9)) + " }");
        }
        if (random.nextInt(3) == 0) {
            fields.add("\"smallestPiece\": " + lengths.between(100, 300));
        }
        return "{ " + String.join(", ", fields) + " }";
    }

    private String trims() {
        return "{ \"all\": " + lengths.between(0, 10) + ", \"" + lengths.oneOf("left", "right") + "\": "
                + lengths.between(0, 20) + ", \"" + lengths.oneOf("bottom", "top") + "\": 0 }";
    }

    String stock() {
        var boards = new ArrayList<String>();
        if (random.nextInt(3) == 0) {
            boolean priced = random.nextBoolean();
            boards.add(board(2440, 2500, 1220, 1250, count() + price(priced)));
            boards.add(board(1500, 1550, 1500, 1550, price(priced)));
        }
        IntStream.range(0, random.nextInt(3))
                .mapToObj(i ->
                        board(400, 1500, 250, 900, thickness() + ", \"name\": \"offcut " + i + "\", \"atHand\": true"))
                .forEach(boards::add);
        return "{ \"keep\": { \"length\": " + lengths.between(150, 500) + ", \"width\": " + lengths.between(60, 200)
                + " }, \"sheets\": [" + String.join(", ", boards) + "] }";
    }

    private String board(double shortest, double longest, double narrowest, double widest, String fields) {
        return "{ \"sheet\": " + sheet + ", \"length\": " + lengths.between(shortest, longest) + ", \"width\": "
                + lengths.between(narrowest, widest) + fields + " }";
    }

    private String count() {
        return random.nextBoolean() ? ", \"count\": " + (1 + random.nextInt(4)) : "";
    }

    private String price(boolean priced) {
        return priced ? ", \"price\": \"" + (40 + random.nextInt(50)) + ".50 EUR\"" : "";
    }

    private String thickness() {
        return random.nextInt(8) == 0 ? ", \"thickness\": " + lengths.between(17, 19) : "";
    }

    String cutting() {
        var free = NAMES.stream()
                .filter(name -> random.nextInt(8) == 0)
                .map(RandomLengths::quoted)
                .collect(Collectors.joining(", "));
        var together = new ArrayList<String>();
        if (random.nextInt(2) == 0) {
            together.add(block(lengths.oneOf("\"side\"", "\"left side\", \"right side\"", "\"side\", \"bottom\"")));
        }
        if (random.nextInt(2) == 0) {
            together.add(block(lengths.oneOf("\"drawer side\"", "\"box front\", \"box back\"", "\"box front\"")));
        }
        return "{ \"anyGrain\": [" + free + "], \"together\": [" + String.join(", ", together) + "] }";
    }

    private String block(String parts) {
        var kind = lengths.oneOf("one-strip", "one-sheet", "one-sheet", "one-blank");
        var over = kind.equals("one-blank") ? ", \"over\": " + lengths.between(0, 6) : "";
        return "{ \"kind\": \"" + kind + "\", \"parts\": [" + parts + "]" + over + " }";
    }
}
