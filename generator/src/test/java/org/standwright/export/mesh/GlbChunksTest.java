package org.standwright.export.mesh;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Rules of the container in glTF 2.0 (references, section 8, [C]). */
class GlbChunksTest {
    /** The example of references, section 8: 12 + 8 + 1004 + 8 + 648. */
    @Test
    void aThousandAndOneBytesOfJsonAndSixHundredFortyEightOfDataTake1680() throws IOException {
        var file = glb(filled(1001, '{'), filled(648, 'x'));

        assertThat(file).hasSize(1680);
        assertThat(words(file, 0, 5)).containsExactly(0x46546C67, 2, 1680, 1004, 0x4E4F534A);
        assertThat(words(file, 20 + 1004, 2)).containsExactly(648, 0x004E4942);
    }

    @Test
    void fillsJsonUpWithBlanksAndDataWithZeros() throws IOException {
        var file = glb(filled(5, '{'), filled(6, 'x'));

        assertThat(Arrays.copyOfRange(file, 20, 28)).containsExactly('{', '{', '{', '{', '{', ' ', ' ', ' ');
        assertThat(Arrays.copyOfRange(file, 36, 44)).containsExactly('x', 'x', 'x', 'x', 'x', 'x', 0, 0);
    }

    @Test
    void withoutDataThereIsOneChunk() throws IOException {
        assertThat(glb(filled(4, '{'), new byte[0])).hasSize(12 + 8 + 4);
    }

    private static byte[] glb(byte[] json, byte[] binary) throws IOException {
        var out = new ByteArrayOutputStream();
        new GlbChunks(json, binary).write(out);
        return out.toByteArray();
    }

    private static byte[] filled(int length, char with) {
        var bytes = new byte[length];
        Arrays.fill(bytes, (byte) with);
        return bytes;
    }

    private static int[] words(byte[] file, int from, int count) {
        var words = new int[count];
        ByteBuffer.wrap(file)
                .order(ByteOrder.LITTLE_ENDIAN)
                .position(from)
                .asIntBuffer()
                .get(words);
        return words;
    }
}
