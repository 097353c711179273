package org.standwright.make;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FileNamesTest {
    @ParameterizedTest
    @CsvSource({
        "A, side, A-side.stl",
        "B-L, drawer side, B-L-drawer-side.stl",
        "C, ply 3/4 in, C-ply-3-4-in.stl",
        "D, ../../etc, D-etc.stl",
        "E, 'C:\\windows', E-c-windows.stl",
        "F, Spanplatte 6.5 mm (weiß), F-spanplatte-6.5-mm-wei.stl",
        "G, 板, G.stl",
        "H, ..., H.stl"
    })
    void takesWhatEverySystemTakes(String first, String words, String name) {
        assertThat(FileNames.of(first, words, ".stl")).isEqualTo(name);
    }

    @Test
    void cutsLongNames() {
        assertThat(FileNames.of("A", "very long ".repeat(100), ".stl")).hasSizeLessThan(70);
    }
}
