package org.standwright.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.standwright.advice.Advice;
import org.standwright.design.DesignVisitor;
import org.standwright.design.StandDesign;
import org.standwright.design.WallDesign;
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
        progress.during("Trying other designs", () -> input.worked(design -> design.accept(new Trying())))
                .tell(spec.commandLine().getOut());
        return ExitCode.FINE;
    }

    /** What would save a sheet of each kind of design. */
    private static final class Trying implements DesignVisitor<Tried> {
        @Override
        public Tried stand(StandDesign design) {
            return new TriedStand(design, Product.savingsOf(design));
        }

        @Override
        public Tried wall(WallDesign design) {
            return out -> out.println("Nothing was tried: no change of a wall of cleats is known that saves a sheet.");
        }
    }

    private interface Tried {
        void tell(PrintWriter out) throws IOException;
    }

    private record TriedStand(StandDesign design, Optional<Advice> advice) implements Tried {
        @Override
        public void tell(PrintWriter out) throws IOException {
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
