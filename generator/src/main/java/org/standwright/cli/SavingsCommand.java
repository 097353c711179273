package org.standwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.standwright.advice.Advice;
import org.standwright.design.StandDesign;
import org.standwright.export.SavingTextWriter;
import org.standwright.make.Product;
import org.standwright.unit.Units;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

@Command(
        name = "savings",
        description = "Says which small change of a design would save a sheet or money, within what its field"
                + " 'savings' allows. Writes no files.")
final class SavingsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private DesignInput input;

    private final Progress progress;

    SavingsCommand(Progress progress) {
        this.progress = progress;
    }

    @Override
    public Integer call() throws IOException {
        progress.during("Trying other designs", () -> input.worked(Tried::of))
                .tell(spec.commandLine().getOut());
        return ExitCode.FINE;
    }

    /** A design and what would save a sheet of it. */
    private record Tried(StandDesign design, Optional<Advice> advice) {
        static Tried of(StandDesign design) {
            return new Tried(design, Product.savingsOf(design));
        }

        void tell(PrintWriter out) throws IOException {
            if (advice.isEmpty()) {
                out.println("Nothing was tried: the design does not say what may change. Give it the field \"savings\","
                        + " such as { \"depth\": { \"less\": \"" + (design.unit() == Units.MM ? "10 mm" : "1/2 in")
                        + "\" } }.");
            } else {
                out.print(Texts.of(text -> SavingTextWriter.write(design, advice.get(), text)));
            }
        }
    }
}
