package org.standwright.export;

import java.io.IOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.standwright.drawing.TextMeasure;
import org.standwright.drawing.Weight;

/** The shipped typeface: what a document uses of it is embedded there, as a subset. */
final class PdfFonts {
    private final TextMeasure measure = TextMeasure.shipped();
    private final Map<Weight, PDType0Font> fonts = new EnumMap<>(Weight.class);
    private final PDDocument document;

    PdfFonts(PDDocument document) {
        this.document = document;
    }

    PDType0Font of(Weight weight) throws IOException {
        var known = fonts.get(weight);
        return known == null ? embed(weight) : known;
    }

    private PDType0Font embed(Weight weight) throws IOException {
        try (var file = weight.open()) {
            var font = new TTFParser().parse(new RandomAccessReadBuffer(file));
            font.setEnableGsub(false); // no ligatures: letters stay letters when text is taken out of the file
            var embedded = PDType0Font.load(document, font, true);
            fonts.put(weight, embedded);
            return embedded;
        }
    }

    /** Words of which the fonts have every character. */
    String printable(String words) {
        return measure.printable(words);
    }

    double width(String words, double size, Weight weight) {
        return measure.width(words, size, weight);
    }

    /** Takes the compression off the fonts' streams, once the subsets are made. */
    void unpack() throws IOException {
        for (var font : fonts.values()) {
            unpack(font.getCOSObject());
        }
    }

    private static void unpack(COSBase item) throws IOException {
        if (item instanceof COSObject reference) {
            unpack(reference.getObject());
        } else if (item instanceof COSArray array) {
            for (var element : array) {
                unpack(element);
            }
        } else if (item instanceof COSDictionary dictionary) {
            if (dictionary instanceof COSStream stream && stream.containsKey(COSName.FILTER)) {
                plain(stream);
            }
            for (var value : dictionary.getValues()) {
                unpack(value);
            }
        }
    }

    private static void plain(COSStream stream) throws IOException {
        byte[] bytes;
        try (var in = stream.createInputStream()) {
            bytes = in.readAllBytes();
        }
        stream.removeItem(COSName.FILTER);
        try (var out = stream.createOutputStream()) {
            out.write(bytes);
        }
    }
}
