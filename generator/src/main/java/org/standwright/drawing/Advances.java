package org.standwright.drawing;

import java.io.IOException;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** How far each character of a font moves the pen, per unit of size; below 0 where the font does not have it. */
final class Advances {
    private static final int CHARACTERS = 0x10000;
    private static final double MISSING = -1;

    private final double[] byCharacter;

    private Advances(double[] byCharacter) {
        this.byCharacter = byCharacter;
    }

    static Advances of(Weight weight) throws IOException {
        try (var file = weight.open();
                var font = new TTFParser().parse(new RandomAccessReadBuffer(file))) {
            var cmap = font.getUnicodeCmapLookup();
            var advances = new double[CHARACTERS];
            for (int character = 0; character < CHARACTERS; character++) {
                int glyph = character < ' ' ? 0 : cmap.getGlyphId(character);
                advances[character] =
                        glyph == 0 ? MISSING : (double) font.getAdvanceWidth(glyph) / font.getUnitsPerEm();
            }
            return new Advances(advances);
        }
    }

    boolean has(int character) {
        return character < CHARACTERS && byCharacter[character] != MISSING;
    }

    /** Width of a text of which this has every character. */
    double width(String words) {
        double width = 0;
        for (int i = 0; i < words.length(); i++) {
            width += byCharacter[words.charAt(i)];
        }
        return width;
    }
}
