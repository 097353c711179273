package org.standwright.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.standwright.check.Severity;
import org.standwright.make.Format;
import org.standwright.make.HeadStart;
import org.standwright.make.OutputFile;
import org.standwright.make.OutputFolder;
import org.standwright.make.Product;
import org.standwright.sheet.plan.Effort;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(
        name = "make",
        description = {
            "Works a design out, a stand or a wall of cleats, and writes everything needed to buy, cut and"
                    + " assemble it or put it up into a folder.",
            "The folder is replaced whole or not at all. Files in it that are not ours, or were changed since, are"
                    + " kept; ours of an earlier run that are not asked for any more are removed."
        })
final class MakeCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private DesignInput input;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            required = true,
            description = "Folder to write: a new one, an empty one, or one that was written by this command.")
    private Path folder;

    @Option(
            names = "--only",
            paramLabel = "FORMAT",
            split = ",",
            converter = FormatWord.class,
            completionCandidates = FormatWord.class,
            description = "Write these formats alone, parted by commas: ${COMPLETION-CANDIDATES}. Without this option"
                    + " all but stl-text are written: STL as text, for readers that do not know the other form.")
    private List<Format> only = List.of();

    @Option(
            names = "--plan-seconds",
            paramLabel = "N",
            converter = PlanSeconds.class,
            description =
                    "Search for better sheet plans for 0.1 to 3600 seconds a material. The plan then depends on the"
                            + " machine and is not repeatable; the report says so.")
    private Optional<Effort> effort;

    @Option(names = "--quiet", description = "Say nothing but errors and what stops the design from being built.")
    private boolean quiet;

    @Option(names = "--json", description = "Print the report as JSON instead of text.")
    private boolean json;

    private final Progress progress;

    MakeCommand(Progress progress) {
        this.progress = progress;
    }

    @Override
    public Integer call() throws IOException {
        HeadStart.begin();
        var target = OutputFolder.at(folder);
        target.check();
        var product = progress.during("Working out", () -> input.product(effort.orElse(Effort.USUAL)));
        var files = progress.during("Drawing up", () -> Format.ready(wanted(), product));
        tell(product, files, progress.writing(files, target::replaceWith));
        return product.hasStops() ? ExitCode.STOPS : ExitCode.FINE;
    }

    private Set<Format> wanted() {
        return only.isEmpty() ? Format.usual() : EnumSet.copyOf(only);
    }

    /** What was asked for by its word, but has nothing to show. */
    private List<String> missing(Product product) {
        return only.contains(Format.ROUTER) && product.routed().isEmpty()
                ? List.of("the design names no router, so there are no files for one; write \"router\": {} into it")
                : List.of();
    }

    private void tell(Product product, List<OutputFile> files, List<String> notes) throws IOException {
        var out = spec.commandLine().getOut();
        var err = spec.commandLine().getErr();
        Stream.concat(missing(product).stream(), notes.stream()).forEach(note -> err.println("note: " + note));
        var least = quiet ? Severity.STOP : Severity.NOTE;
        product.findings().stream()
                .filter(finding -> finding.severity().compareTo(least) <= 0)
                .forEach(finding -> err.println(FindingLine.of(finding, product.units())));
        if (json) {
            out.print(Texts.of(product::writeReport));
        } else if (!quiet) {
            out.println(Summary.of(product));
            out.println(files.size() + " files written to " + folder + ".");
        }
    }
}
