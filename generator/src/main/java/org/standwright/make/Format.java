package org.standwright.make;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.standwright.export.CutListCsvWriter;
import org.standwright.export.CutListTextWriter;
import org.standwright.export.HardwareCsvWriter;
import org.standwright.export.PdfWriter;
import org.standwright.export.mesh.GlbWriter;
import org.standwright.export.mesh.MtlWriter;
import org.standwright.export.mesh.ObjWriter;
import org.standwright.export.mesh.StlTextWriter;
import org.standwright.export.mesh.StlWriter;
import org.standwright.export.mesh.ThreeMfWriter;
import org.standwright.export.step.StepWriter;

/** The list of formats: what each one makes of a product. */
public enum Format {
    /** Cut list, cuts and hardware as tables. */
    CSV(
            "csv",
            product -> List.of(
                    new OutputFile(
                            "cut-list.csv", out -> CutListCsvWriter.write(product.cutList(), product.units(), out)),
                    new OutputFile("cuts.csv", product::writeCuts),
                    new OutputFile(
                            "hardware.csv",
                            out -> HardwareCsvWriter.write(product.cutList().hardware(), out)))),
    /** The cut list to read. */
    TXT(
            "txt",
            product -> List.of(new OutputFile(
                    "cut-list.txt",
                    out -> CutListTextWriter.write(
                            product.furniture(), product.cutList(), product.plan(), product.findings(), out)))),
    /** Everything as data. */
    JSON("json", product -> List.of(new OutputFile("report.json", product::writeReport))),
    /** Everything on paper. */
    PDF("pdf", product -> List.of(new OutputFile("packet.pdf", out -> PdfWriter.write(Papers.packet(product), out)))),
    /** All parts where they belong, and each distinct part. */
    STL("stl", product -> {
        var files = new ArrayList<OutputFile>();
        files.add(new OutputFile("assembly-mm.stl", out -> StlWriter.write(product.solids(), out)));
        files.addAll(PartFiles.of(product, "-mm.stl", (part, out) -> StlWriter.write(part.solid(), out)));
        return files;
    }),
    /** The same as text, several times as long, for a reader that takes nothing else. */
    STL_TEXT("stl-text", When.ASKED_FOR, product -> {
        var files = new ArrayList<OutputFile>();
        files.add(new OutputFile("assembly-mm-text.stl", out -> StlTextWriter.write(product.solids(), out)));
        files.addAll(PartFiles.of(
                product, "-mm-text.stl", (part, out) -> StlTextWriter.write(part.label(), part.solid(), out)));
        return files;
    }),
    /** Exact solids for programs that design: all parts where they belong, and each distinct part. */
    STEP("step", product -> {
        var files = new ArrayList<OutputFile>();
        files.add(new OutputFile("assembly.step", out -> StepWriter.write(product.solids(), out)));
        files.addAll(PartFiles.of(
                product,
                ".step",
                (placed, out) -> StepWriter.write(
                        placed.part().part().name(), placed.part().part(), placed.solid(), out)));
        return files;
    }),
    /** Every part where it belongs, under its name and in its colour. */
    OBJ(
            "obj",
            product -> List.of(
                    new OutputFile("assembly-mm.obj", out -> ObjWriter.write(product.solids(), "assembly-mm.mtl", out)),
                    new OutputFile("assembly-mm.mtl", out -> MtlWriter.write(product.solids(), out)))),
    /** Each different workpiece, and where it belongs, for printers and their slicers. */
    THREE_MF(
            "3mf",
            product -> List.of(new OutputFile("assembly.3mf", out -> ThreeMfWriter.write(product.solids(), out)))),
    /** Every part where it belongs, to look at and to go on with. */
    GLB("glb", product -> List.of(new OutputFile("assembly.glb", out -> GlbWriter.write(product.solids(), out)))),
    /** Each sheet with its pieces, and each wall of cleats. */
    SVG("svg", product -> {
        var files = new ArrayList<>(Papers.sheets(product));
        files.addAll(product.furniture().accept(new Elevations(product.solids())));
        return files;
    }),
    /** Each distinct part at true size, for programs. */
    DXF("dxf", PlotFiles::dxf),
    /** Each distinct part at true size, to print and to cut by. */
    TEMPLATES("templates", PlotFiles::templates),
    /** Each board that a router cuts, if the design has one. */
    ROUTER(
            "router",
            product -> product.routed()
                    .map(plan ->
                            RouterFiles.of(plan, product.furniture().design().name(), product.units()))
                    .orElse(List.of()));

    private enum When {
        USUALLY,
        ASKED_FOR
    }

    private final String word;
    private final When when;
    private final Function<Product, List<OutputFile>> files;

    Format(String word, Function<Product, List<OutputFile>> files) {
        this(word, When.USUALLY, files);
    }

    Format(String word, When when, Function<Product, List<OutputFile>> files) {
        this.word = word;
        this.when = when;
        this.files = files;
    }

    /** What {@code --only} calls it. */
    public String word() {
        return word;
    }

    /** What is written when nobody says what. */
    public static Set<Format> usual() {
        return Arrays.stream(values())
                .filter(format -> format.when == When.USUALLY)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Format.class)));
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
