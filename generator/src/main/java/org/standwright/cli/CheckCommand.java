package org.standwright.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import org.standwright.export.OverviewTextWriter;
import org.standwright.make.Product;
import org.standwright.solid.Fineness;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

@Command(
        name = "check",
        description = "Works a design out and says what it comes to: height stack, sizes and what to watch out for."
                + " Writes no files.")
final class CheckCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private DesignInput input;

    @Option(names = "--quiet", description = "Say nothing but errors and what stops the design from being built.")
    private boolean quiet;

    @Option(names = "--json", description = "Print the report as JSON instead of text.")
    private boolean json;

    private final Progress progress;

    CheckCommand(Progress progress) {
        this.progress = progress;
    }

    @Override
    public Integer call() throws IOException {
        var product = progress.during("Working out", this::product);
        var out = spec.commandLine().getOut();
        if (json) {
            out.print(Texts.of(product::writeReport));
        } else if (quiet) {
            product.stops()
                    .forEach(finding -> spec.commandLine().getErr().println(FindingLine.of(finding, product.units())));
        } else {
            out.print(Texts.of(text -> OverviewTextWriter.write(product.stand(), product.findings(), text)));
            out.println(Summary.of(product));
        }
        return product.hasStops() ? ExitCode.STOPS : ExitCode.FINE;
    }

    /** Only the report says what would save a sheet. */
    private Product product() {
        return json ? input.product() : input.worked(design -> Product.of(design, Fineness.FILE));
    }
}
