package org.standwright.export.mesh;

import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDateTime;
import java.util.zip.CRC32;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A ZIP of entries that are stored as they are, all from the first moment that a ZIP can tell. Packed ones would differ
 * from one Java to the next.
 */
final class StoredZip {
    private static final LocalDateTime FIRST_MOMENT = LocalDateTime.of(1980, 1, 1, 0, 0);

    private final ZipOutputStream zip;

    StoredZip(OutputStream out) {
        zip = new ZipOutputStream(out);
    }

    void add(String name, byte[] content) throws IOException {
        var crc = new CRC32();
        crc.update(content);
        var entry = new ZipEntry(name);
        entry.setMethod(ZipEntry.STORED);
        entry.setSize(content.length);
        entry.setCrc(crc.getValue());
        entry.setTimeLocal(FIRST_MOMENT);
        zip.putNextEntry(entry);
        zip.write(content);
        zip.closeEntry();
    }

    /** Writes what comes behind the last entry; the stream stays open. */
    void finish() throws IOException {
        zip.finish();
    }
}
