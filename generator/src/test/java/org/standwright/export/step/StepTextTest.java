package org.standwright.export.step;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Numbers and names in the clear text encoding of ISO 10303-21. */
class StepTextTest {
    @ParameterizedTest
    @CsvSource({
        "0, 0.",
        "-0.0, 0.",
        "18, 18.",
        "-600, -600.",
        "0.5, 0.5",
        "-12.7, -12.7",
        "0.001, 0.001",
        "1e-9, 0.000000001",
        "5.999999999999999, 6.",
        "0.1, 0.1",
        "2345.1, 2345.1",
        "5000.1, 5000.1",
        "-12345.678901, -12345.678901"
    })
    void aRealHasAPointAndNoMoreDigitsThanItNeeds(double value, String text) {
        assertThat(StepReal.of(value)).isEqualTo(text);
    }

    @Test
    void whatIsNoNumberIsRefused() {
        assertThatThrownBy(() -> StepReal.of(Double.NaN)).hasMessageContaining("NaN");
        assertThatThrownBy(() -> StepReal.of(1e10)).hasMessageContaining("9000000");
    }

    /** The escapes of ISO 10303-21, clause 6.4.3: apostrophe, reverse solidus, and characters of ISO 10646. */
    @Test
    void aNameKeepsEverySign() {
        assertThat(StepString.of("left side")).isEqualTo("'left side'");
        assertThat(StepString.of("it's")).isEqualTo("'it''s'");
        assertThat(StepString.of("a\\b \"c\"")).isEqualTo("'a\\\\b \"c\"'");
        assertThat(StepString.of("Fuß")).isEqualTo("'Fu\\X2\\00DF\\X0\\'");
        assertThat(StepString.of("木板 1")).isEqualTo("'\\X2\\6728677F\\X0\\ 1'");
        assertThat(StepString.of("saw \uD83E\uDE9A")).isEqualTo("'saw \\X4\\0001FA9A\\X0\\'");
        assertThat(StepString.of("ß\uD83E\uDE9A")).isEqualTo("'\\X2\\00DF\\X0\\\\X4\\0001FA9A\\X0\\'");
        assertThat(StepString.of("two\nlines")).isEqualTo("'two\\X2\\000A\\X0\\lines'");
    }

    @Test
    void anEntityThatIsThereAlreadyIsShared() {
        var text = new StepText();
        int first = text.share("DIRECTION('',(1.,0.,0.))");

        assertThat(text.share("DIRECTION('',(1.,0.,0.))")).isEqualTo(first);
        assertThat(text.add("DIRECTION('',(1.,0.,0.))")).isNotEqualTo(first);
        assertThat(text).hasToString("#1=DIRECTION('',(1.,0.,0.));\n#2=DIRECTION('',(1.,0.,0.));\n");
    }
}
