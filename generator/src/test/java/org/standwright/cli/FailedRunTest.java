package org.standwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.RandomAccessFile;
import java.io.Writer;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class FailedRunTest {
    @TempDir
    private Path folder;

    private Session session;

    @BeforeEach
    void open() throws IOException {
        session = new Session(folder);
        session.write("low.json", Session.DESIGN.formatted("200 mm", Session.CASTER));
        session.write("broken.json", "{\n  \"version\": 1,\n  \"kind\": }\n");
        session.write("foreign/thesis.doc", "years");
        Files.createSymbolicLink(folder.resolve("link"), folder.resolve("foreign"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
                    2 |                                           | no command was given
                    2 | mend                                      | mend
                    2 | make                                      | FILE
                    2 | make T/stand.json                         | --out
                    2 | make T/stand.json --out T/o --wide        | --wide
                    2 | make T/stand.json --out T/o --only csv,x  | 'x' is none of csv, txt, json, pdf, stl, stl-text, step, obj, 3mf, glb, svg, dxf, templates, router
                    2 | make T/stand.json --out T/o --plan-seconds 0 | '0' is not a number of seconds from 0.1 to 3600
                    2 | make T/stand.json --out T/o --plan-seconds x | 'x' is not a number of seconds from 0.1 to 3600
                    2 | make T/stand.json --out T/o --unit cm     | 'cm' is none of mm, in, in/64
                    2 | make T/nowhere.json --out T/o             | nowhere.json
                    2 | make T/foreign --out T/o                  | foreign is a folder
                    2 | make T/broken.json --out T/o              | broken.json line 3
                    2 | make T/low.json --out T/o                 | field "workingHeight"
                    2 | make T/stand.json --out T/o --presets T/x | is no folder
                    3 | make T/stand.json --out T/stand.json      | is a file, not a folder
                    3 | make T/stand.json --out T/stand.json/o    | could not
                    3 | make T/stand.json --out T/foreign         | is left alone
                    3 | make T/stand.json --out T/link            | is a symbolic link
                    3 | make T/stand.json --out .                 | is the folder you are in
                    2 | check                                     | FILE
                    2 | check T/nowhere.json                      | nowhere.json
                    2 | check T/low.json                          | field "workingHeight"
                    2 | check T/stand.json --explain foot-laod    | 'foot-laod' is no rule. These are: foot-load, tip-closed
                    2 | check T/stand.json --explain hose-hole --json  | mutually exclusive
                    2 | check T/stand.json --quiet --explain hose-hole | mutually exclusive
                    2 | presets show                              | KIND/NAME
                    2 | presets show nothing                      | nothing
                    2 | presets show machine/nothing              | nothing
                    2 | presets list --presets T/x                | is no folder
                    2 | new bench-grinder                         | --out
                    2 | new nothing --out T/new.json              | nothing
                    3 | new bench-grinder --out T/stand.json      | is there already
                    3 | new bench-grinder --out T/x/new.json      | no such file or folder
                    2 | schema more                               | more
                    """)
    void saysWhatIsWrong(int code, String command, String message) {
        var before = session.tree();
        assertThat(session.run(command == null ? "" : command))
                .as(session.err.toString())
                .isEqualTo(code);
        assertThat(session.err.toString()).contains("error: ").contains(message);
        assertThat(session.err.toString()).doesNotContain("Exception", "\tat ");
        assertThat(session.out.toString()).isEmpty();
        assertThat(session.tree()).isEqualTo(before);
    }

    /** A file of 100 MB that takes no room on the disk; reading it would take as much memory. */
    @ParameterizedTest
    @ValueSource(strings = {"make T/huge.json --out T/o", "check T/huge.json"})
    void refusesAHugeFileBeforeReadingIt(String command) throws IOException {
        try (var file = new RandomAccessFile(folder.resolve("huge.json").toFile(), "rw")) {
            file.setLength(100_000_000);
        }
        var before = session.tree();
        var threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long allocated = threads.getCurrentThreadAllocatedBytes();

        assertThat(session.run(command)).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(threads.getCurrentThreadAllocatedBytes() - allocated).isLessThan(50_000_000);
        assertThat(session.err.toString()).contains("huge.json is larger than 4 MB.");
        assertThat(session.tree()).isEqualTo(before);
    }

    @Test
    void asksToReportAMistakeOfItsOwn() {
        var broken = new PrintWriter(session.out) {
            @Override
            public void write(String text, int from, int length) {
                throw new IllegalStateException("broken inside");
            }
        };
        int code = new Run(broken, new PrintWriter(session.err), Progress.silent()).run("schema");
        assertThat(code).isEqualTo(ExitCode.UNEXPECTED);
        assertThat(session.err.toString())
                .contains("broken inside", "Please report it")
                .doesNotContain("\tat ");
    }

    @Test
    void noticesThatItsOutputDidNotArrive() {
        int code =
                new Run(new PrintWriter(new FullDisk()), new PrintWriter(session.err), Progress.silent()).run("schema");
        assertThat(code).isEqualTo(ExitCode.NOT_WRITTEN);
        assertThat(session.err.toString()).contains("error: the output could not be written to the end.");
    }

    private static final class FullDisk extends Writer {
        @Override
        public void write(char[] text, int from, int length) throws IOException {
            throw new IOException("No space left on device");
        }

        @Override
        public void flush() {}

        @Override
        public void close() {}
    }
}
