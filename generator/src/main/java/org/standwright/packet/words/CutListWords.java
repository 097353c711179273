package org.standwright.packet.words;

import java.util.List;

/** What the words of a cut list mean; said once, on paper and in the text file alike. */
public final class CutListWords {
    private CutListWords() {}

    /** One paragraph each. */
    public static List<String> paragraphs() {
        return List.of(
                "Sizes: length along the grain × width. Rough blank: as the piece leaves the saw, with what is trimmed "
                        + "off later. Cut size: what its edges are banded on. Finished size: what is built in. Where a "
                        + "later size is not given, it is that of the one before. Labels that end in -L and -R "
                        + "are mirror images of each other.",
                "Show face and bench face: the show face of a piece is the one that its note 'as …' points out ('up', "
                        + "'to the left') as it sits once all is built; the bench face is the other, on which it "
                        + "lies on the bench.",
                "Reference end and reference edge: where x and y count from, x along the grain and y across it, on both "
                        + "faces, from finished edges: band a piece before it is machined. The note 'as …' of every line "
                        + "names them. Show face up and reference end to the left, the reference edge is the one "
                        + "towards you. Mark all three as soon as the piece is cut.",
                "Notes speak of the piece that they name; the others of the line are the same piece, turned.");
    }
}
