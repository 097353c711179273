package org.standwright.drawing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.standwright.geom.Rect;

/** How much room lettering takes, from the advance widths of the shipped typeface. */
public final class TextMeasure {
    /** Height of capitals and digits above the baseline, per unit of size; with the stroke's overshoot. */
    private static final double ABOVE = 0.74;
    /** Reach of descenders below the baseline, per unit of size. */
    private static final double BELOW = 0.22;
    /** From baseline to baseline, per unit of size. */
    private static final double PITCH = 1.3;

    private final Map<Weight, Advances> advances;

    private TextMeasure(Map<Weight, Advances> advances) {
        this.advances = advances;
    }

    /** Measures with the typeface in the program's own jar. */
    public static TextMeasure shipped() {
        return Shipped.MEASURE;
    }

    /** Reads the typeface when it is first asked for: some tens of milliseconds. */
    private static final class Shipped {
        private static final TextMeasure MEASURE = read();

        private static TextMeasure read() {
            var advances = new EnumMap<Weight, Advances>(Weight.class);
            for (var weight : Weight.values()) {
                try {
                    advances.put(weight, Advances.of(weight));
                } catch (IOException e) {
                    throw new UncheckedIOException("the typeface in the program's own jar cannot be read.", e);
                }
            }
            return new TextMeasure(advances);
        }
    }

    /** Length of the baseline, mm. */
    public double width(String words, double size, Weight weight) {
        return advances.get(weight).width(printable(words)) * size;
    }

    /** From one baseline to the next, mm. */
    public double pitch(double size) {
        return PITCH * size;
    }

    /** How far letters rise above the baseline, mm. */
    public double above(double size) {
        return ABOVE * size;
    }

    /** How far letters reach below the baseline, mm. */
    public double below(double size) {
        return BELOW * size;
    }

    /** The box around the letters, in the frame in which the text stands. */
    public Rect box(Text text) {
        double width = width(text.words(), text.size(), text.weight());
        double start = switch (text.anchor()) {
            case START -> 0;
            case MIDDLE -> -width / 2;
            case END -> -width;
        };
        double below = below(text.size());
        double above = above(text.size());
        var at = text.at();
        return text.heading() == Text.Heading.LEVEL
                ? new Rect(at.x() + start, at.y() - below, at.x() + start + width, at.y() + above)
                : new Rect(at.x() - above, at.y() + start, at.x() + below, at.y() + start + width);
    }

    /** Lines no wider than {@code width}, broken at blanks, and inside a word only where it is too long for a line. */
    public List<String> wrap(String words, double width, double size, Weight weight) {
        var lines = new ArrayList<String>();
        var line = "";
        for (var word : words.strip().split("\\s+")) {
            var longer = line.isEmpty() ? word : line + " " + word;
            if (width(longer, size, weight) <= width) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = word;
            while (width(line, size, weight) > width && line.length() > 1) {
                int fits = charactersThatFit(line, width, size, weight);
                lines.add(line.substring(0, fits));
                line = line.substring(fits);
            }
        }
        if (!line.isEmpty()) {
            lines.add(line);
        }
        return List.copyOf(lines);
    }

    /** The words with '?' for each character that the typeface cannot show. */
    public String printable(String words) {
        var shown = new StringBuilder(words.length());
        for (int i = 0; i < words.length(); i += Character.charCount(words.codePointAt(i))) {
            int character = words.codePointAt(i);
            shown.appendCodePoint(Character.isWhitespace(character) ? ' ' : isKnown(character) ? character : '?');
        }
        return shown.toString();
    }

    private boolean isKnown(int character) {
        for (var known : advances.values()) {
            if (!known.has(character)) {
                return false;
            }
        }
        return true;
    }

    private int charactersThatFit(String word, double width, double size, Weight weight) {
        int fits = 1;
        while (fits < word.length() - 1 && width(word.substring(0, fits + 1), size, weight) <= width) {
            fits++;
        }
        return fits;
    }
}
