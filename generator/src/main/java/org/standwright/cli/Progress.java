package org.standwright.cli;

import java.io.PrintStream;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;
import org.standwright.make.OutputFile;

/** How far a run is, shown on a terminal while something lasts for more than a second. */
final class Progress {
    private static final int UNKNOWN = -1;

    private final Optional<PrintStream> terminal;

    private Progress(Optional<PrintStream> terminal) {
        this.terminal = terminal;
    }

    static Progress silent() {
        return new Progress(Optional.empty());
    }

    static Progress on(PrintStream terminal) {
        return new Progress(Optional.of(terminal));
    }

    /** Shows that something is being done, but not how far it is. */
    <T> T during(String what, Supplier<T> work) {
        if (terminal.isEmpty()) {
            return work.get();
        }
        var bar = bar(what, UNKNOWN, terminal.get());
        try (bar) {
            return work.get();
        }
    }

    /** Counts the files while {@code write} has them written. */
    <T> T writing(List<OutputFile> files, Function<List<OutputFile>, T> write) {
        if (terminal.isEmpty()) {
            return write.apply(files);
        }
        try (var bar = bar("Writing files", files.size(), terminal.get())) {
            return write.apply(files.stream().map(file -> counted(file, bar)).toList());
        }
    }

    private static OutputFile counted(OutputFile file, ProgressBar bar) {
        return new OutputFile(file.name(), out -> {
            file.content().writeTo(out);
            bar.step();
        });
    }

    private static ProgressBar bar(String what, int steps, PrintStream terminal) {
        return new ProgressBarBuilder()
                .setTaskName(what)
                .setInitialMax(steps)
                .setStyle(ProgressBarStyle.ASCII)
                .setUpdateIntervalMillis(100)
                .clearDisplayOnFinish()
                .setConsumer(new LateConsole(terminal))
                .build();
    }
}
