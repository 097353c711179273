package org.standwright.export.mesh;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;

/**
 * The container of a GLB: a header, then a chunk of JSON and, unless it is empty, one of binary data, each filled up to
 * whole words.
 */
record GlbChunks(byte[] json, byte[] binary) {
    private static final int MAGIC = 0x46546C67;
    private static final int VERSION = 2;
    private static final int JSON = 0x4E4F534A;
    private static final int BINARY = 0x004E4942;
    private static final int HEADER = 12;
    private static final int CHUNK_HEADER = 8;

    void write(OutputStream out) throws IOException {
        int length = HEADER + chunk(json) + (binary.length > 0 ? chunk(binary) : 0);
        out.write(words(MAGIC, VERSION, length));
        write(JSON, json, ' ', out);
        if (binary.length > 0) {
            write(BINARY, binary, '\0', out);
        }
    }

    private static void write(int kind, byte[] content, char filler, OutputStream out) throws IOException {
        var filled = Arrays.copyOf(content, whole(content.length));
        Arrays.fill(filled, content.length, filled.length, (byte) filler);
        out.write(words(filled.length, kind));
        out.write(filled);
    }

    private static int chunk(byte[] content) {
        return CHUNK_HEADER + whole(content.length);
    }

    /** The next multiple of four. */
    static int whole(int bytes) {
        return (bytes + 3) / 4 * 4;
    }

    private static byte[] words(int... words) {
        var bytes = ByteBuffer.allocate(words.length * Integer.BYTES).order(ByteOrder.LITTLE_ENDIAN);
        bytes.asIntBuffer().put(words);
        return bytes.array();
    }
}
