package org.standwright.export;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.standwright.cutlist.HardwareLine;

/** What to buy beside the boards, as a table. */
public final class HardwareCsvWriter {
    private HardwareCsvWriter() {}

    public static void write(List<HardwareLine> hardware, OutputStream out) throws IOException {
        CsvTable.write(
                List.of("count", "item", "uses"),
                hardware.stream()
                        .map(line ->
                                List.of(Integer.toString(line.count()), line.item(), String.join("; ", line.uses())))
                        .toList(),
                out);
    }
}
