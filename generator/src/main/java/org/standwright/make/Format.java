package org.standwright.make;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import org.standwright.export.CutListCsvWriter;
import org.standwright.export.CutListTextWriter;
import org.standwright.export.HardwareCsvWriter;
import org.standwright.export.ObjWriter;
import org.standwright.export.PdfWriter;
import org.standwright.export.StlWriter;

/** The list of formats: what each one makes of a product. */
public enum Format {
    /** Cut list, cuts and hardware as tables. */
    CSV(product -> List.of(
            new OutputFile("cut-list.csv", out -> CutListCsvWriter.write(product.cutList(), product.units(), out)),
            new OutputFile("cuts.csv", product::writeCuts),
            new OutputFile(
                    "hardware.csv",
                    out -> HardwareCsvWriter.write(product.cutList().hardware(), out)))),
    /** The cut list to read. */
    TXT(product -> List.of(new OutputFile(
            "cut-list.txt",
            out -> CutListTextWriter.write(
                    product.furniture(), product.cutList(), product.plan(), product.findings(), out)))),
    /** Everything as data. */
    JSON(product -> List.of(new OutputFile("report.json", product::writeReport))),
    /** Everything on paper. */
    PDF(product -> List.of(new OutputFile("packet.pdf", out -> PdfWriter.write(Papers.packet(product), out)))),
    /** All parts where they belong, and each distinct part. */
    STL(product -> {
        var files = new ArrayList<OutputFile>();
        files.add(new OutputFile("assembly.stl", out -> StlWriter.write(product.solids(), out)));
        files.addAll(PartFiles.stl(product));
        return files;
    }),
    /** Every part where it belongs, under its name. */
    OBJ(product -> List.of(new OutputFile("assembly.obj", out -> ObjWriter.write(product.solids(), out)))),
    /** Each sheet with its pieces, and each wall of cleats. */
    SVG(product -> {
        var files = new ArrayList<>(Papers.sheets(product));
        files.addAll(product.furniture().accept(new Elevations(product.solids())));
        return files;
    });

    private final Function<Product, List<OutputFile>> files;

    Format(Function<Product, List<OutputFile>> files) {
        this.files = files;
    }

    /** What {@code --only} calls it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The files of some formats with their bytes, worked out side by side, in the order of this list. */
    public static List<OutputFile> ready(Set<Format> wanted, Product product) {
        return files(wanted, product).parallelStream().map(OutputFile::inMemory).toList();
    }

    /** The files of some formats, in the order of this list. */
    public static List<OutputFile> files(Set<Format> wanted, Product product) {
        var all = new ArrayList<OutputFile>();
        for (var format : values()) {
            if (wanted.contains(format)) {
                all.addAll(format.files.apply(product));
            }
        }
        return all;
    }
}
