package org.standwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SavingsCommandTest {
    private static final String SAW = "\"saw\": {";

    private Session session;

    @BeforeEach
    void open(@TempDir Path folder) {
        session = new Session(folder);
    }

    /** One of each of three boards is the least there is: 3 x 1525 x 1525 against 2 of them cut from one name. */
    @Test
    void saysWhatSavesASheet() {
        write("{ \"sheets\": [{ \"instead\": \"birch-12\", \"sheet\": \"birch-18\" }] }");

        assertThat(session.run("savings T/stand.json")).isZero();
        assertThat(session.out.toString())
                .startsWith("small/stand\n\nchange ")
                .contains("Birch plywood 18 mm (2500 x 1250 mm) instead of Birch plywood 12 mm  3 to 2 ")
                .endsWith("1 other design was looked at; areas are those of the boards to buy.\n");
    }

    @Test
    void saysThatNothingHelps() {
        write("{ \"depth\": { \"less\": \"2 mm\" }, \"freeGrain\": [\"birch-24\"] }");

        assertThat(session.run("savings T/stand.json")).isZero();
        assertThat(session.out.toString())
                .contains("Nothing that may be changed saves a sheet or money.")
                .contains("Nothing of this stand is cut from Birch plywood 24 mm, which may be changed.");
    }

    @Test
    void saysWhatToWriteWhereNothingMayChange() {
        assertThat(session.run("savings T/stand.json")).isZero();
        assertThat(session.out.toString())
                .startsWith("Nothing was tried: the design does not say what may change.")
                .contains("\"savings\", such as { \"depth\": { \"less\": \"10 mm\" } }.");
    }

    @Test
    void putsItIntoTheReport() {
        write("{ \"sheets\": [{ \"instead\": \"birch-12\", \"sheet\": \"birch-18\" }] }");

        assertThat(session.run("check T/stand.json --json")).isZero();
        assertThat(session.out.toString()).contains("\"savings\" : {\n    \"tried\" : 1,", "\"sheets\" : 2");
    }

    private void write(String savings) {
        var design = Session.DESIGN.formatted("900 mm", Session.CASTER);
        session.write("stand.json", design.replace(SAW, "\"savings\": " + savings + ",\n  " + SAW));
    }
}
