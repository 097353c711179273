package org.standwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RunTest {
    private Session session;

    @BeforeEach
    void open(@TempDir Path folder) {
        session = new Session(folder);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--help",
                "make --help",
                "check --help",
                "savings --help",
                "presets --help",
                "presets list --help",
                "presets show --help",
                "new --help",
                "schema --help"
            })
    void explainsEveryCommand(String command) {
        assertThat(session.run(command)).isZero();
        assertThat(session.out.toString())
                .startsWith("Usage: standwright")
                .contains("Exit codes:", "a mistake in the program")
                .doesNotContain("null", "\tat ");
        assertThat(session.err.toString()).isEmpty();
    }

    @Test
    void writesTheFolderAndSaysWhatItHolds() {
        assertThat(session.run("make T/stand.json --out T/o"))
                .as(session.err.toString())
                .isZero();
        assertThat(session.out.toString())
                .contains("small/stand: ", " kg of wood.", "files written to ")
                .containsPattern("  \\S.*: \\d+ sheets?; proved minimal; \\d+\\.\\d % become parts\\.");
        assertThat(session.err.toString()).contains("caution: ");
        assertThat(session.names("o"))
                .containsExactly(
                        "assembly-mm.mtl",
                        "assembly-mm.obj",
                        "assembly-mm.stl",
                        "assembly.3mf",
                        "assembly.glb",
                        "assembly.step",
                        "cut-list.csv",
                        "cut-list.txt",
                        "cuts.csv",
                        "hardware.csv",
                        "manifest.json",
                        "packet.pdf",
                        "parts",
                        "report.json",
                        "sheets");
    }

    @Test
    void writesWhatIsAskedForAndKeepsWhatIsNotOurs() throws IOException {
        session.run("make T/stand.json --out T/o --only csv,txt");
        session.write("o/notes.txt", "mine");
        assertThat(session.run("make T/stand.json --out T/o --only csv")).isZero();
        assertThat(session.names("o"))
                .containsExactly("cut-list.csv", "cuts.csv", "hardware.csv", "manifest.json", "notes.txt");
    }

    @Test
    void saysWhereFilesForARouterComeFromWhenThereAreNone() {
        assertThat(session.run("make T/stand.json --out T/o --only csv,router --quiet"))
                .isZero();
        assertThat(session.err.toString()).contains("note: the design names no router", "\"router\": {}");
        assertThat(session.names("o")).containsExactly("cut-list.csv", "cuts.csv", "hardware.csv", "manifest.json");

        session.err.getBuffer().setLength(0);
        assertThat(session.run("make T/stand.json --out T/o --quiet")).isZero();
        assertThat(session.err.toString()).doesNotContain("router");
    }

    @Test
    void writesTheBoardsOfARouter() {
        session.write("routed.json", session.read("stand.json").replaceFirst("\\{", "{ \"router\": { \"tabs\": {} },"));

        assertThat(session.run("make T/routed.json --out T/o --only router")).isZero();
        assertThat(session.out.toString()).containsPattern("boards for the router: \\d of .*; parts lie 7.9 mm apart");
        assertThat(session.names("o/router")).contains("legend.txt").anyMatch(name -> name.endsWith(".dxf"));
    }

    @Test
    void aPlanThatTheClockEndedIsNotRepeatableAndTheReportSaysSo() throws IOException {
        assertThat(session.run("make T/stand.json --out T/o --only json --plan-seconds 0.1"))
                .as(session.err.toString())
                .isZero();
        assertThat(session.read("o/report.json")).contains("\"repeatable\" : false");
        session.run("make T/stand.json --out T/o --only json");
        assertThat(session.read("o/report.json")).contains("\"repeatable\" : true");
    }

    @Test
    void refusesToWriteOverAnEditedFile() throws IOException {
        session.run("make T/stand.json --out T/o --only csv");
        session.write("o/cut-list.csv", "my own");
        assertThat(session.run("make T/stand.json --out T/o --only csv")).isEqualTo(ExitCode.NOT_WRITTEN);
        assertThat(session.err.toString()).contains("cut-list.csv' is not as Standwright wrote it");
        assertThat(session.read("o/cut-list.csv")).isEqualTo("my own");
    }

    @Test
    void readsBackTheUnitThatIsAskedFor() throws IOException {
        session.run("make T/stand.json --out T/o --only txt --unit in");
        assertThat(session.read("o/cut-list.txt")).contains("Working height 35 7/16 in");
    }

    @Test
    void buildsWhatShouldNotBeBuiltAndSaysSo() throws IOException {
        session.write(
                "weak.json",
                Session.DESIGN.formatted("900 mm", "{ \"preset\": \"caster-100\", \"rating\": \"5 kg\" }"));
        assertThat(session.run("make T/weak.json --out T/o --only csv --quiet"))
                .as(session.err.toString())
                .isEqualTo(ExitCode.STOPS);
        assertThat(session.err.toString()).startsWith("stop: ").doesNotContain("caution: ", "note: ");
        assertThat(session.out.toString()).isEmpty();
        assertThat(session.names("o")).contains("cut-list.csv");
        assertThat(session.run("check T/weak.json --quiet")).isEqualTo(ExitCode.STOPS);
    }

    @Test
    void checksWithoutWriting() {
        var before = session.tree();
        assertThat(session.run("check T/stand.json")).isZero();
        assertThat(session.out.toString())
                .contains("Height stack, from the floor up", "working height", "drawer 1.1", "caution:")
                .containsPattern("foot-load +\\[#+\\.+] 0\\.\\d\\d +fine")
                .contains("Nothing to say here: ", "Whatever the findings", "Disconnect the machine");
        assertThat(session.tree()).isEqualTo(before);
    }

    @Test
    void explainsOneRuleInTheWantedUnit() {
        assertThat(session.run("check T/stand.json --explain foot-load --unit in"))
                .isZero();
        assertThat(session.out.toString())
                .startsWith("foot-load: Do the casters or levelers bear the load?\n")
                .containsPattern("m +.* lb +mass of everything, full")
                .contains("each = m / 3", "source", "used")
                .doesNotContain("Height stack");
    }

    @Test
    void printsTheReportAsJson() throws IOException {
        assertThat(session.run("check T/stand.json --json")).isZero();
        assertThat(new JsonMapper().readTree(session.out.toString()).get("kind").asText())
                .isEqualTo("report");
    }

    @Test
    void listsAndShowsPresets() throws IOException {
        assertThat(session.run("presets")).isZero();
        assertThat(session.out.toString().lines()).contains("machine/thickness-planer", "sheet/birch-18");
        assertThat(session.run("presets list --json")).isZero();
        assertThat(session.run("presets show machine/thickness-planer")).isZero();
        assertThat(session.out.toString()).contains("\"kind\": \"machine\"");
    }

    @Test
    void listsPresetsAsAnArray() throws IOException {
        session.run("presets list --json");
        var first = new JsonMapper().readTree(session.out.toString()).get(0);
        assertThat(first.fieldNames()).toIterable().startsWith("kind", "name");
    }

    @Test
    void writesADesignToStartFrom() throws IOException {
        assertThat(session.run("new bench-grinder --out T/mine.json --unit in --quiet"))
                .isZero();
        assertThat(session.out.toString()).isEmpty();
        assertThat(session.read("mine.json")).contains("\"unit\": \"in\"");
        assertThat(session.run("check T/mine.json")).as(session.err.toString()).isLessThan(ExitCode.BAD_INPUT);
    }

    @Test
    void printsTheSchema() throws IOException {
        assertThat(session.run("schema")).isZero();
        assertThat(new JsonMapper()
                        .readTree(session.out.toString())
                        .get("$schema")
                        .asText())
                .isEqualTo("https://json-schema.org/draft/2020-12/schema");
    }
}
