package org.standwright.file.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestNameTest {
    private static final List<String> KNOWN =
            List.of("width", "depth", "height", "workingHeight", "birch-18", "birch-12");

    @ParameterizedTest
    @CsvSource({
        "widht, width",
        "WIDTH, width",
        "heigth, height",
        "workingheight, workingHeight",
        "working_height, workingHeight",
        "birch18, birch-18",
        "birsh-12, birch-12",
        "dept, depth"
    })
    void findsTheNameThatWasMeant(String given, String meant) {
        assertThat(NearestName.to(given, KNOWN)).contains(meant);
    }

    @ParameterizedTest
    @CsvSource({"colour", "x", "oak"})
    void findsNothingWhenNothingIsNear(String given) {
        assertThat(NearestName.to(given, KNOWN)).isEmpty();
    }

    @Test
    void takesTheFirstOfTwoThatAreAsNearAndStartAlike() {
        assertThat(NearestName.to("birch-1", KNOWN)).contains("birch-18");
    }

    @Test
    void takesTheOneThatStartsAlikeForLongestOfTwoEquallyNear() {
        assertThat(NearestName.to("birch-65", List.of("birch-15", "birch-6.5"))).contains("birch-6.5");
    }

    @Test
    void listsTheNamesWhenTheyAreFew() {
        assertThat(NearestName.hint("colour", List.of("gap"))).isEqualTo("Use \"gap\".");
        assertThat(NearestName.hint("colour", List.of("gap", "kerf", "trim")))
                .isEqualTo("Use \"gap\", \"kerf\" or \"trim\".");
        assertThat(NearestName.hint("colour", List.of())).isEmpty();
    }
}
