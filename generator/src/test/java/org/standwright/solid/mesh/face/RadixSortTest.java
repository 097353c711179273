package org.standwright.solid.mesh.face;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against the sort of the Java library. */
class RadixSortTest {
    @ParameterizedTest
    @ValueSource(ints = {0, 1, 499, 500, 501, 20_000})
    void sortsAsTheLibraryDoes(int count) {
        var random = new SplittableRandom(count);
        var keys = new long[count];
        for (int i = 0; i < count; i++) {
            int place = i % 3 == 0 ? random.nextInt(-5, 5) : random.nextInt();
            keys[i] = (long) place << Integer.SIZE | i;
        }
        var expected = Arrays.stream(keys).sorted().toArray();

        assertThat(RadixSort.byUpperHalf(keys)).containsExactly(expected);
    }
}
