package org.standwright.viewer.app;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import javafx.concurrent.Task;
import org.standwright.make.Format;
import org.standwright.make.OutputFile;
import org.standwright.make.OutputFolder;
import org.standwright.make.Product;

/** Fills a folder with files, as the command line does; nothing is written when it is cancelled. */
final class Export extends Task<Export.Outcome> {
    private final Supplier<Product> product;
    private final Set<Format> formats;
    private final Path folder;

    /**
     * @param files that were written
     * @param notes what the maker should know about files that were there
     */
    record Outcome(int files, List<String> notes) {}

    /** @param product what files are made of; may take a while */
    Export(Supplier<Product> product, Set<Format> formats, Path folder) {
        this.product = product;
        this.formats = EnumSet.copyOf(formats);
        this.folder = folder;
    }

    @Override
    protected Outcome call() {
        var target = OutputFolder.at(folder);
        target.check();
        updateMessage("Working out …");
        var worked = product.get();
        var files = new ArrayList<OutputFile>();
        int done = 0;
        for (var format : formats) {
            if (isCancelled()) {
                return new Outcome(0, List.of());
            }
            updateMessage("Drawing up " + format.word() + " …");
            updateProgress(done++, formats.size() + 1);
            files.addAll(Format.ready(EnumSet.of(format), worked));
        }
        if (isCancelled()) {
            return new Outcome(0, List.of());
        }
        updateMessage("Writing …");
        updateProgress(done, formats.size() + 1);
        return new Outcome(files.size(), target.replaceWith(files));
    }
}
