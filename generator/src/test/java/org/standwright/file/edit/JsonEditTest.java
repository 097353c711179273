package org.standwright.file.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class JsonEditTest {
    private static final String STAND = """
            {
              "kind": "stand",

              "plan": { "width": "610 mm", "depth": 4.50e2 },
              "bays": [
                { "contents": [] },
                {
                  "note": "Bits, chucks and their keys lie above, jigs and what belongs to them below.",
                  "contents": [{ "kind": "open" }]
                }
              ]
            }
            """;

    @Test
    void aValueIsReplacedAndNothingElse() {
        assertThat(JsonEdit.set(STAND, "/plan/width", "\"24 1/2 in\"")).isEqualTo(STAND.replace("610 mm", "24 1/2 in"));
    }

    @Test
    void aNewFieldOfAnObjectOnOneLineStaysOnIt() {
        assertThat(JsonEdit.set(STAND, "/plan/height", "7"))
                .isEqualTo(STAND.replace("4.50e2 }", "4.50e2, \"height\": 7 }"));
    }

    @Test
    void aNewFieldOfAnObjectOnManyLinesGetsItsOwn() {
        assertThat(JsonEdit.set(STAND, "/name", "\"Stand\"")).endsWith("  ],\n  \"name\": \"Stand\"\n}\n");
        assertThat(JsonEdit.set(STAND, "/bays/1/width", "300"))
                .contains("\"contents\": [{ \"kind\": \"open\" }],\n      \"width\": 300\n    }");
    }

    @Test
    void objectsThatAreMissingAroundANewFieldAreWrittenOnOneLine() {
        assertThat(JsonEdit.set(STAND, "/drawers/grip/kind", "\"pull\""))
                .endsWith("  ],\n  \"drawers\": { \"grip\": { \"kind\": \"pull\" } }\n}\n");
    }

    @Test
    void aLineThatWouldBecomeTooLongIsBrokenFromOutsideIn() {
        var note = "\"" + "long ".repeat(16) + "\"";

        assertThat(JsonEdit.set(STAND, "/bays/1/contents/0/note", note))
                .contains("      \"contents\": [\n        { \"kind\": \"open\", \"note\": " + note + " }\n      ]");
        assertThat(JsonEdit.set(STAND, "/plan/note", note)).contains("""
                  "plan": {
                    "width": "610 mm",
                    "depth": 4.50e2,
                    "note": %s
                  },
                """.formatted(note));
    }

    @Test
    void aTextOnOneLineStaysOnOneLine() {
        var text = "{\"a\":[1,2]}";
        var note = "\"" + "x".repeat(200) + "\"";

        assertThat(JsonEdit.set(text, "/b", note)).isEqualTo("{\"a\":[1,2],\"b\":" + note + "}");
        assertThat(JsonEdit.insert(text, "/a", 1, "5")).isEqualTo("{\"a\":[1,5,2]}");
    }

    @Test
    void entriesOfAListOnManyLinesGetLinesOfTheirOwn() {
        assertThat(JsonEdit.insert(STAND, "/bays", 0, "{ \"width\": 1 }"))
                .contains("\"bays\": [\n    { \"width\": 1 },\n    { \"contents\": [] },\n");
        assertThat(JsonEdit.insert(STAND, "/bays", 2, "{ \"width\": 1 }"))
                .contains("    },\n    { \"width\": 1 }\n  ]\n");
        assertThat(JsonEdit.insert(STAND, "/bays/0/contents", 0, "{}")).contains("{ \"contents\": [{}] },");
    }

    @Test
    void removingTakesTheCommaAndTheLineToo() {
        assertThat(JsonEdit.remove(STAND, "/kind")).startsWith("{\n  \"plan\"");
        assertThat(JsonEdit.remove(STAND, "/plan/depth")).contains("\"plan\": { \"width\": \"610 mm\" },");
        assertThat(JsonEdit.remove(STAND, "/bays")).endsWith("4.50e2 }\n}\n");
        assertThat(JsonEdit.remove(STAND, "/bays/1/contents/0")).contains("\"contents\": []\n");
    }

    @Test
    void windowsLineEndsAreKeptAndUsed() {
        var text = STAND.replace("\n", "\r\n");

        assertThat(JsonEdit.set(text, "/name", "1").replace("\r\n", ""))
                .doesNotContain("\r")
                .doesNotContain("\n");
    }

    @Test
    void aByteOrderMarkStays() {
        assertThat(JsonEdit.set("\ufeff{ \"a\": 1 }", "/b", "2")).isEqualTo("\ufeff{ \"a\": 1, \"b\": 2 }");
    }

    @Test
    void whatCannotBeDoneSaysWhy() {
        assertThatThrownBy(() -> JsonEdit.set("{ \"a\": }", "/a", "1"))
                .isInstanceOf(JsonEditException.class)
                .hasMessageContaining("no JSON at line 1, column 8");
        assertThatThrownBy(() -> JsonEdit.set("", "/a", "1")).hasMessageContaining("empty");
        assertThatThrownBy(() -> JsonEdit.set("{} 1", "/a", "1")).hasMessageContaining("goes on");
        assertThatThrownBy(() -> JsonEdit.set(STAND, "/kind", "stand")).hasMessageContaining("no JSON");
        assertThatThrownBy(() -> JsonEdit.set(STAND, "kind", "1")).hasMessageContaining("slash");
        assertThatThrownBy(() -> JsonEdit.set(STAND, "/bays/2/width", "1"))
                .hasMessage("The text has no place \"/bays/2/width\": there is no \"2\" in \"/bays\".");
        assertThatThrownBy(() -> JsonEdit.set(STAND, "/kind/x", "1")).hasMessageContaining("no place");
        assertThatThrownBy(() -> JsonEdit.remove(STAND, "/plan/x")).hasMessageContaining("no place");
        assertThatThrownBy(() -> JsonEdit.remove(STAND, "")).hasMessageContaining("whole text");
        assertThatThrownBy(() -> JsonEdit.insert(STAND, "/plan", 0, "1")).hasMessageContaining("must be a list");
        assertThatThrownBy(() -> JsonEdit.insert(STAND, "/bays", 3, "1")).hasMessageContaining("must be 0 to 2");
        assertThatThrownBy(() -> JsonEdit.move(STAND, "/bays", 0, 2)).hasMessageContaining("must be 0 to 1");
        assertThatThrownBy(() -> JsonEdit.set("{ \"a\": 1, \"a\": 2 }", "/a", "1"))
                .hasMessageContaining("given twice");
    }
}
