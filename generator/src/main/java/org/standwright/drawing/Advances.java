package org.standwright.drawing;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** How far each character of a font moves the pen, per unit of size. Only looked up, never iterated. */
final class Advances {
    private static final int LAST = 0xffff;

    private final Map<Integer, Double> byCharacter;

    private Advances(Map<Integer, Double> byCharacter) {
        this.byCharacter = byCharacter;
    }

    static Advances of(Weight weight) throws IOException {
        try (var file = weight.open();
                var font = new TTFParser().parse(new RandomAccessReadBuffer(file))) {
            var cmap = font.getUnicodeCmapLookup();
            var advances = new HashMap<Integer, Double>();
            for (int character = ' '; character <= LAST; character++) {
                int glyph = cmap.getGlyphId(character);
                if (glyph != 0) {
                    advances.put(character, (double) font.getAdvanceWidth(glyph) / font.getUnitsPerEm());
                }
            }
            return new Advances(advances);
        }
    }

    boolean has(int character) {
        return byCharacter.containsKey(character);
    }

    /** Width of a text of which this has every character. */
    double width(String words) {
        return words.codePoints().mapToDouble(byCharacter::get).sum();
    }
}
