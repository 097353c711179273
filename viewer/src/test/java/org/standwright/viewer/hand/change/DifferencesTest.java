package org.standwright.viewer.hand.change;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;

class DifferencesTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static String written(String before, String after) throws JsonProcessingException {
        return Differences.written(before, "", MAPPER.readTree(before), MAPPER.readTree(after));
    }

    @Test
    void leavesTheWritingOfWhatStays() throws JsonProcessingException {
        assertThat(written(
                        "{ \"a\":1,\n  \"fronts\": [ 90,  \"3 1/2 in\" ] }", "{\"a\":1,\"fronts\":[95,\"3 1/2 in\"]}"))
                .isEqualTo("{ \"a\":1,\n  \"fronts\": [ 95,  \"3 1/2 in\" ] }");
    }

    @Test
    void changesTwoNeighboursOver() throws JsonProcessingException {
        assertThat(written("[{ \"a\":  1 }, { \"b\":2 }]", "[{\"b\":2},{\"a\":1}]"))
                .isEqualTo("[{ \"b\":2 }, { \"a\":  1 }]");
    }

    @Test
    void putsInAndTakesOutEntriesAndFields() throws JsonProcessingException {
        assertThat(written("[1, 2, 3]", "[1,7,8,2,3]")).isEqualTo("[1, 7, 8, 2, 3]");
        assertThat(written("[1, 2,  3]", "[1]")).isEqualTo("[1]");
        assertThat(written("{ \"a\": 1, \"b\": 2 }", "{\"b\":2,\"c\":[]}")).isEqualTo("{ \"b\": 2, \"c\": [] }");
    }

    @Test
    void writesAnotherKindAsAWhole() throws JsonProcessingException {
        assertThat(written("[{\"kind\":\"open\",\"height\":5}]", "[{\"kind\":\"door\",\"hinge\":\"h\"}]"))
                .isEqualTo("[{ \"kind\": \"door\", \"hinge\": \"h\" }]");
    }
}
