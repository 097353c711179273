package org.standwright;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumSet;
import java.util.SortedMap;
import java.util.TreeMap;
import org.standwright.design.Design;
import org.standwright.make.Format;
import org.standwright.make.Product;

/** Everything that is written for a design, worked out anew each time. */
final class Bytes {
    private Bytes() {}

    /** Every file's bytes by its name. */
    static SortedMap<String, byte[]> of(Design design) {
        var files = new TreeMap<String, byte[]>();
        for (var file : Format.ready(EnumSet.allOf(Format.class), Product.of(design))) {
            var out = new ByteArrayOutputStream();
            try {
                file.content().writeTo(out);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            files.put(file.name(), out.toByteArray());
        }
        return files;
    }
}
