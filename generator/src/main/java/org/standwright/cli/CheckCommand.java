package org.standwright.cli;

import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.standwright.check.RuleText;
import org.standwright.export.ExplainTextWriter;
import org.standwright.make.Product;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(
        name = "check",
        description = "Works a design out and says what it comes to: of a stand its height stack and sizes,"
                + " of a wall its rows, strips and what hangs where; what every rule measures or"
                + " finds, and what cures it. Writes no files.")
final class CheckCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private DesignInput input;

    @ArgGroup
    private Said said = new Said();

    /** What is said; not more than one of these. */
    private static final class Said {
        @Option(names = "--quiet", description = "Say nothing but errors and what stops the design from being built.")
        private boolean quiet;

        @Option(names = "--json", description = "Print the report as JSON instead of text.")
        private boolean json;

        @Option(
                names = "--explain",
                paramLabel = "RULE",
                converter = RuleWord.class,
                completionCandidates = RuleWord.class,
                description = "Say how one rule comes to its figures: question, formula, what it takes for granted,"
                        + " source, and the numbers of each finding. 'check' without it lists the rules.")
        private Optional<RuleText> explained = Optional.empty();
    }

    private final Progress progress;

    CheckCommand(Progress progress) {
        this.progress = progress;
    }

    @Override
    public Integer call() throws IOException {
        var product = progress.during("Working out", this::product);
        var out = spec.commandLine().getOut();
        if (said.json) {
            out.print(Texts.of(product::writeReport));
        } else if (said.quiet) {
            product.stops()
                    .forEach(finding -> spec.commandLine().getErr().println(FindingLine.of(finding, product.units())));
        } else if (said.explained.isPresent()) {
            var rule = said.explained.get();
            out.print(Texts.of(text -> ExplainTextWriter.write(rule, product.findings(), product.units(), text)));
        } else {
            out.print(Texts.of(product::writeOverview));
            out.println(Summary.of(product));
            out.print(Texts.of(product::writeChecks));
        }
        return product.hasStops() ? ExitCode.STOPS : ExitCode.FINE;
    }

    /** Only the report says what would save a sheet. */
    private Product product() {
        return said.json ? input.product() : input.worked(Product::checked);
    }
}
