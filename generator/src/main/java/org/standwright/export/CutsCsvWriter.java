package org.standwright.export;

import java.io.IOException;
import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.standwright.packet.words.CuttingOrder;
import org.standwright.packet.words.SawWords;
import org.standwright.packet.words.SawnCut;
import org.standwright.packet.words.SetUp;
import org.standwright.sheet.SheetPlan;
import org.standwright.unit.Units;

/** Every cut of the sheets as a row, material by material, in the order in which they are sawn. */
public final class CutsCsvWriter {
    private static final List<String> HEADER = List.of(
            "material",
            "stage",
            "set-up",
            "cut",
            "sheet",
            "tool",
            "kind",
            "purpose",
            "fence mm",
            "fence",
            "from edge",
            "frees");

    private CutsCsvWriter() {}

    /** @param waiting labels of the pieces of the second stage */
    public static void write(SheetPlan plan, Set<String> waiting, Units units, OutputStream out) throws IOException {
        var rows = new ArrayList<List<String>>();
        for (var material : plan.materials()) {
            var name = material.material().name();
            var order = CuttingOrder.of(material, plan.saw(), waiting);
            order.all().forEach(setUp -> setUp.cuts().forEach(cut -> rows.add(row(name, setUp, cut, units))));
        }
        CsvTable.write(HEADER, rows, out);
    }

    private static List<String> row(String material, SetUp setUp, SawnCut cut, Units units) {
        return List.of(
                material,
                cut.waits() ? "2" : "1",
                Integer.toString(setUp.number()),
                Integer.toString(cut.cut().number()),
                Integer.toString(cut.sheet()),
                SawWords.tool(setUp.tool()),
                SawWords.word(setUp.direction()),
                SawWords.word(cut.cut().purpose()),
                CsvTable.exact(setUp.setting()),
                units.length(setUp.setting()),
                SawWords.edge(setUp.reference()),
                String.join("; ", cut.frees()));
    }
}
