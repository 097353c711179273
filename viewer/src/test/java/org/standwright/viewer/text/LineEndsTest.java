package org.standwright.viewer.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LineEndsTest {
    private static final String FILE = "{\r\n  \"a\": 1,\r\n  \"b\": 2\n}\r\n";

    @Test
    void keepsTheLineEndsOfAFileWhereNothingWasTyped() {
        var shown = LineEnds.plain(FILE);

        assertThat(LineEnds.typedInto(FILE, shown)).isEqualTo(FILE);
        assertThat(LineEnds.typedInto(FILE, shown.replace("1,", "10,"))).isEqualTo(FILE.replace("1,", "10,"));
    }

    @Test
    void breaksNewLinesAsTheFileDoes() {
        var shown = LineEnds.plain(FILE);

        assertThat(LineEnds.typedInto(FILE, shown.replace("1,", "1,\n  \"c\": 3,")))
                .isEqualTo(FILE.replace("1,", "1,\r\n  \"c\": 3,"));
    }

    @ParameterizedTest
    @CsvSource({"abc, abc", "abc, axbc", "aXc, ac", "'', abc", "abc, ''", "aa, aaa", "aba, a"})
    void turnsOneTextIntoTheOther(String before, String after) {
        var splice = Splice.between(before, after);

        assertThat(before.substring(0, splice.from()) + splice.put() + before.substring(splice.to()))
                .isEqualTo(after);
    }
}
